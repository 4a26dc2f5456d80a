/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.materials.solid.Ice;

/**
 * So many equal blocks of which so much is left.
 *
 * @param block the shape of a whole block
 * @param blocks number of blocks, not necessarily whole
 * @param leftM shortest extent left of a block [m]
 */
record IceCount(IceBlock block, double blocks, double leftM) {

    private static final double DENSITY = Ice.density(273.15);
    /** Blocks that have shrunk to less than this part of their shortest extent do not count beside new ones. */
    private static final double GONE_PART = 1e-2;

    /** Whole blocks of a mass. */
    static double wholeBlocks(IceBlock block, double massKg) {
        return massKg / (DENSITY * block.volumeM3());
    }

    /** Equal blocks that together have the volume and the surface of these and of new ones. */
    IceCount plus(double massKg) {
        double fresh = wholeBlocks(block, massKg);
        double whole = block.shortestM();
        if (leftM < GONE_PART * whole) {
            double rest = leftM > 0 ? blocks * block.volumeM3(leftM) / block.volumeM3() : 0;
            return new IceCount(block, fresh + rest, whole);
        }
        double volume = blocks * block.volumeM3(leftM) + fresh * block.volumeM3();
        double surface = blocks * block.surfaceM2(leftM) + fresh * block.surfaceM2(whole);
        double left = block.leftOf(volume / surface);
        return new IceCount(block, volume / block.volumeM3(left), left);
    }
}
