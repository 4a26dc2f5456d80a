/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.time.Duration;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.TemperatureDifference;

/**
 * Water that is renewed, so that vessels do not change its temperature: a brook, a river, the sea at a beach or, without a speed, a lake.
 *
 * <p>Vessels stand or lie on the bed or are {@linkplain Placement#immersedTo held} at a depth; what is higher than the water is deep sticks out
 * into the air. The stream goes across the side of a vessel that stands (law of Churchill and Bernstein, Reynolds number up to 1e7, spread
 * 20 %, on the diameter) and across one that lies, unless it lies {@linkplain #along along the flow}; free convection, with the laws of
 * baths, adds as the fourth root of the sum of fourth powers. Ends are those of a stirred bath. The laws are those of a smooth
 * stream around one cylinder far from walls: turbulent water carries up to some 25 % more (from memory), a vessel in the lee of another or half
 * buried in the bed less.
 *
 * <p>A vessel must be held where the water is fast or deep: a current carries it away, and one with air inside floats. Not for water that
 * freezes. Temperatures from 0.1 °C to 45 °C. Immutable.
 *
 * <p>Theory manual, equation (4.5).
 */
public final class Stream implements Surroundings {

    private static final AirTemperatures TEMPERATURES = new AirTemperatures("stream temperature", 273.25, 318.15);
    private static final double FASTEST_M_PER_S = 3;
    private static final double SHALLOWEST_M = 0.01;
    private static final double DEEPEST_M = 2;

    private final TimeFunction waterK;
    private final double speedMPerS;
    private final double depthM;
    private final Air above;
    private final boolean alongFlow;
    private final Footing bed;

    private Stream(TimeFunction waterK, double speedMPerS, double depthM, Air above, boolean alongFlow, Footing bed) {
        this.waterK = waterK;
        this.speedMPerS = speedMPerS;
        this.depthM = depthM;
        this.above = Objects.requireNonNull(above, "above");
        this.alongFlow = alongFlow;
        this.bed = bed;
    }

    private static Stream of(TimeFunction waterK, Quantity<Speed> speed, Quantity<Length> depth, Air above) {
        return new Stream(
                waterK,
                SiValues.speedMPerS(speed, "speed of the stream", 0, FASTEST_M_PER_S),
                SiValues.lengthM(depth, "depth of the stream", SHALLOWEST_M, DEEPEST_M),
                above,
                false,
                Footing.insulating());
    }

    /**
     * A stream of one temperature.
     *
     * @param temperature 0.1 °C to 45 °C
     * @param speed mean speed of the water at the vessels, 0 m/s to 3 m/s; 0 for a lake; a slow brook has about 0.2 m/s, a brisk one 1 m/s (from
     *     memory)
     * @param depth depth of the water where the vessels are, 1 cm to 2 m
     * @param above the air above it
     * @return the stream
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Stream at(
            Quantity<Temperature> temperature, Quantity<Speed> speed, Quantity<Length> depth, Air above) {
        return of(TEMPERATURES.constant(temperature), speed, depth, above);
    }

    /**
     * A stream whose temperature follows straight lines between given points, such as a log; constant before the first and after the last.
     *
     * @param temperatures temperature by time since the start of the run, at least one, each 0.1 °C to 45 °C; not modified
     * @param speed mean speed of the water at the vessels, 0 m/s to 3 m/s
     * @param depth depth of the water where the vessels are, 1 cm to 2 m
     * @param above the air above it
     * @return the stream
     * @throws IllegalArgumentException if there is no point
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Stream varying(
            Map<Duration, Quantity<Temperature>> temperatures,
            Quantity<Speed> speed,
            Quantity<Length> depth,
            Air above) {
        return of(TEMPERATURES.line(temperatures), speed, depth, above);
    }

    /**
     * A stream whose temperature swings about a mean as a cosine, as in the course of a day.
     *
     * @param mean mean temperature, 0.1 °C to 45 °C
     * @param amplitude half the difference between warmest and coldest, ≥ 0, both within 0.1 °C to 45 °C
     * @param period 1 s to 10 years
     * @param warmestAt a time since the start of the run at which it is warmest, possibly negative
     * @param speed mean speed of the water at the vessels, 0 m/s to 3 m/s
     * @param depth depth of the water where the vessels are, 1 cm to 2 m
     * @param above the air above it
     * @return the stream
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Stream periodic(
            Quantity<Temperature> mean,
            Quantity<TemperatureDifference> amplitude,
            Duration period,
            Duration warmestAt,
            Quantity<Speed> speed,
            Quantity<Length> depth,
            Air above) {
        return of(TEMPERATURES.periodic(mean, amplitude, period, warmestAt), speed, depth, above);
    }

    /**
     * The same stream with vessels that lie along the flow instead of across it; those that stand do not care.
     *
     * <p>The stream then runs along the side as along a flat plate of the length of the vessel (laminar layer, Pohlhausen, Reynolds number
     * below 5e5). That is a lower bound: the stream parts at the blunt end, and is turbulent before that.
     *
     * @return a new value
     */
    public Stream along() {
        return new Stream(waterK, speedMPerS, depthM, above, true, bed);
    }

    /**
     * The same stream with something else under the vessels.
     *
     * @param newBed what they stand on; insulating unless said otherwise, {@link Footing#open()} for a grid
     * @return a new value
     */
    public Stream on(Footing newBed) {
        return new Stream(waterK, speedMPerS, depthM, above, alongFlow, Objects.requireNonNull(newBed, "bed"));
    }

    /**
     * Temperature of the water.
     *
     * @return temperature [K] as a function of time [s]
     */
    public TimeFunction waterK() {
        return waterK;
    }

    /**
     * Speed of the water.
     *
     * @return speed [m/s]
     */
    public double speedMPerS() {
        return speedMPerS;
    }

    /**
     * Depth of the water.
     *
     * @return depth [m]
     */
    public double depthM() {
        return depthM;
    }

    Air above() {
        return above;
    }

    boolean isAlongFlow() {
        return alongFlow;
    }

    Footing bed() {
        return bed;
    }

    @Override
    public boolean isBath() {
        return true;
    }

    @Override
    public Medium open(String id, double originS) {
        return new StreamMedium(id, this, originS);
    }
}
