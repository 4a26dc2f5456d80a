/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.Arrays;

/** Numbers of lines, kept in about a byte each. Immutable once it is handed out; thread-safe then. */
public final class LineNumbers {
    private static final int SEVEN_BITS = 0x7f;

    private byte[] bytes = new byte[8];
    private int used;
    private int count;
    private long last;

    LineNumbers() {}

    /** Adds a line; lines may come in any order. */
    void add(long line) {
        long difference = line - last;
        long code = (difference << 1) ^ (difference >> (Long.SIZE - 1));
        while (Long.compareUnsigned(code, SEVEN_BITS) > 0) {
            append((byte) ((code & SEVEN_BITS) | (SEVEN_BITS + 1)));
            code >>>= Byte.SIZE - 1;
        }
        append((byte) code);
        last = line;
        count++;
    }

    private void append(byte next) {
        if (used == bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * used);
        }
        bytes[used++] = next;
    }

    /**
     * How many.
     *
     * @return number of lines; a line that lost readings of several sensors counts for each
     */
    public int count() {
        return count;
    }

    /**
     * All of them.
     *
     * @return a new array of line numbers, ascending, from 1
     */
    public long[] toArray() {
        long[] lines = new long[count];
        long line = 0;
        int at = 0;
        for (int i = 0; i < count; i++) {
            long code = 0;
            int shift = 0;
            byte part;
            do {
                part = bytes[at++];
                code |= (long) (part & SEVEN_BITS) << shift;
                shift += Byte.SIZE - 1;
            } while (part < 0);
            line += (code >>> 1) ^ -(code & 1);
            lines[i] = line;
        }
        Arrays.sort(lines);
        return lines;
    }

    @Override
    public String toString() {
        long[] lines = toArray();
        int shown = Math.min(lines.length, 10);
        return Arrays.toString(Arrays.copyOf(lines, shown)) + (shown < lines.length ? " of " + lines.length : "");
    }
}
