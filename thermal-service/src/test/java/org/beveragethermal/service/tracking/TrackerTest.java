/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said, when, and how often; what is refused and why. */
class TrackerTest {

    private static final double ZERO = Truth.ZERO;
    private static final String ID = "bottle-1";
    private static final Tracker TRACKER = Tracker.of(List.of(Truth.MODEL), TrackingRules.usual());
    private static final TrackingEvent.Goal GOAL = TrackingEvent.Goal.between(celsius(8), celsius(10));

    /** One vessel in a simulated evening: minutes, events and everything that was said. */
    private static final class Evening {
        private final Fleet fleet;
        private final Truth noise;
        private final List<Alert> alerts = new ArrayList<>();
        private final List<Instruction> instructions = new ArrayList<>();
        private final List<Note> notes = new ArrayList<>();
        private MediumLaw law;
        private double mediumK;
        private double drinkK = ZERO + 20;
        private int minute;

        Evening() {
            this(Truth.MODEL);
        }

        /** In the first medium of a model. */
        Evening(TrackedModel model) {
            fleet = Fleet.of(Tracker.of(List.of(model), TrackingRules.usual()));
            noise = new Truth(new SplittableRandom(20_261_210), model, ZERO, 0);
            law = model.law(0);
            mediumK = law.mediumK();
            tell(new TrackingEvent.Placed("placed", Truth.START, ID, "bottle", law.mediumId(), drinkK, 0.5));
        }

        Evening tell(TrackingEvent event) {
            Fleet.Report report = fleet.apply(List.of(event));
            alerts.addAll(report.alerts());
            instructions.addAll(report.instructions());
            notes.addAll(report.notes());
            return this;
        }

        Instant now() {
            return Truth.after(60.0 * minute);
        }

        /** What happens whether it is told or not. */
        Evening really(MediumLaw newLaw) {
            law = newLaw;
            mediumK = newLaw.mediumK();
            return this;
        }

        Evening minutes(int count) {
            for (int i = 0; i < count; i++) {
                minute++;
                drinkK = mediumK + law.excessAfter(drinkK - mediumK, 60);
                double reading = drinkK + Truth.SENSOR.sdK() * noise.normal();
                tell(new TrackingEvent.Reading("r" + minute, now(), ID, Math.rint(reading * 10) / 10));
            }
            return this;
        }

        Evening silentMinutes(int count) {
            for (int i = 0; i < count; i++) {
                minute++;
                drinkK = mediumK + law.excessAfter(drinkK - mediumK, 60);
                tell(new TrackingEvent.TimePassed("t" + minute, now(), ID));
            }
            return this;
        }

        Estimate estimate() {
            return fleet.vessel(ID).orElseThrow().estimate();
        }

        List<Alert.Code> codes() {
            return alerts.stream().map(Alert::code).toList();
        }

        List<Instruction.Code> asked() {
            return instructions.stream().map(Instruction::code).toList();
        }
    }

    @Test
    void eveningGoesAsItShould() {
        Evening evening = new Evening().tell(new TrackingEvent.Ordered("order", Truth.START, ID, GOAL));
        evening.minutes(112);
        assertThat(evening.codes())
                .containsExactly(Alert.Code.SOON_AT_TARGET, Alert.Code.AT_TARGET, Alert.Code.LEAVING_RANGE);
        assertThat(evening.asked()).containsExactly(Instruction.Code.POUR_NOW, Instruction.Code.TAKE_OUT);
        assertThat(evening.instructions.get(1).facts().destinationId()).contains("room");
        evening.really(Truth.ROOM).tell(new TrackingEvent.Moved("moved", evening.now(), ID, "room"));
        evening.minutes(40);
        assertThat(evening.asked())
                .containsExactly(Instruction.Code.POUR_NOW, Instruction.Code.TAKE_OUT, Instruction.Code.PUT_BACK);
        assertThat(evening.instructions.get(2).facts().destinationId()).contains("cold");
        assertThat(evening.estimate().temperatureK()).isCloseTo(evening.drinkK, within(0.6));
        Alert soon = evening.alerts.get(0);
        Duration ahead = Duration.between(soon.at(), soon.facts().expectedAt().orElseThrow());
        assertThat(ahead).isBetween(Duration.ofMinutes(6), TrackingRules.usual().lead());
        evening.tell(new TrackingEvent.Finished("finished", evening.now().plusSeconds(1), ID));
        int said = evening.alerts.size();
        evening.minutes(60);
        assertThat(evening.alerts).hasSize(said);
        assertThat(evening.notes).allMatch(note -> note.code() == Note.Code.FINISHED);
    }

