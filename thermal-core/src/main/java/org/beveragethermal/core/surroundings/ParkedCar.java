/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.TemperatureDifference;

/**
 * Air in a closed car parked in full sun, above the temperature outdoors.
 *
 * <p>The cabin rises by ΔT (1 − e^(−t/τ)) from when the car is closed. C. McLaren, J. Null and J. Quinn (Pediatrics 116 (2005) e109, DOI
 * 10.1542/peds.2004-2368) measured a dark sedan on 16 clear sunny days at 72 °F to 96 °F (22 °C to 36 °C): on average 40 °F (22 K) within an
 * hour whatever it was outdoors, four fifths of it in the first half hour, windows ajar or not. Two figures give both constants: τ = 30
 * min/ln 4 = 21.6 min, ΔT = 23.7 K. The car starts at the temperature outdoors. A shaded car, a cloudy day or winter sun rise less, how
 * much is not stated; state the rise yourself then.
 *
 * <p>The boot has no windows. Nothing measured is at hand: it is {@linkplain #assumptions assumed} to rise by half as much at half the speed,
 * known to a factor of two.
 *
 * <p>What lies in the sun itself becomes hotter than the air; that is not in here.
 *
 * <p><b>Cautions.</b> Never leave children or animals in a closed car, not for minutes, at any season: this rise kills. Sealed drinks that
 * warm may burst or leak, sparkling ones first. Do not leave food or drinks that must stay cold; what has been warm for two
 * hours, or one hour above 32 °C, is thrown away by usual advice (from memory; local rules go first). Alcohol in a car is subject to
 * local law: opened bottles often belong in the boot, and who drives does not drink.
 *
 * <p>Theory manual, equation (4.10).
 */
public final class ParkedCar {

    private static final Source MEASURED = new Source(
            "mclaren-2005",
            "C. McLaren, J. Null and J. Quinn, Heat stress from enclosed vehicles: moderate ambient temperatures cause significant"
                    + " temperature rise in enclosed vehicles, Pediatrics 116 (2005) e109-e112, DOI 10.1542/peds.2004-2368",
            Source.Kind.PUBLISHED);

    private static final Source OWN =
            new Source("car-boot", "own estimate of a boot without windows", Source.Kind.OWN_ASSUMPTION);

    /** Rise of the cabin after an hour in full sun; the scatter between days is a judgement. */
    static final Constant RISE =
            new Constant("rise in a parked car in an hour", 40 / 1.8, "K", Uncertainty.normal(4), MEASURED);

    /** Time constant of the rise: four fifths of an hour's rise in half an hour. */
    static final Constant TIME_CONSTANT = new Constant(
            "time constant of a parked car", 1800 / Math.log(4), "s", Uncertainty.rectangularRelative(0.3), MEASURED);

    /** Rise of the boot over that of the cabin, and speed of its rise over the cabin's. */
    static final Constant BOOT =
            new Constant("boot over cabin of a parked car", 0.5, "1", Uncertainty.rectangular(0.25), OWN);

    private static final ValidityRange OUTDOORS = new ValidityRange("outdoor temperature", 253.15, 323.15, "K");
    private static final double MOST_K = 28;
    private static final double HOUR_S = 3600;
    private static final double STEP_S = 300;
    /** After as many time constants nothing changes any more. */
    private static final double ENOUGH = 6;

    private ParkedCar() {}

    /**
     * The cabin of a car in full sun.
     *
     * @param outdoors temperature outdoors, −20 °C to 50 °C; measured for 22 °C to 36 °C
     * @param closedAfter when the car is closed, since the start of the run; before, the cabin is as warm as outdoors
     * @return still air of the cabin, walls alike
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public static Air cabin(Quantity<Temperature> outdoors, Duration closedAfter) {
        return rising(outdoors, closedAfter, RISE.value(), TIME_CONSTANT.value());
    }

    /**
     * The cabin of a car that rises by another amount.
     *
     * @param outdoors temperature outdoors, −20 °C to 50 °C
     * @param closedAfter when the car is closed, since the start of the run
     * @param inAnHour rise in the first hour, 0 K to 28 K
     * @return still air of the cabin, walls alike
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Air cabin(
            Quantity<Temperature> outdoors, Duration closedAfter, Quantity<TemperatureDifference> inAnHour) {
        double rise = SiValues.temperatureDifferenceK(inAnHour, "rise of a parked car in an hour", 0, MOST_K);
        return rising(outdoors, closedAfter, rise, TIME_CONSTANT.value());
    }

    /**
     * The boot of a car in full sun, an assumption.
     *
     * @param outdoors temperature outdoors, −20 °C to 50 °C
     * @param closedAfter when the car is parked, since the start of the run
     * @return still air of the boot, walls alike
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public static Air boot(Quantity<Temperature> outdoors, Duration closedAfter) {
        double timeConstant = TIME_CONSTANT.value() / BOOT.value();
        double finalRise = BOOT.value() * RISE.value() / hourShare(TIME_CONSTANT.value());
        return rising(outdoors, closedAfter, finalRise * hourShare(timeConstant), timeConstant);
    }

    /** Part of the final rise that is reached in an hour [-]. */
    private static double hourShare(double timeConstantS) {
        return -Math.expm1(-HOUR_S / timeConstantS);
    }

    private static Air rising(
            Quantity<Temperature> outdoors, Duration closedAfter, double inAnHourK, double timeConstantS) {
        double outdoorsK = SiValues.temperatureK(outdoors, OUTDOORS.quantity(), OUTDOORS.low(), OUTDOORS.high());
        Objects.requireNonNull(closedAfter, "closedAfter");
        double finalK = inAnHourK / hourShare(timeConstantS);
        Map<Duration, Quantity<Temperature>> points = new TreeMap<>();
        for (double s = 0; s <= ENOUGH * timeConstantS; s += STEP_S) {
            double kelvin = outdoorsK - finalK * Math.expm1(-s / timeConstantS);
            points.put(closedAfter.plusSeconds((long) s), SiValues.celsiusOf(kelvin));
        }
        return Air.varying(points);
    }

    /**
     * Sources of what is measured and what is assumed.
     *
     * @return constants with their uncertainty
     */
    public static List<Constant> assumptions() {
        return List.of(RISE, TIME_CONSTANT, BOOT);
    }
}
