/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.plot;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.beveragethermal.core.calibration.Band;
import org.beveragethermal.core.calibration.ConfidenceInterval;
import org.beveragethermal.core.calibration.Observations;
import org.beveragethermal.core.calibration.Profile;
import org.beveragethermal.core.calibration.ResidualDiagnostics;
import org.beveragethermal.core.prediction.HeatAccount;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.Tornado;
import org.beveragethermal.examples.internal.Html;

/** A plot that can be had as SVG or PNG. Immutable; made anew at each call, so that it may be shared between threads. */
public final class Plot {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double JOULES_PER_KILOJOULE = 1000;
    private static final double PERCENT = 100;
    private static final int FURTHER = 20;

    private final Supplier<Drawing> drawing;

    private Plot(Supplier<Drawing> drawing) {
        this.drawing = drawing;
    }

    /**
     * A fitted prediction with the bands of its true value and of a new reading, and the readings it was fitted to.
     *
     * @param title what it shows
     * @param timesS times of the points of the band, ascending [s], not modified
     * @param band temperatures with bands [K]
     * @param readings readings, at times [s], temperatures [K]; those that say only "below" or "above" are drawn at their limit
     * @return the plot: minutes, degrees Celsius
     * @throws IllegalArgumentException if there are not as many times as points, or none
     */
    public static Plot prediction(String title, double[] timesS, Band band, Observations readings) {
        requireAsMany(timesS.length, band.points().size());
        double[] minutes = minutes(timesS);
        List<Band.Point> points = band.points();
        double[] readAt = new double[readings.size()];
        double[] read = new double[readings.size()];
        for (int i = 0; i < read.length; i++) {
            readAt[i] = readings.at(i) / SECONDS_PER_MINUTE;
            read[i] = readings.value(i) - ZERO_CELSIUS_K;
        }
        String part = percent(band.probability());
        return new Plot(() -> LineChart.titled(title, "time [min]", "temperature [°C]")
                .band(
                        part + " of readings",
                        minutes,
                        celsius(points, Band.Point::predictionLow),
                        celsius(points, Band.Point::predictionHigh))
                .band(
                        part + " of the true value",
                        minutes,
                        celsius(points, Band.Point::confidenceLow),
                        celsius(points, Band.Point::confidenceHigh))
                .line("prediction", minutes, celsius(points, Band.Point::value))
                .marks("readings", readAt, read));
    }

    /**
     * A prediction with the interval of an ensemble.
     *
     * @param title what it shows
     * @param timesS times, ascending [s], not modified
     * @param temperaturesK an interval for each time [K]
     * @return the plot: minutes, degrees Celsius
     * @throws IllegalArgumentException if there are not as many times as intervals, or none
     */
    public static Plot prediction(String title, double[] timesS, List<Interval> temperaturesK) {
        requireAsMany(timesS.length, temperaturesK.size());
        List<Interval> intervals = List.copyOf(temperaturesK);
        double[] minutes = minutes(timesS);
        String part = percent(intervals.get(0).probability());
        return new Plot(() -> LineChart.titled(title, "time [min]", "temperature [°C]")
                .band(
                        part + " interval",
                        minutes,
                        celsius(intervals, Interval::low),
                        celsius(intervals, Interval::high))
                .line("median", minutes, celsius(intervals, Interval::median)));
    }

    /**
     * Standardised residuals in their order, with the lines that one in twenty lies outside of by chance.
     *
     * @param title what it shows
     * @param residuals residuals of a fit, one reading at least
     * @return the plot
     * @throws IllegalArgumentException if there are no residuals
     */
    public static Plot residuals(String title, ResidualDiagnostics residuals) {
        double[] values = array(residuals.standardised(), value -> value);
        requireSome(values.length);
        double[] order = new double[values.length];
        Arrays.setAll(order, i -> i + 1.0);
        double[] ends = {1, Math.max(2, values.length)};
        // Of a normal distribution 95 % lie within 1.96 standard deviations.
        return new Plot(() -> LineChart.titled(title, "reading", "residual in standard deviations")
                .guide("95 % of chance", ends, new double[] {1.96, 1.96})
                .guide("", ends, new double[] {-1.96, -1.96})
                .guide("", ends, new double[] {0, 0})
                .marks("residuals", order, values));
    }

    /**
     * How much worse a fit gets as one parameter moves: the square of the signed root, which is twice the loss of log-likelihood where
     * errors are normal, with the estimate and the ends of its interval. Between the values that were looked at the root is taken as
     * straight.
     *
     * @param title what it shows
     * @param profile the profile, one point at least
     * @return the plot
     * @throws IllegalArgumentException if it has no point
     */
    public static Plot profile(String title, Profile profile) {
        requireSome(profile.points().size());
        double[] values = array(profile.points(), Profile.Point::value);
        double[] roots = array(profile.points(), Profile.Point::signedRoot);
        double[] between = between(values);
        double[] curve = squares(between(roots));
        double top = Arrays.stream(curve).max().orElse(1);
        ConfidenceInterval interval = profile.interval();
        return new Plot(() -> {
            LineChart chart = LineChart.titled(title, profile.name(), "increase of the cost over its variance")
                    .line("profile", between, curve)
                    .marks("values looked at", values, squares(roots))
                    .guide("estimate", twice(interval.estimate()), new double[] {0, top});
            String part = percent(interval.probability()) + " interval";
            for (OptionalDouble end : List.of(interval.low(), interval.high())) {
                if (end.isPresent()) {
                    chart.guide(part, twice(end.getAsDouble()), new double[] {0, top});
                    part = "";
                }
            }
            return chart;
        });
    }

