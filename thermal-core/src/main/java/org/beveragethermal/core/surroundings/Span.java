/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.materials.vessel.Profile;

/**
 * A part of a vessel's height, counted from its base. How much of a patch of the side lies in it goes by the area of the vessel's real
 * side: a shoulder has less of it per height than the body.
 *
 * @param lowM from [m]
 * @param highM to [m]
 */
record Span(double lowM, double highM) {

    /** A face of a patch smaller than this part of it is left out. */
    static final double LEAST_PART = 1e-9;

    static final Span NONE = new Span(0, 0);

    /** Where a patch of the side lies on the vessel itself. */
    static Span of(WallPatch patch, Occupant vessel) {
        // Bands go round the axis, and a patch of a vessel that lies does not say where along it: each has the mean of
        // all.
        return vessel.posture() == Posture.LYING
                ? new Span(0, vessel.lengthM())
                : standing(patch.lowM(), patch.highM(), vessel);
    }

    /** What of the vessel is between two heights above the end on which it stands or, if it lies, above its base. */
    static Span standing(double lowM, double highM, Occupant vessel) {
        return vessel.posture() == Posture.INVERTED
                ? new Span(vessel.lengthM() - highM, vessel.lengthM() - lowM)
                : new Span(lowM, highM);
    }

    /** What both have. */
    Span and(Span other) {
        double low = Math.max(lowM, other.lowM);
        double high = Math.min(highM, other.highM);
        return high > low ? new Span(low, high) : NONE;
    }

    double heightM() {
        return highM - lowM;
    }

    /** Area of the bare side in it [m²]. */
    double areaM2(Profile profile) {
        return highM > lowM ? profile.outerSideAreaM2(lowM, highM) : 0;
    }

    /** Which part of the side of another lies in it [-], 0 to 1. */
    double partOf(Span all, Profile profile) {
        return Math.min(1, and(all).areaM2(profile) / all.areaM2(profile));
    }
}
