/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Duration;

/**
 * When a reading is doubted, and when something is said.
 *
 * <p>The innovation of a reading is what it differs from what was expected; divided by its standard deviation it is z. A reading with
 * |z| above {@code gateSd} is not used; {@code straysForChange} of them in a row on one side are no longer taken for errors but for a
 * change. A change that is too small for that shows in the cumulative sums g⁺ = max(0, g⁺ + z − k) and g⁻ likewise (Page, Biometrika 41,
 * 1954); with the usual k = 0.5 and limit 9 a vessel that nothing happens to alarms once in some 26 000 readings (Siegmund's
 * approximation).
 *
 * <p>Theory manual, equation (9.7).
 *
 * @param gateSd |z| beyond which a reading is not used [-], 2 to 100
 * @param straysForChange readings in a row beyond the gate that make a change, 2 to 20
 * @param driftSd k of the cumulative sums [-], 0 to 3
 * @param alarmSd limit of the cumulative sums [-], 1 to 1000
 * @param kept events kept for late ones to be put between, 1 to 255
 * @param lead how long before a temperature is reached or left it is said, more than 0 and at most 365 days
 * @param freezingLead how long before ice may form it is said, more than 0 and at most 365 days
 * @param backK how far a temperature must come back, or beyond which time must be left again, before it is said anew [K], 0 to 5
 * @param silentAfter how long without a reading is silence, more than 0 and at most 365 days
 * @param refusedForFaulty unusable readings in a row that make a sensor faulty, 1 to 1000
 * @param mostAhead how far ahead of the latest time heard of a reading may be and be used at once, more than 0 and at most 365 days
 */
public record TrackingRules(
        double gateSd,
        int straysForChange,
        double driftSd,
        double alarmSd,
        int kept,
        Duration lead,
        Duration freezingLead,
        double backK,
        Duration silentAfter,
        int refusedForFaulty,
        Duration mostAhead) {

    static final int MOST_STRAYS = 20;
    static final int MOST_KEPT = 255;

    /**
     * Checks the figures.
     *
     * @param gateSd |z| beyond which a reading is not used [-], 2 to 100
     * @param straysForChange readings in a row beyond the gate that make a change, 2 to 20
     * @param driftSd k of the cumulative sums [-], 0 to 3
     * @param alarmSd limit of the cumulative sums [-], 1 to 1000
     * @param kept events kept, 1 to 255
     * @param lead lead of alerts, more than 0 and at most 365 days
     * @param freezingLead lead of the alert of freezing, more than 0 and at most 365 days
     * @param backK hysteresis [K], 0 to 5
     * @param silentAfter time without readings that is silence, more than 0 and at most 365 days
     * @param refusedForFaulty unusable readings in a row that make a sensor faulty, 1 to 1000
     * @param mostAhead how far ahead a reading may be, more than 0 and at most 365 days
     * @throws IllegalArgumentException if a figure is outside its range
     */
    public TrackingRules {
        Checks.within(gateSd, 2, 100, "gate of readings", "1");
        Checks.within(straysForChange, 2, MOST_STRAYS, "readings beyond the gate for a change", "1");
        Checks.within(driftSd, 0, 3, "drift of the cumulative sums", "1");
        Checks.within(alarmSd, 1, 1000, "limit of the cumulative sums", "1");
        Checks.within(kept, 1, MOST_KEPT, "events kept", "1");
        Checks.within(backK, 0, 5, "hysteresis", "K");
        Checks.within(refusedForFaulty, 1, 1000, "unusable readings for a faulty sensor", "1");
        positive(lead, "lead");
        positive(freezingLead, "lead of freezing");
        positive(silentAfter, "silence");
        positive(mostAhead, "how far ahead a reading may be");
    }

    private static void positive(Duration duration, String what) {
        if (duration.isNegative() || duration.isZero() || duration.compareTo(Duration.ofDays(365)) > 0) {
            throw new IllegalArgumentException(what + " " + duration + ": expected more than 0 and at most 365 days");
        }
    }

    /**
     * The usual rules, all assumptions: gate 4.5 with 3 strays, sums with 0.5 and 9, 12 events kept, 10 min of lead, 60 min before ice may
     * form, 0.3 K, silent after 30 min, faulty after 3, readings at most 36 h ahead, so that daily ones follow each other.
     *
     * @return the rules
     */
    public static TrackingRules usual() {
        return new TrackingRules(
                4.5,
                3,
                0.5,
                9,
                12,
                Duration.ofMinutes(10),
                Duration.ofHours(1),
                0.3,
                Duration.ofMinutes(30),
                3,
                Duration.ofHours(36));
    }

    /**
     * The same with another lead.
     *
     * @param newLead how long before a temperature is reached or left it is said, more than 0 and at most 365 days
     * @return new rules
     * @throws IllegalArgumentException if it is outside its range
     */
    public TrackingRules withLead(Duration newLead) {
        return new TrackingRules(
                gateSd,
                straysForChange,
                driftSd,
                alarmSd,
                kept,
                newLead,
                freezingLead,
                backK,
                silentAfter,
                refusedForFaulty,
                mostAhead);
    }

    /**
     * The same with another number of events kept.
     *
     * @param newKept number, 1 to 255; each takes about 26 bytes
     * @return new rules
     * @throws IllegalArgumentException if it is outside its range
     */
    public TrackingRules withKept(int newKept) {
        return new TrackingRules(
                gateSd,
                straysForChange,
                driftSd,
                alarmSd,
                newKept,
                lead,
                freezingLead,
                backK,
                silentAfter,
                refusedForFaulty,
                mostAhead);
    }
}
