/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.TemperatureDifference;

/**
 * A room, a cellar, a terrace, a garden: convection to the air, radiation to the walls and, where they are given, sunlight and sky. The
 * air is still and dry unless said otherwise.
 *
 * <p><b>Moving air.</b> With a {@linkplain #withSpeed speed} the air streams across the sides of vessels (law of Churchill and
 * Bernstein, spread 20 %, on the diameter, whether the vessel stands or lies) and along their ends (laminar layer on a flat plate,
 * Pohlhausen, spread 25 %, averaged over the chords of the disc). Forced and free convection add as the fourth root of the sum of fourth
 * powers, the rule for a stream across the direction of buoyancy (Incropera and DeWitt, combined convection; exponent from memory). The
 * laws are those of a smooth stream: in a draught, the turbulent air of a room, and in wind near the ground, the same mean speed
 * carries up to some 25 % more (from memory); that lies within twice their spread. The speed is constant: a draught that comes and goes
 * is two airs of a scene between which a vessel is moved at stated times.
 *
 * <p><b>Moist air.</b> With a {@linkplain #withRelativeHumidity humidity} whatever is colder than the dew point is wetted, or frosted below
 * 0 °C, and receives the latent heat; see {@link org.beveragethermal.core.film.CondensingFilm} for the law and what it leaves out. Without one,
 * nothing condenses, as in dry air; the surface of a bath does not evaporate; the free surface of a drink meets air of 50 %, which the
 * prediction says; and wet wraps and porous pots are refused.
 *
 * <p><b>Outdoors.</b> {@linkplain #withSun Sunlight} warms what stands in the air, a {@linkplain #withClearSky clear sky} cools it by
 * radiation; dew then falls on whatever comes below the dew point.
 *
 * <p>Immutable. Temperatures from −40 °C to 80 °C.
 *
 * <p>Theory manual, equation (4.1).
 */
public final class Air implements Surroundings {

    static final AirTemperatures TEMPERATURES = new AirTemperatures("air temperature", 233.15, 353.15);

    private static final double LOWEST_PRESSURE_PA = 50_000;
    private static final double HIGHEST_PRESSURE_PA = 110_000;
    private static final double LOWEST_M = -500;
    private static final double HIGHEST_M = 5500;
    private static final double FASTEST_M_PER_S = 20;

    private final TimeFunction airK;
    private final TimeFunction wallsK;
    private final AirState state;
    private final Footing footing;
    private final OpenAir open;

    private Air(TimeFunction airK, TimeFunction wallsK, AirState state, Footing footing, OpenAir open) {
        this.airK = airK;
        this.wallsK = wallsK;
        this.state = state;
        this.footing = footing;
        this.open = open;
    }

    /** Air and walls that follow one temperature. */
    static Air following(TimeFunction temperatureK) {
        return new Air(temperatureK, temperatureK, AirState.STILL_AND_DRY, Footing.insulating(), OpenAir.NONE);
    }

    /**
     * Air and walls at one temperature.
     *
     * @param temperature −40 °C to 80 °C
     * @return the room
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public static Air at(Quantity<Temperature> temperature) {
        return following(TEMPERATURES.constant(temperature));
    }

    /**
     * Air and walls that follow straight lines between given points, such as a log; constant before the first and after the last.
     *
     * @param temperatures temperature by time since the start of the run, at least one, each −40 °C to 80 °C; not modified
     * @return the room
     * @throws IllegalArgumentException if there is no point
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside its range
     */
    public static Air varying(Map<Duration, Quantity<Temperature>> temperatures) {
        return following(TEMPERATURES.line(temperatures));
    }

    /**
     * Air and walls that swing about a mean as a cosine: a cellar in the course of the year, a cabinet that switches on and off, a day.
     *
     * @param mean mean temperature, −40 °C to 80 °C
     * @param amplitude half the difference between warmest and coldest, ≥ 0, both within −40 °C to 80 °C
     * @param period 1 s to 10 years
     * @param warmestAt a time since the start of the run at which it is warmest, possibly negative
     * @return the room
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Air periodic(
            Quantity<Temperature> mean,
            Quantity<TemperatureDifference> amplitude,
            Duration period,
            Duration warmestAt) {
        return following(TEMPERATURES.periodic(mean, amplitude, period, warmestAt));
    }

    /**
     * The same air between walls of another temperature.
     *
     * @param radiantTemperature temperature of the surroundings for radiation, −40 °C to 80 °C
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public Air withWalls(Quantity<Temperature> radiantTemperature) {
        return new Air(airK, TEMPERATURES.constant(radiantTemperature), state, footing, open);
    }

    /**
     * The same air between walls whose temperature follows straight lines between given points.
     *
     * @param radiantTemperatures temperature for radiation by time since the start of the run, at least one, each −40 °C to
     *     80 °C; not modified
     * @return a new value
     * @throws IllegalArgumentException if there is no point
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside its range
     */
    public Air withWalls(Map<Duration, Quantity<Temperature>> radiantTemperatures) {
        return new Air(airK, TEMPERATURES.line(radiantTemperatures), state, footing, open);
    }

    /**
     * The same room at another air pressure.
     *
     * @param pressure 50 kPa to 110 kPa
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the pressure is outside its range
     */
    public Air withPressure(Quantity<Pressure> pressure) {
        return with(state.atPressure(
                SiValues.pressurePa(pressure, "air pressure", LOWEST_PRESSURE_PA, HIGHEST_PRESSURE_PA)));
    }

