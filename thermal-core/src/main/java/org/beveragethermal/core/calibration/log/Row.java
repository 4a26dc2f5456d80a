/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.RecordWrapper;
import java.util.Arrays;

/** The row at hand: its characters and where its cells begin and end. Filled anew for each row, so that rows make no objects. */
final class Row extends AbstractBaseCsvCallbackHandler<Row> {
    private final int skipped;
    private char[] text = new char[256];
    private int[] from = new int[16];
    private int[] to = new int[16];
    private int length;
    private int cells;
    private long line;
    private boolean comment;

    /** Rows of a parser that has not seen so many lines. */
    Row(int skipped) {
        this.skipped = skipped;
    }

    @Override
    protected void handleBegin(long startingLine) {
        line = startingLine + skipped;
        length = 0;
        cells = 0;
        comment = false;
    }

    @Override
    protected void handleField(int index, char[] buffer, int offset, int characters, boolean quoted) {
        if (cells == from.length) {
            from = Arrays.copyOf(from, 2 * cells);
            to = Arrays.copyOf(to, 2 * cells);
        }
        if (length + characters > text.length) {
            text = Arrays.copyOf(text, 2 * (length + characters));
        }
        System.arraycopy(buffer, offset, text, length, characters);
        int begin = length;
        length += characters;
        int end = length;
        while (begin < end && Separators.isBlank(text[begin])) {
            begin++;
        }
        while (end > begin && Separators.isBlank(text[end - 1])) {
            end--;
        }
        from[cells] = begin;
        to[cells++] = end;
    }

    @Override
    protected void handleComment(char[] buffer, int offset, int characters) {
        comment = true;
    }

    @Override
    protected RecordWrapper<Row> buildRecord() {
        return wrapRecord(this);
    }

    /** Number of its first line in the file. */
    long line() {
        return line;
    }

    boolean isCommentLine() {
        return comment || (cells > 0 && to[0] - from[0] >= 2 && text[from[0]] == '/' && text[from[0] + 1] == '/');
    }

    int cells() {
        return cells;
    }

    char[] text() {
        return text;
    }

    int from(int cell) {
        return from[cell];
    }

    int to(int cell) {
        return to[cell];
    }

    boolean isEmpty(int cell) {
        return cell >= cells || from[cell] == to[cell];
    }

    String cell(int cell) {
        return cell < cells ? new String(text, from[cell], to[cell] - from[cell]) : "";
    }

    /** Whether all cells are blank. */
    boolean isBlank() {
        for (int i = 0; i < cells; i++) {
            if (from[i] < to[i]) {
                return false;
            }
        }
        return true;
    }

    String joined(char separator) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < cells && all.length() <= Rejected.LONGEST_TEXT; i++) {
            if (i > 0) {
                all.append(separator);
            }
            all.append(text, from[i], to[i] - from[i]);
        }
        return all.toString();
    }
}
