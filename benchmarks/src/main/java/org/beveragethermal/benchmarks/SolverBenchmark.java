/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The same network integrated by the project's solver and by the explicit Dormand-Prince 8(5,3) integrator of Apache Commons
 * Math, both at a tolerance of 1 mK per step on the same equations; {@link Ratios} divides one by the other.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@State(Scope.Benchmark)
public class SolverBenchmark {

    /** Three hours of a lumped bottle in a refrigerator. */
    static final String REFRIGERATOR = "lumped, refrigerator, 3 h";
    /** Half an hour of a bottle in 24 slices in ice and water. */
    static final String ICE_WATER = "axial 2 x 24 nodes, ice and water, 30 min";

    private static final double TOLERANCE_K = 1e-3;
    private static final double SHORTEST_STEP_S = 1e-9;

    /** Which model; the harness sets it. */
    @Param({REFRIGERATOR, ICE_WATER})
    public String model = REFRIGERATOR;

    private final NetworkSolver solver = NetworkSolver.standard().withToleranceK(TOLERANCE_K);
    private Network network = Network.of(List.of(Node.sensible("placeholder", 1, 273.15)), List.of());
    private double endS;
    private double firstStepS;

    /** Makes the network before anything is measured. */
    @Setup
    public void prepare() {
        endS = model.equals(REFRIGERATOR) ? 3 * 3600 : 30 * 60;
        Trajectory run = scene().predict(Duration.ofSeconds((long) endS)).trajectory();
        List<Path> paths = run.paths(0);
        List<Node> nodes = paths.stream()
                .flatMap(path -> path.ends().stream())
                .filter(Node.class::isInstance)
                .map(Node.class::cast)
                .distinct()
                .toList();
        network = Network.of(nodes, paths);
        firstStepS = 1e-3;
        while (solver.solve(network, 2 * firstStepS).steps() == 1) {
            firstStepS *= 2;
        }
    }

    private Scene scene() {
        FilledVessel bottle = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
        boolean refrigerator = model.equals(REFRIGERATOR);
        Surroundings gear = refrigerator
                ? Refrigerator.at(celsius(5))
                : IceWaterBath.of(
                        Bucket.of(millimetres(210), millimetres(330)), kilograms(3), kilograms(3), Air.at(celsius(22)));
        return Scene.builder()
                .gear("gear", gear)
                .vessel(
                        "bottle",
                        bottle,
                        "gear",
                        refrigerator ? VesselModel.lumped() : VesselModel.axial(),
                        Posture.UPRIGHT)
                .build();
    }

    /**
     * The project's solver.
     *
     * @return the run, for the harness to consume
     */
    @Benchmark
    public Trajectory own() {
        return solver.solve(network, endS);
    }

    /**
     * The project's solver up to the end of its first step: what setting up costs.
     *
     * @return the run, for the harness to consume
     */
    @Benchmark
    public Trajectory ownFirstStep() {
        return solver.solve(network, firstStepS);
    }

    /**
     * The explicit integrator.
     *
     * @return the state at the end, for the harness to consume
     */
    @Benchmark
    public double[] dormandPrince853() {
        PreparedNetwork prepared = network.prepare();
        PreparedNetwork.Workspace workspace = prepared.newWorkspace(java.util.Map.of());
        double[] state = prepared.initialState();
        workspace.evaluate(0, state, false);
        double[] tolerance = new double[state.length];
        double[] unit = new double[state.length];
        for (int i = 0; i < state.length; i++) {
            unit[i] = 1;
            tolerance[i] = TOLERANCE_K / workspace.sizeK(unit);
            unit[i] = 0;
        }
        FirstOrderDifferentialEquations equations = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return state.length;
            }

            @Override
            public void computeDerivatives(double timeS, double[] at, double[] rates) {
                workspace.evaluate(timeS, at, false);
                workspace.rates(workspace.flows(), rates);
            }
        };
        new DormandPrince853Integrator(SHORTEST_STEP_S, endS, tolerance, new double[state.length])
                .integrate(equations, 0, state, endS, state);
        return state;
    }

    /**
     * How many steps the project's solver takes.
     *
     * @return accepted steps
     */
    int steps() {
        return own().steps();
    }

    /**
     * What a run keeps of each step to answer for any time: four numbers of every component of the state, four of every account.
     *
     * @return bytes, without what the platform adds to an array
     */
    int keptBytesPerStep() {
        PreparedNetwork prepared = network.prepare();
        return Double.BYTES * 4 * (prepared.stateSize() + prepared.ledgerSize());
    }
}
