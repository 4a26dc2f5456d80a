/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import java.util.List;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;

/**
 * What a bucket holds beside vessels up to a level. Floating ice displaces its own mass of water, so that ice and water together are
 * given by the level, whatever the share of ice.
 *
 * @param bathKg ice and water together [kg]
 * @param mostIceKg most ice [kg]: so much that it reaches the floor, stands out to the rim, or fills the bucket as a pack
 * @param freePart part of the volume below the level that vessels leave free [-]
 */
record BathRoom(double bathKg, double mostIceKg, double freePart) {

    private static final double WATER_DENSITY = 1000;
    private static final double ZERO_CELSIUS_K = 273.15;
    /** A hair under the rim, whatever the rounding. */
    private static final double RIM_PART = 0.9999;
    /** Ice that is added may not fill more than the bucket as a pack: what is left of the old is known to better than this. */
    private static final double PACK_PART = 0.99;

    /** Diameter of the smallest circle that takes 1, 2, 3 … equal circles, over theirs; packing of circles, from memory. */
    private static final double[] ACROSS = {
        1, 2, 2.155, 2.415, 2.702, 3, 3, 3.305, 3.614, 3.814, 3.924, 4.030, 4.237, 4.329, 4.522, 4.616, 4.793, 4.864,
        4.864
    };
    /** Of more circles than that not more than this part of the area. */
    private static final double DENSEST = 0.8;

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

    /** How many of the vessels, in their order, stand beside each other and leave a part of the bucket free up to a depth. */
    static int fit(Bucket bucket, List<FilledVessel> vessels, double depthM, double freePart) {
        double takenM3 = 0;
        int count = 0;
        for (FilledVessel vessel : vessels) {
            takenM3 += displacedM3(vessel, depthM);
            if (takenM3 > (1 - freePart) * bucket.areaM2() * depthM || !stand(bucket, vessels.subList(0, count + 1))) {
                return count;
            }
            count++;
        }
        return count;
    }

    /** Whether vessels stand beside each other: as many as their areas come to of the widest. */
    static boolean stand(Bucket bucket, List<FilledVessel> vessels) {
        double widest = vessels.stream().mapToDouble(BathRoom::diameterM).max().orElse(0);
        double parts = vessels.stream()
                .mapToDouble(vessel -> Math.pow(diameterM(vessel) / widest, 2))
                .sum();
        int count = (int) Math.ceil(parts - 1e-9);
        double across = bucket.innerDiameterM() / widest;
        return count <= ACROSS.length ? across >= ACROSS[count - 1] * (1 - 1e-9) : across * across * DENSEST >= count;
    }

    private static double diameterM(FilledVessel vessel) {
        return 2 * vessel.vessel().profile().maxOuterRadiusM();
    }

    private static double mostIceKg(Bucket bucket, List<FilledVessel> vessels, double belowLevelM3) {
        double standsOut = freeM3(bucket, vessels, RIM_PART * bucket.innerHeightM()) - belowLevelM3;
        double underRim = standsOut / (1 / Ice.density(ZERO_CELSIUS_K) - 1 / WATER_DENSITY);
        double solid = IceWaterBath.PACK_SOLID_FRACTION.value();
        double packed = PACK_PART * solid * Ice.density(ZERO_CELSIUS_K) * bucket.volumeM3();
        return Math.min(packed, Math.min(solid * WATER_DENSITY * belowLevelM3, underRim));
    }

    private static double freeM3(Bucket bucket, List<FilledVessel> vessels, double depthM) {
        double taken = 0;
        for (FilledVessel vessel : vessels) {
            taken += displacedM3(vessel, depthM);
        }
        return bucket.areaM2() * depthM - taken;
    }

    private static double displacedM3(FilledVessel vessel, double depthM) {
        Profile profile = vessel.vessel().profile();
        return profile.outerVolumeM3(0, Math.min(depthM, profile.heightM()));
    }
}