    /**
     * The same room at a height above sea level: at the pressure of the standard atmosphere (ISO 2533), 101.3 kPa at sea level, 89.9 kPa
     * at 1000 m, 79.5 kPa at 2000 m. Weather changes it by about 3 % (from memory).
     *
     * @param heightAboveSeaLevel −500 m to 5500 m
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the height is outside its range
     */
    public Air withAltitude(Quantity<Length> heightAboveSeaLevel) {
        return with(state.atPressure(MoistAir.standardPressure(
                SiValues.lengthM(heightAboveSeaLevel, "height above sea level", LOWEST_M, HIGHEST_M))));
    }

    /**
     * The same room with moving air.
     *
     * @param speed mean speed of the air at the vessels, 0 m/s to 20 m/s; 0 is still air. A draught that people notice begins at about
     *     0.2 m/s, a fan across a room gives about 1 m/s, a breeze outdoors 3 m/s (from memory)
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the speed is negative or too high
     */
    public Air withSpeed(Quantity<Speed> speed) {
        return with(state.atSpeed(SiValues.speedMPerS(speed, "air speed", 0, FASTEST_M_PER_S)));
    }

    /**
     * The same room with moist air.
     *
     * @param relativeHumidity vapour pressure over saturation pressure at the temperature of the air (over ice below 0 °C), 0 to 100 %;
     *     kept while the temperature varies
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the humidity is negative or above 100 %
     */
    public Air withRelativeHumidity(Quantity<Dimensionless> relativeHumidity) {
        return with(state.atHumidity(SiValues.fraction(relativeHumidity, "relative humidity", 0, 1)));
    }

    /**
     * The same room with something else under the vessels.
     *
     * @param newFooting what they stand on; insulating unless said otherwise
     * @return a new value
     */
    public Air on(Footing newFooting) {
        return new Air(airK, wallsK, state, Objects.requireNonNull(newFooting, "footing"), open);
    }

    /**
     * The same place with sunlight on what stands in it; see {@link Sunlight} for what it falls on. The air and what radiates keep
     * their temperatures: pavement and car seats in the sun are warmer than the air, which {@link #withWalls(Quantity)} can say.
     *
     * @param sunlight the sunlight; its clock is that of this air
     * @return a new value
     */
    public Air withSun(Sunlight sunlight) {
        return new Air(airK, wallsK, state, footing, open.with(Objects.requireNonNull(sunlight, "sunlight")));
    }

    /**
     * The same place under a sky of one temperature. Half of what an upright or lying wall sees is sky, of an end that looks up all of
     * it; the rest, and all that an end sees which looks down, stays the walls (the ground). The sky acts on radiation alone.
     *
     * @param skyTemperature temperature of a black body that radiates as much, −80 °C to 60 °C; under cloud near that of the air
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public Air withSky(Quantity<Temperature> skyTemperature) {
        return new Air(airK, wallsK, state, footing, open.with(OpenAir.SKIES.constant(skyTemperature)));
    }

    /**
     * The same place under a clear sky, by day or night: by the dew point if a humidity is given (Berdahl and Martin 1984), else by
     * the temperature of the air (Swinbank 1963); {@link org.beveragethermal.core.correlation.SkyRadiation}, spread 15 % of what is
     * exchanged with it. It divides what a wall sees as {@link #withSky} does.
     *
     * @return a new value
     */
    public Air withClearSky() {
        return new Air(airK, wallsK, state, footing, open.withClearSky());
    }

    private Air with(AirState newState) {
        return new Air(airK, wallsK, newState, footing, open);
    }

    /** The same walls around air of another temperature. */
    Air withAir(TimeFunction newAirK) {
        return new Air(newAirK, wallsK, state, footing, open);
    }

    /** The coldest that air or walls are at the start and at the points of a log [K]; a swing counts as it is at the start. */
    double coldestK() {
        return Stream.of(airK, wallsK)
                .flatMapToDouble(of -> DoubleStream.concat(DoubleStream.of(0), Arrays.stream(of.knots()))
                        .map(of::at))
                .min()
                .orElseThrow();
    }

    /**
     * Temperature of the air.
     *
     * @return temperature [K] as a function of time [s]
     */
    public TimeFunction airK() {
        return airK;
    }

    /**
     * Temperature of the walls that radiate.
     *
     * @return temperature [K] as a function of time [s]
     */
    public TimeFunction wallsK() {
        return wallsK;
    }

    /**
     * Speed of the air.
     *
     * @return speed [m/s], 0 in still air
     */
    public double speedMPerS() {
        return state.speedMPerS();
    }

    /**
     * Relative humidity of the air.
     *
     * @return vapour pressure over saturation pressure [-], 0 unless it was stated
     */
    public double relativeHumidity() {
        return state.relativeHumidity();
    }

    /**
     * Pressure of the air.
     *
     * @return pressure [Pa]
     */
    public double pressurePa() {
        return state.pressurePa();
    }

    AirState state() {
        return state;
    }

    Footing footing() {
        return footing;
    }

    OpenAir openAir() {
        return open;
    }

    @Override
    public Medium open(String id, double originS) {
        return new AirMedium(id, this, originS);
    }

    /**
     * What air is besides its temperature.
     *
     * @param pressurePa pressure [Pa]
     * @param speedMPerS speed [m/s], 0 for still air
     * @param relativeHumidity vapour pressure over saturation pressure [-], 0 for dry air
     */
    record AirState(double pressurePa, double speedMPerS, double relativeHumidity) {

        static final AirState STILL_AND_DRY = new AirState(DryAir.STANDARD_PRESSURE_PA, 0, 0);

        AirState atPressure(double newPressurePa) {
            return new AirState(newPressurePa, speedMPerS, relativeHumidity);
        }

        AirState atSpeed(double newSpeedMPerS) {
            return new AirState(pressurePa, newSpeedMPerS, relativeHumidity);
        }

        AirState atHumidity(double newRelativeHumidity) {
            return new AirState(pressurePa, speedMPerS, newRelativeHumidity);
        }
    }
}
