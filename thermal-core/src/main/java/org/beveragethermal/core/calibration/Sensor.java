/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a thermometer makes of the temperature around it: it follows late, and it is off by a constant. Immutable.
 *
 * <p>It follows by dθ/dt = (T − θ)/τ. Between looks at the temperature, which are as close as the readings and 2,000 in a run, the
 * temperature is taken as a straight line, for which the answer is exact. What rounding of the display does is said of the readings:
 * {@link Observations#quantised}.
 *
 * @param lag parameter: time constant τ [s], &gt; 0; without, it follows at once
 * @param start parameter: its temperature at the beginning [K]; without, that of what it is in
 * @param bias parameter: what it reads too much [K]
 */
public record Sensor(Optional<String> lag, Optional<String> start, Optional<String> bias) {

    private static final int LOOKS = 2000;

    /** A thermometer that is right and follows at once. */
    public static final Sensor IDEAL = new Sensor(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * The same thermometer, following late.
     *
     * @param lagParameter name of the parameter that is its time constant [s]
     * @return a new thermometer
     */
    public Sensor lagging(String lagParameter) {
        return new Sensor(Optional.of(lagParameter), start, bias);
    }

    /**
     * The same thermometer, beginning at a temperature of its own.
     *
     * @param startParameter name of the parameter that is its temperature at the beginning [K]; without a lag it has no effect
     * @return a new thermometer
     */
    public Sensor startingAt(String startParameter) {
        return new Sensor(lag, Optional.of(startParameter), bias);
    }

    /**
     * The same thermometer, off by a constant.
     *
     * @param biasParameter name of the parameter that is what it reads too much [K]
     * @return a new thermometer
     */
    public Sensor biased(String biasParameter) {
        return new Sensor(lag, start, Optional.of(biasParameter));
    }

    List<String> parameters() {
        List<String> names = new ArrayList<>();
        lag.ifPresent(names::add);
        start.ifPresent(names::add);
        bias.ifPresent(names::add);
        return names;
    }

    /** Times at which the temperature has to be known for readings at given ascending times. */
    double[] looks(double[] timesS) {
        if (lag.isEmpty()) {
            return timesS;
        }
        double widest = timesS[timesS.length - 1] / LOOKS;
        List<Double> looks = new ArrayList<>();
        double before = 0;
        looks.add(before);
        for (double time : timesS) {
            int parts = (int) Math.ceil((time - before) / widest - 1e-9);
            for (int i = 1; i < parts; i++) {
                looks.add(before + (time - before) * i / parts);
            }
            if (time > before) {
                looks.add(time);
            }
            before = time;
        }
        return looks.stream().mapToDouble(d -> d).toArray();
    }

    /**
     * Readings from temperatures at the looks.
     *
     * @param timesS times of readings, ascending
     * @param looks what {@link #looks} gave
     * @param temperatures temperature at each look with its slopes in parameters outside the thermometer
     * @param own values of {@link #parameters}
     * @return readings; slopes in the parameters outside first, then in {@link #parameters}
     */
    Predicted read(double[] timesS, double[] looks, Predicted temperatures, double[] own, int outside) {
        int slots = outside + own.length;
        double[] values = new double[timesS.length];
        double[][] slopes = new double[timesS.length][slots];
        double bias = this.bias.isPresent() ? own[own.length - 1] : 0;
        double[] now = new double[1 + slots];
        begin(now, temperatures, own, outside);
        int look = 0;
        for (int i = 0; i < timesS.length; i++) {
            if (lag.isEmpty()) {
                copy(temperatures, i, outside, now);
            } else {
                while (looks[look] < timesS[i]) {
                    follow(now, temperatures, look, looks[look + 1] - looks[look], own[0], outside);
                    look++;
                }
            }
            values[i] = now[0] + bias;
            System.arraycopy(now, 1, slopes[i], 0, slots);
            if (this.bias.isPresent()) {
                slopes[i][slots - 1] = 1;
            }
        }
        return Predicted.of(values, slopes);
    }

    private static void copy(Predicted temperatures, int i, int outside, double[] now) {
        now[0] = temperatures.value(i);
        for (int k = 0; k < outside; k++) {
            now[1 + k] = temperatures.slope(i, k);
        }
    }

    private void begin(double[] now, Predicted temperatures, double[] own, int outside) {
        if (lag.isEmpty()) {
            return;
        }
        if (!(own[0] > 0)) {
            throw new IllegalArgumentException("lag of a thermometer " + own[0] + " s: expected above 0 s");
        }
        copy(temperatures, 0, outside, now);
        if (start.isPresent()) {
            java.util.Arrays.fill(now, 0);
            now[0] = own[1];
            now[1 + outside + 1] = 1;
        }
    }

    /** One look further: θ and its slopes in everything. */
    private static void follow(double[] now, Predicted temperatures, int look, double width, double lagS, int outside) {
        double rest = Math.exp(-width / lagS);
        double before = temperatures.value(look);
        double after = temperatures.value(look + 1);
        double behind = (after - before) / width;
        double apart = now[0] - before + behind * lagS;
        now[0] = after - behind * lagS + apart * rest;
        for (int k = 0; k < now.length - 1; k++) {
            double slopeBefore = k < outside ? temperatures.slope(look, k) : 0;
            double slopeAfter = k < outside ? temperatures.slope(look + 1, k) : 0;
            double slopeBehind = (slopeAfter - slopeBefore) / width;
            double direct = k == outside ? -behind + behind * rest + apart * rest * width / (lagS * lagS) : 0;
            now[1 + k] =
                    slopeAfter - slopeBehind * lagS + (now[1 + k] - slopeBefore + slopeBehind * lagS) * rest + direct;
        }
    }
}