    /** Whoever does what is asked keeps it in its range, and is not sent to and fro: ice cools a bottle through 2 K within minutes. */
    @ParameterizedTest
    @CsvSource({"9.0, 3", "9.5, 4", "10.0, 7", "12.0, 12"})
    void followedInstructionsKeepItInItsRangeWithoutHaste(double highC, int leastMinutesOutAndBack) {
        MediumLaw bucket = new MediumLaw("bucket", 6e-4, 2e-4, 0.1, ZERO + 1, 0.5, 0.25, 0);
        TrackedModel model = TrackedModel.of("bottle", List.of(bucket, Truth.ROOM), Truth.SENSOR)
                .withNoise(Truth.MODEL.noise());
        TrackingEvent.Goal goal = TrackingEvent.Goal.between(celsius(8), celsius(highC));
        Evening evening = new Evening(model).tell(new TrackingEvent.Ordered("order", Truth.START, ID, goal));
        List<Integer> moves = new ArrayList<>();
        int done = 0;
        for (int minute = 0; minute < 240; minute++) {
            evening.minutes(1);
            if (!moves.isEmpty()) {
                assertThat(evening.drinkK - ZERO).as("minute %d", minute).isBetween(7.5, highC + 0.5);
            }
            List<Instruction> asked = evening.instructions.stream()
                    .filter(each -> each.code() != Instruction.Code.POUR_NOW)
                    .toList();
            for (Instruction each : asked.subList(done, asked.size())) {
                String to = each.facts().destinationId().orElseThrow();
                moves.add(evening.minute);
                evening.really(to.equals("bucket") ? bucket : Truth.ROOM)
                        .tell(new TrackingEvent.Moved("move" + minute, evening.now(), ID, to));
            }
            done = asked.size();
        }
        assertThat(moves).hasSizeGreaterThan(8);
        // Out and back again; in ice alone a range of 2 K is crossed in three minutes.
        for (int i = 2; i < moves.size(); i++) {
            assertThat(moves.get(i) - moves.get(i - 2))
                    .as("moved at %s", moves)
                    .isGreaterThanOrEqualTo(leastMinutesOutAndBack);
        }
    }

    @Test
    void noiseAtAnEdgeIsSaidOnce() {
        Evening evening = new Evening();
        evening.drinkK = ZERO + 10.4;
        evening.really(MediumLaw.newton("cold", 1e6, ZERO + 4, 0, 0));
        evening.tell(new TrackingEvent.GearChanged("set", Truth.START, ID, ZERO + 9.7, 1));
        evening.minutes(20);
        evening.tell(new TrackingEvent.Ordered("order", evening.now(), ID, GOAL));
        evening.drinkK = ZERO + 10;
        evening.minutes(200);
        assertThat(evening.codes()).containsOnlyOnce(Alert.Code.AT_TARGET);
        assertThat(evening.codes().stream().filter(code -> code == Alert.Code.LEAVING_RANGE))
                .hasSizeLessThanOrEqualTo(2);
    }

    @Test
    void oneStrayReadingIsNotUsedAndManyAreBelieved() {
        Evening evening = new Evening().minutes(30);
        Estimate before = evening.estimate();
        evening.tell(new TrackingEvent.Reading("stray", evening.now().plusSeconds(10), ID, ZERO + 45));
        assertThat(evening.notes).extracting(Note::code).containsExactly(Note.Code.STRAY_READING);
        assertThat(evening.estimate().temperatureK()).isCloseTo(before.temperatureK(), within(0.1));
        evening.minutes(5);
        assertThat(evening.codes()).isEmpty();
        for (int i = 1; i <= 8; i++) {
            evening.tell(new TrackingEvent.Reading("hot" + i, evening.now().plusSeconds(10 + i), ID, ZERO + 45));
        }
        assertThat(evening.codes()).contains(Alert.Code.UNEXPECTEDLY_WARM);
        assertThat(evening.estimate().temperatureK()).isCloseTo(ZERO + 45, within(1.0));
    }

