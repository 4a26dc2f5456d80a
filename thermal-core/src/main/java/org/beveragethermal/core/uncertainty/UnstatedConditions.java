/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fraction;
import static org.beveragethermal.materials.units.Measures.joulesPerKelvin;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.wattsPerKelvin;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.DoorOpenings;
import org.beveragethermal.core.surroundings.Footing;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.units.SiValues;

/**
 * What is seldom said of rooms, of appliances that cool and of baths, and decides how fast they do: draught and humidity, fan or cold plate,
 * shelf, load and door, stirring. To be drawn beside {@link LawScatter#all} where it is not known, so that an interval holds it.
 *
 * <p>All are our own assumptions from general knowledge, written down before they were compared with measurements: surveys of household
 * refrigerators find air from 0.9 to 11.4 °C (O. Laguerre, E. Derens, B. Palagos 2002, abstract) and radiation to the evaporator that matters
 * as much as convection where no fan runs (O. Laguerre and others 2007, abstract); for speeds, doors and loads no readable figures were found.
 * Intervals with them hold more of the measured runs than those without, and not yet as many as they should: see thermal-core/docs/measured.md.
 */
public final class UnstatedConditions {

    private static final UncertainInput ROOM_C = between("room, °C", 18, 25);
    private static final UncertainInput ROOM_HUMIDITY_PERCENT = between("humidity of a room, %", 30, 60);
    private static final UncertainInput DRAUGHT_M_PER_S = between("draught in a room, m/s", 0, 0.3);
    private static final UncertainInput FAN_PART = part("fan of an appliance");
    private static final UncertainInput COLD_PLATE_K = between("cold plate below the air, K", 0, 5);
    private static final UncertainInput STORE_KJ_PER_K = between("appliance that warms, kJ/K", 5, 20);
    private static final UncertainInput COOLING_W_PER_K = between("cooling of an appliance, W/K", 10, 30);
    private static final UncertainInput WARM_VESSELS = between("warm vessels at once", 1, 4);
    private static final UncertainInput NEIGHBOURS = between("convection left by neighbours", 0.7, 1);
    private static final UncertainInput SHELF_PART = part("which shelf");
    private static final UncertainInput SHELF_CONTACT = between("contact with a shelf, W/(m² K)", 10, 100);
    private static final UncertainInput DOOR_EVERY_MIN = between("between door openings, min", 10, 60);
    private static final UncertainInput DOOR_SHARE = between("share of a door opening", 0.2, 0.8);
    private static final UncertainInput DOOR_RECOVERY_MIN = between("recovery after a door opening, min", 1, 10);

    private static final UncertainInput STIRRING_PART = part("stirring");

    /** By hand, now and then. */
    private static final double FASTEST_STIRRING_M_PER_S = 0.1;

    private static final double SLOWEST_FAN_M_PER_S = 0.1;
    private static final double FASTEST_FAN_M_PER_S = 0.5;

    /** For so long doors are opened; later it is night. */
    private static final Duration AWAKE = Duration.ofHours(12);

    private static final double SECONDS_PER_MINUTE = 60;

    private UnstatedConditions() {}

    private static UncertainInput between(String name, double low, double high) {
        return new UncertainInput(name, 0.5 * (low + high), Uncertainty.rectangular(0.5 * (high - low)));
    }

    private static UncertainInput part(String name) {
        return between(name + ", part", 0, 1);
    }

    /**
     * What is drawn; all evenly between two ends.
     *
     * @return one input each: of rooms, of appliances, of baths
     */
    public static List<UncertainInput> all() {
        return List.of(
                ROOM_C,
                ROOM_HUMIDITY_PERCENT,
                DRAUGHT_M_PER_S,
                FAN_PART,
                COLD_PLATE_K,
                STORE_KJ_PER_K,
                COOLING_W_PER_K,
                WARM_VESSELS,
                NEIGHBOURS,
                SHELF_PART,
                SHELF_CONTACT,
                DOOR_EVERY_MIN,
                DOOR_SHARE,
                DOOR_RECOVERY_MIN,
                STIRRING_PART);
    }

    /**
     * What is drawn, and the laws.
     *
     * @return the inputs of {@link #all}, then those of {@link LawScatter#all}
     */
    public static List<UncertainInput> withLaws() {
        return Stream.concat(all().stream(), LawScatter.all().stream()).toList();
    }

    private static double in(Draw draw, UncertainInput input) {
        return draw.value(input.name());
    }

    /**
     * A room of which nothing is said.
     *
     * @param draw a draw of at least {@link #all}
     * @return 18 to 25 °C
     * @throws IllegalArgumentException if the draw has no such input
     */
    public static Quantity<Temperature> roomTemperature(Draw draw) {
        return celsius(in(draw, ROOM_C));
    }

    /**
     * Mean speed of the air in a room, from air at rest to a draught that is felt.
     *
     * @param draw a draw of at least {@link #all}
     * @return 0 to 0.3 m/s
     * @throws IllegalArgumentException if the draw has no such input
     */
    public static Quantity<Speed> draught(Draw draw) {
        return metresPerSecond(in(draw, DRAUGHT_M_PER_S));
    }

