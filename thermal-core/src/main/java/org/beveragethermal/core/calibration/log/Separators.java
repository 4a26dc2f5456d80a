/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.List;

/** What stands between cells, and single lines taken apart at it. */
final class Separators {
    /** All that are tried, the rarer in numbers and words first. */
    static final String ALL = ";\t|,";

    private Separators() {}

    /** Cells of a line, trimmed; of its first record, if a carriage return within makes it several. */
    static List<String> split(String line, char separator) {
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .skipEmptyLines(false)
                .ofCsvRecord(line)) {
            for (CsvRecord record : reader) {
                return record.getFields().stream().map(Separators::trim).toList();
            }
            return List.of();
        } catch (CsvParseException tooLong) {
            return List.of();
        } catch (java.io.IOException impossible) {
            throw new java.io.UncheckedIOException(impossible);
        }
    }

    /** Without blanks of any kind around. */
    static String trim(String cell) {
        int from = 0;
        int to = cell.length();
        while (from < to && isBlank(cell.charAt(from))) {
            from++;
        }
        while (to > from && isBlank(cell.charAt(to - 1))) {
            to--;
        }
        return cell.substring(from, to);
    }

    static boolean isBlank(char c) {
        return c <= ' ' || c == '\u00a0' || c == '\u202f' || c == '\ufeff' || c == '\u2009';
    }
}
