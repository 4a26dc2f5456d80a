/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

/** What is timed in Java, by key. */
final class Jobs {

    /** The job that makes its readings anew for every sample. */
    static final String TRACKING = "jobs/tracking";

    private Jobs() {}

    /**
     * Makes a job ready.
     *
     * @throws IllegalArgumentException if there is no such job
     * @throws IllegalStateException if it fails its check of error
     */
    static Prepared prepare(String key) {
        return switch (key) {
            case "p1/own" -> TwoNodeCooling.own();
            case "p1/own-plain" -> TwoNodeCooling.ownPlain();
            case "p1/commons-dp853" -> TwoNodeCooling.peer(CommonsMath.DP853);
            case "p1/commons-dp54" -> TwoNodeCooling.peer(CommonsMath.DP54);
            case "p1/hipparchus-dp853" -> TwoNodeCooling.peer(Hipparchus.DP853);
            case "p1/hipparchus-dp54" -> TwoNodeCooling.peer(Hipparchus.DP54);
            case "p1b/engine" -> OneNodeCooling.engine();
            case "p1b/quadrature" -> OneNodeCooling.quadrature();
            case "p1b/prepared" -> OneNodeCooling.prepared();
            case "p1b/prepared-chained" -> OneNodeCooling.chained();
            case "p1b/temperature-after" -> OneNodeCooling.after();
            case "p1b/preparing" -> OneNodeCooling.preparing();
            case "p1b/commons-dp853" -> OneNodeCooling.peer(CommonsMath.DP853);
            case "p2/own" -> RadialLayers.of(100, 0).own();
            case "p2/own-swing" -> RadialLayers.of(100, 2).own();
            case "p2/commons-dp54" -> RadialLayers.of(100, 0).peer(CommonsMath.DP54);
            case "p3/own" -> AxialStack.own();
            case "p3/commons-dp54" -> AxialStack.peer(CommonsMath.DP54);
            case "p4/own" -> SampledBottles.own(10_000);
            case "p4/commons-dp853" -> SampledBottles.peer(10_000);
            case "p5/own" -> LibraryJobs.fit(FitBenchmark.TWO_NODES, true);
            case "p5/commons-fd" -> LibraryJobs.fit(FitBenchmark.TWO_NODES, false);
            case "p6/celsius-in" -> LibraryJobs.celsiusIn();
            case "p6/celsius-indriya" -> LibraryJobs.celsiusByUnits();
            case "p6/millilitres-in" -> LibraryJobs.millilitresIn();
            case "p6/celsius-out" -> LibraryJobs.celsiusOut();
            case "real/own" -> RealLumped.own();
            case "real/commons-dp853" -> RealLumped.peer();
            case "growth/cells-100" -> RadialLayers.of(100, 0).own();
            case "growth/cells-800" -> RadialLayers.of(800, 0).own();
            case "growth/samples-1250" -> LibraryJobs.monteCarlo(1250);
            case "growth/samples-10000" -> LibraryJobs.monteCarlo(10_000);
            case "plan/bottles-12" -> LibraryJobs.planToGap(12, 4);
            case "plan/bottles-96" -> LibraryJobs.planToGap(96, 12);
            case "jobs/lumped" -> LibraryJobs.lumped();
            case "jobs/axial" -> LibraryJobs.axial();
            case "jobs/time-interval" -> LibraryJobs.timeWithInterval();
            case "jobs/plan-12" -> LibraryJobs.plan(12, 4);
            case "jobs/plan-60" -> LibraryJobs.plan(60, 8);
            case "jobs/fit-own" -> LibraryJobs.fit(FitBenchmark.BOTTLE, true);
            default -> throw new IllegalArgumentException("job " + key + ": there is none of that name");
        };
    }
}