    /**
     * Relative humidity of a room.
     *
     * @param draw a draw of at least {@link #all}
     * @return 30 to 60 %
     * @throws IllegalArgumentException if the draw has no such input
     */
    public static Quantity<Dimensionless> roomHumidity(Draw draw) {
        return percent(in(draw, ROOM_HUMIDITY_PERCENT));
    }

    /**
     * Speed of the air along a vessel in an appliance: half of them have no fan.
     *
     * @param draw a draw of at least {@link #all}
     * @return 0, or 0.1 to 0.5 m/s
     * @throws IllegalArgumentException if the draw has no such input
     */
    public static Quantity<Speed> fan(Draw draw) {
        double beyondHalf = 2 * in(draw, FAN_PART) - 1;
        return metresPerSecond(
                beyondHalf < 0 ? 0 : SLOWEST_FAN_M_PER_S + (FASTEST_FAN_M_PER_S - SLOWEST_FAN_M_PER_S) * beyondHalf);
    }

    /**
     * What goods beside a vessel in an appliance leave of convection: a factor on {@code Multipliers.AIR_FILM}.
     *
     * @param draw a draw of at least {@link #all}
     * @return 0.7 to 1
     * @throws IllegalArgumentException if the draw has no such input
     */
    public static double convectionLeft(Draw draw) {
        return in(draw, NEIGHBOURS);
    }

    /**
     * How the water of a bath moves along a vessel: half of all baths are still, the others are stirred by hand now and then.
     *
     * @param draw a draw of at least {@link #all}
     * @return still, or up to 0.1 m/s
     * @throws IllegalArgumentException if the draw has no such input
     */
    public static Agitation stirring(Draw draw) {
        return new Agitation(Math.max(0, 2 * in(draw, STIRRING_PART) - 1) * FASTEST_STIRRING_M_PER_S);
    }

    /**
     * Air of a room with draught and humidity as drawn.
     *
     * @param still the room as far as it is known
     * @param draw a draw of at least {@link #all}
     * @return the same with another speed and humidity
     * @throws IllegalArgumentException if the draw has no such input
     */
    public static Air room(Air still, Draw draw) {
        return still.withSpeed(draught(draw)).withRelativeHumidity(roomHumidity(draw));
    }

    /**
     * A refrigerator or freezer in use, with or without a fan as drawn. What neighbours leave of convection is no part of it: see {@link
     * #convectionLeft}. A freezer is made of it with {@code Freezer.of}, which adds its cautions.
     *
     * @param setPoint temperature of its air when it is left alone, −30 °C to 20 °C
     * @param from when the vessel is put in, since the start of the run: then its door is opened first
     * @param draw a draw of at least {@link #all}
     * @return the appliance
     * @throws IllegalArgumentException if the draw has no such input, or a quantity is outside its range
     */
    public static Refrigerator appliance(Quantity<Temperature> setPoint, Duration from, Draw draw) {
        return appliance(setPoint, fan(draw), from, draw);
    }

    /**
     * A refrigerator or freezer in use, of which is known how fast its air moves: opened now and then for the first twelve hours only, warmed by one to four
     * vessels that were put in together; without a fan a cold plate is one of its walls.
     *
     * @param setPoint temperature of its air when it is left alone, −30 °C to 20 °C
     * @param fan speed of its air along the vessel, 0 if it has no fan
     * @param from when the vessel is put in, since the start of the run: then its door is opened first
     * @param draw a draw of at least {@link #all}
     * @return the appliance
     * @throws IllegalArgumentException if the draw has no such input, or a quantity is outside its range
     */
    public static Refrigerator appliance(
            Quantity<Temperature> setPoint, Quantity<Speed> fan, Duration from, Draw draw) {
        double vessels = in(draw, WARM_VESSELS);
        Refrigerator appliance = Refrigerator.at(setPoint)
                .withFan(fan)
                .on(shelf(draw))
                .withDoorOpenings(door(from, draw))
                .withLoad(
                        joulesPerKelvin(1000 * in(draw, STORE_KJ_PER_K) / vessels),
                        wattsPerKelvin(in(draw, COOLING_W_PER_K) / vessels));
        return fan.getValue().doubleValue() > 0
                ? appliance
                : appliance.withWalls(kelvins(SiValues.temperatureK(setPoint, "set point") - in(draw, COLD_PLATE_K)));
    }

    /** A closed shelf, a grid, or a shelf that conducts, equally often. */
    private static Footing shelf(Draw draw) {
        double which = 3 * in(draw, SHELF_PART);
        if (which < 1) {
            return Footing.insulating();
        }
        return which < 2 ? Footing.open() : Footing.contact(wattsPerSquareMetreKelvin(in(draw, SHELF_CONTACT)));
    }

    private static DoorOpenings door(Duration from, Draw draw) {
        double everyS = SECONDS_PER_MINUTE * in(draw, DOOR_EVERY_MIN);
        List<Duration> times = DoubleStream.iterate(0, timeS -> timeS < AWAKE.toSeconds(), timeS -> timeS + everyS)
                .mapToObj(timeS -> from.plus(Duration.ofSeconds(Math.round(timeS))))
                .toList();
        return DoorOpenings.of(
                roomTemperature(draw),
                fraction(in(draw, DOOR_SHARE)),
                Duration.ofSeconds(Math.round(SECONDS_PER_MINUTE * in(draw, DOOR_RECOVERY_MIN))),
                times);
    }
}
