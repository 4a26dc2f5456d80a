/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

/**
 * Which fault of a drink in its glass goes away by itself.
 *
 * <p>In warm surroundings a glass that is slightly too cold is right after a few minutes, and one that is slightly too warm never is again; a
 * hot drink on a cold terrace is the other way round. So of two pouring temperatures with equal time in the range, the better one errs to
 * the side from which the surroundings bring it back.
 */
public enum CuredByWaiting {
    /** Too cold is cured by waiting, too warm is not: warm surroundings. */
    TOO_COLD,
    /** Too warm is cured by waiting, too cold is not: cold surroundings. Hot drinks scald: give a limit. */
    TOO_WARM,
    /** Neither is preferred; the drink is poured inside the range. */
    NEITHER;

    /** What a minute below the range counts, in minutes outside it. */
    double weightBelow(double weightCured) {
        return this == TOO_COLD ? weightCured : 1;
    }

    /** What a minute above the range counts. */
    double weightAbove(double weightCured) {
        return this == TOO_WARM ? weightCured : 1;
    }
}
