/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * How much ice and water to put into a bucket so that the water reaches a given height with given bottles in it and, as far as
 * the ice goes, the ice reaches the floor: where it does not, the water below the ice stays several degrees warmer.
 *
 * @param iceKg mass of ice [kg]
 * @param waterKg mass of water [kg]
 * @param iceReachesFloor whether the ice is enough to reach the floor at the start
 */
public record BucketFill(double iceKg, double waterKg, boolean iceReachesFloor) {

    private static final double WATER_DENSITY = 1000;
    private static final double ZERO_CELSIUS_K = 273.15;
    /** The bucket is filled to this part of its height, so that it can be carried. */
    private static final double FILL_PART = 0.95;
    /** A little more ice than reaches the floor, because some melts at once while the water cools; our choice. */
    private static final double RESERVE = 1.15;
    /** Ice that leaves less than this part of the volume to water is too much of it. */
    private static final double LEAST_WATER_PART = 0.3;
    /** Ice and water together come to this part of the height at most: a hair under the rim, whatever the rounding. */
    private static final double RIM_PART = 0.9999;

    /**
     * Fills a bucket for bottles that stand in it.
     *
     * @param bucket the bucket
     * @param bottle one of the bottles
     * @param bottles how many bottles stand in it, ≥ 0
     * @param iceAvailableKg ice at hand [kg], > 0
     * @return ice and water
     * @throws IllegalArgumentException if the bottles leave no room or there is no ice
     */
    public static BucketFill of(Bucket bucket, Vessel bottle, int bottles, double iceAvailableKg) {
        double volume = roomM3(bucket, bottle, bottles, FILL_PART);
        if (!(volume > 0)) {
            throw new IllegalArgumentException(bottles + " bottles in a bucket of " + bucket.innerDiameterM()
                    + " m diameter: no room is left for ice and water");
        }
        if (!(iceAvailableKg > 0)) {
            throw new IllegalArgumentException("ice at hand " + iceAvailableKg + " kg: expected more than 0");
        }
        // Floating ice displaces its own mass of water, so masses add up to the volume below the water line.
        double solid = IceWaterBath.PACK_SOLID_FRACTION.value();
        double reachingFloor = WATER_DENSITY * solid * volume;
        double most = (1 - LEAST_WATER_PART) * volume * Ice.density(ZERO_CELSIUS_K);
        // What stands out of the water, because it is lighter, has to stay under the rim.
        double standingOut = roomM3(bucket, bottle, bottles, RIM_PART) - volume;
        double underRim = standingOut / (1 / Ice.density(ZERO_CELSIUS_K) - 1 / WATER_DENSITY);
        double ice = Math.min(Math.min(iceAvailableKg, RESERVE * reachingFloor), Math.min(most, underRim));
        return new BucketFill(ice, WATER_DENSITY * volume - ice, ice >= reachingFloor);
    }

    /** Volume that bottles leave below a part of the bucket's height. */
    private static double roomM3(Bucket bucket, Vessel bottle, int bottles, double part) {
        double depth = part * bucket.innerHeightM();
        double displaced = bottles
                * bottle.profile()
                        .outerVolumeM3(0, Math.min(depth, bottle.profile().heightM()));
        return bucket.areaM2() * depth - displaced;
    }
}
