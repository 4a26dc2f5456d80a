/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.util.Locale;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.internal.Figures;
import org.beveragethermal.core.internal.Shown;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;
import org.beveragethermal.materials.units.SiValues;

/**
 * The usual figures of a history between two limits, as plain SI numbers.
 *
 * @param formatVersion version of this record's components
 * @param lengthS from the first reading to the last [s]
 * @param longestGapS longest time without a reading [s]; 0 for a prediction, which is known at every time
 * @param lowK lower limit [K]
 * @param highK upper limit [K]
 * @param lowestK lowest temperature [K]
 * @param highestK highest temperature [K]
 * @param meanK arithmetic mean over time [K]
 * @param meanKineticK mean kinetic temperature by convention [K]
 * @param belowS time below the lower limit [s]
 * @param aboveS time above the upper limit [s]
 * @param kelvinHoursBelow degree-hours below the lower limit [K h]
 * @param kelvinHoursAbove degree-hours above the upper limit [K h]
 * @param fastestKelvinPerHour steepest rate of change, negative where it falls [K/h]
 * @param greatestDailySwingK greatest swing of the whole days [K]; empty for a history shorter than a day
 */
public record StorageFigures(
        int formatVersion,
        double lengthS,
        double longestGapS,
        double lowK,
        double highK,
        double lowestK,
        double highestK,
        double meanK,
        double meanKineticK,
        double belowS,
        double aboveS,
        double kelvinHoursBelow,
        double kelvinHoursAbove,
        double fastestKelvinPerHour,
        OptionalDouble greatestDailySwingK)
        implements Answer {

    /** The version that this library writes. */
    public static final int FORMAT = 1;

    /**
     * The figures of a history.
     *
     * @param history the history
     * @param low lower limit
     * @param high upper limit, not below the lower
     * @return the figures
     * @throws IllegalArgumentException if a quantity is not a temperature or the limits are reversed
     */
    public static StorageFigures of(TemperatureHistory history, Quantity<Temperature> low, Quantity<Temperature> high) {
        double lowK = SiValues.temperatureK(low, "lower limit");
        double highK = SiValues.temperatureK(high, "upper limit");
        TemperatureHistory.requireLimits(lowK, highK);
        return new StorageFigures(
                FORMAT,
                history.endS(),
                Times.seconds(history.longestGap().length()),
                lowK,
                highK,
                history.lowest().temperatureK(),
                history.highest().temperatureK(),
                history.meanK(),
                history.meanKineticTemperatureK(MeanKineticTemperature.ACTIVATION_ENERGY.value()),
                history.secondsAbove(lowK, -1),
                history.secondsAbove(highK, 1),
                history.degreeHours(lowK, -1),
                history.degreeHours(highK, 1),
                history.fastestChange().kelvinPerHour(),
                history.dailySwingsK().stream().mapToDouble(Double::doubleValue).max());
    }

    @Override
    public String explain() {
        String swing = greatestDailySwingK.isPresent()
                ? String.format(
                        Locale.ROOT, " The greatest swing in 24 h was %.1f K.", greatestDailySwingK.getAsDouble())
                : "";
        return String.format(
                        Locale.ROOT,
                        "Over %.1f h it was %.1f to %.1f °C, %.2f °C on average; the mean kinetic temperature is %.2f °C. Below %.1f °C for"
                                + " %.1f h (%.1f K h), above %.1f °C for %.1f h (%.1f K h). The steepest change was %.2f K/h.",
                        hours(lengthS),
                        Shown.celsius(lowestK, 1),
                        Shown.celsius(highestK, 1),
                        Shown.celsius(meanK, 2),
                        Shown.celsius(meanKineticK, 2),
                        Shown.celsius(lowK, 1),
                        hours(belowS),
                        kelvinHoursBelow,
                        Shown.celsius(highK, 1),
                        hours(aboveS),
                        kelvinHoursAbove,
                        Shown.number(fastestKelvinPerHour, 2))
                + gap()
                + swing;
    }

    @Override
    public Snapshot snapshot() {
        Figures figures = Figures.with("lengthS", lengthS)
                .and("longestGapS", longestGapS)
                .and("lowK", lowK)
                .and("highK", highK)
                .and("lowestK", lowestK)
                .and("highestK", highestK)
                .and("meanK", meanK)
                .and("meanKineticK", meanKineticK)
                .and("belowS", belowS)
                .and("aboveS", aboveS)
                .and("belowKS", Times.SECONDS_PER_HOUR * kelvinHoursBelow)
                .and("aboveKS", Times.SECONDS_PER_HOUR * kelvinHoursAbove)
                .and("fastestKPerS", fastestKelvinPerHour / Times.SECONDS_PER_HOUR);
        greatestDailySwingK.ifPresent(swing -> figures.and("greatestDailySwingK", swing));
        return new Snapshot(Snapshot.FORMAT_VERSION, "storageFigures", figures.map());
    }

    private String gap() {
        return longestGapS == 0
                ? ""
                : String.format(
                        Locale.ROOT,
                        " The longest time without a reading was %.1f h, taken as a straight line.",
                        hours(longestGapS));
    }

    private static double hours(double seconds) {
        return seconds / Times.SECONDS_PER_HOUR;
    }
}
