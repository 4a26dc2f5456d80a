/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.util.Arrays;

/**
 * The latest events of one vessel in the order in which they happened, packed: four words each, time, hash of the id, kind and
 * uncertainty, value. Immutable.
 *
 * <p>Order is by time, then kind, then hash, so that the order of arrival cannot matter.
 */
final class Kept {

    static final byte MOVED = 0;
    static final byte GEAR_CHANGED = 1;
    static final byte ICE_ADDED = 2;
    static final byte POURED = 3;
    static final byte READING = 4;
    static final byte FINISHED = 5;

    static final Kept NONE = new Kept(new long[0]);

    private static final int STRIDE = 4;
    private static final long FNV_OFFSET = 0xcbf29ce484222325L;
    private static final long FNV_PRIME = 0x100000001b3L;

    private final long[] words;

    private Kept(long[] words) {
        this.words = words;
    }

    /** One event, unpacked for a moment. */
    record Entry(long atMicros, long idHash, byte kind, double value, float sd) {}

    /** 64 bits of an id (Fowler–Noll–Vo 1a over its characters, then mixed); two ids of one window agree by chance in 1 of 10^17. */
    static long hash(String id) {
        long hash = FNV_OFFSET;
        for (int i = 0; i < id.length(); i++) {
            hash = (hash ^ id.charAt(i)) * FNV_PRIME;
        }
        hash ^= hash >>> 33;
        hash *= 0xff51afd7ed558ccdL;
        return hash ^ (hash >>> 33);
    }

    int size() {
        return words.length / STRIDE;
    }

    long atMicros(int i) {
        return words[i * STRIDE];
    }

    long idHash(int i) {
        return words[i * STRIDE + 1];
    }

    byte kind(int i) {
        return (byte) (words[i * STRIDE + 2] >>> 32);
    }

    float sd(int i) {
        return Float.intBitsToFloat((int) words[i * STRIDE + 2]);
    }

    double value(int i) {
        return Double.longBitsToDouble(words[i * STRIDE + 3]);
    }

    Entry entry(int i) {
        return new Entry(atMicros(i), idHash(i), kind(i), value(i), sd(i));
    }

    /** Whether it is kept already: under the same id, or the same of the same moment under another. */
    boolean holds(Entry entry) {
        for (int i = size() - 1; i >= 0; i--) {
            if (idHash(i) == entry.idHash()
                    || (atMicros(i) == entry.atMicros()
                            && kind(i) == entry.kind()
                            && value(i) == entry.value()
                            && sd(i) == entry.sd())) {
                return true;
            }
        }
        return false;
    }

    /** Where an event belongs. */
    int place(Entry entry) {
        int i = size();
        while (i > 0 && isAfter(i - 1, entry)) {
            i--;
        }
        return i;
    }

    private boolean isAfter(int i, Entry entry) {
        if (atMicros(i) != entry.atMicros()) {
            return atMicros(i) > entry.atMicros();
        }
        return kind(i) != entry.kind() ? kind(i) > entry.kind() : idHash(i) > entry.idHash();
    }

    /** With an event at a place. */
    Kept with(Entry entry, int place) {
        long[] more = new long[words.length + STRIDE];
        int at = place * STRIDE;
        System.arraycopy(words, 0, more, 0, at);
        more[at] = entry.atMicros();
        more[at + 1] = entry.idHash();
        more[at + 2] = ((long) entry.kind() << 32) | (Float.floatToRawIntBits(entry.sd()) & 0xffffffffL);
        more[at + 3] = Double.doubleToRawLongBits(entry.value());
        System.arraycopy(words, at, more, at + STRIDE, words.length - at);
        return new Kept(more);
    }

    /** Without the first event. */
    Kept withoutFirst() {
        return new Kept(Arrays.copyOfRange(words, STRIDE, words.length));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Kept that && Arrays.equals(words, that.words);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(words);
    }
}
