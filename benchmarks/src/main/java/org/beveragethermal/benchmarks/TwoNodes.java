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
import org.beveragethermal.core.network.HeatLaw;
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

    private static final double ZERO_C = 273.15;
    private static final double START_C = 22;
    private static final double AIR_C = 4;
    private static final double LIQUID = 3100;
    private static final double GLASS = 420;
    private static final double RADIATING = 0.9 * 5.670374419e-8 * 0.062;

    private TwoNodes() {}

    /** The model: slopes are differences along the run's own frozen steps. */
    static TemperatureModel model() {
        Node liquid = Node.sensible("liquid", LIQUID, START_C + ZERO_C);
        Node glass = Node.sensible("glass", GLASS, START_C + ZERO_C);
        Boundary air = Boundary.constant("air", AIR_C + ZERO_C);
        HeatLaw inside = (fromK, toK, out) -> {
            double[] heat = inside(fromK - ZERO_C, toK - ZERO_C);
            out.watts = heat[0];
            out.perFromKelvin = heat[1];
            out.perToKelvin = heat[2];
        };
        HeatLaw outside = (fromK, toK, out) -> {
            double[] heat = outside(fromK - ZERO_C, toK - ZERO_C);
            out.watts = heat[0];
            out.perFromKelvin = heat[1];
            out.perToKelvin = heat[2];
        };
        Network network = Network.of(
                List.of(liquid, glass),
                List.of(
                        DirectPath.of("inside", liquid, glass, "convection", inside)
                                .scaledBy("inside"),
                        DirectPath.of("outside", glass, air, "convection", outside)
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
                double in = parameters[0] * inside(at[0], at[1])[0];
                rates[0] = -in / LIQUID;
                rates[1] = (in - parameters[1] * outside(at[1], AIR_C)[0]) / GLASS;
                rates[2] = (at[0] - at[2]) / parameters[2];
            }
        };
    }

    private static double[] inside(double liquidC, double glassC) {
        double film = 0.5 * (liquidC + glassC);
        double conductivity = 0.50 + 1.1e-3 * film;
        double viscosity = 2.9e-6 - 9.5e-8 * film + 1.3e-9 * film * film;
        double diffusivity = conductivity / 4.0e6;
        double expansion = 1.2e-4 + 8e-6 * film;
        double perConductivity = 1.1e-3 / conductivity;
        double perViscosity = (-9.5e-8 + 2.6e-9 * film) / viscosity;
        return film(
                liquidC - glassC,
                9.81 * expansion * Math.pow(0.20, 3) / (viscosity * diffusivity),
                8e-6 / expansion - perViscosity - perConductivity,
                viscosity / diffusivity,
                perViscosity - perConductivity,
                conductivity / 0.20 * 0.046,
                perConductivity);
    }

    private static double[] outside(double glassC, double airC) {
        double film = 0.5 * (glassC + airC);
        double viscosity = 1.335e-5 + 9e-8 * film;
        double conductivity = 0.02436 + 7.2e-5 * film;
        double[] heat = film(
                glassC - airC,
                9.81 / (ZERO_C + film) * Math.pow(0.24, 3) / (viscosity * viscosity / 0.711),
                -1 / (ZERO_C + film) - 2 * 9e-8 / viscosity,
                0.711,
                0,
                conductivity / 0.24 * 0.062,
                7.2e-5 / conductivity);
        double glassK = glassC + ZERO_C;
        double airK = airC + ZERO_C;
        heat[0] += RADIATING * (Math.pow(glassK, 4) - Math.pow(airK, 4));
        heat[1] += 4 * RADIATING * glassK * glassK * glassK;
        heat[2] -= 4 * RADIATING * airK * airK * airK;
        return heat;
    }

    /**
     * Heat through a film and its slopes in both temperatures. Rayleigh number per kelvin of difference, Prandtl number and conductance
     * at Nusselt number 1 come with their relative slopes in the film temperature.
     */
    private static double[] film(
            double drive,
            double rayleigh,
            double rayleighSlope,
            double prandtl,
            double prandtlSlope,
            double conductance,
            double conductanceSlope) {
        double x = Math.pow(0.492 / prandtl, 9.0 / 16);
        double u = 0.387 * Math.pow(rayleigh * Math.abs(drive), 1.0 / 6) / Math.pow(1 + x, 8.0 / 27);
        double root = 0.825 + u;
        double perFilm = conductance
                * drive
                * (root * root * conductanceSlope
                        + 2 * root * u * (rayleighSlope / 6 + prandtlSlope * (8.0 / 27) * (9.0 / 16) * x / (1 + x)));
        double perDrive = conductance * (root * root + root * u / 3);
        return new double[] {conductance * root * root * drive, 0.5 * perFilm + perDrive, 0.5 * perFilm - perDrive};
    }
}
