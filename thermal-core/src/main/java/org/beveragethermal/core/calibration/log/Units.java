/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Tells units by what is stated, and by what numbers can be. */
final class Units {
    /** What drinks and rooms have, widely [°C]. */
    private static final double ORDINARY_LOW_C = -30;

    private static final double ORDINARY_HIGH_C = 45;
    /** Above this a log without a unit may be in °F as well as in °C [°C]. */
    private static final double WARM_C = 35;

    private static final double FITS = 0.95;

    private final LogFormat format;
    private final ReportNotes notes;

    Units(LogFormat format, ReportNotes notes) {
        this.format = format;
        this.notes = notes;
    }

    /** Gives every series its unit, or asks. */
    void decide(List<RawSeries> series, Optional<TemperatureUnit> stated) {
        List<RawSeries> open =
                series.stream().filter(one -> one.unit().isEmpty()).toList();
        if (format.unit.isPresent()) {
            series.forEach(one -> one.setUnit(format.unit.get()));
        } else if (stated.isPresent() && !open.isEmpty()) {
            notes.note(
                    LogNote.Kind.INFERRED,
                    "temperatures are in " + stated.get().symbol() + ": the lines above name no other unit");
            open.forEach(one -> one.setUnit(stated.get()));
        } else if (!open.isEmpty()) {
            TemperatureUnit likely = infer(open);
            open.forEach(one -> one.setUnit(likely));
        }
        series.forEach(this::doubt);
    }

    private TemperatureUnit infer(List<RawSeries> open) {
        boolean celsius = ordinary(open, TemperatureUnit.CELSIUS);
        boolean fahrenheit = ordinary(open, TemperatureUnit.FAHRENHEIT);
        if (ordinary(open, TemperatureUnit.KELVIN)) {
            notes.note(
                    LogNote.Kind.INFERRED, "temperatures are in K: no unit is stated, and they could be nothing else");
            return TemperatureUnit.KELVIN;
        }
        boolean hot = fahrenheit && share(open, TemperatureUnit.CELSIUS, -1e9, WARM_C) < 0.5;
        if ((celsius && !hot) || isEmpty(open)) {
            notes.note(LogNote.Kind.ASSUMED, "temperatures are in °C: no unit is stated");
            return TemperatureUnit.CELSIUS;
        }
        throw new UnclearLogException(
                UnclearLogException.Question.TEMPERATURE_UNIT,
                "no unit is stated, and temperatures " + range(open)
                        + (fahrenheit ? " would be ordinary in °F" : " are ordinary in none"),
                "unit(CELSIUS)",
                "unit(FAHRENHEIT)",
                "unit(KELVIN)");
    }

    /** Refuses a unit in which most readings are impossible, and doubts one in which they are odd and another fits. */
    private void doubt(RawSeries one) {
        TemperatureUnit unit = one.unit().orElseThrow();
        List<RawSeries> alone = List.of(one);
        if (isEmpty(alone)) {
            return;
        }
        double possible = share(
                alone,
                unit,
                TemperatureUnit.CELSIUS.fromKelvin(format.coldestK),
                TemperatureUnit.CELSIUS.fromKelvin(format.hottestK));
        boolean odd = share(alone, unit, ORDINARY_LOW_C, ORDINARY_HIGH_C) < 0.5;
        for (TemperatureUnit other : TemperatureUnit.values()) {
            if (other == unit || !odd || !ordinary(alone, other)) {
                continue;
            }
            String text = "sensor \"" + one.sensor() + "\": readings " + range(alone) + " are odd as " + unit.symbol()
                    + " and would be ordinary as " + other.symbol();
            if (possible < 0.5) {
                throw new UnclearLogException(
                        UnclearLogException.Question.TEMPERATURE_UNIT,
                        text,
                        "unit(" + other + ")",
                        "plausibleK(…) if they are meant");
            }
            notes.note(LogNote.Kind.SUGGESTED, text + ": if they are, say unit(" + other + ")");
        }
    }

    private static boolean ordinary(List<RawSeries> series, TemperatureUnit unit) {
        return share(series, unit, ORDINARY_LOW_C, ORDINARY_HIGH_C) >= FITS;
    }

    private static boolean isEmpty(List<RawSeries> series) {
        return Double.isNaN(share(series, TemperatureUnit.CELSIUS, 0, 0));
    }

    /** Part of the readings between two temperatures; not a number if there are no readings. */
    private static double share(List<RawSeries> series, TemperatureUnit unit, double lowC, double highC) {
        long within = 0;
        long all = 0;
        for (RawSeries one : series) {
            for (int i = 0; i < one.size(); i++) {
                double value = one.values()[i];
                if (!MissingMarks.isMissing(value, unit)) {
                    double celsius = TemperatureUnit.CELSIUS.fromKelvin(unit.toKelvin(value));
                    within += celsius >= lowC && celsius <= highC ? 1 : 0;
                    all++;
                }
            }
        }
        return (double) within / all;
    }

    private static String range(List<RawSeries> series) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (RawSeries one : series) {
            for (int i = 0; i < one.size(); i++) {
                if (!MissingMarks.isMissing(one.values()[i], TemperatureUnit.CELSIUS)) {
                    least = Math.min(least, one.values()[i]);
                    greatest = Math.max(greatest, one.values()[i]);
                }
            }
        }
        return String.format(Locale.ROOT, "from %.4g to %.4g", least, greatest);
    }
}
