/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.service.caution.CautionLimits;
import org.beveragethermal.service.tracking.TrackingEvent.Goal;
import org.jspecify.annotations.Nullable;

/**
 * Looks at a vessel at the latest time heard of and says what is new. What stands is one bit each; a bit is set at one limit and cleared
 * at another, further one, so that nothing is said twice because of noise.
 */
final class Watch {

    /** A lead must grow by this factor before it is said anew; an assumption of ours, no source. */
    private static final double LEAD_BACK = 1.5;

    /**
     * A vessel that leaves its range is to be moved in the last part of the range, or when this little time is left; assumptions of ours, no
     * source. What is said of it comes with the whole lead, but moved so early it would be sent to and fro: ice cools a bottle through a
     * range of 2 K within the usual lead.
     */
    private static final double LAST_PART = 0.25;

    private static final double SHORT_OF_TIME_S = 120;

    private final TrackedVessel vessel;
    private final TrackedModel model;
    private final TrackingRules rules;
    private final Belief now;
    private final int before;
    private int told;
    private double leavesInS = Double.POSITIVE_INFINITY;
    private final List<Alert> alerts = new ArrayList<>(0);
    private final List<Instruction> instructions = new ArrayList<>(0);

    Watch(TrackedVessel vessel) {
        this.vessel = vessel;
        this.model = vessel.model;
        this.rules = vessel.rules;
        this.now = vessel.believedAt(vessel.said.nowMicros());
        this.before = vessel.said.told();
        this.told = before;
    }

    Outcome look(List<Note> notes) {
        long changeTold = vessel.said.toldChangeMicros();
        if (now.finished) {
            told = 0;
        } else {
            sensor();
            if (now.changes > 0 && now.changedMicros > changeTold) {
                changeTold = now.changedMicros;
                Alert.Code code = now.changedByK > 0 ? Alert.Code.UNEXPECTEDLY_WARM : Alert.Code.UNEXPECTEDLY_COLD;
                alerts.add(alert(code, now.believedMediumK(), Double.POSITIVE_INFINITY));
            }
            boolean cold = freezing();
            Goal goal = vessel.said.goal();
            if (goal != null) {
                wanted(goal);
            }
            places(goal, cold);
        }
        TrackedVessel after = told == before && changeTold == vessel.said.toldChangeMicros()
                ? vessel
                : vessel.with(vessel.said.told(told, changeTold));
        return new Outcome(Optional.of(after), instructions, alerts, notes);
    }

    private void sensor() {
        double silenceS = Checks.seconds(now.atMicros - now.readMicros);
        double allowedS = rules.silentAfter().toMillis() / 1000.0;
        set(Alert.Code.SENSOR_SILENT, silenceS > allowedS, now.t, Double.POSITIVE_INFINITY);
        set(
                Alert.Code.SENSOR_FAULTY,
                vessel.said.refusedInRow() >= rules.refusedForFaulty(),
                now.t,
                Double.POSITIVE_INFINITY);
    }

    /** Judged on the cold side of the belief; true if it should not stay. */
    private boolean freezing() {
        if (model.freezingK().isEmpty()) {
            return false;
        }
        double onset = model.onsetK();
        double coldest = now.t - Estimate.Z90 * now.sdK();
        boolean is = coldest <= onset + (stands(Alert.Code.FREEZING) ? rules.backK() : 0);
        set(Alert.Code.FREEZING, is, onset, 0);
        double seconds = is ? 0 : now.secondsTo(model, coldest, onset);
        double leadS = rules.freezingLead().toMillis() / 1000.0;
        boolean ahead = !is && seconds <= leadS * (stands(Alert.Code.FREEZING_AHEAD) ? LEAD_BACK : 1);
        set(Alert.Code.FREEZING_AHEAD, ahead, onset, seconds);
        return is || ahead;
    }

    private void wanted(Goal goal) {
        boolean inside = goal.contains(now.t, stands(Alert.Code.AT_TARGET) ? rules.backK() : 0);
        boolean was = stands(Alert.Code.AT_TARGET);
        double edge = now.t > goal.highK() ? goal.highK() : goal.lowK();
        double toEdge = inside ? 0 : now.secondsTo(model, now.t, edge);
        double leadS = rules.lead().toMillis() / 1000.0;
        set(Alert.Code.AT_TARGET, inside, inside ? now.t : edge, 0);
        boolean lost = !inside && (was || stands(Alert.Code.OUT_OF_RANGE));
        set(Alert.Code.OUT_OF_RANGE, lost, edge, Double.POSITIVE_INFINITY);
        boolean soon = !inside && toEdge <= leadS * (stands(Alert.Code.SOON_AT_TARGET) ? LEAD_BACK : 1);
        set(Alert.Code.SOON_AT_TARGET, soon, edge, toEdge);
        boolean never = !inside && !lost && Double.isInfinite(toEdge);
        set(Alert.Code.WILL_NOT_REACH, never, edge, Double.POSITIVE_INFINITY);
        set(Alert.Code.NOT_IN_TIME, !inside && !never && !lost && isLate(goal, toEdge, leadS), edge, toEdge);
        leaving(goal, inside, leadS);
        boolean served =
                goal.serveAt().map(at -> Checks.micros(at) <= now.atMicros).orElse(true);
        // What may hold ice is not to be opened, whatever range was wanted.
        boolean pour = inside && served && !stands(Alert.Code.FREEZING);
        double veryHotK = CautionLimits.VERY_HOT.value();
        double warmest = now.t + Estimate.Z90 * now.sdK() + (stands(Alert.Code.VERY_HOT) ? rules.backK() : 0);
        set(Alert.Code.VERY_HOT, pour && warmest > veryHotK, veryHotK, Double.POSITIVE_INFINITY);
        instruct(Instruction.Code.POUR_NOW, pour, edgeOf(goal), 0, Optional.empty());
    }

