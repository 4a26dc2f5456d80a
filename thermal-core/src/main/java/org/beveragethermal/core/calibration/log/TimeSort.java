/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

/** Stable sorting by time. */
final class TimeSort {
    private TimeSort() {}

    /** Whether no time is before the one before it. */
    static boolean isSorted(long[] times, int size) {
        for (int i = 1; i < size; i++) {
            if (times[i] < times[i - 1]) {
                return false;
            }
        }
        return true;
    }

    /** Places of the times in ascending order; equal times in the order in which they stand. Merges runs that are sorted already. */
    static int[] order(long[] times, int size) {
        int[] from = new int[size];
        int[] to = new int[size];
        for (int i = 0; i < size; i++) {
            from[i] = i;
        }
        for (int width = 1; width < size; width *= 2) {
            for (int low = 0; low < size; low += 2 * width) {
                merge(times, from, to, low, Math.min(low + width, size), Math.min(low + 2 * width, size));
            }
            int[] swapped = from;
            from = to;
            to = swapped;
        }
        return from;
    }

    private static void merge(long[] times, int[] from, int[] to, int low, int middle, int high) {
        if (middle == high || times[from[middle - 1]] <= times[from[middle]]) {
            System.arraycopy(from, low, to, low, high - low);
            return;
        }
        int left = low;
        int right = middle;
        for (int i = low; i < high; i++) {
            boolean takeLeft = right == high || (left < middle && times[from[left]] <= times[from[right]]);
            to[i] = takeLeft ? from[left++] : from[right++];
        }
    }
}
