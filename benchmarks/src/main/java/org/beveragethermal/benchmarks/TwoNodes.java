/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.beveragethermal.core.calibration.Sensed;
import org.beveragethermal.core.calibration.Sensor;
import org.beveragethermal.core.calibration.TemperatureModel;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;

/**
 * A synthetic bottle of two nodes, liquid and glass, with films of Churchill and Chu on either side and a thermometer that lags: as a
 * model of the project, and as plain equations for another integrator. Both evaluate the same formulas.
 */
final class TwoNodes {

    /** When the thermometer is read [s]. */
    static final double[] TIMES =
            IntStream.rangeClosed(1, 1000).mapToDouble(i -> 10.0 * i).toArray();

    private static final double START_C = 22;
    private static final double AIR_C = 4;
    private static final double LIQUID = 3100;
    private static final double GLASS = 420;

    private TwoNodes() {}

    /** The model: slopes in the multipliers come with the run. */
    static TemperatureModel model() {
        Node liquid = Node.sensible("liquid", LIQUID, START_C + StatedFilms.ZERO_C);
        Node glass = Node.sensible("glass", GLASS, START_C + StatedFilms.ZERO_C);
        Boundary air = Boundary.constant("air", AIR_C + StatedFilms.ZERO_C);
        Network network = Network.of(
                List.of(liquid, glass),
                List.of(
                        DirectPath.of("inside", liquid, glass, "convection", StatedFilms.INSIDE)
                                .scaledBy("inside"),
                        DirectPath.of("outside", glass, air, "convection", StatedFilms.OUTSIDE)
                                .scaledBy("outside"),
                        DirectPath.of("radiation", glass, air, "radiation", StatedFilms.RADIATION)
                                .scaledBy("outside")));
        return TemperatureModel.of(TIMES, (values, solver) -> Sensed.in(solver.solve(network, 10_000), liquid, glass))
                .multipliers("inside", "outside")
                .throughLawsAlone()
                .readBy(Sensor.IDEAL.lagging("lag"));
    }

    /** State of the plain equations at the start: liquid, glass, thermometer [°C]. */
    static double[] start() {
        return new double[] {START_C, START_C, START_C};
    }

    /** The plain equations for values of the parameters: factors on the films inside and outside, and the lag [s]. */
    static FirstOrderDifferentialEquations equations(double[] parameters) {
        return new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 3;
            }

            @Override
            public void computeDerivatives(double timeS, double[] at, double[] rates) {
                double in = parameters[0] * StatedFilms.insideWatts(at[0], at[1]);
                rates[0] = -in / LIQUID;
                rates[1] = (in - parameters[1] * StatedFilms.outsideWatts(at[1], AIR_C)) / GLASS;
                rates[2] = (at[0] - at[2]) / parameters[2];
            }
        };
    }
}
