/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.beveragethermal.core.internal.Figures;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;

/**
 * How contents follow their room: lag and damping, from the two histories alone.
 *
 * <p>{@link #swing} takes a period out of both by least squares over all the time they share (mean, drift, sine and cosine, integrated
 * along the lines) and compares amplitudes and phases. {@link #timeConstant} works for any log: it lets a lumped body follow the room from
 * the contents' first temperature and finds the time constant with which it comes closest to them, again by least squares. A lumped body
 * is late by its time constant behind slow changes.
 *
 * <p>Histories that have instants are compared over the time that both cover; others from their first readings on. Immutable.
 */
public final class RoomResponse {

    /** A room that changes by less than this has nothing to be followed [K]. */
    private static final double LEAST_CHANGE_K = 0.05;

    /** More periods than this are not looked at, so that no question takes for ever: the days of 80 years. */
    private static final int MOST_PERIODS = 30_000;

    private static final int BASIS = 4;
    private static final double PARTS_PER_PERIOD = 8;
    private static final int MOST_PARTS = 256;
    private static final int LOOKS = 80;
    private static final int HALVINGS = 60;
    private static final double SHORTEST_PART = 1e-4;
    private static final double LONGEST_PART = 100;
    private static final double GOLDEN = 0.5 * (Math.sqrt(5) - 1);

    private final TemperatureHistory room;
    private final TemperatureHistory contents;
    private final double endS;

    private RoomResponse(TemperatureHistory room, TemperatureHistory contents) {
        this.room = room;
        this.contents = contents;
        this.endS = Math.min(room.endS(), contents.endS());
    }

