/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import java.util.List;
import java.util.Map;
import org.beveragethermal.core.calibration.Predicted;
import org.beveragethermal.core.calibration.Sensed;
import org.beveragethermal.core.calibration.TemperatureModel;
import org.beveragethermal.core.curve.CoolingRate;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.Measures;
import org.openjdk.jcstress.annotations.Actor;
import org.openjdk.jcstress.annotations.Expect;
import org.openjdk.jcstress.annotations.JCStressTest;
import org.openjdk.jcstress.annotations.Outcome;
import org.openjdk.jcstress.annotations.State;
import org.openjdk.jcstress.infra.results.II_Result;

/**
 * What is worked out when it is first needed, asked by two threads in the same instant: 1 is the answer of an object that nobody shares, to
 * the bit; −1 is any other.
 */
public final class SharedStress {
    private static final Beverage WINE = Beverage.wine(Measures.percentByVolume(12.5));
    private static final double COLD_K = 264;

    private SharedStress() {}

    static int same(double got, double wanted) {
        return Double.doubleToRawLongBits(got) == Double.doubleToRawLongBits(wanted) ? 1 : -1;
    }

    /** The table of a drink that freezes. */
    @JCStressTest
    @Outcome(id = "1, 1", expect = Expect.ACCEPTABLE, desc = "both right")
    @Outcome(expect = Expect.FORBIDDEN, desc = "wrong")
    @State
    public static class TableOfFreezing {
        private static final double WANTED_J = FreezingStore.ofMass(WINE, 0.75).enthalpyJ(COLD_K);
        private static final double WANTED_FRACTION =
                FreezingStore.ofMass(WINE, 0.75).iceFraction(COLD_K);

        private final FreezingStore store = FreezingStore.ofMass(WINE, 0.75);

        @Actor
        public void one(II_Result r) {
            r.r1 = same(store.enthalpyJ(COLD_K), WANTED_J);
        }

        @Actor
        public void other(II_Result r) {
            r.r2 = same(store.iceFraction(COLD_K), WANTED_FRACTION);
        }
    }

    /** The workspace that each thread has for a rate. */
    @JCStressTest
    @Outcome(id = "1, 1", expect = Expect.ACCEPTABLE, desc = "both right")
    @Outcome(expect = Expect.FORBIDDEN, desc = "wrong")
    @State
    public static class RateOfANode {
        private static final double WANTED_ONE = rate().timeS(295, 285, 1);
        private static final double WANTED_OTHER = rate().timeS(290, 280, 1);

        private final CoolingRate rate = rate();

        private static CoolingRate rate() {
            Node drink = Node.sensible("drink", 3100, 295.15);
            return CoolingRate.of(
                    Network.of(
                            List.of(drink),
                            List.of(DirectPath.of(
                                    "outside", drink, Boundary.constant("air", 277.15), "convection", Shared.FILM))),
                    Map.of());
        }

        @Actor
        public void one(II_Result r) {
            r.r1 = same(rate.timeS(295, 285, 1), WANTED_ONE);
        }

        @Actor
        public void other(II_Result r) {
            r.r2 = same(rate.timeS(290, 280, 1), WANTED_OTHER);
        }
    }

    /** A network that was prepared once, in runs of two threads. */
    @JCStressTest
    @Outcome(id = "1, 1", expect = Expect.ACCEPTABLE, desc = "both right")
    @Outcome(expect = Expect.FORBIDDEN, desc = "wrong")
    @State
    public static class NetworkPrepared {
        private static final double WANTED_ONE =
                time(Shared.newNetwork(Shared.FILM).prepare(), 285);
        private static final double WANTED_OTHER =
                time(Shared.newNetwork(Shared.FILM).prepare(), 290);

        private final PreparedNetwork prepared = Shared.newNetwork(Shared.FILM).prepare();

        private static double time(PreparedNetwork prepared, double targetK) {
            Node drink = prepared.network().nodes().get(0);
            return NetworkSolver.standard()
                    .unrecorded(prepared)
                    .timeToReach(drink, targetK, 1e6)
                    .orElse(-1);
        }

        @Actor
        public void one(II_Result r) {
            r.r1 = same(time(prepared, 285), WANTED_ONE);
        }

        @Actor
        public void other(II_Result r) {
            r.r2 = same(time(prepared, 290), WANTED_OTHER);
        }
    }

    /** Slopes that a prediction of a fit works out when they are asked for. */
    @JCStressTest
    @Outcome(id = "1, 1", expect = Expect.ACCEPTABLE, desc = "both right")
    @Outcome(expect = Expect.FORBIDDEN, desc = "wrong")
    @State
    public static class SlopesAskedLate {
        private final Predicted predicted = Predicted.of(new double[] {1, 2}, () -> new double[][] {{3, 4}, {5, 6}});

        @Actor
        public void one(II_Result r) {
            r.r1 = same(predicted.slope(1, 0), 4);
        }

        @Actor
        public void other(II_Result r) {
            r.r2 = same(predicted.slope(0, 1), 5);
        }
    }

    /** A model of a fit keeps its first run; which thread's that is makes no difference. */
    @JCStressTest
    @Outcome(id = "1, 1", expect = Expect.ACCEPTABLE, desc = "both right")
    @Outcome(expect = Expect.FORBIDDEN, desc = "wrong")
    @State
    public static class FirstRunOfAModel {
        private static final double WANTED_ONE = model().at(new double[] {1}).value(0);
        private static final double WANTED_OTHER =
                model().at(new double[] {1.5}).value(0);

        private final TemperatureModel model = model();

        private static TemperatureModel model() {
            return TemperatureModel.of(new double[] {600}, (values, solver) -> run(solver))
                    .multipliers("film")
                    .throughLawsAlone();
        }

        private static Sensed run(NetworkSolver solver) {
            Node drink = Node.sensible("drink", 3100, 295.15);
            Boundary air = Boundary.constant("air", 277.15);
            DirectPath film = DirectPath.of("outside", drink, air, "convection", HeatLaw.conductance(1))
                    .scaledBy("film");
            return Sensed.in(solver.solve(Network.of(List.of(drink), List.of(film)), 900), drink);
        }

        @Actor
        public void one(II_Result r) {
            r.r1 = same(model.at(new double[] {1}).value(0), WANTED_ONE);
        }

        @Actor
        public void other(II_Result r) {
            r.r2 = same(model.at(new double[] {1.5}).value(0), WANTED_OTHER);
        }
    }
}
