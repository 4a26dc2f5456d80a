/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.VolumetricFlowRate;

/**
 * Water from a tap that runs down the outside of closed vessels and is drained: a film on part of the wall, air on the rest.
 *
 * <p>The film is that of Wilke ({@link org.beveragethermal.core.correlation.FallingFilm}, Reynolds number Γ/μ from 1 to 3000, spread 20 %); it
 * begins at the temperature of the tap at the top of the vessel and cannot take or give more than its own flow carries. Around a bottle it is
 * some ten times better than what resists inside the bottle and in its glass, so that the {@linkplain #WETTED_SHARE share of the wall that is
 * wetted} decides how fast it goes, and the flow hardly at all once there are a few litres per minute.
 *
 * <p>All of the water is taken to reach the wall; what splashes away is in the wetted share. The film keeps the air away; heat and moisture
 * between film and air (some hundredth of what it passes to the wall) are left out. Around a vessel that lies the film goes round by both
 * sides; the law is that of an upright wall of that length. Several vessels under one tap share its water equally.
 *
 * <p>A vessel in a bowl that a tap keeps full is a {@link WaterBath#withInflow}. Hot water from a tap scalds above about 50 °C, and cold glass may
 * crack in it. Temperatures from 0.5 °C to 70 °C. Immutable.
 */
public final class RunningTap implements Surroundings {

    private static final AirTemperatures TEMPERATURES = new AirTemperatures("tap temperature", 273.65, 343.15);
    static final double LEAST_M3_PER_S = 0.5e-3 / 60;
    static final double MOST_M3_PER_S = 20e-3 / 60;
    private static final double LEAST_SHARE = 0.05;

    private static final Source OWN = new Source(
            "wetted-share-under-a-tap",
            "own assumption: a jet that meets the top of a bottle covers all of it at best, the half on which it falls at worst",
            Source.Kind.OWN_ASSUMPTION);

    /** Part of the wall that the film covers, unless it is {@linkplain #withWettedShare stated}. */
    public static final Constant WETTED_SHARE =
            new Constant("wetted share of a wall under a tap", 0.7, "1", Uncertainty.rectangular(0.3), OWN);

    private final TimeFunction waterK;
    private final double warmestK;
    private final double flowM3PerS;
    private final double wettedShare;
    private final Air room;

    private RunningTap(TimeFunction waterK, double warmestK, double flowM3PerS, double wettedShare, Air room) {
        this.waterK = waterK;
        this.warmestK = warmestK;
        this.flowM3PerS = flowM3PerS;
        this.wettedShare = wettedShare;
        this.room = Objects.requireNonNull(room, "room");
    }

    private static RunningTap of(TimeFunction waterK, double warmestK, Quantity<VolumetricFlowRate> flow, Air room) {
        return new RunningTap(waterK, warmestK, flowM3PerS(flow), WETTED_SHARE.value(), room);
    }

    static double flowM3PerS(Quantity<VolumetricFlowRate> flow) {
        return SiValues.volumetricFlowM3PerS(flow, "flow of the tap", LEAST_M3_PER_S, MOST_M3_PER_S);
    }

    static double temperatureK(Quantity<Temperature> temperature) {
        return TEMPERATURES.temperatureK(temperature);
    }

    /**
     * A tap whose water keeps its temperature.
     *
     * @param temperature 0.5 °C to 70 °C
     * @param flow 0.5 L/min to 20 L/min; a kitchen tap gives some 5 L/min to 10 L/min (from memory)
     * @param room the air around the vessels
     * @return the tap
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static RunningTap at(Quantity<Temperature> temperature, Quantity<VolumetricFlowRate> flow, Air room) {
        return of(TEMPERATURES.constant(temperature), TEMPERATURES.temperatureK(temperature), flow, room);
    }

    /**
     * A tap whose water follows straight lines between given points, as while the warm water in the pipe runs out; constant before the
     * first and after the last.
     *
     * @param temperatures temperature by time since the start of the run, at least one, each 0.5 °C to 70 °C; not modified
     * @param flow 0.5 L/min to 20 L/min
     * @param room the air around the vessels
     * @return the tap
     * @throws IllegalArgumentException if there is no point
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static RunningTap varying(
            Map<Duration, Quantity<Temperature>> temperatures, Quantity<VolumetricFlowRate> flow, Air room) {
        TimeFunction line = TEMPERATURES.line(temperatures);
        double warmest = temperatures.values().stream()
                .mapToDouble(TEMPERATURES::temperatureK)
                .max()
                .orElseThrow();
        return of(line, warmest, flow, room);
    }

    /**
     * The same tap over vessels of whose wall another share is wetted.
     *
     * @param share wetted part of the wall, 5 % to 100 %
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the share is outside its range
     */
    public RunningTap withWettedShare(Quantity<Dimensionless> share) {
        return new RunningTap(
                waterK, warmestK, flowM3PerS, SiValues.fraction(share, "wetted share", LEAST_SHARE, 1), room);
    }

    /**
     * What is assumed of a tap beside its law.
     *
     * @return numbers with their uncertainty and source
     */
    public static List<Constant> assumptions() {
        return List.of(WETTED_SHARE);
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
     * What the tap gives.
     *
     * @return volume per time [m³/s]
     */
    public double flowM3PerS() {
        return flowM3PerS;
    }

    /**
     * Part of the wall that is wetted.
     *
     * @return part [-], above 0, at most 1
     */
    public double wettedShare() {
        return wettedShare;
    }

    /** The warmest that the water becomes [K]. */
    double warmestK() {
        return warmestK;
    }

    Air room() {
        return room;
    }

    @Override
    public Medium open(String id, double originS) {
        return new RunningTapMedium(id, this, originS);
    }
}
