/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ValueAndJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import org.apache.commons.math3.util.Pair;
import org.beveragethermal.core.calibration.Fit;
import org.beveragethermal.core.calibration.FitResult;
import org.beveragethermal.core.calibration.Observations;
import org.beveragethermal.core.calibration.Parameter;
import org.beveragethermal.core.calibration.Sensed;
import org.beveragethermal.core.calibration.TemperatureModel;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
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
 * The same fit by the project, and by Levenberg and Marquardt of Apache Commons Math with forward differences through a tight
 * Dormand-Prince 8(5,3) integrator; {@link Ratios} divides. Before anything is timed both have to find the same minimum.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 2)
@State(Scope.Benchmark)
public class FitBenchmark {

    /** A synthetic bottle of two nodes, read a thousand times by a thermometer that lags. */
    static final String TWO_NODES = "two nodes and a lag, 1000 readings, 3 unknowns";
    /** The project's bottle. */
    static final String BOTTLE = "lumped bottle in a refrigerator, 200 readings, 2 unknowns";

    /** Looser, and differences of runs that choose their own steps lead to a wrong place. */
    private static final double TOLERANCE_K = 1e-10;
    /** Of the bottle, whose state is held as energy: fewer digits are left. */
    private static final double TOLERANCE_BOTTLE_K = 1e-9;

    private static final double MOVED = 1e-5;
    private static final double CEASE = 1e-8;
    /** How far the two may differ, in standard errors. */
    private static final double APART = 0.02;

    private static final double SCATTER_K = 0.05;
    private static final double[] MINUTES =
            IntStream.rangeClosed(1, 200).mapToDouble(i -> 60 * i).toArray();
    private static final FilledVessel WINE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    private static final double ZERO_C = 273.15;
    private static final int WARM_ROUNDS = 20;
    private static final int ROUNDS = 15;
    private static final int OWN_IN_A_ROUND = 50;
    private static final int OTHERS_IN_A_ROUND = 5;

    /** What is fitted; the harness sets it. */
    @Param({TWO_NODES, BOTTLE})
    public String subject = TWO_NODES;

    private Forward forward = FitBenchmark::readTwoNodes;
    private double[] readings = {};
    private double[] first = {};

    /** Predicted readings for values of the parameters. */
    @FunctionalInterface
    private interface Forward {
        double[] read(double[] parameters);
    }

    /** Draws the readings by the plain equations and checks that both fits agree. */
    @Setup
    public void prepare() {
        boolean bottle = subject.equals(BOTTLE);
        forward = bottle ? plainBottle() : FitBenchmark::readTwoNodes;
        first = bottle ? new double[] {1, 1} : new double[] {1, 1, 30};
        readings = forward.read(bottle ? new double[] {1.15, 0.9} : new double[] {1.15, 0.9, 45});
        Random random = new Random(7);
        for (int i = 0; i < readings.length; i++) {
            readings[i] += SCATTER_K * random.nextGaussian();
        }
        FitResult own = own();
        double[] other = finiteDifferences().getPoint().toArray();
        for (int k = 0; k < other.length; k++) {
            double value = own.estimates().get(k).value();
            double error = own.estimates().get(k).standardError().orElseThrow();
            if (!(Math.abs(value - other[k]) <= APART * error)) {
                throw new IllegalStateException(own.estimates().get(k) + " by the project, " + other[k]
                        + " by finite differences: expected within " + APART + " standard errors");
            }
        }
    }

