/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a thermometer makes of the temperature around it: it follows late, and it is off by a constant. Immutable.
 *
 * <p>It follows by dθ/dt = (T − θ)/τ. Between looks at the temperature, which are as close as the readings and 1,000 in a run at least, the
 * temperature is taken as a straight line, for which the answer is exact. What rounding of the display does is said of the readings:
 * {@link Observations#quantised}.
 *
 * <p>Theory manual, equation (8.2).
 *
 * @param lag parameter: time constant τ [s], &gt; 0; without, it follows at once
 * @param start parameter: its temperature at the beginning [K]; without, that of what it is in
 * @param bias parameter: what it reads too much [K]
 */
public record Sensor(Optional<String> lag, Optional<String> start, Optional<String> bias) {

    private static final int LOOKS = 1000;

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

    /**
     * Times at which the temperature has to be known.
     *
     * @param atS ascending times [s]
     * @param ofReading for each reading, the look at its time
     */
    @SuppressWarnings("ArrayRecordComponent") // internal, never compared
    record Looks(double[] atS, int[] ofReading) {

        /** Of what is known at looks, what is known at readings. */
        private double[] picked(double[] known) {
            double[] picked = new double[ofReading.length];
            for (int i = 0; i < picked.length; i++) {
                picked[i] = known[ofReading[i]];
            }
            return picked;
        }
    }

    /** Looks for readings at given ascending times. */
    Looks looks(double[] timesS) {
        if (lag.isEmpty()) {
            return new Looks(timesS, IntStream.range(0, timesS.length).toArray());
        }
        double widest = timesS[timesS.length - 1] / LOOKS;
        // Each reading, the beginning, and as many between as fit.
        double[] looks = new double[timesS.length + LOOKS + 2];
        int[] ofReading = new int[timesS.length];
        double before = 0;
        int last = 0;
        for (int r = 0; r < timesS.length; r++) {
            double time = timesS[r];
            int parts = (int) Math.ceil((time - before) / widest - 1e-9);
            for (int i = 1; i < parts; i++) {
                looks[++last] = before + (time - before) * i / parts;
            }
            if (time > before) {
                looks[++last] = time;
            }
            ofReading[r] = last;
            before = time;
        }
        return new Looks(Arrays.copyOf(looks, last + 1), ofReading);
    }

    /**
     * Readings from temperatures at the looks.
     *
     * @param looks what {@link #looks} gave
     * @param temperatures temperature at each look [K]
     * @param own values of {@link #parameters}
     * @return readings [K]
     */
    double[] read(Looks looks, double[] temperatures, double[] own) {
        double[] readings = temperatures;
        if (lag.isPresent()) {
            double first = start.isPresent() ? own[1] : temperatures[0];
            readings = looks.picked(followed(looks.atS(), temperatures, lagS(own), first));
        }
        double off = bias.isPresent() ? own[own.length - 1] : 0;
        return off == 0 ? readings : Arrays.stream(readings).map(r -> r + off).toArray();
    }

    /**
     * Slopes of readings.
     *
     * @param looks what {@link #looks} gave
     * @param temperatures temperature at each look [K]
     * @param outside for each parameter outside the thermometer, the slope of the temperature at each look
     * @param own values of {@link #parameters}
     * @return for each parameter outside, then for each of {@link #parameters}, the slope of each reading
     */
    double[][] slopes(Looks looks, double[] temperatures, double[][] outside, double[] own) {
        List<double[]> slopes = new ArrayList<>();
        for (double[] column : outside) {
            // What follows late follows slopes as it follows temperatures.
            double first = start.isPresent() ? 0 : column[0];
            slopes.add(lag.isEmpty() ? column : looks.picked(followed(looks.atS(), column, lagS(own), first)));
        }
        if (lag.isPresent()) {
            double first = start.isPresent() ? own[1] : temperatures[0];
            slopes.add(looks.picked(followedByLag(looks.atS(), temperatures, own[0], first)));
        }
        if (start.isPresent()) {
            slopes.add(
                    lag.isEmpty()
                            ? new double[looks.ofReading().length]
                            : looks.picked(followed(looks.atS(), new double[looks.atS().length], own[0], 1)));
        }
        if (bias.isPresent()) {
            double[] ones = new double[looks.ofReading().length];
            Arrays.fill(ones, 1);
            slopes.add(ones);
        }
        return slopes.toArray(double[][]::new);
    }

    private static double lagS(double[] own) {
        if (!(own[0] > 0)) {
            throw new IllegalArgumentException("lag of a thermometer " + own[0] + " s: expected above 0 s");
        }
        return own[0];
    }

    /** What follows a course that is straight between looks. */
    private static double[] followed(double[] looks, double[] course, double lagS, double first) {
        double[] now = new double[looks.length];
        now[0] = first;
        double width = Double.NaN;
        double rest = 0;
        double lags = 0;
        for (int i = 1; i < looks.length; i++) {
            if (looks[i] - looks[i - 1] != width) {
                width = looks[i] - looks[i - 1];
                rest = Math.exp(-width / lagS);
                lags = lagS / width;
            }
            double behind = (course[i] - course[i - 1]) * lags;
            now[i] = course[i] - behind + (now[i - 1] - course[i - 1] + behind) * rest;
        }
        return now;
    }

    /** How it changes with the lag. */
    private static double[] followedByLag(double[] looks, double[] course, double lagS, double first) {
        double[] slope = new double[looks.length];
        double now = first;
        double width = Double.NaN;
        double rest = 0;
        double perWidth = 0;
        double aging = 0;
        for (int i = 1; i < looks.length; i++) {
            if (looks[i] - looks[i - 1] != width) {
                width = looks[i] - looks[i - 1];
                rest = Math.exp(-width / lagS);
                perWidth = 1 / width;
                aging = width / (lagS * lagS);
            }
            double rise = (course[i] - course[i - 1]) * perWidth;
            double apart = now - course[i - 1] + rise * lagS;
            slope[i] = rest * (slope[i - 1] + rise + apart * aging) - rise;
            now = course[i] - rise * lagS + apart * rest;
        }
        return slope;
    }
}