    /**
     * Compares contents with their room.
     *
     * @param room history of the room
     * @param contents history of the contents in it, measured or predicted
     * @return how one follows the other
     * @throws IllegalArgumentException if both have instants and share no time
     */
    public static RoomResponse of(TemperatureHistory room, TemperatureHistory contents) {
        if (room.start().isEmpty() || contents.start().isEmpty()) {
            return new RoomResponse(room, contents);
        }
        Instant from = later(room.start().get(), contents.start().get());
        return new RoomResponse(
                from(room, room.start().get(), from),
                from(contents, contents.start().get(), from));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static TemperatureHistory from(TemperatureHistory history, Instant start, Instant from) {
        double skippedS = Times.seconds(Duration.between(start, from));
        if (!(skippedS < history.endS())) {
            throw new IllegalArgumentException(
                    "history from " + start + " over " + history.length() + ": expected one that lasts beyond " + from);
        }
        return skippedS == 0 ? history : history.part(skippedS, history.endS());
    }

    /** How contents follow a swing. */
    public sealed interface Swing extends Answer {}

    /**
     * The room swings and the contents follow.
     *
     * @param roomAmplitudeK half the difference between the room's warmest and coldest [K], by that period
     * @param contentsAmplitudeK the same of the contents [K]
     * @param lag by how much the contents' extremes come after the room's, from minus a quarter to three quarters of the period
     */
    public record Follows(double roomAmplitudeK, double contentsAmplitudeK, Duration lag) implements Swing {

        /**
         * Damping.
         *
         * @return amplitude of the contents over that of the room [-]
         */
        public double amplitudeRatio() {
            return contentsAmplitudeK / roomAmplitudeK;
        }

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "The room swings by %.2f K either way, the contents by %.2f K, %.1f h %s.",
                    roomAmplitudeK,
                    contentsAmplitudeK,
                    Times.hours(lag.abs()),
                    lag.isNegative() ? "earlier" : "later");
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "follows",
                    Figures.with("roomAmplitudeK", roomAmplitudeK)
                            .and("contentsAmplitudeK", contentsAmplitudeK)
                            .and("lagS", Times.seconds(lag))
                            .map());
        }
    }

    /**
     * There is no swing to be followed.
     *
     * @param why what is missing
     */
    public record NoSwing(String why) implements Swing {

        @Override
        public String explain() {
            return "Lag and damping cannot be told: " + why + ".";
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(Snapshot.FORMAT_VERSION, "noSwing", Map.of());
        }
    }

    /**
     * Lag and damping of a swing. The contents' start should be forgotten: leave out three time constants with {@link
     * TemperatureHistory#between}.
     *
     * @param period time from warmest to warmest, above 0: a day, a year, the cycle of a cabinet
     * @return amplitudes and lag, or that the histories are shorter than a period or longer than 30,000, or the room does not swing
     * @throws IllegalArgumentException if the period is not above 0
     */
    public Swing swing(Duration period) {
        Times.requirePositive("period", period);
        double periodS = Times.seconds(period);
        if (endS < periodS) {
            return new NoSwing("the histories share less than a period");
        }
        double periods = endS / periodS;
        if (periods > MOST_PERIODS) {
            return new NoSwing(String.format(
                    Locale.ROOT, "%.3g periods in what the histories share are more than %d", periods, MOST_PERIODS));
        }
        double[] ofRoom = wave(room, periodS);
        double[] ofContents = wave(contents, periodS);
        double roomK = Math.hypot(ofRoom[0], ofRoom[1]);
        if (roomK < LEAST_CHANGE_K) {
            return new NoSwing(String.format(Locale.ROOT, "the room swings by no more than %.3f K with it", roomK));
        }
        double phase = Math.atan2(ofContents[1], ofContents[0]) - Math.atan2(ofRoom[1], ofRoom[0]);
        double turns = phase / (2 * Math.PI) + 0.25;
        double lag = turns - Math.floor(turns) - 0.25;
        return new Follows(roomK, Math.hypot(ofContents[0], ofContents[1]), Times.duration(lag * periodS));
    }

    /** Factors of cosine and sine in the least-squares sum of mean, drift, cosine and sine. */
    private double[] wave(TemperatureHistory history, double periodS) {
        double[] times = edges(history);
        RealMatrix normal = new Array2DRowRealMatrix(BASIS, BASIS);
        double[] right = new double[BASIS];
        for (int i = 1; i < times.length; i++) {
            double from = times[i - 1];
            double to = times[i];
            int parts = 1 + (int) Math.min(Integer.MAX_VALUE - 1.0, PARTS_PER_PERIOD * (to - from) / periodS);
            for (int row = 0; row < BASIS; row++) {
                int r = row;
                right[row] += (to - from)
                        * Quadrature.mean(t -> basis(r, t, periodS) * history.temperatureK(t), from, to, parts);
                for (int column = 0; column < BASIS; column++) {
                    int c = column;
                    normal.addToEntry(
                            row,
                            column,
                            (to - from)
                                    * Quadrature.mean(
                                            t -> basis(r, t, periodS) * basis(c, t, periodS), from, to, parts));
                }
            }
        }
        double[] factors = new LUDecomposition(normal)
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
        return new double[] {factors[2], factors[3]};
    }

    private double basis(int number, double timeS, double periodS) {
        double angle = 2 * Math.PI * timeS / periodS;
        return switch (number) {
            case 0 -> 1;
            case 1 -> timeS / endS - 0.5;
            case 2 -> Math.cos(angle);
            default -> Math.sin(angle);
        };
    }

    private double[] edges(TemperatureHistory... histories) {
        TreeSet<Double> edges = new TreeSet<>();
        edges.add(0.0);
        edges.add(endS);
        for (TemperatureHistory history : histories) {
            for (double t : history.timesS()) {
                if (t > 0 && t < endS) {
                    edges.add(t);
                }
            }
        }
        return edges.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** With which time constant contents follow. */
    public sealed interface Lag extends Answer {}

    /**
     * Contents follow as a lumped body does.
     *
     * @param timeConstant time constant of the body that comes closest to them, which is also how late it follows slow changes
     * @param rmsK how close it comes: root mean square of the difference [K]
     */
    public record Lags(Duration timeConstant, double rmsK) implements Lag {

        /**
         * How that body follows a swing.
         *
         * @param period time from warmest to warmest, above 0
         * @return amplitude ratio and lag of the closed form
         * @throws IllegalArgumentException if the period is not above 0
         */
        public LumpedSwing swing(Duration period) {
            return LumpedSwing.of(timeConstant, period);
        }

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "The contents follow the room like a lumped body with a time constant of %.1f h, within %.2f K.",
                    Times.hours(timeConstant),
                    rmsK);
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "lags",
                    Figures.with("timeConstantS", Times.seconds(timeConstant))
                            .and("rmsK", rmsK)
                            .map());
        }
    }

    /**
     * No time constant can be told.
     *
     * @param why what is missing
     */
    public record NotTold(String why) implements Lag {

        @Override
        public String explain() {
            return "A time constant cannot be told: " + why + ".";
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(Snapshot.FORMAT_VERSION, "notTold", Map.of());
        }
    }

    /**
     * The time constant with which contents follow, by least squares, looked for from a ten-thousandth to a hundred times the length that
     * the histories share.
     *
     * @return the time constant and how well it fits, or that the histories do not tell
     */
    public Lag timeConstant() {
        double[] times = edges(room, contents);
        if (drive(times) < LEAST_CHANGE_K) {
            return new NotTold("the room never differs from the contents' first temperature");
        }
        double step = Math.log(LONGEST_PART / SHORTEST_PART) / LOOKS;
        double first = Math.log(SHORTEST_PART * endS);
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= LOOKS; i++) {
            double here = meanSquare(times, Math.exp(first + i * step));
            if (here < least) {
                least = here;
                best = i;
            }
        }
        if (best == 0 || best == LOOKS) {
            return new NotTold(
                    best == 0
                            ? "the contents follow at once, as far as the readings show"
                            : "the contents do not follow in the time that was looked at");
        }
        double tau = Math.exp(lowest(times, first + (best - 1) * step, first + (best + 1) * step));
        return new Lags(Times.duration(tau), Math.sqrt(meanSquare(times, tau)));
    }

    private double drive(double[] times) {
        double greatest = 0;
        for (double t : times) {
            greatest = Math.max(greatest, Math.abs(room.temperatureK(t) - contents.temperatureK(0)));
        }
        return greatest;
    }

    private double lowest(double[] times, double from, double to) {
        double low = from;
        double high = to;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = meanSquare(times, Math.exp(left));
        double atRight = meanSquare(times, Math.exp(right));
        for (int i = 0; i < HALVINGS; i++) {
            if (atLeft < atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = meanSquare(times, Math.exp(left));
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = meanSquare(times, Math.exp(right));
            }
        }
        return 0.5 * (low + high);
    }

    /** Mean square of the difference between contents and a lumped body, exact in time for lines. */
    private double meanSquare(double[] times, double tau) {
        double body = contents.temperatureK(0);
        double sum = 0;
        double roomFrom = room.temperatureK(0);
        double contentsFrom = body;
        for (int i = 1; i < times.length; i++) {
            double length = times[i] - times[i - 1];
            double roomTo = room.temperatureK(times[i]);
            double contentsTo = contents.temperatureK(times[i]);
            double roomSlope = (roomTo - roomFrom) / length;
            double contentsSlope = (contentsTo - contentsFrom) / length;
            double start = body;
            double late = roomFrom - roomSlope * tau;
            double above = start - late;
            double difference = late - contentsFrom;
            int parts = 1 + (int) Math.min(MOST_PARTS, 2 * length / tau);
            sum += length
                    * Quadrature.mean(
                            t -> {
                                double off = difference + (roomSlope - contentsSlope) * t + above * Math.exp(-t / tau);
                                return off * off;
                            },
                            0,
                            length,
                            parts);
            body = late + roomSlope * length + above * Math.exp(-length / tau);
            roomFrom = roomTo;
            contentsFrom = contentsTo;
        }
        return sum / endS;
    }
}
