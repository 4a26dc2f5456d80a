/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.materials.solid.LatentSolid;

/**
 * Conduction between the mean temperature of a body of {@link LatentSolid} and something outside it: the inside of the body,
 * of which the frozen and the thawed part lie one behind the other, and fixed resistances in series.
 *
 * <p>R = R_fixed + [(1 − f)/k_frozen + f/k_thawed]/S with the melted part f of the body's temperature (the giving side). A thawed gel
 * is taken not to flow. Immutable and thread-safe.
 *
 * <p>Theory manual, equation (6.5).
 */
public final class LatentConduction implements HeatLaw {

    private final double startK;
    private final double widthK;
    private final double frozenResistance;
    private final double thawedResistance;
    private final double fixedResistance;

    private LatentConduction(LatentSolid solid, double shapeM, double fixedResistance) {
        this.startK = solid.meltingStart().value();
        this.widthK = solid.meltingEnd().value() - startK;
        this.frozenResistance =
                1 / (shapeM * solid.frozen().thermalConductivity().value());
        this.thawedResistance =
                1 / (shapeM * solid.thawed().thermalConductivity().value());
        this.fixedResistance = fixedResistance;
    }

    /**
     * Conduction from inside a body.
     *
     * @param solid what it is made of
     * @param shapeM conductance from its mean to its surface over its conductivity [m], finite, > 0; area over depth for a slab
     * @param fixedKelvinPerWatt resistances in series with it [K/W], finite, ≥ 0
     * @return the law; the body is the giving side
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static LatentConduction of(LatentSolid solid, double shapeM, double fixedKelvinPerWatt) {
        if (!(shapeM > 0) || Double.isInfinite(shapeM)) {
            throw new IllegalArgumentException("shape factor " + shapeM + " m: expected a finite value above 0");
        }
        if (!(fixedKelvinPerWatt >= 0) || Double.isInfinite(fixedKelvinPerWatt)) {
            throw new IllegalArgumentException(
                    "resistance " + fixedKelvinPerWatt + " K/W: expected a finite value of at least 0");
        }
        return new LatentConduction(solid, shapeM, fixedKelvinPerWatt);
    }

    @Override
    public void evaluate(double fromK, double toK, HeatFlow out) {
        double passed = (fromK - startK) / widthK;
        double melted = Math.min(1, Math.max(0, passed));
        double byMelted = thawedResistance - frozenResistance;
        double conductance = 1 / (fixedResistance + frozenResistance + melted * byMelted);
        double slope = passed == melted ? -conductance * conductance * byMelted / widthK : 0;
        out.watts = conductance * (fromK - toK);
        out.perFromKelvin = conductance + slope * (fromK - toK);
        out.perToKelvin = -conductance;
    }
}
