/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;

/**
 * Turns local times, one after another in ascending order, into UTC. Where the clock was put forward, a time that never was is later by the
 * gap. Where it was put back, a time is of the first pass until the times step back, and of the second from then on; equal times count as a
 * step back only if readings are no closer than half the overlap.
 */
final class LocalTimes {
    /** How a time was turned. */
    enum Turned {
        PLAIN,
        MOVED_OVER_GAP,
        FIRST_PASS,
        SECOND_PASS
    }

    private static final long SECOND = 1_000_000;

    private final ZoneRules rules;
    /** Usual step between readings [µs]. */
    private final long step;
    /** Whether steps back tell passes apart. */
    private final boolean ordered;

    private long plainFrom = 1;
    private long plainTo;
    private long plainOffset;

    private long overlapAt = Long.MIN_VALUE;
    private boolean secondPass;
    private long last = Long.MIN_VALUE;
    private Turned turned = Turned.PLAIN;

    LocalTimes(ZoneRules rules, long step, boolean ordered) {
        this.rules = rules;
        this.step = step;
        this.ordered = ordered;
    }

    /** How the last time was turned. */
    Turned turned() {
        return turned;
    }

    /** Microseconds since 1970-01-01T00:00Z of microseconds of local time since 1970-01-01T00:00. */
    long utc(long local) {
        if (local >= plainFrom && local < plainTo) {
            turned = Turned.PLAIN;
            last = local;
            return local - plainOffset;
        }
        long seconds = Math.floorDiv(local, SECOND);
        ZoneOffsetTransition transition = rules.getTransition(LocalDateTime.ofEpochSecond(seconds, 0, ZoneOffset.UTC));
        long result;
        if (transition == null) {
            turned = Turned.PLAIN;
            result = plain(local, seconds);
        } else if (transition.isGap()) {
            turned = Turned.MOVED_OVER_GAP;
            result = local - transition.getOffsetBefore().getTotalSeconds() * SECOND;
        } else {
            result = overlap(local, transition);
        }
        last = local;
        return result;
    }

    private long plain(long local, long seconds) {
        ZoneOffset offset = rules.getOffset(LocalDateTime.ofEpochSecond(seconds, 0, ZoneOffset.UTC));
        plainOffset = offset.getTotalSeconds() * SECOND;
        Instant at = Instant.ofEpochSecond(seconds - offset.getTotalSeconds());
        ZoneOffsetTransition before = rules.previousTransition(at.plusSeconds(1));
        ZoneOffsetTransition after = rules.nextTransition(at);
        plainFrom = before == null ? Long.MIN_VALUE : SECOND * edge(before, true);
        plainTo = after == null ? Long.MAX_VALUE : SECOND * edge(after, false);
        return local - plainOffset;
    }

    /** Local time from which, or up to which, there is but one meaning. */
    private static long edge(ZoneOffsetTransition transition, boolean latest) {
        long before = transition.getDateTimeBefore().toEpochSecond(ZoneOffset.UTC);
        long after = transition.getDateTimeAfter().toEpochSecond(ZoneOffset.UTC);
        return latest ? Math.max(before, after) : Math.min(before, after);
    }

    private long overlap(long local, ZoneOffsetTransition transition) {
        long at = transition.toEpochSecond();
        long length = -transition.getDuration().toSeconds() * SECOND;
        if (at != overlapAt) {
            overlapAt = at;
            secondPass = false;
        } else if (ordered) {
            secondPass |= local < last || (local == last && 2 * step >= length);
        }
        turned = secondPass ? Turned.SECOND_PASS : Turned.FIRST_PASS;
        ZoneOffset offset = secondPass ? transition.getOffsetAfter() : transition.getOffsetBefore();
        return local - offset.getTotalSeconds() * SECOND;
    }
}
