/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.concurrent.TimeUnit;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Brine;
import org.beveragethermal.materials.liquid.FreezingCurve;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
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

/** What one property at one temperature costs; {@link Ratios} divides by one {@link Math#exp(double)} of the same run. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
public class PropertyBenchmark {

    /** The reference among the subjects. */
    static final String REFERENCE = "Math.exp";

    /** What is evaluated: a material and a property; the harness sets it. */
    @Param({
        REFERENCE,
        "water: density",
        "water: heat capacity",
        "water: conductivity",
        "water: viscosity",
        "wine: density",
        "wine: heat capacity",
        "wine: conductivity",
        "wine: viscosity",
        "brut: density",
        "brut: heat capacity",
        "brut: conductivity",
        "brut: viscosity",
        "brine: density",
        "brine: viscosity",
        "freezing wine: ice fraction",
        "freezing wine: apparent heat capacity",
        "ice: enthalpy",
        "moist air: saturation pressure",
        "moist air: wet bulb"
    })
    public String subject = REFERENCE;

    private static final double WARM_K = 283.15;
    private static final double COLD_K = 265.15;
    private static final double HUMIDITY = 0.5;

    private DoubleUnaryOperator property = Math::exp;
    private double argument;

    /** Makes the subject before anything is measured. */
    @Setup
    public void prepare() {
        Liquid water = Water.liquid();
        Beverage wine = Beverage.wine(percentByVolume(12.5));
        Beverage brut = Beverage.sparklingWine(percentByVolume(12), gramsPerLitre(8));
        Liquid brine = Brine.ofMassFraction(0.2);
        FreezingCurve freezing = FreezingCurve.of(wine);
        argument = subject.equals(REFERENCE)
                ? 1.1
                : subject.startsWith("freezing") || subject.startsWith("ice") ? COLD_K : WARM_K;
        property = switch (subject) {
            case REFERENCE -> Math::exp;
            case "water: density" -> water::density;
            case "water: heat capacity" -> water::specificHeatCapacity;
            case "water: conductivity" -> water::thermalConductivity;
            case "water: viscosity" -> water::dynamicViscosity;
            case "wine: density" -> wine::density;
            case "wine: heat capacity" -> wine::specificHeatCapacity;
            case "wine: conductivity" -> wine::thermalConductivity;
            case "wine: viscosity" -> wine::dynamicViscosity;
            case "brut: density" -> brut::density;
            case "brut: heat capacity" -> brut::specificHeatCapacity;
            case "brut: conductivity" -> brut::thermalConductivity;
            case "brut: viscosity" -> brut::dynamicViscosity;
            case "brine: density" -> brine::density;
            case "brine: viscosity" -> brine::dynamicViscosity;
            case "freezing wine: ice fraction" -> freezing::iceFraction;
            case "freezing wine: apparent heat capacity" -> freezing::apparentHeatCapacity;
            case "ice: enthalpy" -> Ice::specificEnthalpy;
            case "moist air: saturation pressure" -> MoistAir::saturationPressure;
            case "moist air: wet bulb" -> temperatureK -> MoistAir.wetBulbK(temperatureK, HUMIDITY, 101325);
            default -> throw new IllegalArgumentException("subject '" + subject + "'");
        };
    }

    /**
     * One evaluation.
     *
     * @return its value, for the harness to consume
     */
    @Benchmark
    public double evaluate() {
        return property.applyAsDouble(argument);
    }
}
