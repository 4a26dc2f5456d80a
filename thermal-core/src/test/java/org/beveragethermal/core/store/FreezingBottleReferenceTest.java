/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.FreezingCurve;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.testsupport.Csv;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** A lumped bottle that freezes, against integrations by others. */
class FreezingBottleReferenceTest {

    private static final double ZERO = 273.15;
    private static final double MASS_KG = 0.736;
    private static final double END_S = 86_400;
    private static final Beverage WINE = Beverage.wine(Measures.percentByVolume(12.5));
    private final FreezingStore store = FreezingStore.ofMass(WINE, MASS_KG);
    private final Node wine = Node.of("wine", store, ZERO + 20);
    private final Node glass = Node.sensible("glass", 420, ZERO + 20);
    private final Boundary freezer = Boundary.constant("freezer", ZERO - 18);

    private Network bottle() {
        return Network.of(
                List.of(wine, glass),
                List.of(
                        DirectPath.of("inside", wine, glass, "convection", HeatLaw.conductance(4)),
                        DirectPath.of("outside", glass, freezer, "convection", HeatLaw.conductance(0.9))));
    }

    /** freezing-bottle.py, with the drink's properties and the enthalpy method written by hand there. */
    @Test
    void bottleInAFreezerFollowsAnIntegrationWrittenByHand() throws IOException {
        Trajectory run = NetworkSolver.standard().solve(bottle(), END_S);
        double worstWine = 0;
        double worstGlass = 0;
        double worstIce = 0;
        int rows = 0;
        for (List<String> row : Csv.parse(read("freezing-bottle.csv"))) {
            if (row.get(0).startsWith("#")) {
                continue;
            }
            double time = Double.parseDouble(row.get(0));
            double temperatureK = run.temperatureK(wine, time);
            worstWine = Math.max(worstWine, Math.abs(temperatureK - ZERO - Double.parseDouble(row.get(1))));
            worstGlass = Math.max(
                    worstGlass, Math.abs(run.temperatureK(glass, time) - ZERO - Double.parseDouble(row.get(2))));
            worstIce = Math.max(worstIce, Math.abs(store.iceFraction(temperatureK) - Double.parseDouble(row.get(3))));
            rows++;
        }
        assertThat(rows).isEqualTo(48);
        String source = "SciPy 1.17.1 solve_ivp (DOP853, Radau) on equations written by hand, freezing-bottle.py";
        // Heat of fusion below 0 °C rests on remembered values there, good to a percent of it at -18 °C.
        OutsideChecks.referenceLibrary("freezing-bottle-wine", source)
                .what("largest difference of the wine's temperature over a day at -18 °C, 12.5 % vol, half-hourly")
                .unit("K")
                .expected(0)
                .within(0.02)
                .check(worstWine);
        OutsideChecks.referenceLibrary("freezing-bottle-glass", source)
                .what("largest difference of the glass's temperature over a day at -18 °C, half-hourly")
                .unit("K")
                .expected(0)
                .within(0.02)
                .check(worstGlass);
        OutsideChecks.referenceLibrary("freezing-bottle-ice", source)
                .what("largest difference of the ice per wine over a day at -18 °C, half-hourly")
                .unit("1")
                .expected(0)
                .within(1e-3)
                .check(worstIce);
        double onset = run.firstCrossing(0, t -> run.temperatureK(wine, t) - store.freezingOnsetK())
                .orElseThrow();
        OutsideChecks.referenceLibrary("freezing-bottle-onset", source)
                .what("time at which freezing begins at -18 °C, 12.5 % vol")
                .unit("s")
                .expected(4980.984)
                .within(2)
                .check(onset);
    }

    @Test
    void solverAndTableFollowTheCurveAtTheirTolerance() {
        double[] times = new double[24];
        double[] reference = byCommonsMath(times);
        for (double[] pair : new double[][] {{1e-3, 2e-3}, {1e-5, 1e-4}}) {
            Trajectory run = NetworkSolver.standard().withToleranceK(pair[0]).solve(bottle(), END_S);
            double worst = 0;
            for (int i = 0; i < times.length; i++) {
                worst = Math.max(worst, Math.abs(run.temperatureK(wine, times[i]) - reference[i]));
            }
            OutsideChecks.referenceLibrary(
                            "freezing-bottle-solver-" + pair[0],
                            "Apache Commons Math 3.6.1, DormandPrince853Integrator at 1e-10, on the freezing curve itself,"
                                    + " temperature by bisection")
                    .what("largest difference of the wine's temperature over a day at -18 °C, tolerance " + pair[0]
                            + " K")
                    .unit("K")
                    .expected(0)
                    .within(pair[1])
                    .check(worst);
        }
    }

    /** The same bottle without store, table and solver of the project. */
    private static double[] byCommonsMath(double[] timesOut) {
        FreezingCurve curve = FreezingCurve.of(WINE);
        FirstOrderDifferentialEquations equations = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] rate) {
                double inside = 4 * (temperature(curve, y[0]) - y[1]);
                rate[0] = -inside / MASS_KG;
                rate[1] = (inside - 0.9 * (y[1] - (ZERO - 18))) / 420;
            }
        };
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(1e-6, 600, new double[] {1e-5, 1e-9}, new double[] {1e-10, 1e-10});
        double[] y = {curve.specificEnthalpyWithIce(ZERO + 20), ZERO + 20};
        double[] temperatures = new double[timesOut.length];
        double time = 0;
        for (int i = 0; i < timesOut.length; i++) {
            timesOut[i] = (i + 1) * END_S / timesOut.length;
            integrator.integrate(equations, time, y, timesOut[i], y);
            time = timesOut[i];
            temperatures[i] = temperature(curve, y[0]);
        }
        return temperatures;
    }

    private static double temperature(FreezingCurve curve, double enthalpy) {
        double low = 248.15;
        double high = 300;
        while (high - low > 1e-10) {
            double middle = 0.5 * (low + high);
            if (curve.specificEnthalpyWithIce(middle) < enthalpy) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    private static String read(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(FreezingBottleReferenceTest.class.getResourceAsStream(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
