/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import java.util.function.DoubleBinaryOperator;

/** Slopes by relative central differences, for laws that are fitted once and never differentiated inside a run. */
final class NumericalSlopes {

    private static final double RELATIVE_STEP = 1e-5;

    private NumericalSlopes() {}

    static NusseltLaw of(DoubleBinaryOperator nusselt) {
        return new NusseltLaw() {
            @Override
            public double nusselt(double drive, double pr) {
                return nusselt.applyAsDouble(drive, pr);
            }

            @Override
            public double byDrive(double drive, double pr) {
                double step = RELATIVE_STEP * drive;
                return (nusselt(drive + step, pr) - nusselt(drive - step, pr)) / (2 * step);
            }

            @Override
            public double byPrandtl(double drive, double pr) {
                double step = RELATIVE_STEP * pr;
                return (nusselt(drive, pr + step) - nusselt(drive, pr - step)) / (2 * step);
            }
        };
    }
}