    /** Nobody says that the bottle was taken out; its readings do, and the medium is learned anew. */
    @Test
    void bottleTakenOutIsNoticed() {
        Evening evening = new Evening().minutes(90);
        assertThat(evening.codes()).isEmpty();
        int taken = evening.minute;
        evening.really(Truth.ROOM).minutes(45);
        assertThat(evening.codes()).contains(Alert.Code.UNEXPECTEDLY_WARM);
        assertThat(evening.alerts.get(0).at()).isBefore(Truth.after(60.0 * (taken + 20)));
        assertThat(evening.estimate().temperatureK()).isCloseTo(evening.drinkK, within(0.6));
        assertThat(evening.estimate().mediumK()).isGreaterThan(ZERO + 12);
    }

    @Test
    void silenceAndFaultAreSaidAndPass() {
        Evening evening = new Evening().minutes(10).silentMinutes(40);
        assertThat(evening.codes()).containsExactly(Alert.Code.SENSOR_SILENT);
        double sd = evening.estimate().sdK();
        evening.minutes(2).silentMinutes(40);
        assertThat(evening.codes()).containsExactly(Alert.Code.SENSOR_SILENT, Alert.Code.SENSOR_SILENT);
        assertThat(evening.estimate().sdK()).isPositive();
        assertThat(sd).isGreaterThan(0.1);
        evening.minutes(1);
        for (double absurdC : new double[] {85, -127, 999, Double.NaN, 300}) {
            evening.minute++;
            evening.tell(new TrackingEvent.Reading("x" + absurdC, evening.now(), ID, ZERO + absurdC));
        }
        assertThat(evening.notes).extracting(Note::code).containsOnly(Note.Code.NOT_A_READING);
        assertThat(evening.notes).hasSize(5);
        assertThat(evening.notes.get(0).detail()).contains("85.00 °C: expected -40.0 to 105.0 °C");
        assertThat(evening.codes())
                .containsExactly(Alert.Code.SENSOR_SILENT, Alert.Code.SENSOR_SILENT, Alert.Code.SENSOR_FAULTY);
    }

    @Test
    void goalOutOfReachAndTooLateAreSaid() {
        Evening never = new Evening()
                .tell(new TrackingEvent.Ordered(
                        "order", Truth.START, ID, TrackingEvent.Goal.between(celsius(1), celsius(2))));
        assertThat(never.codes()).containsExactly(Alert.Code.WILL_NOT_REACH);
        Evening late =
                new Evening().tell(new TrackingEvent.Ordered("order", Truth.START, ID, GOAL.at(Truth.after(1800))));
        assertThat(late.codes()).containsExactly(Alert.Code.NOT_IN_TIME);
        late.minutes(20);
        assertThat(late.codes()).containsExactly(Alert.Code.NOT_IN_TIME);
    }

    @Test
    void whatIsFinishedIsForgottenWhenAsked() {
        Evening evening = new Evening()
                .tell(new TrackingEvent.Placed("other", Truth.START, "bottle-2", "bottle", "room", ZERO + 20, 0.5))
                .tell(new TrackingEvent.Finished("finished", Truth.after(60), ID));
        assertThat(evening.fleet.in("cold")).isEmpty();
        assertThat(evening.fleet.in("room")).containsExactly("bottle-2");
        assertThat(evening.fleet.forgetFinished()).isEqualTo(1);
        assertThat(evening.fleet.vessels()).extracting(TrackedVessel::id).containsExactly("bottle-2");
    }

    @Test
    void sensorMayHaveOtherValuesForNoReading() {
        TrackedModel model = Truth.MODEL.withSensor(Truth.SENSOR.withSentinels(List.of(0.0)));
        Fleet fleet = Fleet.of(Tracker.of(List.of(model), TrackingRules.usual()));
        Fleet.Report report = fleet.apply(List.of(
                new TrackingEvent.Placed("p", Truth.START, ID, "bottle", "cold", ZERO + 84, 5),
                new TrackingEvent.Reading("none", Truth.after(60), ID, ZERO),
                new TrackingEvent.Reading("one", Truth.after(120), ID, ZERO + 85)));
        assertThat(report.notes()).singleElement().satisfies(note -> {
            assertThat(note.eventId()).isEqualTo("none");
            assertThat(note.code()).isEqualTo(Note.Code.NOT_A_READING);
        });
    }