    /**
     * What each uncertain input does alone, the one that does most first.
     *
     * @param title what the result is
     * @param unit unit of the result
     * @param tornado the tornado, one bar at least
     * @return the plot: change of the result against its best value
     * @throws IllegalArgumentException if it has no bar
     */
    public static Plot tornado(String title, String unit, Tornado tornado) {
        List<Tornado.Bar> bars = tornado.bars();
        requireSome(bars.size());
        String axis = String.format(Locale.ROOT, "change against %.4g [%s]", tornado.atBest(), unit);
        return new Plot(() -> BarChart.titled(
                        title, axis, bars.stream().map(Tornado.Bar::name).toList())
                .bars("input at its lower end", array(bars, bar -> bar.atLow() - tornado.atBest()))
                .bars("input at its upper end", array(bars, bar -> bar.atHigh() - tornado.atBest())));
    }

    /**
     * Where a drink's heat came from through its wall, and what it stored.
     *
     * @param title what it shows
     * @param account the account, one entry at least
     * @return the plot: kilojoules by mechanism and by what gave them; what the drink stored last
     * @throws IllegalArgumentException if nothing has been booked
     */
    public static Plot account(String title, HeatAccount account) {
        requireSome(account.intoDrink().size());
        List<String> names = new ArrayList<>();
        List<Double> heats = new ArrayList<>();
        account.intoWall().forEach(entry -> book(names, heats, "to the wall", entry));
        account.intoDrink().forEach(entry -> book(names, heats, "to the drink", entry));
        names.add("stored in the drink");
        heats.add(account.storedJ() / JOULES_PER_KILOJOULE);
        return new Plot(() -> BarChart.titled(title, "heat [kJ]", names).bars("heat", array(heats, heat -> heat)));
    }

    private static void book(List<String> names, List<Double> heats, String to, HeatAccount.Entry entry) {
        names.add(to + ", " + entry.mechanism() + " from " + entry.from());
        heats.add(entry.heatJ() / JOULES_PER_KILOJOULE);
    }

    /**
     * The plot as SVG.
     *
     * @return a whole SVG document, the same at each call
     */
    public String svg() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Drawing chart = drawing.get();
        try {
            chart.writeSvg(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("a plot in memory", e);
        }
        // Letters are outlines in it: those who do not see them hear the title.
        String title = Html.text(chart.title());
        String svg = bytes.toString(StandardCharsets.UTF_8);
        int inside = svg.indexOf('>', svg.indexOf("<svg")) + 1;
        return svg.substring(0, inside) + "\n  <title>" + title + "</title>" + svg.substring(inside);
    }

    /**
     * The plot as a picture.
     *
     * @return the bytes of a PNG file, 800 by 500 pixels
     */
    public byte[] png() {
        try {
            return drawing.get().png();
        } catch (IOException e) {
            throw new UncheckedIOException("a plot in memory", e);
        }
    }

    private static void requireAsMany(int times, int points) {
        if (times != points || times == 0) {
            throw new IllegalArgumentException(
                    times + " values on one axis and " + points + " on the other: expected as many, one at least");
        }
    }

    private static void requireSome(int values) {
        if (values == 0) {
            throw new IllegalArgumentException("0 values: expected one at least");
        }
    }

    private static double[] minutes(double[] timesS) {
        return Arrays.stream(timesS).map(time -> time / SECONDS_PER_MINUTE).toArray();
    }

    private static <T> double[] celsius(List<T> points, ToDoubleFunction<T> kelvins) {
        return array(points, point -> kelvins.applyAsDouble(point) - ZERO_CELSIUS_K);
    }

    private static <T> double[] array(List<T> points, ToDoubleFunction<T> value) {
        return points.stream().mapToDouble(value).toArray();
    }

    /** The same values with further ones between neighbours, at equal distances. */
    private static double[] between(double[] values) {
        double[] all = new double[(values.length - 1) * FURTHER + 1];
        for (int i = 0; i < all.length - 1; i++) {
            double here = values[i / FURTHER];
            all[i] = here + (values[i / FURTHER + 1] - here) * (i % FURTHER) / FURTHER;
        }
        all[all.length - 1] = values[values.length - 1];
        return all;
    }

    private static double[] squares(double[] values) {
        return Arrays.stream(values).map(value -> value * value).toArray();
    }

    private static double[] twice(double value) {
        return new double[] {value, value};
    }

    private static String percent(double part) {
        return String.format(Locale.ROOT, "%.4g", PERCENT * part).replaceAll("\\.?0+$", "") + " %";
    }
}
