/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;

/** Free convection across an upright slot between two walls of different temperatures, closed above and below. */
public final class VerticalSlot {

    private static final Source MACGREGOR_EMERY = new Source(
            "macgregor-emery-1969",
            "R. K. MacGregor and A. F. Emery, Free convection through vertical plane layers: moderate and high Prandtl number"
                    + " fluids, J. Heat Transfer 91 (1969) 391-403; as in Cengel and Ghajar, Heat and Mass Transfer, 5th ed.,"
                    + " enclosures",
            Source.Kind.PUBLISHED);

    private static final double AIR_PRANDTL = 0.71;

    private VerticalSlot() {}

    /**
     * Nusselt number on the width of the slot, both in terms of the width and of all of the temperature difference.
     *
     * <p>Nu = 0.42 Ra^(1/4) Pr^0.012 (H/L)^(−0.3), for H/L of 10 to 40 and Ra of 1e4 to 1e7. The source has Pr from 1 to 2e4; the textbook uses it
     * for air, as is done here, with its Prandtl number put in, and a scatter of 30 % (own judgement). Below that range it falls under pure
     * conduction, Nu = 1, so that a film should be {@code atLeast(1)}.
     *
     * @param heightOverWidth height of the slot over its width [-], finite, > 0
     * @return the correlation, for air
     * @throws IllegalArgumentException if the ratio is not finite and positive
     */
    public static Correlation macGregorEmery(double heightOverWidth) {
        if (!(heightOverWidth > 0) || Double.isInfinite(heightOverWidth)) {
            throw new IllegalArgumentException(
                    "height over width of a slot " + heightOverWidth + ": expected a finite number > 0");
        }
        return new Correlation(
                "upright slot, 0.42 Ra^(1/4) Pr^0.012 (H/L)^-0.3",
                MACGREGOR_EMERY,
                Sources.rayleigh(1e4, 1e7),
                Sources.prandtl(0.7, 2e4),
                Uncertainty.normalRelative(0.30),
                new PowerLaw(0.42 * Math.pow(AIR_PRANDTL, 0.012) * Math.pow(heightOverWidth, -0.3), 0.25));
    }
}
