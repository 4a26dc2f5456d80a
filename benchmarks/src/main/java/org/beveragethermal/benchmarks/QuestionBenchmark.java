/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.beveragethermal.core.inversion.RequiredValues;
import org.beveragethermal.core.inversion.StartSearch;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.serving.LastGlass;
import org.beveragethermal.core.serving.PouringAim;
import org.beveragethermal.core.serving.Serving;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Questions beside one forward prediction of a bottle; {@link Ratios} divides one by the other. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
@State(Scope.Benchmark)
public class QuestionBenchmark {

    /** What all are divided by. */
    static final String REFERENCE = "one prediction of a bottle, 5 h";

    private static final String START = "latest start";
    private static final String VALUE = "required refrigerator temperature";
    private static final String EVENING = "four glasses from a bottle";
    private static final String AIM = "pouring aim, 2 draws";
    private static final Liquid WINE = Beverage.wine(percentByVolume(12.5));
    private static final FilledVessel BOTTLE = Vessels.highShouldered750().filledWith(WINE, celsius(20));
    private static final Refrigerator COLD = Refrigerator.at(celsius(5));
    private static final Duration LONG = Duration.ofHours(5);
    private static final Serving GLASS = Serving.of(
                    WINE, millilitres(125), Vessels.of(VesselShape.WHITE_WINE_GLASS, millilitres(125)), celsius(22))
            .in(Air.at(celsius(22)))
            .drunkOver(Duration.ofMinutes(12));

    /** Which question; the harness sets it. */
    @Param({REFERENCE, START, VALUE, EVENING, AIM})
    public String subject = REFERENCE;

    /**
     * Asks it.
     *
     * @return the answer, for the harness to consume
     */
    @Benchmark
    public Object ask() {
        return switch (subject) {
            case START -> StartSearch.of(BOTTLE, COLD).latestStart(Wanted.between(celsius(8), celsius(10)), LONG);
            case VALUE ->
                RequiredValues.of(BOTTLE)
                        .refrigeratorTemperature(celsius(0), celsius(12))
                        .temperatureAt(Duration.ofHours(3), celsius(9));
            case EVENING ->
                LastGlass.of(BOTTLE, Air.at(celsius(22)), GLASS)
                        .pouredAt(List.of(
                                Duration.ZERO, Duration.ofMinutes(25), Duration.ofMinutes(50), Duration.ofMinutes(75)));
            case AIM -> PouringAim.of(GLASS).withDraws(2, 1).aim(Wanted.between(celsius(8), celsius(12)));
            default -> Lumped.of(BOTTLE).expose(in(COLD, LONG));
        };
    }
}
