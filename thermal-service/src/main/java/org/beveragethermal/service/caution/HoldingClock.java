/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.beveragethermal.core.storage.TemperatureHistory;

/**
 * A clock for drinks that spoil: how long one has been neither cold nor hot enough by the rules of a jurisdiction. It never begins anew.
 *
 * <p>The temperature is that of the drink, of its warmest part where that is known; air tells less. Between readings it follows straight
 * lines. While nothing was read for longer than {@linkplain #readWithin a time between readings}, it may have been anywhere: two clocks
 * run, one that counts such gaps as outside and one that does not, and the answer says which of them has run out. A reading outside is certain
 * for both, whatever gaps are around it. A drink that is outside at the first reading is taken to have left then, with the least allowance
 * that could be meant; {@link #alreadyOut} adds what is known from before.
 *
 * <pre>{@code
 * HoldingClock clock = HoldingClock.of(Jurisdiction.US_FOOD_CODE);
 * if (clock.read(TemperatureHistory.logged(readings)) instanceof HoldingTime.Over over) { ... }
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class HoldingClock {

    /** Longest time between readings unless stated: half an hour, own assumption. */
    public static final Duration READ_WITHIN = Duration.ofMinutes(30);

    private final Jurisdiction jurisdiction;
    private final Duration alreadyOut;
    private final Duration readWithin;
    private final boolean hotSurroundings;

    private HoldingClock(Jurisdiction jurisdiction, Duration alreadyOut, Duration readWithin, boolean hotSurroundings) {
        this.jurisdiction = jurisdiction;
        this.alreadyOut = alreadyOut;
        this.readWithin = readWithin;
        this.hotSurroundings = hotSurroundings;
    }

    /**
     * A clock by the rules of a jurisdiction.
     *
     * @param jurisdiction whose rules
     * @return the clock
     */
    public static HoldingClock of(Jurisdiction jurisdiction) {
        return new HoldingClock(
                Objects.requireNonNull(jurisdiction, "jurisdiction"), Duration.ZERO, READ_WITHIN, false);
    }

    /**
     * The clock for a drink that has been out before.
     *
     * @param before time that counts already, not negative
     * @return a new value
     * @throws IllegalArgumentException if the time is negative
     */
    public HoldingClock alreadyOut(Duration before) {
        if (before.isNegative()) {
            throw new IllegalArgumentException("time already out " + before + ": expected zero or more");
        }
        return new HoldingClock(jurisdiction, before, readWithin, hotSurroundings);
    }

    /**
     * The clock with another longest time between readings.
     *
     * @param longest longer times without a reading are gaps; above 0
     * @return a new value
     * @throws IllegalArgumentException if the time is not above 0
     */
    public HoldingClock readWithin(Duration longest) {
        if (longest.isNegative() || longest.isZero()) {
            throw new IllegalArgumentException(
                    "longest time between readings " + longest + ": expected more than zero");
        }
        return new HoldingClock(jurisdiction, alreadyOut, longest, hotSurroundings);
    }

    /**
     * The clock in surroundings warmer than 32 °C (90 °F), which shortens what {@link Jurisdiction#US_HOUSEHOLD} allows.
     *
     * @return a new value
     */
    public HoldingClock inHotSurroundings() {
        return new HoldingClock(jurisdiction, alreadyOut, readWithin, true);
    }

    /**
     * Whose rules it keeps.
     *
     * @return the jurisdiction
     */
    public Jurisdiction jurisdiction() {
        return jurisdiction;
    }

    /**
     * Reads the clock at the end of a history.
     *
     * @param drink temperatures of the drink; those drawn from a prediction have no gaps
     * @return that the time allowed has run out, may have, has not, or that there is no figure
     */
    public HoldingTime read(TemperatureHistory drink) {
        Optional<HoldingRule> rule = jurisdiction.rule();
        if (rule.isEmpty()) {
            return new HoldingTime.NoFigure(jurisdiction.source());
        }
        double longestS =
                drink.gapsLongerThan(readWithin).isEmpty() ? Double.POSITIVE_INFINITY : Times.seconds(readWithin);
        ClockRun surely = run(rule.get(), drink, false, longestS);
        if (surely.isOver()) {
            return new HoldingTime.Over(Times.duration(surely.overS()), Times.duration(surely.allowedS()));
        }
        ClockRun perhaps = run(rule.get(), drink, true, longestS);
        return perhaps.isOver()
                ? new HoldingTime.MayBeOver(
                        Times.duration(perhaps.overS()),
                        Times.duration(perhaps.allowedS()),
                        Times.duration(surely.countS()))
                : new HoldingTime.Within(Times.duration(perhaps.countS()), Times.duration(perhaps.leftS()));
    }

    private ClockRun run(HoldingRule rule, TemperatureHistory drink, boolean gapsCount, double longestS) {
        return new ClockRun(rule, hotSurroundings, gapsCount, Times.seconds(alreadyOut))
                .along(drink.timesS(), drink.temperaturesK(), longestS);
    }

    /**
     * When the time allowed runs out along plain numbers, of which none are taken as gaps: the fast form.
     *
     * @param timesS one or more times in ascending order [s], not modified
     * @param temperaturesK temperature of the drink at each [K], not modified
     * @return when [s]; empty if it does not, or the jurisdiction states no figure
     * @throws IllegalArgumentException if there are none, the lengths differ, the times descend, or a number is not finite
     */
    public OptionalDouble overAtS(double[] timesS, double[] temperaturesK) {
        Courses.require(timesS, temperaturesK);
        return overAtChecked(timesS, temperaturesK);
    }

    OptionalDouble overAtChecked(double[] timesS, double[] temperaturesK) {
        if (jurisdiction.rule().isEmpty()) {
            return OptionalDouble.empty();
        }
        ClockRun run = new ClockRun(jurisdiction.rule().get(), hotSurroundings, true, Times.seconds(alreadyOut))
                .along(timesS, temperaturesK, Double.POSITIVE_INFINITY);
        return run.isOver() ? OptionalDouble.of(run.overS()) : OptionalDouble.empty();
    }

    @Override
    public String toString() {
        return "clock by " + jurisdiction + ", " + alreadyOut + " out already, read within " + readWithin;
    }
}
