/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

/**
 * Nu = c drive^n, independent of the Prandtl number.
 *
 * @param c factor [-], > 0
 * @param n exponent [-], > 0
 */
public record PowerLaw(double c, double n) implements NusseltLaw {

    @Override
    public double nusselt(double drive, double pr) {
        return c * Math.pow(drive, n);
    }

    @Override
    public double byDrive(double drive, double pr) {
        return c * n * Math.pow(drive, n - 1);
    }

    @Override
    public double byPrandtl(double drive, double pr) {
        return 0;
    }
}
