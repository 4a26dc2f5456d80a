/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.FreezingCurve;
import org.beveragethermal.materials.liquid.Liquid;

/**
 * What freezing does to a rate: below the onset heat makes ice and the temperature hardly moves.
 *
 * @param onsetK temperature at which ice begins to form [K]
 * @param slowdown rate of the temperature just below the onset over that above [-], 0 to 1
 */
record Latent(double onsetK, double slowdown) {

    /** The slowdown is the mean over so much below the onset [K]; an assumption of ours, no source. */
    private static final double BELOW_K = 1;

    /** Of a liquid whose freezing is not known: nothing gets to its onset. */
    static final Latent NONE = new Latent(0, 1);

    static Latent of(Liquid liquid) {
        if (!(liquid instanceof Beverage drink)) {
            return NONE;
        }
        FreezingCurve curve = FreezingCurve.of(drink);
        double onset = curve.onset().temperatureK();
        double below = onset - BELOW_K;
        if (!curve.temperatureRange().contains(below)) {
            return new Latent(onset, 1);
        }
        // Mean apparent heat capacity over the first kelvin of freezing against that of the liquid.
        double ice = curve.specificEnthalpyWithIce(onset) - curve.specificEnthalpyWithIce(below);
        return new Latent(onset, Math.min(1, BELOW_K * drink.specificHeatCapacity(onset) / ice));
    }
}
