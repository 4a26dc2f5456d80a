/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.TemperatureDifference;

/**
 * Temperature of ground that nothing disturbs, by depth and time: one temperature, and waves of the year and of the day if they are
 * added.
 *
 * <p>A wave of the surface, A cos(ω (t − t₀)), arrives at a depth z as A exp(−z/d) cos(ω (t − t₀) − z/d), with the damping depth
 * d = √(2 α/ω) (H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed. 1959, section 2.6). Amplitudes are those of
 * the surface of the ground, which are not those of the air; of a day on bare dry ground they may be twice as large, under grass half
 * (from memory). Ground is taken as even in depth, without snow, freezing and seeping water.
 *
 * <p>Immutable.
 *
 * <p>Theory manual, equation (4.6).
 */
public final class GroundTemperature {

    private static final AirTemperatures TEMPERATURES =
            new AirTemperatures("temperature of the ground", 253.15, 343.15);
    private static final Duration YEAR = Duration.ofDays(365);
    private static final Duration DAY = Duration.ofDays(1);
    private static final Duration FARTHEST = Duration.ofDays(3660);

    /** From as many damping depths on nothing is left of a wave, and its phase may overflow. */
    private static final double DEEPEST = 700;

    private final double meanK;
    private final List<Wave> waves;

    /** A wave of the surface. */
    private record Wave(Periodic surface) {
        double atK(double depthM, double timeS, double diffusivity) {
            double inDampingDepths = depthM / Math.sqrt(diffusivity * surface.periodS() / Math.PI);
            if (inDampingDepths > DEEPEST) {
                return 0;
            }
            double laterS = inDampingDepths * surface.periodS() / (2 * Math.PI);
            return Math.exp(-inDampingDepths) * surface.at(timeS - laterS);
        }
    }

    private GroundTemperature(double meanK, List<Wave> waves) {
        this.meanK = meanK;
        this.waves = List.copyOf(waves);
    }

    /**
     * Ground of one temperature at all depths.
     *
     * @param temperature −20 °C to 70 °C; with waves, their mean
     * @return the temperature
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public static GroundTemperature of(Quantity<Temperature> temperature) {
        return new GroundTemperature(TEMPERATURES.temperatureK(temperature), List.of());
    }

    /**
     * The same ground with the wave of the year, of 365 days.
     *
     * @param amplitude half the swing at the surface, ≥ 0; with the other waves all must stay within −20 °C to 70 °C
     * @param warmestAt a time since the start of the run at which the surface is warmest, possibly negative, at most ten years away
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the amplitude is outside its range
     * @throws IllegalArgumentException if the time is more than ten years away
     */
    public GroundTemperature withYearlyWave(Quantity<TemperatureDifference> amplitude, Duration warmestAt) {
        return with(amplitude, "yearly", YEAR, warmestAt);
    }

    /**
     * The same ground with the wave of the day.
     *
     * @param amplitude half the swing at the surface, ≥ 0; with the other waves all must stay within −20 °C to 70 °C
     * @param warmestAt a time since the start of the run at which the surface is warmest, possibly negative, at most ten years away
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the amplitude is outside its range
     * @throws IllegalArgumentException if the time is more than ten years away
     */
    public GroundTemperature withDailyWave(Quantity<TemperatureDifference> amplitude, Duration warmestAt) {
        return with(amplitude, "daily", DAY, warmestAt);
    }

    private GroundTemperature with(
            Quantity<TemperatureDifference> amplitude, String which, Duration period, Duration warmestAt) {
        if (Objects.requireNonNull(warmestAt, "warmestAt").abs().compareTo(FARTHEST) > 0) {
            throw new IllegalArgumentException("warmest time of the " + which + " wave of the ground " + warmestAt
                    + ": expected no more than " + FARTHEST + " before or after the start");
        }
        double widest = Math.min(meanK - TEMPERATURES.lowK(), TEMPERATURES.highK() - meanK) - amplitudeK();
        double kelvin = SiValues.temperatureDifferenceK(
                amplitude, "amplitude of the " + which + " wave of the ground", 0, Math.max(0, widest));
        List<Wave> more = new ArrayList<>(waves);
        more.add(
                new Wave(new Periodic(0, kelvin, AirTemperatures.seconds(period), AirTemperatures.seconds(warmestAt))));
        return new GroundTemperature(meanK, more);
    }

    /** All waves at their crest together [K]. */
    double amplitudeK() {
        return waves.stream().mapToDouble(wave -> wave.surface().amplitudeK()).sum();
    }

    /** The coldest that the ground may be at any depth and time [K]. */
    double coldestK() {
        return meanK - amplitudeK();
    }

    /**
     * The undisturbed temperature.
     *
     * @param depthM depth [m], finite, ≥ 0
     * @param timeS time since the start of the run [s], finite
     * @param diffusivity thermal diffusivity of the ground [m²/s], finite, > 0
     * @return temperature [K]
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public double temperatureK(double depthM, double timeS, double diffusivity) {
        if (!(depthM >= 0 && diffusivity > 0) || !Double.isFinite(depthM + timeS + diffusivity)) {
            throw new IllegalArgumentException(
                    "depth " + depthM + " m, time " + timeS + " s, diffusivity " + diffusivity
                            + " m²/s: expected finite values, the depth not negative and the diffusivity above 0");
        }
        return meanK
                + waves.stream()
                        .mapToDouble(wave -> wave.atK(depthM, timeS, diffusivity))
                        .sum();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof GroundTemperature that
                && Double.compare(meanK, that.meanK) == 0
                && waves.equals(that.waves);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(meanK) + waves.hashCode();
    }

    @Override
    public String toString() {
        return meanK + " K"
                + waves.stream()
                        .map(wave -> " ± " + wave.surface().amplitudeK() + " K each "
                                + Duration.ofMillis(
                                        Math.round(1000 * wave.surface().periodS())))
                        .collect(Collectors.joining());
    }
}
