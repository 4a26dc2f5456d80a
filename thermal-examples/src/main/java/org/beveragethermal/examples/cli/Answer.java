/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * What a command found, before it has a form.
 *
 * @param command the sub-command
 * @param status {@link ExitStatus#DONE} or {@link ExitStatus#NO}
 * @param headline the answer in a sentence
 * @param tables its figures; the first one is what CSV shows
 * @param notes what has to be known beside it, each a sentence or more
 * @param sheet text that stands instead of the tables where text is asked for, if there is one
 * @param page page that stands instead of one of the tables, if there is one
 */
record Answer(
        String command,
        ExitStatus status,
        String headline,
        List<Table> tables,
        List<String> notes,
        Optional<String> sheet,
        Optional<String> page) {

    Answer(String command, ExitStatus status, String headline, List<Table> tables, List<String> notes) {
        this(command, status, headline, tables, notes, Optional.empty(), Optional.empty());
    }

    Answer withSheet(String text) {
        return new Answer(command, status, headline, tables, notes, Optional.of(text), page);
    }

    /** The same answer with a page of its own. */
    Answer withPage(String html) {
        return new Answer(command, status, headline, tables, notes, sheet, Optional.of(html));
    }

    /** A column: its name in all forms, and the unit of its numbers, empty for words. */
    record Column(String name, String unit) {
        static Column words(String name) {
            return new Column(name, "");
        }

        String head() {
            return unit.isEmpty() ? name : name + " [" + unit + "]";
        }
    }

    /** Rows of cells under columns. */
    record Table(String name, List<Column> columns, List<List<Cell>> rows) {}

    /** A word, a number of so many decimals, or nothing. */
    record Cell(String text, Optional<BigDecimal> number) {
        private static final Cell NONE = new Cell("", Optional.empty());

        static Cell of(String text) {
            return new Cell(text, Optional.empty());
        }

        static Cell of(double value, int decimals) {
            BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
            return new Cell(rounded.toPlainString(), Optional.of(rounded));
        }

        /** A number of so many significant digits, for values of unknown size. */
        static Cell significant(double value, int digits) {
            BigDecimal exact = BigDecimal.valueOf(value);
            int scale = Math.max(0, digits - exact.precision() + exact.scale());
            return of(value, Math.min(scale, 12));
        }

        static Cell none() {
            return NONE;
        }

        boolean isNone() {
            return text.isEmpty() && number.isEmpty();
        }
    }
}
