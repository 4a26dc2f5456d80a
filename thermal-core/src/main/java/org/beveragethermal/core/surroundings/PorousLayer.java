/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.air.DryAir;

/**
 * A porous layer that conducts the better the more water is in it, with a gap on its inside that fills with water as the layer does.
 *
 * <p>Own assumption: water in place of air raises the conductivity of the dry layer by the ratio of the two to the power of the volume
 * of water, which is the geometric mean of the parts, as in {@link org.beveragethermal.materials.solid.Solids#wetted}; the gap follows the
 * same rule, full of water when {@value #FULL} of the layer is water. Ice, which conducts four times as well as water, counts as water.
 *
 * <p>Theory manual, equation (4.7).
 *
 * @param dryConductivity of the dry layer [W/(m K)]
 * @param thicknessM of the layer [m]
 * @param gapM mean width of the gap [m], 0 if there is none
 * @param areaM2 area of the layer [m²], > 0
 */
record PorousLayer(double dryConductivity, double thicknessM, double gapM, double areaM2) implements SmoothFunction {

    /** Volume of water per volume of a layer that is soaked [-]; wrung cloth has 0.5 to 0.7. */
    static final double FULL = 0.8;

    private static final double CORNER = 0.05;
    /** Of water at 20 °C [kg/m³], IAPWS R6-95. */
    static final double WATER_DENSITY = 998.2;

    /** At 20 °C, IAPWS R15-11. */
    private static final double WATER_CONDUCTIVITY = 0.598;

    private static final double AIR_CONDUCTIVITY = DryAir.thermalConductivity(293.15);
    private static final double RATIO = Math.log(WATER_CONDUCTIVITY / AIR_CONDUCTIVITY);

    /** Volume of water over volume of the layer, whether or not it holds as much [-]. */
    double waterFraction(double waterKg) {
        return waterKg / (WATER_DENSITY * areaM2 * thicknessM);
    }

    /** What it holds when it is soaked [kg]. */
    double mostWaterKg() {
        return FULL * WATER_DENSITY * areaM2 * thicknessM;
    }

    private double held(double waterKg) {
        return SmoothMath.min(waterFraction(waterKg), FULL, CORNER) - SmoothMath.min(0, FULL, CORNER);
    }

    private double heldSlope(double waterKg) {
        return SmoothMath.minSlope(waterFraction(waterKg), FULL, CORNER) * waterFraction(1);
    }

    private double ofLayer(double held) {
        return thicknessM / dryConductivity * Math.exp(-RATIO * held);
    }

    private double ofGap(double held) {
        return gapM / AIR_CONDUCTIVITY * Math.exp(-RATIO * held / FULL);
    }

    /** Resistance of layer and gap [m² K/W]. */
    double resistance(double waterKg) {
        double held = held(waterKg);
        return ofLayer(held) + ofGap(held);
    }

    /** Conductance with some water over that of the layer when dry. */
    @Override
    public double at(double waterKg) {
        return resistance(0) / resistance(waterKg);
    }

    @Override
    public double slope(double waterKg) {
        double held = held(waterKg);
        double byHeld = -RATIO * (ofLayer(held) + ofGap(held) / FULL);
        double resistance = resistance(waterKg);
        return -resistance(0) / (resistance * resistance) * byHeld * heldSlope(waterKg);
    }

    /** From a node that holds the water, through an area of the layer [m²]. */
    Link link(Node node, double partAreaM2) {
        return Link.of(node, "conduction", HeatLaw.conductance(partAreaM2 / resistance(0)))
                .weightedBy(new AmountWeight(node, WetStore.WATER, this));
    }
}
