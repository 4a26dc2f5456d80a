/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.beveragethermal.materials.units.HeatTransferCoefficient;
import org.beveragethermal.materials.units.SiValues;

/**
 * A round, upright, open vessel for a bath; its bottom stands on something and passes no heat.
 *
 * @param innerDiameterM inner diameter [m]
 * @param innerHeightM inner height [m]
 * @param wallCoefficient conductance of the side wall per area [W/(m² K)]
 * @param emissivity emissivity of the outside [-]
 */
public record Bucket(double innerDiameterM, double innerHeightM, double wallCoefficient, double emissivity) {

    private static final double NARROWEST_M = 0.05;
    private static final double WIDEST_M = 2;
    private static final double LOWEST_M = 0.05;
    private static final double TALLEST_M = 1.5;
    private static final double LEAST_COEFFICIENT = 0.05;
    private static final double MOST_COEFFICIENT = 1e5;
    /** A single steel wall of 1 mm, 16 W/(m K): never decides anything. */
    private static final double BARE_WALL = 16_000;
    /** Between polished and dull metal (0.1 and 0.6 in handbooks); from memory. */
    private static final double METAL_EMISSIVITY = 0.3;

    /**
     * A single-walled metal bucket.
     *
     * @param innerDiameter 50 mm to 2 m
     * @param innerHeight 50 mm to 1.5 m
     * @return the bucket
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a length is outside its range
     */
    public static Bucket of(Quantity<Length> innerDiameter, Quantity<Length> innerHeight) {
        return new Bucket(
                SiValues.lengthM(innerDiameter, "inner diameter of the bucket", NARROWEST_M, WIDEST_M),
                SiValues.lengthM(innerHeight, "inner height of the bucket", LOWEST_M, TALLEST_M),
                BARE_WALL,
                METAL_EMISSIVITY);
    }

    /**
     * The same bucket with another side wall.
     *
     * @param coefficient conductance per area, 0.05 to 1e5 W/(m² K); a double wall with air between has about 3 (from memory)
     * @return a new bucket
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the coefficient is outside its range
     */
    public Bucket withWall(Quantity<HeatTransferCoefficient> coefficient) {
        return new Bucket(
                innerDiameterM,
                innerHeightM,
                SiValues.heatTransferCoefficient(
                        coefficient, "conductance of the bucket wall", LEAST_COEFFICIENT, MOST_COEFFICIENT),
                emissivity);
    }

    /**
     * The same bucket with another outer surface.
     *
     * @param newEmissivity emissivity, 0 to 1
     * @return a new bucket
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the emissivity is outside its range
     */
    public Bucket withEmissivity(Quantity<Dimensionless> newEmissivity) {
        return new Bucket(
                innerDiameterM, innerHeightM, wallCoefficient, SiValues.fraction(newEmissivity, "emissivity", 0, 1));
    }

    /**
     * Cross-section.
     *
     * @return area [m²]
     */
    public double areaM2() {
        return Math.PI / 4 * innerDiameterM * innerDiameterM;
    }

    /**
     * Volume to the rim.
     *
     * @return volume [m³]
     */
    public double volumeM3() {
        return areaM2() * innerHeightM;
    }

    /**
     * Inner circumference.
     *
     * @return length [m]
     */
    public double circumferenceM() {
        return Math.PI * innerDiameterM;
    }
}
