/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.time.Duration;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.units.SiValues;

/**
 * A room or terrace with still air and no sun: free convection to the air, radiation to the walls.
 *
 * <p>Immutable. Temperatures from −40 °C to 80 °C.
 */
public final class StillAir implements Surroundings {

    private static final double COLDEST_K = 233.15;
    private static final double WARMEST_K = 353.15;
    private static final double LOWEST_PRESSURE_PA = 50_000;
    private static final double HIGHEST_PRESSURE_PA = 110_000;

    private final TimeFunction airK;
    private final TimeFunction wallsK;
    private final double pressurePa;
    private final Footing footing;

    private StillAir(TimeFunction airK, TimeFunction wallsK, double pressurePa, Footing footing) {
        this.airK = airK;
        this.wallsK = wallsK;
        this.pressurePa = pressurePa;
        this.footing = footing;
    }

    /**
     * Air and walls at one temperature.
     *
     * @param temperature −40 °C to 80 °C
     * @return the room
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public static StillAir at(Quantity<Temperature> temperature) {
        TimeFunction constant = TimeFunction.constant(airTemperatureK(temperature));
        return new StillAir(constant, constant, DryAir.STANDARD_PRESSURE_PA, Footing.insulating());
    }

    /**
     * Air and walls that follow straight lines between given points; constant before the first and after the last.
     *
     * @param temperatures temperature by time since the start of the run, at least one, each −40 °C to 80 °C; not modified
     * @return the room
     * @throws IllegalArgumentException if there is no point
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside its range
     */
    public static StillAir varying(Map<Duration, Quantity<Temperature>> temperatures) {
        TimeFunction line = line(temperatures);
        return new StillAir(line, line, DryAir.STANDARD_PRESSURE_PA, Footing.insulating());
    }

    /**
     * The same air between walls of another temperature.
     *
     * @param radiantTemperature temperature of the surroundings for radiation, −40 °C to 80 °C
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public StillAir withWalls(Quantity<Temperature> radiantTemperature) {
        return new StillAir(airK, TimeFunction.constant(airTemperatureK(radiantTemperature)), pressurePa, footing);
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
    public StillAir withWalls(Map<Duration, Quantity<Temperature>> radiantTemperatures) {
        return new StillAir(airK, line(radiantTemperatures), pressurePa, footing);
    }

    /**
     * The same room at another air pressure.
     *
     * @param pressure 50 kPa to 110 kPa
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the pressure is outside its range
     */
    public StillAir withPressure(Quantity<Pressure> pressure) {
        return new StillAir(
                airK,
                wallsK,
                SiValues.pressurePa(pressure, "air pressure", LOWEST_PRESSURE_PA, HIGHEST_PRESSURE_PA),
                footing);
    }

    /**
     * The same room with something else under the vessels.
     *
     * @param newFooting what they stand on; insulating unless said otherwise
     * @return a new value
     */
    public StillAir on(Footing newFooting) {
        return new StillAir(airK, wallsK, pressurePa, Objects.requireNonNull(newFooting, "footing"));
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

    double pressurePa() {
        return pressurePa;
    }

    Footing footing() {
        return footing;
    }

    @Override
    public Medium open(String id, double originS) {
        return new AirMedium(id, this, originS);
    }

    private static TimeFunction line(Map<Duration, Quantity<Temperature>> temperatures) {
        SortedMap<Double, Double> points = new TreeMap<>();
        temperatures.forEach((time, temperature) -> points.put(seconds(time), airTemperatureK(temperature)));
        return TimeFunction.linear(
                points.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                points.values().stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static double airTemperatureK(Quantity<Temperature> temperature) {
        return SiValues.temperatureK(temperature, "air temperature", COLDEST_K, WARMEST_K);
    }

    private static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }
}
