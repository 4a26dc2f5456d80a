/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

/** One route for each item of a part, by number, that overloads nothing. The array is not changed. */
final class Incumbent {
    final int[] choice;
    final long[] cost;

    Incumbent(Model model, int[] choice) {
        this.choice = choice.clone();
        this.cost = model.cost(choice);
    }

    /** Compares costs from a level on, the more important first. */
    static int compare(long[] a, long[] b, int fromLevel) {
        for (int k = fromLevel; k < a.length; k++) {
            if (a[k] != b[k]) {
                return Long.compare(a[k], b[k]);
            }
        }
        return 0;
    }
}