    /**
     * Prints the table by CPU time of this thread, own fits and the others in turn: on a machine that is shared the harness's clock says
     * little.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        System.out.println(
                "| Fit | Evaluations, own and other | Own time, ms | Other time, ms | Time by finite differences ÷ own time |");
        System.out.println("|---|---|---|---|---|");
        for (String subject : List.of(TWO_NODES, BOTTLE)) {
            FitBenchmark benchmark = new FitBenchmark();
            benchmark.subject = subject;
            benchmark.prepare();
            double[] own = new double[ROUNDS];
            double[] other = new double[ROUNDS];
            double[] ratios = new double[ROUNDS];
            for (int i = -WARM_ROUNDS; i < ROUNDS; i++) {
                double ownMs = cpuMs(benchmark::own, OWN_IN_A_ROUND);
                double otherMs = cpuMs(benchmark::finiteDifferences, OTHERS_IN_A_ROUND);
                if (i >= 0) {
                    own[i] = ownMs;
                    other[i] = otherMs;
                    ratios[i] = otherMs / ownMs;
                }
            }
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %d, %d | %s | %s | %s |%n",
                    subject,
                    benchmark.own().evaluations(),
                    benchmark.finiteDifferences().getEvaluations(),
                    spread("%.2f", own),
                    spread("%.1f", other),
                    spread("%.1f", ratios));
        }
    }

    private static double cpuMs(Runnable fit, int times) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadCpuTime();
        for (int i = 0; i < times; i++) {
            fit.run();
        }
        return (threads.getCurrentThreadCpuTime() - before) / 1e6 / times;
    }

    /** Median, least and largest. */
    private static String spread(String format, double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return String.format(
                Locale.ROOT,
                format + " [" + format + " to " + format + "]",
                sorted[sorted.length / 2],
                sorted[0],
                sorted[sorted.length - 1]);
    }

    /**
     * The project's fit, of a model that is made anew.
     *
     * @return its result
     */
    @Benchmark
    public FitResult own() {
        return (subject.equals(BOTTLE) ? bottle(readings) : twoNodes(readings)).run();
    }

    /**
     * The fit by finite differences; slopes are asked for only where a step was taken.
     *
     * @return where it ended
     */
    @Benchmark
    public LeastSquaresOptimizer.Optimum finiteDifferences() {
        return new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(CEASE)
                .withParameterRelativeTolerance(CEASE)
                .optimize(new LeastSquaresBuilder()
                        .model(new Differences(forward))
                        .lazyEvaluation(true)
                        .target(readings)
                        .start(first)
                        .maxEvaluations(200)
                        .maxIterations(200)
                        .build());
    }

    private static Fit twoNodes(double[] readings) {
        return Fit.builder()
                .parameter(Parameter.of("inside", 1).between(0.05, 50))
                .parameter(Parameter.of("outside", 1).between(0.05, 50))
                .parameter(Parameter.of("lag", 30).between(0.1, 1000))
                .run("log", TwoNodes.model(), Observations.of(TwoNodes.TIMES, readings))
                .build();
    }

    private static Fit bottle(double[] readings) {
        TemperatureModel model = TemperatureModel.of(
                        MINUTES,
                        (values, solver) -> Sensed.in(Lumped.of(WINE)
                                .with(solver)
                                .expose(in(Refrigerator.at(celsius(4)), Duration.ofMinutes(200)))))
                .multipliers(Multipliers.INSIDE_FILM, Multipliers.AIR_FILM)
                .throughLawsAlone();
        return Fit.builder()
                .parameter(Parameter.of(Multipliers.INSIDE_FILM, 1).between(0.05, 20))
                .parameter(Parameter.of(Multipliers.AIR_FILM, 1).between(0.05, 20))
                .run("log", model, Observations.of(MINUTES, readings))
                .build();
    }

