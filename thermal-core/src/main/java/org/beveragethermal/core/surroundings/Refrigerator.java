/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.materials.units.HeatCapacity;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.TemperatureDifference;
import org.beveragethermal.materials.units.ThermalConductance;
import org.jspecify.annotations.Nullable;

/**
 * A refrigerator, or a freezer: air held at a temperature, still and dry unless said otherwise, between walls of that temperature.
 *
 * <p>The temperature is constant ({@link #at}), {@linkplain #cycling cycles} with the thermostat or {@linkplain #following follows a log};
 * {@linkplain #withDoorOpenings door openings} warm the air for a while. All of these impose the temperature, however much is put in: a
 * crowded refrigerator is slower than this one. One {@linkplain #withLoad that feels its load} is warmed by warm bottles and recovers.
 * A {@linkplain #withFan fan} moves the air as {@link Air#withSpeed} does.
 *
 * <p>In a freezer, lumped drinks freeze at their liquidus; see {@link Freezer}. Air temperature from −30 °C to 20 °C. Immutable.
 *
 * <p>Theory manual, equation (4.1).
 */
public final class Refrigerator implements Surroundings {

    private static final AirTemperatures TEMPERATURES = new AirTemperatures("refrigerator temperature", 243.15, 293.15);
    private static final double LEAST_J_PER_K = 10;
    private static final double MOST_J_PER_K = 1e6;
    private static final double LEAST_W_PER_K = 0.1;
    private static final double MOST_W_PER_K = 1000;

    private final Air inside;
    private final double warmestK;
    private final boolean ownWalls;
    private final @Nullable DoorOpenings door;
    private final @Nullable Load load;

    /** What makes the air give way to a load: its heat capacity [J/K] and the conductance to the set point [W/K]. */
    private record Load(double capacityJPerK, double coolingWPerK) {}

    private Refrigerator(
            Air inside, double warmestK, boolean ownWalls, @Nullable DoorOpenings door, @Nullable Load load) {
        this.inside = inside;
        this.warmestK = warmestK;
        this.ownWalls = ownWalls;
        this.door = door;
        this.load = load;
    }

    /**
     * A refrigerator held at a temperature.
     *
     * @param airTemperature −30 °C to 20 °C
     * @return the refrigerator
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public static Refrigerator at(Quantity<Temperature> airTemperature) {
        return held(TEMPERATURES.constant(airTemperature), TEMPERATURES.temperatureK(airTemperature));
    }

    /**
     * A refrigerator whose air follows straight lines between given points, such as a log; constant before the first and after the last.
     *
     * @param airTemperatures temperature by time since the start of the run, at least one, each −30 °C to 20 °C; not modified
     * @return the refrigerator
     * @throws IllegalArgumentException if there is no point
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside its range
     */
    public static Refrigerator following(Map<Duration, Quantity<Temperature>> airTemperatures) {
        TimeFunction line = TEMPERATURES.line(airTemperatures);
        double warmest = airTemperatures.values().stream()
                .mapToDouble(TEMPERATURES::temperatureK)
                .max()
                .orElseThrow();
        return held(line, warmest);
    }

    /**
     * A refrigerator whose thermostat lets the air swing about a mean, as a cosine that is warmest at the start.
     *
     * @param mean mean temperature, −30 °C to 20 °C
     * @param amplitude half the difference between warmest and coldest, ≥ 0, both within −30 °C to 20 °C
     * @param period 1 s to 10 years; some 20 min to an hour for a household appliance (from memory)
     * @return the refrigerator
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Refrigerator cycling(
            Quantity<Temperature> mean, Quantity<TemperatureDifference> amplitude, Duration period) {
        TimeFunction swing = TEMPERATURES.periodic(mean, amplitude, period, Duration.ZERO);
        return held(swing, swing.at(0));
    }

    private static Refrigerator held(TimeFunction airK, double warmestK) {
        return new Refrigerator(Air.following(airK), warmestK, false, null, null);
    }

    /**
     * The same refrigerator with another shelf.
     *
     * @param footing what vessels stand on; insulating unless said otherwise, {@link Footing#open()} for a wire shelf
     * @return a new value
     */
    public Refrigerator on(Footing footing) {
        return with(inside.on(footing));
    }

