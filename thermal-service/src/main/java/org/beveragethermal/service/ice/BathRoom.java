/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import java.util.List;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * What a bucket holds beside vessels up to a level. Floating ice displaces its own mass of water, so that ice and water together are
 * given by the level, whatever the share of ice.
 *
 * @param bathKg ice and water together [kg]
 * @param mostIceKg most ice [kg]: so much that it reaches the floor, or stands out to the rim
 * @param freePart part of the volume below the level that vessels leave free [-]
 */
record BathRoom(double bathKg, double mostIceKg, double freePart) {

    private static final double WATER_DENSITY = 1000;
    private static final double ZERO_CELSIUS_K = 273.15;
    /** A hair under the rim, whatever the rounding. */
    private static final double RIM_PART = 0.9999;

    static BathRoom of(Bucket bucket, List<FilledVessel> vessels, double depthM) {
        double volume = freeM3(bucket, vessels, depthM);
        double freePart = volume / (bucket.areaM2() * depthM);
        return new BathRoom(WATER_DENSITY * volume, mostIceKg(bucket, vessels, volume), freePart);
    }

    /** The same for a bath whose mass is given and whose level follows. */
    static BathRoom ofMass(Bucket bucket, List<FilledVessel> vessels, double bathKg) {
        double freePart = freeM3(bucket, vessels, bucket.innerHeightM()) / bucket.volumeM3();
        return new BathRoom(bathKg, mostIceKg(bucket, vessels, bathKg / WATER_DENSITY), freePart);
    }

    private static double mostIceKg(Bucket bucket, List<FilledVessel> vessels, double belowLevelM3) {
        double standsOut = freeM3(bucket, vessels, RIM_PART * bucket.innerHeightM()) - belowLevelM3;
        double underRim = standsOut / (1 / Ice.density(ZERO_CELSIUS_K) - 1 / WATER_DENSITY);
        return Math.min(IceWaterBath.PACK_SOLID_FRACTION.value() * WATER_DENSITY * belowLevelM3, underRim);
    }

    private static double freeM3(Bucket bucket, List<FilledVessel> vessels, double depthM) {
        double taken = 0;
        for (FilledVessel vessel : vessels) {
            var profile = vessel.vessel().profile();
            taken += profile.outerVolumeM3(0, Math.min(depthM, profile.heightM()));
        }
        return bucket.areaM2() * depthM - taken;
    }
}
