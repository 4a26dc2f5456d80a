/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

/** SplitMix64 (Steele, Lea, Flood, OOPSLA 2014, from memory): few lines in any language, so that a script can draw the same problems. */
final class SplitMix {
    private long state;

    SplitMix(long seed) {
        this.state = seed;
    }

    /** A whole number from 0 to {@code bound - 1}. */
    int below(int bound) {
        state += 0x9E3779B97F4A7C15L;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        z ^= z >>> 31;
        return (int) ((z >>> 1) % bound);
    }

    int within(int least, int most) {
        return least + below(most - least + 1);
    }
}