    private static double[] readTwoNodes(double[] parameters) {
        Reading handler = new Reading(TwoNodes.TIMES, state -> state[2] + ZERO_C);
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-9, 1000, TOLERANCE_K, TOLERANCE_K);
        integrator.addStepHandler(handler);
        double[] state = TwoNodes.start();
        integrator.integrate(TwoNodes.equations(parameters), 0, state, 10_000, state);
        return handler.readings;
    }

    /** The network of the bottle, set up once, on plain equations. */
    private static Forward plainBottle() {
        Prediction prediction = Lumped.of(WINE).expose(in(Refrigerator.at(celsius(4)), Duration.ofMinutes(200)));
        List<Path> paths = prediction.trajectory().paths(0);
        List<Node> nodes = paths.stream()
                .flatMap(path -> path.ends().stream())
                .filter(Node.class::isInstance)
                .map(Node.class::cast)
                .distinct()
                .toList();
        PreparedNetwork prepared = Network.of(nodes, paths).prepare();
        int drink = nodes.indexOf(prediction.contents().nodes().get(0));
        return parameters -> {
            Map<String, Double> factors = new LinkedHashMap<>();
            factors.put(Multipliers.INSIDE_FILM, parameters[0]);
            factors.put(Multipliers.AIR_FILM, parameters[1]);
            PreparedNetwork.Workspace workspace = prepared.newWorkspace(factors);
            double[] state = prepared.initialState();
            workspace.evaluate(0, state, false);
            double[] tolerance = new double[state.length];
            double[] unit = new double[state.length];
            for (int i = 0; i < state.length; i++) {
                unit[i] = 1;
                tolerance[i] = TOLERANCE_BOTTLE_K / workspace.sizeK(unit);
                unit[i] = 0;
            }
            Reading handler = new Reading(MINUTES, at -> {
                workspace.evaluate(0, at, false);
                return workspace.temperatureK(drink);
            });
            DormandPrince853Integrator integrator =
                    new DormandPrince853Integrator(1e-9, 1000, tolerance, new double[state.length]);
            integrator.addStepHandler(handler);
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
            integrator.integrate(equations, 0, state, 12_000, state);
            return handler.readings;
        };
    }

    /** What is read of a state. */
    @FunctionalInterface
    private interface Look {
        double of(double[] state);
    }

    /** Reads the run at given times between steps. */
    private static final class Reading implements StepHandler {

        private final double[] times;
        private final Look look;
        private final double[] readings;
        private int next;

        private Reading(double[] times, Look look) {
            this.times = times;
            this.look = look;
            readings = new double[times.length];
        }

        @Override
        public void init(double startS, double[] state, double endS) {
            next = 0;
        }

        @Override
        public void handleStep(StepInterpolator step, boolean last) {
            while (next < times.length && times[next] <= step.getCurrentTime()) {
                step.setInterpolatedTime(times[next]);
                readings[next++] = look.of(step.getInterpolatedState());
            }
        }
    }

    /** Readings with slopes by forward differences; of the point predicted last, which the search asks for again, nothing is run anew. */
    private static final class Differences implements ValueAndJacobianFunction {

        private final Forward forward;
        private double[] point = {};
        private double[] readings = {};

        private Differences(Forward forward) {
            this.forward = forward;
        }

        private double[] read(double[] parameters) {
            if (!Arrays.equals(parameters, point)) {
                readings = forward.read(parameters);
                point = parameters.clone();
            }
            return readings;
        }

        @Override
        public Pair<RealVector, RealMatrix> value(RealVector at) {
            return new Pair<>(computeValue(at.toArray()), computeJacobian(at.toArray()));
        }

        @Override
        public RealVector computeValue(double[] parameters) {
            return new ArrayRealVector(read(parameters));
        }

        @Override
        public RealMatrix computeJacobian(double[] parameters) {
            double[] here = read(parameters);
            double[][] slopes = new double[here.length][parameters.length];
            for (int k = 0; k < parameters.length; k++) {
                double[] moved = Arrays.copyOf(parameters, parameters.length);
                moved[k] *= 1 + MOVED;
                double[] there = forward.read(moved);
                for (int i = 0; i < here.length; i++) {
                    slopes[i][k] = (there[i] - here[i]) / (moved[k] - parameters[k]);
                }
            }
            return new Array2DRowRealMatrix(slopes, false);
        }
    }
}