    private static TrackingEvent.Reading yearsAhead(String id, int second) {
        return new TrackingEvent.Reading(id, Truth.after(10 * 365 * 86_400.0 + second), ID, ZERO + 14);
    }

    /** The same evening with one reading from a clock ten years ahead, and without it. */
    @Test
    void readingFromYearsAheadChangesNothingButIsSaid() {
        Evening without = new Evening().minutes(30);
        Evening with = new Evening().minutes(15).tell(yearsAhead("wrong", 0));
        assertThat(with.notes).singleElement().satisfies(note -> {
            assertThat(note.eventId()).isEqualTo("wrong");
            assertThat(note.code()).isEqualTo(Note.Code.AHEAD);
            assertThat(note.detail()).startsWith("2037-").contains("expected it to be at most PT36H after 2027-06-18T");
        });
        assertThat(with.fleet.vessel(ID).orElseThrow().now()).isEqualTo(with.now());
        with.tell(yearsAhead("wrong", 0)).minutes(15);
        assertThat(with.notes)
                .extracting(Note::code)
                .containsExactly(Note.Code.AHEAD, Note.Code.DUPLICATE, Note.Code.LET_GO);
        assertThat(with.notes.get(2).eventId()).isEqualTo("wrong");
        assertThat(with.fleet.snapshots()).isEqualTo(without.fleet.snapshots());
        assertThat(with.alerts).isEqualTo(without.alerts);
    }

    /** A sensor whose clock stays wrong is never believed while the time is told, nor while another sensor reads. */
    @Test
    void wrongClockIsNotBelievedAgainstOthers() {
        Evening told = new Evening().silentMinutes(1);
        Evening read = new Evening().minutes(1);
        for (int i = 0; i < 20; i++) {
            told.tell(yearsAhead("w" + i, i));
            read.tell(yearsAhead("w" + i, i)).minutes(1);
        }
        assertThat(told.fleet.vessel(ID).orElseThrow().now()).isEqualTo(told.now());
        assertThat(told.notes).hasSize(39);
        assertThat(read.fleet.vessel(ID).orElseThrow().now()).isEqualTo(read.now());
        assertThat(read.notes).hasSize(40);
    }

    /** After a pause nothing is lost: the reading that was held aside is used with the news that show that its time has come. */
    @Test
    void readingAfterALongPauseIsUsedWhenItsTimeIsTold() {
        Instant later = Truth.after(5 * 86_400.0);
        TrackingEvent first = new TrackingEvent.Reading("first", later, ID, ZERO + 4.1);
        List<TrackingEvent> showing = List.of(
                new TrackingEvent.Reading("second", later.plusSeconds(60), ID, ZERO + 4.2),
                new TrackingEvent.TimePassed("now", later.plusSeconds(60), ID),
                new TrackingEvent.Opened("opened", later.plusSeconds(60), ID));
        for (TrackingEvent event : showing) {
            Evening evening = new Evening().minutes(20).tell(first);
            TrackedSnapshot stored = evening.fleet.snapshots().get(0);
            assertThat(stored.aside()).contains((TrackingEvent.Reading) first);
            assertThat(stored.restore(TRACKER).snapshot()).isEqualTo(stored);
            evening.tell(event);
            assertThat(evening.notes).extracting(Note::code).containsExactly(Note.Code.AHEAD);
            TrackedSnapshot after = evening.fleet.snapshots().get(0);
            assertThat(after.aside()).isEmpty();
            assertThat(after.kept())
                    .extracting(TrackedSnapshot.KeptEvent::idHash)
                    .contains(Kept.hash("first"));
            assertThat(evening.fleet.vessel(ID).orElseThrow().now()).isEqualTo(later.plusSeconds(60));
            evening.tell(first);
            assertThat(evening.notes.get(1).code()).isEqualTo(Note.Code.DUPLICATE);
        }
    }

