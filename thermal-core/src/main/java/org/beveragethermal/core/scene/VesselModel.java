/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

/**
 * How finely a vessel's contents are described.
 *
 * <p>Lumped contents have one temperature; it is the cheapest description and fits vessels in air. Axial contents are slices
 * stacked along the height; they stratify, and a vessel may be partly immersed or stand on its neck.
 *
 * @param slices number of slices, 1 for lumped contents
 */
public record VesselModel(int slices) {

    private static final int MOST_SLICES = 200;
    private static final int USUAL_SLICES = 24;

    /**
     * Checks the number.
     *
     * @param slices number of slices, 1 to 200
     * @throws IllegalArgumentException if the number is outside its range
     */
    public VesselModel {
        if (slices < 1 || slices > MOST_SLICES) {
            throw new IllegalArgumentException("slices " + slices + ": expected 1 to " + MOST_SLICES);
        }
    }

    /**
     * Contents at one temperature.
     *
     * @return the model
     */
    public static VesselModel lumped() {
        return new VesselModel(1);
    }

    /**
     * Contents in 24 slices, finer towards waterlines.
     *
     * @return the model
     */
    public static VesselModel axial() {
        return new VesselModel(USUAL_SLICES);
    }

    /**
     * Contents in slices, finer towards waterlines.
     *
     * @param slices number of slices if there were no waterline, 2 to 200
     * @return the model
     * @throws IllegalArgumentException if the number is outside its range
     */
    public static VesselModel axial(int slices) {
        if (slices < 2) {
            throw new IllegalArgumentException("slices " + slices + ": expected at least 2");
        }
        return new VesselModel(slices);
    }

    boolean isLumped() {
        return slices == 1;
    }
}
