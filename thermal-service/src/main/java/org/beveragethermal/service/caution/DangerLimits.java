/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.materials.liquid.Beverage;

/**
 * The danger limits of one drink, worked out once, against which courses of temperature are checked fast: for planners that try many.
 *
 * <p>It is careful: whatever {@link Cautions} calls a danger breaks a limit here no later. A closed vessel must not come to the freezing
 * point at all, for its temperature does not tell how much of it is ice. What it lacks is a difference through a wall; a plunge is for
 * {@link #allowsPlunge}.
 *
 * <p>Immutable and thread-safe; a check of a hundred points takes microseconds.
 */
public final class DangerLimits {

    private final OptionalDouble coldestK;
    private final OptionalDouble fullK;
    private final OptionalDouble drunkFromS;
    private final Optional<HoldingClock> clock;
    private final double plungeK;

    private DangerLimits(CautionSubject subject) {
        Optional<ClosedVessel> closed = subject.closedVessel();
        this.coldestK = subject.isClosed()
                ? subject.drink().stream().mapToDouble(Beverage::freezingOnsetK).findFirst()
                : OptionalDouble.empty();
        this.fullK = closed.map(ClosedVessel::fullAtK).orElseGet(OptionalDouble::empty);
        this.drunkFromS = subject.drunkFrom().stream()
                .mapToDouble(from -> Times.seconds(from))
                .findFirst();
        this.clock = subject.spoils() ? Optional.of(subject.clock()) : Optional.empty();
        this.plungeK = subject.glass().stopK();
    }

    /**
     * The danger limits of a drink.
     *
     * @param subject what is known of it
     * @return its limits
     */
    public static DangerLimits of(CautionSubject subject) {
        return new DangerLimits(subject);
    }

    /**
     * A limit that is crossed.
     *
     * @param rule by which rule
     * @param afterS when [s], in the times that were handed in
     * @param limit the limit, in the unit of the rule's quantity; for holding times the moment at which the time has run out [s]
     */
    public record Breach(CautionRule rule, double afterS, double limit) {}

    /**
     * The first danger limit that a course crosses.
     *
     * @param timesS one or more times in ascending order [s], not modified
     * @param coldestK temperature of its coldest part at each [K], not modified
     * @param meanK mean temperature of the drink at each [K], not modified
     * @param warmestK temperature of its warmest part at each [K], not modified
     * @return the first breach; empty if all limits are kept
     * @throws IllegalArgumentException if there are no times, lengths differ, times descend, or a number is not finite or not above
     *     absolute zero
     */
    public Optional<Breach> firstBreach(double[] timesS, double[] coldestK, double[] meanK, double[] warmestK) {
        Courses.require(timesS, coldestK);
        Courses.require(timesS, meanK);
        Courses.require(timesS, warmestK);
        Optional<Breach> first = breach(CautionRule.BURSTS_BY_ICE, this.coldestK, timesS, coldestK, -1, timesS[0]);
        first = earlier(first, breach(CautionRule.FULL_OF_LIQUID, fullK, timesS, meanK, 1, timesS[0]));
        first = earlier(first, veryHot(timesS, warmestK));
        return earlier(first, held(timesS, warmestK));
    }

    /**
     * The first danger limit that a course of one temperature crosses.
     *
     * @param timesS one or more times in ascending order [s], not modified
     * @param temperaturesK temperature of the whole drink at each [K], not modified
     * @return the first breach; empty if all limits are kept
     * @throws IllegalArgumentException as {@link #firstBreach(double[], double[], double[], double[])}
     */
    public Optional<Breach> firstBreach(double[] timesS, double[] temperaturesK) {
        return firstBreach(timesS, temperaturesK, temperaturesK, temperaturesK);
    }

    /**
     * Whether the wall bears a plunge from one temperature into a medium of another.
     *
     * @param wallK temperature of the wall before [K]
     * @param mediumK temperature of the medium [K]
     * @return false from the difference on that is not to be crossed; true if the wall is not of glass
     */
    public boolean allowsPlunge(double wallK, double mediumK) {
        return Math.abs(wallK - mediumK) < plungeK;
    }

    /**
     * The coldest that any part of it may become.
     *
     * @return temperature not to be reached [K]; empty if there is none
     */
    public OptionalDouble coldestK() {
        return coldestK;
    }

    /**
     * The warmest that it may become as a whole.
     *
     * @return temperature not to be reached [K]; empty if there is none
     */
    public OptionalDouble warmestK() {
        return fullK;
    }

    private Optional<Breach> veryHot(double[] timesS, double[] warmestK) {
        return drunkFromS.isPresent() && drunkFromS.getAsDouble() <= timesS[timesS.length - 1]
                ? breach(
                        CautionRule.VERY_HOT_DRINK,
                        OptionalDouble.of(CautionLimits.VERY_HOT.value()),
                        timesS,
                        warmestK,
                        1,
                        drunkFromS.getAsDouble())
                : Optional.empty();
    }

    private Optional<Breach> held(double[] timesS, double[] warmestK) {
        OptionalDouble over =
                clock.map(known -> known.overAtChecked(timesS, warmestK)).orElseGet(OptionalDouble::empty);
        return over.isPresent()
                ? Optional.of(new Breach(CautionRule.HOLDING_TIME_OVER, over.getAsDouble(), over.getAsDouble()))
                : Optional.empty();
    }

    private static Optional<Breach> breach(
            CautionRule rule, OptionalDouble limitK, double[] timesS, double[] kelvins, int sign, double fromS) {
        if (limitK.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble at = Courses.firstS(timesS, kelvins, limitK.getAsDouble(), sign, fromS);
        return at.isPresent()
                ? Optional.of(new Breach(rule, at.getAsDouble(), limitK.getAsDouble()))
                : Optional.empty();
    }

    private static Optional<Breach> earlier(Optional<Breach> one, Optional<Breach> other) {
        return Stream.concat(one.stream(), other.stream()).min(Comparator.comparingDouble(Breach::afterS));
    }
}
