/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import static org.beveragethermal.endurance.SharedStress.same;

import java.util.Optional;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.UnrecordedRun;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.service.tracking.TrackedVessel;
import org.beveragethermal.service.tracking.Tracker;
import org.jspecify.annotations.Nullable;
import org.openjdk.jcstress.annotations.Actor;
import org.openjdk.jcstress.annotations.Expect;
import org.openjdk.jcstress.annotations.JCStressTest;
import org.openjdk.jcstress.annotations.Outcome;
import org.openjdk.jcstress.annotations.State;
import org.openjdk.jcstress.infra.results.II_Result;
import org.openjdk.jcstress.infra.results.I_Result;

/**
 * Values that one thread makes and another finds in a plain field, without any synchronisation: 0 is that there was nothing yet, 1 the answer
 * that is due, 2 the one before it, −1 any other.
 */
public final class HandedOverStress {
    private static final Tracker TRACKER = Shared.newTracker();
    private static final TrackedVessel BEFORE = followed(40);
    private static final TrackedVessel AFTER = next(BEFORE, 40);

    private HandedOverStress() {}

    private static TrackedVessel followed(int events) {
        TrackedVessel vessel = next(null, 0);
        for (int i = 1; i < events; i++) {
            vessel = next(vessel, i);
        }
        return vessel;
    }

    private static TrackedVessel next(@Nullable TrackedVessel vessel, int i) {
        return TRACKER.apply(Optional.ofNullable(vessel), Shared.event("bottle 1", i))
                .vessel()
                .orElseThrow();
    }

    private static int seen(TrackedVessel vessel) {
        boolean after = vessel.snapshot().equals(AFTER.snapshot());
        return after ? 1 : vessel.snapshot().equals(BEFORE.snapshot()) ? 2 : -1;
    }

    /** A vessel is followed by one thread and read by another. */
    @JCStressTest
    @Outcome(
            id = {"1, 1", "1, 2"},
            expect = Expect.ACCEPTABLE,
            desc = "the state after the event, or before it")
    @Outcome(expect = Expect.FORBIDDEN, desc = "a mixture")
    @State
    public static class FollowedAndRead {
        private TrackedVessel vessel = BEFORE;

        @Actor
        public void follows(II_Result r) {
            vessel = next(vessel, 40);
            r.r1 = seen(vessel);
        }

        @Actor
        public void reads(II_Result r) {
            r.r2 = seen(vessel);
        }
    }

    /** Two threads make the next state of one vessel; neither disturbs the other. */
    @JCStressTest
    @Outcome(id = "1, 1", expect = Expect.ACCEPTABLE, desc = "the same from both")
    @Outcome(expect = Expect.FORBIDDEN, desc = "disturbed")
    @State
    public static class FollowedTwice {
        @Actor
        public void one(II_Result r) {
            r.r1 = seen(next(BEFORE, 40));
        }

        @Actor
        public void other(II_Result r) {
            r.r2 = seen(next(BEFORE, 40));
        }
    }

    /** A prepared network in a plain field. */
    @JCStressTest
    @Outcome(
            id = {"0", "1"},
            expect = Expect.ACCEPTABLE,
            desc = "not there yet, or right")
    @Outcome(expect = Expect.FORBIDDEN, desc = "half made")
    @State
    public static class NetworkHandedOver {
        private static final double WANTED = time(Shared.newNetwork(Shared.FILM).prepare());
        private @Nullable PreparedNetwork network;

        private static double time(PreparedNetwork network) {
            Node drink = network.network().nodes().get(0);
            return NetworkSolver.standard()
                    .unrecorded(network)
                    .timeToReach(drink, 292, 1e6)
                    .orElse(-1);
        }

        @Actor
        public void makes() {
            network = Shared.newNetwork(Shared.FILM).prepare();
        }

        @Actor
        public void asks(I_Result r) {
            PreparedNetwork found = network;
            r.r1 = found == null ? 0 : same(time(found), WANTED);
        }
    }

    /** A drink's store in a plain field. */
    @JCStressTest
    @Outcome(
            id = {"0", "1"},
            expect = Expect.ACCEPTABLE,
            desc = "not there yet, or right")
    @Outcome(expect = Expect.FORBIDDEN, desc = "half made")
    @State
    public static class StoreHandedOver {
        private static final FreezingStore ONE =
                FreezingStore.ofMass(Beverage.wine(Measures.percentByVolume(12.5)), 0.75);
        private static final double WANTED = ONE.withMass(1.5).enthalpyJ(264);
        private @Nullable FreezingStore store;

        @Actor
        public void makes() {
            store = ONE.withMass(1.5);
        }

        @Actor
        public void asks(I_Result r) {
            FreezingStore found = store;
            r.r1 = found == null ? 0 : same(found.enthalpyJ(264), WANTED);
        }
    }

    /** What is for one thread, shared on purpose: this must be seen to go wrong, or the rest shows nothing. */
    @JCStressTest
    @Outcome(id = "1, 1", expect = Expect.ACCEPTABLE, desc = "by luck")
    @Outcome(expect = Expect.ACCEPTABLE_INTERESTING, desc = "wrong, as it should be")
    @State
    public static class ForOneThread {
        private static final PreparedNetwork PREPARED =
                Shared.newNetwork(Shared.FILM).prepare();
        private static final double WANTED_ONE = time(newRun(), 285);
        private static final double WANTED_OTHER = time(newRun(), 290);

        private final UnrecordedRun run = newRun();

        private static UnrecordedRun newRun() {
            return NetworkSolver.standard().unrecorded(PREPARED);
        }

        private static double time(UnrecordedRun run, double targetK) {
            try {
                return run.timeToReach(PREPARED.network().nodes().get(0), targetK, 1e6)
                        .orElse(-1);
            } catch (RuntimeException e) {
                return -2;
            }
        }

        @Actor
        public void one(II_Result r) {
            r.r1 = same(time(run, 285), WANTED_ONE);
        }

        @Actor
        public void other(II_Result r) {
            r.r2 = same(time(run, 290), WANTED_OTHER);
        }
    }
}
