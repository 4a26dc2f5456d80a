/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.concurrent.TimeUnit;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
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

/** What one density of water costs, beside one {@link Math#exp(double)} of the same run. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
public class WaterDensityBenchmark {
    private final Liquid water = Water.liquid();

    /** Temperature of the water in kelvin, inside the property formula's range; the harness sets it. */
    @Param({"278.15", "293.15"})
    public double temperatureK = 293.15;

    /**
     * The reference: one exponential.
     *
     * @return a number for the harness to consume
     */
    @Benchmark
    public double exponential() {
        return Math.exp(temperatureK / 273.15);
    }

    /**
     * The density of liquid water.
     *
     * @return density in kg/m³, for the harness to consume
     */
    @Benchmark
    public double density() {
        return water.density(temperatureK);
    }
}