    @Test
    void absurdReadingFromYearsAheadIsNone() {
        Evening evening =
                new Evening().tell(new TrackingEvent.Reading("x", Truth.after(10 * 365 * 86_400.0), ID, Double.NaN));
        assertThat(evening.notes).extracting(Note::code).containsExactly(Note.Code.NOT_A_READING);
        assertThat(evening.fleet.vessel(ID).orElseThrow().now()).isEqualTo(Truth.START);
    }

    /** A later order counts, whichever comes first. */
    @Test
    void orderThatComesLateDoesNotUndoALaterOne() {
        TrackingEvent.Goal other = TrackingEvent.Goal.between(celsius(14), celsius(16));
        Evening evening = new Evening()
                .tell(new TrackingEvent.Ordered("b", Truth.after(100), ID, GOAL))
                .tell(new TrackingEvent.Ordered("a", Truth.after(50), ID, other));
        assertThat(evening.fleet.vessel(ID).orElseThrow().goal()).contains(GOAL);
        assertThat(evening.notes).extracting(Note::code).containsExactly(Note.Code.TOO_LATE);
    }

    @Test
    void lateReadingIsPutInItsPlaceAndOneTooLateIsNot() {
        Evening evening = new Evening().minutes(40);
        Estimate before = evening.estimate();
        evening.tell(new TrackingEvent.Reading("late", Truth.after(35.5 * 60), ID, ZERO + 14));
        assertThat(evening.notes).isEmpty();
        assertThat(evening.estimate().at()).isEqualTo(before.at());
        assertThat(evening.estimate().temperatureK()).isNotEqualTo(before.temperatureK());
        Estimate kept = evening.estimate();
        evening.tell(new TrackingEvent.Reading("too-late", Truth.after(10.5 * 60), ID, ZERO + 14));
        assertThat(evening.notes).extracting(Note::code).containsExactly(Note.Code.TOO_LATE);
        assertThat(evening.notes.get(0).detail()).contains("expected it to be after 2027-06-18T15:");
        assertThat(evening.estimate()).isEqualTo(kept);
    }

    @Test
    void whatIsUnknownIsRefusedWithAReason() {
        Fleet fleet = Fleet.of(TRACKER);
        Fleet.Report report = fleet.apply(List.of(
                new TrackingEvent.Reading("r", Truth.START, "nobody", 280),
                new TrackingEvent.Placed("p1", Truth.START, "v", "keg", "cold", 290, 1),
                new TrackingEvent.Placed("p2", Truth.START, "v", "bottle", "cellar", 290, 1),
                new TrackingEvent.Placed("p3", Truth.START, "v", "bottle", "cold", 290, 1),
                new TrackingEvent.Placed("p3", Truth.START, "v", "bottle", "cold", 290, 1),
                new TrackingEvent.Placed("p4", Truth.START, "v", "bottle", "cold", 290, 1),
                new TrackingEvent.Moved("m", Truth.after(5), "v", "moon")));
        assertThat(report.notes())
                .extracting(Note::code)
                .containsExactly(
                        Note.Code.UNKNOWN_VESSEL,
                        Note.Code.UNKNOWN_MODEL,
                        Note.Code.UNKNOWN_MEDIUM,
                        Note.Code.DUPLICATE,
                        Note.Code.ALREADY_PLACED,
                        Note.Code.UNKNOWN_MEDIUM);
        assertThat(report.notes().get(1).detail()).isEqualTo("keg: expected one of [bottle]");
        assertThat(report.notes().get(5).detail()).isEqualTo("moon: expected one of [cold, room]");
        assertThat(fleet.in("cold")).containsExactly("v");
    }

