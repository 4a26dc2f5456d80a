/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

/**
 * How finely a vessel's contents are described.
 *
 * <p>Lumped contents have one temperature; it is the cheapest description and fits vessels in air. Axial contents are slices
 * stacked along the height; they stratify, and a vessel may be partly immersed or stand on its neck. Radial contents are shells
 * about the axis; they are at rest and only conduct, as something thick or set does.
 *
 * @param slices number of slices along the height, 1 for lumped and radial contents
 * @param shells number of shells about the axis, 1 for lumped and axial contents
 */
public record VesselModel(int slices, int shells) {

    private static final int MOST_PARTS = 200;
    private static final int USUAL_SLICES = 24;
    private static final int USUAL_SHELLS = 20;

    /**
     * Checks the numbers.
     *
     * @param slices number of slices, 1 to 200
     * @param shells number of shells, 1 to 200
     * @throws IllegalArgumentException if a number is outside its range or both are above 1
     */
    public VesselModel {
        if (slices < 1 || slices > MOST_PARTS) {
            throw new IllegalArgumentException("slices " + slices + ": expected 1 to " + MOST_PARTS);
        }
        if (shells < 1 || shells > MOST_PARTS) {
            throw new IllegalArgumentException("shells " + shells + ": expected 1 to " + MOST_PARTS);
        }
        if (slices > 1 && shells > 1) {
            throw new IllegalArgumentException(
                    "slices " + slices + " and shells " + shells + ": expected one of them to be 1");
        }
    }

    /**
     * Contents in slices, or lumped.
     *
     * @param slices number of slices, 1 to 200
     * @throws IllegalArgumentException if the number is outside its range
     */
    public VesselModel(int slices) {
        this(slices, 1);
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

    /**
     * Contents at rest in 20 shells.
     *
     * @return the model
     */
    public static VesselModel radial() {
        return new VesselModel(1, USUAL_SHELLS);
    }

    /**
     * Contents at rest in shells of equal thickness.
     *
     * @param shells number of shells, 2 to 200
     * @return the model
     * @throws IllegalArgumentException if the number is outside its range
     */
    public static VesselModel radial(int shells) {
        if (shells < 2) {
            throw new IllegalArgumentException("shells " + shells + ": expected at least 2");
        }
        return new VesselModel(1, shells);
    }

    boolean isLumped() {
        return slices == 1 && shells == 1;
    }
}