    private boolean isLate(Goal goal, double toEdgeS, double leadS) {
        if (goal.serveAt().isEmpty()) {
            return false;
        }
        double left = Checks.seconds(Checks.micros(goal.serveAt().get()) - now.atMicros);
        return toEdgeS > left - (stands(Alert.Code.NOT_IN_TIME) ? leadS * (LEAD_BACK - 1) : 0);
    }

    /** The end of the range towards which it goes. */
    private double edgeOf(Goal goal) {
        return now.believedMediumK() > now.t ? goal.highK() : goal.lowK();
    }

    private void leaving(Goal goal, boolean inside, double leadS) {
        double edge = edgeOf(goal);
        double seconds = inside ? now.secondsTo(model, now.t, edge) : Double.POSITIVE_INFINITY;
        if (inside && !goal.contains(now.t, 0) && !comesBack(goal)) {
            seconds = 0;
        }
        boolean soon = seconds <= leadS * (stands(Alert.Code.LEAVING_RANGE) ? LEAD_BACK : 1);
        set(Alert.Code.LEAVING_RANGE, soon, edge, seconds);
        leavesInS = seconds;
    }

    /** Where it should go if it should not stay where it is. */
    private void places(@Nullable Goal goal, boolean tooCold) {
        boolean leaves = goal != null
                && ((stands(Alert.Code.LEAVING_RANGE) && isNearEdge(goal))
                        || (stands(Alert.Code.OUT_OF_RANGE) && !comesBack(goal)));
        Optional<String> destination = Optional.empty();
        boolean back = false;
        double limit = tooCold || goal == null ? model.onsetK() : edgeOf(goal);
        if (tooCold || leaves) {
            int to = destination(limit, tooCold || now.believedMediumK() < now.t);
            destination = to < 0 ? Optional.empty() : Optional.of(model.law(to).mediumId());
            back = to >= 0 && to == now.previousMedium;
        }
        boolean out = tooCold || (leaves && destination.isPresent());
        instruct(Instruction.Code.TAKE_OUT, out && !back, limit, 0, destination);
        instruct(Instruction.Code.PUT_BACK, out && back, limit, 0, destination);
    }

    /**
     * Whether it is time to act, or was and has not passed by more than what readings scatter; in the half of the range towards which it goes,
     * so that of a narrow range no two edges are near at once.
     */
    private boolean isNearEdge(Goal goal) {
        double edge = edgeOf(goal);
        double left = edge == goal.highK() ? goal.highK() - now.t : now.t - goal.lowK();
        boolean asked = told(Instruction.Code.TAKE_OUT) || told(Instruction.Code.PUT_BACK);
        double width = goal.highK() - goal.lowK();
        return left <= 0.5 * width
                && (left <= LAST_PART * width + (asked ? rules.backK() : 0)
                        || leavesInS <= SHORT_OF_TIME_S * (asked ? LEAD_BACK : 1));
    }

    /** Whether it is on its way back into its range. */
    private boolean comesBack(Goal goal) {
        return now.t > goal.highK() ? now.believedMediumK() < goal.highK() : now.believedMediumK() > goal.lowK();
    }

    /** The medium it came from if that drives it the other way, else the nearest that does; negative if none does. */
    private int destination(double limitK, boolean warmer) {
        int best = -1;
        for (int i = 0; i < model.laws().size(); i++) {
            double medium = model.law(i).mediumK();
            if (i == now.medium || warmer != medium > limitK) {
                continue;
            }
            if (i == now.previousMedium) {
                return i;
            }
            if (best < 0 || Math.abs(medium - limitK) < Math.abs(model.law(best).mediumK() - limitK)) {
                best = i;
            }
        }
        return best;
    }

    private boolean stands(Alert.Code code) {
        return (told & code.bit()) != 0;
    }

    private boolean told(Instruction.Code code) {
        return (told & code.bit()) != 0;
    }

    /** Notes whether something stands; true if it did not before. */
    private boolean begins(int bit, boolean is) {
        boolean begins = is && (told & bit) == 0;
        told = is ? told | bit : told & ~bit;
        return begins;
    }

    private void set(Alert.Code code, boolean is, double limitK, double inS) {
        if (begins(code.bit(), is)) {
            alerts.add(alert(code, limitK, inS));
        }
    }

    private void instruct(Instruction.Code code, boolean is, double limitK, double inS, Optional<String> destination) {
        if (begins(code.bit(), is)) {
            instructions.add(
                    new Instruction(vessel.id, Checks.instant(now.atMicros), code, facts(limitK, inS, destination)));
        }
    }

    private Alert alert(Alert.Code code, double limitK, double inS) {
        return new Alert(vessel.id, Checks.instant(now.atMicros), code, facts(limitK, inS, Optional.empty()));
    }

    private Facts facts(double limitK, double inS, Optional<String> destination) {
        boolean ahead = inS < ArrivalSearch.LONGEST_S;
        return new Facts(
                now.t,
                now.sdK(),
                limitK,
                ahead ? Optional.of(Checks.instant(now.atMicros + Math.round(inS * 1e6))) : Optional.empty(),
                model.law(now.medium).mediumId(),
                destination);
    }
}
