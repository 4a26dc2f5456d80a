/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

/**
 * A law of the form Nu = [m + c(Pr) Ra^(1/6)]² {1 + B(Pr) [√32 Gr^(−1/4) L/D]^C(Pr)}, that of a vertical plate or, with the second factor, of
 * a slender vertical cylinder. What depends on the Prandtl number alone may be fitted for a fluid beforehand.
 *
 * <p>Theory manual, equation (3.6).
 */
public interface PlateLaw extends NusseltLaw {

    /**
     * What the root of the Nusselt number has where nothing drives.
     *
     * @return m [-]
     */
    double leastRoot();

    /**
     * What the root of the Nusselt number gains per sixth root of the Rayleigh number.
     *
     * @param pr Prandtl number, > 0
     * @return c [-]
     */
    double rootPerSixthRoot(double pr);

    /**
     * Proportions of the cylinder.
     *
     * @return L/D [-], 0 for a plate
     */
    double heightOverDiameter();

    /**
     * The factor B of the slenderness.
     *
     * @param pr Prandtl number, > 0
     * @return B [-]
     */
    default double slendernessFactor(double pr) {
        return VerticalCylinder.b(pr);
    }

    /**
     * The exponent C of the slenderness.
     *
     * @param pr Prandtl number, > 0
     * @return C [-]
     */
    default double slendernessExponent(double pr) {
        return VerticalCylinder.c(pr);
    }

    /**
     * What is added to the Grashof number so that the slenderness stays finite where nothing drives.
     *
     * @return Grashof number [-]
     */
    default double grashofFloor() {
        return VerticalCylinder.GRASHOF_FLOOR;
    }
}
