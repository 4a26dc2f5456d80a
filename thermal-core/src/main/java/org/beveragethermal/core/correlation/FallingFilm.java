/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * A film of liquid that runs down an upright wall and exchanges heat with it, without evaporating.
 *
 * <p>The Reynolds number is Γ/μ, flow of mass per width of wetted wall over dynamic viscosity (four times that is also in use), the
 * Nusselt number is on the film length (ν²/g)^(1/3), 0.05 mm in water. The source takes the largest of four laws: laminar and developed,
 * laminar and developing, wavy, turbulent.
 *
 * <p><b>Where we differ.</b> The two laminar laws are joined by the sum of their cubes, as for the channel of which a laminar film is one
 * half, because the largest of them alone is up to a tenth less than the solution of that channel; the three that remain are joined by the
 * sixteenth root of the sum of sixteenth powers, at most 7 % above the largest, because corners stop solvers. The source's factor for a
 * viscosity that differs at the wall is left out.
 *
 * <p>Theory manual, equation (3.12).
 */
public final class FallingFilm {

    /**
     * The developed film. Range and scatter are a judgement: the measurements were made on water and on water with glycol, at Prandtl
     * numbers from about 5 to 210 (from memory).
     */
    public static final Correlation HEATED = new Correlation(
            "falling film, Wilke",
            Sources.FALLING_FILM,
            Sources.reynolds(1, 3000),
            Sources.prandtl(5, 210),
            Uncertainty.normalRelative(0.2),
            NusseltLaw.of((re, pr) -> joined(laminar(re), re, pr)));

    private static final double SHARP = 16;

    private FallingFilm() {}

    /**
     * Mean Nusselt number of a falling film from the edge at which it begins.
     *
     * <p>Laminar: 1.30 Re^(−1/3) and 0.912 (Re^(1/3) Pr/L)^(1/3); wavy: 0.0425 Re^(1/5) Pr^0.344; turbulent: 0.0136 Re^(2/5) Pr^0.344.
     *
     * <p>Limits: goes to infinity as Re^(−1/3) where Re goes to 0, because such a film has no thickness. Source: Wilke 1962, VDI Heat
     * Atlas, part M3.
     *
     * @param re Reynolds number Γ/μ [-], finite, > 0
     * @param pr Prandtl number [-], finite, > 0
     * @param length length of the wall over the film length (ν²/g)^(1/3) [-], finite, > 0
     * @return mean Nusselt number on the film length [-]
     * @throws IllegalArgumentException if a number is not finite or not positive
     */
    public static double wilke(double re, double pr, double length) {
        Sources.requireDrive("Re", re, pr);
        if (!(re > 0) || !(length > 0) || Double.isInfinite(length)) {
            throw new IllegalArgumentException(
                    "falling film with Re = " + re + " and L = " + length + ": expected finite numbers > 0");
        }
        double developing = 0.912 * Math.cbrt(Math.cbrt(re) * pr / length);
        double developed = laminar(re);
        return joined(Math.cbrt(developed * developed * developed + developing * developing * developing), re, pr);
    }

    private static double laminar(double re) {
        return 1.30 / Math.cbrt(re);
    }

    private static double joined(double laminar, double re, double pr) {
        double prandtl = Math.pow(pr, 0.344);
        double wavy = 0.0425 * Math.pow(re, 0.2) * prandtl;
        double turbulent = 0.0136 * Math.pow(re, 0.4) * prandtl;
        double largest = Math.max(laminar, Math.max(wavy, turbulent));
        double sum = Math.pow(laminar / largest, SHARP)
                + Math.pow(wavy / largest, SHARP)
                + Math.pow(turbulent / largest, SHARP);
        return largest * Math.pow(sum, 1 / SHARP);
    }
}
