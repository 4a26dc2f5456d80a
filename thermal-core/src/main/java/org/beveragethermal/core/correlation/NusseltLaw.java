/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import java.util.function.DoubleBinaryOperator;

/**
 * Nusselt number as a function of what drives the flow (Rayleigh or Reynolds number) and the Prandtl number, with slopes.
 *
 * <p>Implementations are pure and thread-safe.
 */
public interface NusseltLaw {

    /**
     * The Nusselt number.
     *
     * @param drive Rayleigh or Reynolds number, ≥ 0
     * @param pr Prandtl number, > 0
     * @return Nusselt number
     */
    double nusselt(double drive, double pr);

    /**
     * Slope in the drive.
     *
     * @param drive Rayleigh or Reynolds number, > 0
     * @param pr Prandtl number, > 0
     * @return ∂Nu/∂drive
     */
    double byDrive(double drive, double pr);

    /**
     * Slope in the Prandtl number.
     *
     * @param drive Rayleigh or Reynolds number, > 0
     * @param pr Prandtl number, > 0
     * @return ∂Nu/∂Pr
     */
    double byPrandtl(double drive, double pr);

    /**
     * Any smooth law; slopes by relative central differences of 1e-5.
     *
     * @param nusselt Nusselt number, given drive and Prandtl number
     * @return the law
     */
    static NusseltLaw of(DoubleBinaryOperator nusselt) {
        double relativeStep = 1e-5;
        return new NusseltLaw() {
            @Override
            public double nusselt(double drive, double pr) {
                return nusselt.applyAsDouble(drive, pr);
            }

            @Override
            public double byDrive(double drive, double pr) {
                double step = relativeStep * drive;
                return (nusselt(drive + step, pr) - nusselt(drive - step, pr)) / (2 * step);
            }

            @Override
            public double byPrandtl(double drive, double pr) {
                double step = relativeStep * pr;
                return (nusselt(drive, pr + step) - nusselt(drive, pr - step)) / (2 * step);
            }
        };
    }
}