    /**
     * The same refrigerator with a fan.
     *
     * @param airSpeed speed of the air at the vessels, 0 m/s to 20 m/s; some 0.1 m/s to 0.5 m/s in a fan-cooled household appliance (own
     *     estimate, no source)
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the speed is outside its range
     */
    public Refrigerator withFan(Quantity<Speed> airSpeed) {
        return with(inside.withSpeed(airSpeed));
    }

    /**
     * The same refrigerator with moist air.
     *
     * @param relativeHumidity 0 to 100 %, at the temperature that is imposed on the air; kept through door openings and loads
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the humidity is negative or above 100 %
     */
    public Refrigerator withRelativeHumidity(Quantity<Dimensionless> relativeHumidity) {
        return with(inside.withRelativeHumidity(relativeHumidity));
    }

    /**
     * The same refrigerator with walls of another temperature, such as a cold plate at its back.
     *
     * @param radiantTemperature temperature for radiation, −40 °C to 80 °C; that of the air unless said otherwise
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public Refrigerator withWalls(Quantity<Temperature> radiantTemperature) {
        return new Refrigerator(inside.withWalls(radiantTemperature), warmestK, true, door, load);
    }

    /**
     * The same refrigerator with a door that is opened. The walls keep their temperature, unless they belong to the load.
     *
     * @param openings when, and what it does to the air
     * @return a new value
     */
    public Refrigerator withDoorOpenings(DoorOpenings openings) {
        return new Refrigerator(inside, warmestK, ownWalls, Objects.requireNonNull(openings, "openings"), load);
    }

    /**
     * The same refrigerator, warmed by what is put into it: its air, with the shelves and inner walls whose temperature goes along, is one
     * store of heat. It passes heat to the temperature that would otherwise be imposed, door openings included, by a conductance: the
     * cooling power per kelvin above the set point. It starts there, and empty it returns there with the time constant heat capacity over
     * conductance. Vessels exchange heat with the store by convection and, unless the walls have a {@linkplain #withWalls
     * temperature of their own}, by radiation.
     *
     * <p>A household refrigerator may have some 10 kJ/K and 10 W/K to 30 W/K (own estimate from a cooling power of about 100 W and a few
     * kelvins of warming; no source).
     *
     * @param heatCapacity heat capacity of what goes along with the air, 10 J/K to 1 MJ/K
     * @param cooling cooling power per kelvin above the set point, 0.1 W/K to 1000 W/K
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public Refrigerator withLoad(Quantity<HeatCapacity> heatCapacity, Quantity<ThermalConductance> cooling) {
        Load felt = new Load(
                SiValues.heatCapacityJPerK(
                        heatCapacity, "heat capacity of the refrigerator", LEAST_J_PER_K, MOST_J_PER_K),
                SiValues.conductanceWPerK(cooling, "cooling of the refrigerator", LEAST_W_PER_K, MOST_W_PER_K));
        return new Refrigerator(inside, warmestK, ownWalls, door, felt);
    }

    private Refrigerator with(Air newInside) {
        return new Refrigerator(newInside, warmestK, ownWalls, door, load);
    }

    /** The warmest that the thermostat lets the air become, door openings and loads apart [K]. */
    double warmestK() {
        return warmestK;
    }

    @Override
    public Medium open(String id, double originS) {
        return open(id, originS, List.of());
    }

    /** Opens it with something to say to the user. */
    Medium open(String id, double originS, List<String> notes) {
        Air imposed = door == null ? inside : inside.withAir(new OpenedAir(inside.airK(), door));
        if (load == null) {
            return new AirMedium(id, imposed, originS).saying(notes);
        }
        TimeFunction setPointK = imposed.airK().startingAt(originS);
        Boundary setPoint = Boundary.varying(id + " set point", setPointK);
        Node air = Node.sensible(id + " air", load.capacityJPerK(), setPointK.at(0));
        End walls = ownWalls ? Boundary.varying(id + " walls", inside.wallsK().startingAt(originS)) : air;
        DirectPath cooling =
                DirectPath.of(id + " cooling", setPoint, air, "cooling", HeatLaw.conductance(load.coolingWPerK()));
        return new AirMedium(
                        new AirMedium.Ends(air, walls, setPoint),
                        inside.state(),
                        inside.footing(),
                        List.of(air),
                        List.of(cooling),
                        List.of())
                .saying(notes);
    }
}
