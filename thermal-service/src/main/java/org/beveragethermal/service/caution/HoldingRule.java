/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

/**
 * How long a drink that spoils may be neither cold nor hot enough.
 *
 * @param coldK it is cold enough up to here [K]
 * @param hotK it is hot enough from here on [K]
 * @param warmHours hours allowed from the cold once it has been warmer than {@code warmerK} [h]
 * @param coolHours hours allowed from the cold as long as it has not [h], at least the former
 * @param warmerK temperature that takes the longer allowance away [K]
 * @param surroundingsCount whether surroundings warmer than that take it away too
 * @param fromHotHours hours allowed from the hot [h]
 * @param counting which time counts
 */
public record HoldingRule(
        double coldK,
        double hotK,
        double warmHours,
        double coolHours,
        double warmerK,
        boolean surroundingsCount,
        double fromHotHours,
        Counting counting) {

    /** Which time counts. No way of counting begins anew. */
    public enum Counting {
        /** All time from when it first left the cold or the hot, wherever it is afterwards. */
        SINCE_FIRST_LEAVING,
        /** The time outside, added up. */
        TIME_OUTSIDE,
        /** The first stay outside; there must be no second. */
        ONE_STAY
    }

    private static final double SECONDS_PER_HOUR = 3600;

    /**
     * Checks that limits and allowances are in order.
     *
     * @param coldK it is cold enough up to here [K]
     * @param hotK it is hot enough from here on [K], above the former
     * @param warmHours hours allowed once it has been warm [h], above 0
     * @param coolHours hours allowed as long as it has not [h], at least the former
     * @param warmerK temperature that takes the longer allowance away [K]
     * @param surroundingsCount whether surroundings warmer than that take it away too
     * @param fromHotHours hours allowed from the hot [h], above 0
     * @param counting which time counts
     * @throws IllegalArgumentException if they are not
     */
    public HoldingRule {
        if (!(coldK < hotK) || !(warmHours > 0) || !(coolHours >= warmHours) || !(fromHotHours > 0)) {
            throw new IllegalArgumentException(
                    "holding rule from " + coldK + " K to " + hotK + " K, " + warmHours + " h, "
                            + coolHours + " h, " + fromHotHours
                            + " h: expected the cold limit below the hot one, and hours above 0, the longer ones not shorter");
        }
    }

    /** What is colder is meant to be cold, what is warmer to be hot [K]. */
    double middleK() {
        return 0.5 * (coldK + hotK);
    }

    boolean isHeld(double temperatureK) {
        return temperatureK <= coldK + ROUNDING_K || temperatureK >= hotK - ROUNDING_K;
    }

    /** 5 °C is 278.15 K give or take rounding [K]. */
    private static final double ROUNDING_K = 1e-6;

    double warmS() {
        return warmHours * SECONDS_PER_HOUR;
    }

    double coolS() {
        return coolHours * SECONDS_PER_HOUR;
    }

    double fromHotS() {
        return fromHotHours * SECONDS_PER_HOUR;
    }
}
