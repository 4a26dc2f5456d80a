/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.airing;

import java.time.Duration;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Predicts a drink from the moment it is decanted, or its bottle opened, to its last glass. Immutable.
 *
 * <p>Unless said otherwise the empty decanter has 20 °C, and the drink is poured from evenly for an hour after the first glass.
 */
public final class AiringForecast {
    private static final double ROOM_C = 20;
    private static final Duration USUALLY = Duration.ofHours(1);
    private static final Duration LONGEST = Duration.ofDays(1);

    /** The last glass of six is poured at the end: 125 mL of 750 mL (common practice, no source). */
    private static final double LAST_GLASS = 1.0 / 6;

    private static final double FOUND_K = 1e-4;
    private static final int MOST_RUNS = 60;

    private static final String PLACE = "place";
    private static final String BOTTLE = "bottle";
    private static final String STANDING = "standing";

    private final Airing airing;
    private final FilledVessel bottle;
    private final Surroundings around;
    private final double vesselK;
    private final Duration drinking;
    private final Duration origin;

    private AiringForecast(
            Airing airing,
            FilledVessel bottle,
            Surroundings around,
            double vesselK,
            Duration drinking,
            Duration origin) {
        this.airing = airing;
        this.bottle = bottle;
        this.around = around;
        this.vesselK = vesselK;
        this.drinking = drinking;
        this.origin = origin;
    }

    /**
     * A forecast.
     *
     * @param airing how the drink gets air; its place is that of the surroundings, of which its id is not looked up
     * @param bottle the bottle as it is when it is decanted or opened
     * @param around what is around the drink at the place
     * @return the forecast
     */
    public static AiringForecast of(Airing airing, FilledVessel bottle, Surroundings around) {
        return new AiringForecast(
                Objects.requireNonNull(airing, "airing"),
                Objects.requireNonNull(bottle, "bottle"),
                Objects.requireNonNull(around, "around"),
                SiValues.temperatureK(Measures.celsius(ROOM_C), "room"),
                USUALLY,
                Duration.ZERO);
    }

    /**
     * The same with the empty decanter at another temperature; an opened bottle has that of its drink.
     *
     * @param temperature temperature of the empty vessel, −40 °C to 100 °C
     * @return a new forecast
     * @throws OutOfRangeException if the temperature is outside its range
     */
    public AiringForecast withVesselAt(Quantity<Temperature> temperature) {
        double kelvins = SiValues.temperatureK(
                temperature, "temperature of the empty vessel", Airing.COLDEST_VESSEL_K, Airing.HOTTEST_VESSEL_K);
        return new AiringForecast(airing, bottle, around, kelvins, drinking, origin);
    }

    /**
     * The same drunk faster or more slowly.
     *
     * @param time from the first glass to the last, a minute to a day
     * @return a new forecast
     * @throws IllegalArgumentException if the time is outside its range
     */
    public AiringForecast drunkOver(Duration time) {
        if (time.compareTo(Duration.ofMinutes(1)) < 0 || time.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException(
                    "time from the first glass to the last " + time + ": expected a minute to a day");
        }
        return new AiringForecast(airing, bottle, around, vesselK, time, origin);
    }

    /**
     * The same begun later on the clock of weather that changes.
     *
     * @param time time on that clock at which it is decanted or opened, ≥ 0
     * @return a new forecast
     * @throws IllegalArgumentException if the time is negative
     */
    public AiringForecast begunAfter(Duration time) {
        if (time.isNegative()) {
            throw new IllegalArgumentException("airing begun after " + time + ": expected at least 0");
        }
        return new AiringForecast(airing, bottle, around, vesselK, drinking, time);
    }

    /**
     * The prediction.
     *
     * @return the course of the drink from decanting or opening to the last glass
     * @throws OutOfRangeException if the drink does not fit the vessel
     * @throws IllegalArgumentException if no vessel of the table holds it
     */
    public AiringCourse predict() {
        return predict(bottle);
    }

    /**
     * Temperature at which the first glass is poured: as {@link #predict} has it, in a tenth of the time, as nothing is poured yet.
     *
     * @return the temperature
     * @throws OutOfRangeException if the drink does not fit the vessel
     * @throws IllegalArgumentException if no vessel of the table holds it
     */
    public Quantity<Temperature> firstPour() {
        return SiValues.celsiusOf(firstPourK(bottle.temperatureK()));
    }

    private AiringCourse predict(FilledVessel begun) {
        Duration end = airing.before().plus(drinking);
        Scene scene = scene(begun)
                .drinkEvenly(STANDING, airing.before(), end, Measures.cubicMetres(LAST_GLASS * Airing.volumeM3(begun)))
                .build();
        return new AiringCourse(airing, scene.predict(end).vessel(STANDING), drinking);
    }

    private Scene.Builder scene(FilledVessel begun) {
        Scene.Builder scene = Scene.builder().startingAfter(origin).gear(PLACE, around);
        return airing.decanted()
                ? scene.vessel(BOTTLE, begun, PLACE)
                        .emptyVessel(STANDING, airing.vesselFor(begun), SiValues.celsiusOf(vesselK), PLACE)
                        .pourAll(BOTTLE, Duration.ZERO, STANDING)
                : scene.vessel(STANDING, airing.vesselFor(begun, SiValues.celsiusOf(begun.temperatureK())), PLACE);
    }

    /**
     * How warm the drink must be when it is decanted, or its bottle opened, so that its first glass has a temperature.
     *
     * @param firstPour wanted temperature of the first glass
     * @return temperature of bottle and drink at the beginning, or that there is none
     * @throws IllegalArgumentException if the quantity is null, a difference or not finite, or no vessel of the table holds the drink
     */
    public DecantingAnswer decantingFor(Quantity<Temperature> firstPour) {
        double wantedK = SiValues.temperatureK(firstPour, "temperature of the first glass");
        double lowK = coldestK();
        double highK = Math.max(lowK, warmestK());
        double coldestPourK = firstPourK(lowK);
        double warmestPourK = firstPourK(highK);
        if (!(wantedK >= coldestPourK && wantedK <= warmestPourK)) {
            return new DecantingAnswer.Never(wantedK, coldestPourK, warmestPourK);
        }
        double foundK = new BrentSolver(FOUND_K).solve(MOST_RUNS, beginK -> firstPourK(beginK) - wantedK, lowK, highK);
        return new DecantingAnswer.At(foundK);
    }

    private double coldestK() {
        double described = bottle.liquid().temperatureRange().low();
        return bottle.liquid() instanceof Beverage drink ? Math.max(described, drink.freezingOnsetK()) : described;
    }

    /** As warm as the drink is described and fits its bottle. */
    private double warmestK() {
        double described = bottle.liquid().temperatureRange().high();
        return Math.min(described, bottle.brimfulAtK().orElse(described));
    }

    private double firstPourK(double beginK) {
        if (airing.before().isZero()) {
            return beginK;
        }
        FilledVessel begun = bottle.atTemperature(SiValues.celsiusOf(beginK));
        Prediction standing = scene(begun).build().predict(airing.before()).vessel(STANDING);
        return standing.meanTemperatureK(standing.trajectory().endS());
    }
}
