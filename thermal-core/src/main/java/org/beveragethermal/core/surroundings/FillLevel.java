/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;

/**
 * How high a bath stands in its bucket with the vessels that stand or lie in it.
 *
 * @param depthM depth of the water, at most the bucket's height [m]
 * @param freeAreaM2 mean cross-section left free by the vessels below the surface [m²]
 * @param overflows whether water would run over the rim
 */
record FillLevel(double depthM, double freeAreaM2, boolean overflows) {

    private static final int BISECTIONS = 60;
    /** The volume of a lying vessel is an integral: its level is found only as closely as that pays. */
    private static final double LYING_ACCURACY = 1e-6;
    /** Vessels cannot fill a bucket completely: at least this part of the cross-section stays free. */
    private static final double LEAST_FREE = 0.05;

    /** The level at which a volume of bath and the vessels below it fill the bucket. */
    static FillLevel of(Bucket bucket, double bathVolumeM3, List<Occupant> occupants) {
        occupants.forEach(occupant -> requireRoom(bucket, occupant));
        double low = 0;
        double high = bucket.innerHeightM();
        boolean overflows = volumeBelow(bucket, high, occupants) < bathVolumeM3;
        if (overflows) {
            low = high;
        }
        double enough = occupants.stream().anyMatch(FillLevel::lies) ? LYING_ACCURACY * high : 0;
        for (int i = 0; i < BISECTIONS && high - low > enough; i++) {
            double middle = 0.5 * (low + high);
            if (volumeBelow(bucket, middle, occupants) < bathVolumeM3) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double depth = 0.5 * (low + high);
        double free = volumeBelow(bucket, depth, occupants) / depth;
        return new FillLevel(depth, Math.max(free, LEAST_FREE * bucket.areaM2()), overflows);
    }

    /** What a bucket holds up to its rim beside the vessels in it [m³]. */
    static double capacityM3(Bucket bucket, List<Occupant> occupants) {
        return volumeBelow(bucket, bucket.innerHeightM(), occupants);
    }

    private static boolean lies(Occupant occupant) {
        return occupant.posture() == Posture.LYING;
    }

    private static void requireRoom(Bucket bucket, Occupant occupant) {
        boolean lies = lies(occupant);
        double acrossM =
                lies ? occupant.lengthM() : 2 * occupant.vessel().profile().maxOuterRadiusM();
        if (acrossM > bucket.innerDiameterM()) {
            throw new IllegalArgumentException("vessel " + occupant.id()
                    + (lies ? " of length " : " of diameter ") + acrossM
                    + (lies ? " m lies" : " m stands") + " in a bucket of inner diameter " + bucket.innerDiameterM()
                    + " m: expected a bucket at least as wide" + (lies ? ", or a vessel that stands" : ""));
        }
    }

    private static double volumeBelow(Bucket bucket, double depthM, List<Occupant> occupants) {
        return bucket.areaM2() * depthM
                - occupants.stream().mapToDouble(o -> o.displacedM3(depthM)).sum();
    }
}
