/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

/** The air around something wet. */
final class WetAir {

    private WetAir() {}

    /** Refuses what is no air, and air of unknown humidity around water. */
    static void require(String what, Surroundings around, boolean wet) {
        if (!(around.open("air around", 0) instanceof AirMedium air)) {
            throw new IllegalArgumentException(what + " in " + around.getClass().getSimpleName()
                    + ": expected air around it, of a room, a refrigerator or a freezer");
        }
        if (wet && air.state().relativeHumidity() == 0) {
            throw new IllegalArgumentException(what + " in air whose humidity is not stated: expected one above 0,"
                    + " because it decides what evaporates");
        }
    }

    static AirMedium open(Surroundings around, String id, double originS) {
        if (around.open(id, originS) instanceof AirMedium air) {
            return air;
        }
        throw new IllegalStateException(around + " opened no air");
    }
}
