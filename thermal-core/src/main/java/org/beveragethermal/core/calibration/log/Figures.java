/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.util.ArithmeticUtils;

/** Increments, intervals and gaps of sorted readings. */
final class Figures {
    private static final int MOST_DECIMALS = 9;
    /** Whole numbers beyond are not exact in doubles. */
    private static final double EXACT = 1L << 53;

    private Figures() {}

    static SensorFigures of(RawSeries series, long[] micros) {
        TemperatureUnit unit = series.unit().orElseThrow();
        OptionalDouble interval = interval(micros);
        List<SensorFigures.Gap> gaps = new ArrayList<>();
        int count = 0;
        for (int i = 1; i < micros.length && interval.isPresent(); i++) {
            if ((micros[i] - micros[i - 1]) / 1e6 > SensorFigures.GAP * interval.getAsDouble()) {
                if (count++ < SensorFigures.LISTED_GAPS) {
                    gaps.add(new SensorFigures.Gap(micros[i - 1] / 1e6, micros[i] / 1e6));
                }
            }
        }
        return new SensorFigures(series.sensor(), unit, series.size(), increment(series, unit), interval, count, gaps);
    }

    private static OptionalDouble interval(long[] micros) {
        if (micros.length < 2) {
            return OptionalDouble.empty();
        }
        long[] steps = new long[micros.length - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = micros[i + 1] - micros[i];
        }
        Arrays.sort(steps);
        int middle = steps.length / 2;
        double median = steps.length % 2 == 1 ? steps[middle] : 0.5 * (steps[middle - 1] + steps[middle]);
        return OptionalDouble.of(median / 1e6);
    }

    /** Greatest common divisor of all differences, in whole units of the last decimal that is written. */
    private static OptionalDouble increment(RawSeries series, TemperatureUnit unit) {
        if (series.size() < 2 || series.decimals() > MOST_DECIMALS) {
            return OptionalDouble.empty();
        }
        double scale = Math.pow(10, series.decimals());
        long common = 0;
        double first = Math.rint(series.values()[0] * scale);
        for (int i = 1; i < series.size() && common != 1; i++) {
            double whole = Math.rint(series.values()[i] * scale);
            if (Math.abs(whole) > EXACT) {
                return OptionalDouble.empty();
            }
            common = ArithmeticUtils.gcd(common, (long) Math.abs(whole - first));
        }
        return common == 0 ? OptionalDouble.empty() : OptionalDouble.of(unit.differenceK(common / scale));
    }
}
