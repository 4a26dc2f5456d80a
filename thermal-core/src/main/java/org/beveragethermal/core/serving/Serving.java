/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

import java.time.Duration;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.beveragethermal.core.scene.FallingStream;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * A glass of something: what is poured into what, where it stands, and how long it is drunk.
 *
 * <p>Drinking is even: sips of equal size spread over the time, the last of which empties the glass half a sip's time before the end, as
 * {@link Scene.Builder#drinkEvenly} does. The wall of the glass has a temperature of its own when the drink is poured. Immutable.
 */
public final class Serving {

    private static final double LEAST_PORTION_M3 = 1e-6;
    private static final double COLDEST_GLASS_K = 233.15;
    private static final double HOTTEST_GLASS_K = 373.15;
    private static final double ROOM_C = 20;
    private static final Duration USUALLY = Duration.ofMinutes(20);
    private static final Duration LONGEST = Duration.ofDays(1);
    private static final int STREAM_PASSES = 4;
    private static final String GLASS = "glass";

    private final Liquid drink;
    private final double portionM3;
    private final Vessel glass;
    private final double glassK;
    private final Surroundings around;
    private final Duration drinking;
    private final Duration origin;
    private final NetworkSolver solver;

    private Serving(
            Liquid drink,
            double portionM3,
            Vessel glass,
            double glassK,
            Surroundings around,
            Duration drinking,
            Duration origin,
            NetworkSolver solver) {
        this.drink = drink;
        this.portionM3 = portionM3;
        this.glass = glass;
        this.glassK = glassK;
        this.around = around;
        this.drinking = drinking;
        this.origin = origin;
        this.solver = solver;
    }

    /**
     * A glass in still air of 20 °C, drunk in twenty minutes unless said otherwise.
     *
     * @param drink what is poured
     * @param portion how much, at 20 °C: 1 mL to what the glass holds to the brim
     * @param glass the glass
     * @param glassTemperature temperature of the empty glass when the drink is poured, −40 °C to 100 °C: that of the room, or pre-chilled or
     *     warmed
     * @return the serving
     * @throws IllegalArgumentException if the portion leaves the glass empty
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the portion is larger than the glass or the temperature is outside its
     *     range
     */
    public static Serving of(
            Liquid drink, Quantity<Volume> portion, Vessel glass, Quantity<Temperature> glassTemperature) {
        return new Serving(
                Objects.requireNonNull(drink, "drink"),
                portionM3(portion, glass),
                glass,
                SiValues.temperatureK(
                        glassTemperature, "temperature of the empty glass", COLDEST_GLASS_K, HOTTEST_GLASS_K),
                Air.at(Measures.celsius(ROOM_C)),
                USUALLY,
                Duration.ZERO,
                NetworkSolver.standard());
    }

    private static double portionM3(Quantity<Volume> portion, Vessel glass) {
        double m3 = SiValues.volumeM3(portion, "portion");
        if (m3 < LEAST_PORTION_M3) {
            throw new IllegalArgumentException("portion " + portion + " leaves the " + glass.name()
                    + " empty: expected at least 1 mL and at most what it holds to the brim");
        }
        return SiValues.volumeM3(portion, "portion in a " + glass.name(), LEAST_PORTION_M3, glass.brimfulVolumeM3());
    }

    /**
     * The same glass elsewhere.
     *
     * @param surroundings air with sun, wind and humidity, a hand around the glass, or any other
     * @return a new serving
     */
    public Serving in(Surroundings surroundings) {
        return new Serving(
                drink,
                portionM3,
                glass,
                glassK,
                Objects.requireNonNull(surroundings, "surroundings"),
                drinking,
                origin,
                solver);
    }

    /**
     * The same glass drunk faster or more slowly.
     *
     * @param time from pouring to the end of drinking, a second to a day
     * @return a new serving
     * @throws IllegalArgumentException if the time is shorter than a second or longer than a day
     */
    public Serving drunkOver(Duration time) {
        if (time.compareTo(Duration.ofSeconds(1)) < 0 || time.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException("drinking time " + time + ": expected a second to a day, " + LONGEST);
        }
        return new Serving(drink, portionM3, glass, glassK, around, time, origin, solver);
    }

    /**
     * The same glass with more or less in it.
     *
     * @param portion how much, at 20 °C: 1 mL to what the glass holds to the brim
     * @return a new serving
     * @throws IllegalArgumentException if the portion leaves the glass empty
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the portion is larger than the glass
     */
    public Serving withPortion(Quantity<Volume> portion) {
        return new Serving(drink, portionM3(portion, glass), glass, glassK, around, drinking, origin, solver);
    }

    /**
     * The same glass, pre-chilled or warmed.
     *
     * @param temperature temperature of the empty glass when the drink is poured, −40 °C to 100 °C
     * @return a new serving
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public Serving withGlassAt(Quantity<Temperature> temperature) {
        return withGlassK(
                SiValues.temperatureK(temperature, "temperature of the empty glass", COLDEST_GLASS_K, HOTTEST_GLASS_K));
    }

    /** The glass at a temperature, as far as glasses go. */
    Serving withGlassK(double temperatureK) {
        double kept = Math.max(COLDEST_GLASS_K, Math.min(HOTTEST_GLASS_K, temperatureK));
        return new Serving(drink, portionM3, glass, kept, around, drinking, origin, solver);
    }

    /** Half as much, drunk in half the time. */
    Serving halved() {
        return new Serving(drink, portionM3 / 2, glass, glassK, around, drinking.dividedBy(2), origin, solver);
    }

    /** Whether there is enough to halve. */
    boolean canBeHalved() {
        return portionM3 >= 2 * LEAST_PORTION_M3 && drinking.compareTo(Duration.ofSeconds(2)) >= 0;
    }

    /**
     * The same glass poured later on the clock of weather that changes.
     *
     * @param time time on that clock at which it is poured, ≥ 0
     * @return a new serving
     * @throws IllegalArgumentException if the time is negative
     */
    public Serving pouredAfter(Duration time) {
        if (time.isNegative()) {
            throw new IllegalArgumentException("poured after " + time + ": expected at least 0");
        }
        return new Serving(drink, portionM3, glass, glassK, around, drinking, time, solver);
    }

    /**
     * The same glass run by another solver.
     *
     * @param newSolver tolerance, step budget and monitor; its multipliers are replaced by those of each question
     * @return a new serving
     */
    public Serving with(NetworkSolver newSolver) {
        return new Serving(
                drink, portionM3, glass, glassK, around, drinking, origin, Objects.requireNonNull(newSolver, "solver"));
    }

    /**
     * How warm the contents of a bottle must be so that the drink arrives in the glass at a temperature: what the falling stream gains from
     * the air or loses to it is made good. From a bottle whose contents are not all of one temperature, the mean counts where all of it is
     * poured; a bottle that has stratified pours its top first.
     *
     * @param pouring temperature at which it arrives, within the range of the drink
     * @param air temperature of the air, −40 °C to 100 °C
     * @param lasting how long pouring the portion takes, 0.1 s to an hour
     * @param fall how far it falls, 1 mm to 2 m
     * @return mean temperature of the contents
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range, or the contents would have to be
     * @see FallingStream
     */
    public Quantity<Temperature> beforePouring(
            Quantity<Temperature> pouring, Quantity<Temperature> air, Duration lasting, Quantity<Length> fall) {
        double pouringK = SiValues.temperatureK(pouring, "pouring temperature");
        double airK = SiValues.temperatureK(air, "temperature of the air");
        double contentsK = pouringK;
        // The part hardly depends on the temperature of the drink: each pass leaves less than a hundredth of the error
        // before.
        for (int pass = 0; pass < STREAM_PASSES; pass++) {
            double part =
                    FallingStream.exchangedPart(drink, contentsK, airK, Measures.cubicMetres(portionM3), lasting, fall);
            contentsK = (pouringK - part * airK) / (1 - part);
        }
        drink.temperatureRange().require(contentsK, "contents before pouring");
        return SiValues.celsiusOf(contentsK);
    }

    Liquid drink() {
        return drink;
    }

    Vessel glass() {
        return glass;
    }

    double glassK() {
        return glassK;
    }

    Surroundings around() {
        return around;
    }

    double portionM3() {
        return portionM3;
    }

    Duration drinking() {
        return drinking;
    }

    Duration origin() {
        return origin;
    }

    /** The coldest at which the drink is liquid and described [K]. */
    double coldestK() {
        double described = drink.temperatureRange().low();
        return drink instanceof Beverage beverage ? Math.max(described, beverage.freezingOnsetK()) : described;
    }

    /** One run: the course of the drink in the glass from pouring to the last mouthful. */
    GlassCourse run(double pouringK, Map<String, Double> multipliers) {
        // The jug only hands the drink over at the first moment; where it stands has no effect.
        Scene scene = Scene.builder()
                .startingAfter(origin)
                .gear("place", around)
                .gear("aside", Air.at(Measures.celsius(ROOM_C)))
                .vessel(
                        "jug",
                        glass.filledWith(drink, Measures.cubicMetres(portionM3), SiValues.celsiusOf(pouringK)),
                        "aside")
                .emptyVessel(GLASS, glass, SiValues.celsiusOf(glassK), "place")
                .pourAll("jug", Duration.ZERO, GLASS)
                .drinkEvenly(GLASS, Duration.ZERO, drinking, Measures.cubicMetres(0))
                .build();
        ScenePrediction run = scene.predict(drinking, solver.withMultipliers(multipliers));
        return GlassCourse.of(run.vessel(GLASS), 0, Words.seconds(drinking));
    }
}