    @Test
    void nonsenseIsRefusedWhereItEnters() {
        assertThatThrownBy(() -> new TrackingEvent.Reading(" ", Truth.START, ID, 280))
                .hasMessageContaining("event ' '");
        assertThatThrownBy(() -> new TrackingEvent.Opened("e", Instant.EPOCH.minusSeconds(4_000_000_000L), ID))
                .hasMessageContaining("expected a time from 1900");
        assertThatThrownBy(() -> new TrackingEvent.Poured("e", Truth.START, ID, 0))
                .hasMessageContaining("part left");
        assertThatThrownBy(() -> new TrackingEvent.Placed("e", Truth.START, ID, "bottle", "cold", Double.NaN, 1))
                .hasMessageContaining("temperature in event e NaN");
        assertThatThrownBy(() -> TrackingEvent.Goal.between(celsius(10), celsius(8)))
                .hasMessageContaining("highest temperature wanted");
        assertThatThrownBy(() -> Tracker.of(List.of(), TrackingRules.usual())).hasMessageContaining("no model");
        assertThatThrownBy(() -> Tracker.of(List.of(Truth.MODEL, Truth.MODEL), TrackingRules.usual()))
                .hasMessageContaining("two models are named bottle");
        assertThatThrownBy(() -> TrackingRules.usual().withKept(0)).hasMessageContaining("events kept");
        assertThatThrownBy(() -> TrackingRules.usual().withLead(Duration.ZERO)).hasMessageContaining("lead");
        TrackedVessel vessel = new Evening().fleet.vessel(ID).orElseThrow();
        assertThatThrownBy(
                        () -> TRACKER.apply(Optional.of(vessel), new TrackingEvent.Opened("e", Truth.START, "another")))
                .hasMessageContaining("event e is about vessel another: expected bottle-1");
        assertThatThrownBy(() -> vessel.timeTo(280, Truth.START, 1)).hasMessageContaining("level of the interval");
    }

    @Test
    void snapshotThatDoesNotFitIsRefused() {
        TrackedSnapshot good = new Evening().minutes(20).fleet.snapshots().get(0);
        assertThat(good.restore(TRACKER).snapshot()).isEqualTo(good);
        Tracker other = Tracker.of(
                List.of(TrackedModel.of("bottle", List.of(Truth.ROOM), Truth.SENSOR)), TrackingRules.usual());
        assertThatThrownBy(() -> good.restore(other)).hasMessageContaining("media [cold, room] of model bottle");
        assertThatThrownBy(() -> new TrackedSnapshot(
                        2,
                        good.vesselId(),
                        good.modelName(),
                        good.media(),
                        good.folded(),
                        good.placedIdHash(),
                        good.before(),
                        good.kept(),
                        good.said(),
                        good.aside()))
                .hasMessageContaining("in format 2: expected format 1");
        assertThatThrownBy(() -> Fleet.restore(TRACKER, List.of(good, good))).hasMessageContaining("two snapshots");
    }

    /**
     * Logs in local time across both changes of the clock: converted with their offsets they give what the same logs in universal time
     * give, whatever the zone.
     */
    @Test
    void changesOfTheClockDoNotMatter() {
        for (String day : List.of("2027-03-28T00:30", "2027-10-31T00:30")) {
            ZonedDateTime start = LocalDateTime.parse(day).atZone(ZoneId.of("Europe/Vienna"));
            List<TrackingEvent> universal = new ArrayList<>();
            List<TrackingEvent> local = new ArrayList<>();
            universal.add(placed(start.toInstant()));
            local.add(placed(start.toInstant()));
            double drink = ZERO + 20;
            for (int i = 1; i <= 20; i++) {
                Instant at = start.toInstant().plus(Duration.ofMinutes(15L * i));
                drink = Truth.COLD.mediumK() + Truth.COLD.excessAfter(drink - Truth.COLD.mediumK(), 900);
                // The clock on the wall, with its offset: one hour is missing in March and there are two in October.
                String wall =
                        at.atZone(ZoneId.of("Europe/Vienna")).toOffsetDateTime().toString();
                universal.add(new TrackingEvent.Reading("r" + i, at, ID, drink));
                local.add(new TrackingEvent.Reading(
                        "r" + i, OffsetDateTime.parse(wall).toInstant(), ID, drink));
            }
            Fleet one = Fleet.of(TRACKER);
            Fleet other = Fleet.of(TRACKER);
            one.apply(universal);
            other.apply(local);
            assertThat(other.snapshots()).isEqualTo(one.snapshots());
            Estimate estimate = one.vessel(ID).orElseThrow().estimate();
            assertThat(estimate.at()).isEqualTo(start.toInstant().plus(Duration.ofHours(5)));
            assertThat(estimate.temperatureK()).isCloseTo(drink, within(0.3));
        }
    }

    private static TrackingEvent placed(Instant at) {
        return new TrackingEvent.Placed("placed", at, ID, "bottle", "cold", ZERO + 20, 0.5);
    }
}
