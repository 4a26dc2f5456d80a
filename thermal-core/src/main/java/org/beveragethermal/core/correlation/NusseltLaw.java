/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

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
}
