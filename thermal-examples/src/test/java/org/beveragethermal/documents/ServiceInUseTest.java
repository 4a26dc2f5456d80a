/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.beveragethermal.core.storage.Reading;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.caution.Argument;
import org.beveragethermal.service.caution.Caution;
import org.beveragethermal.service.caution.CautionLimits;
import org.beveragethermal.service.caution.CautionQuantity;
import org.beveragethermal.service.caution.CautionReport;
import org.beveragethermal.service.caution.CautionSubject;
import org.beveragethermal.service.caution.CautionTexts;
import org.beveragethermal.service.caution.Cautions;
import org.beveragethermal.service.caution.GlassKind;
import org.beveragethermal.service.caution.HoldingClock;
import org.beveragethermal.service.caution.HoldingTime;
import org.beveragethermal.service.caution.Jurisdiction;
import org.beveragethermal.service.caution.SignalWord;
import org.beveragethermal.service.choice.AnswerCheck;
import org.beveragethermal.service.choice.CandidateRoute;
import org.beveragethermal.service.choice.Certificate;
import org.beveragethermal.service.choice.ChoiceAnswer;
import org.beveragethermal.service.choice.ChoiceItem;
import org.beveragethermal.service.choice.ChoiceLimits;
import org.beveragethermal.service.choice.ChoiceMonitor;
import org.beveragethermal.service.choice.ChoiceProblem;
import org.beveragethermal.service.choice.Load;
import org.beveragethermal.service.choice.RouteChooser;
import org.beveragethermal.service.choice.SharedGear;
import org.beveragethermal.service.plan.Gear;
import org.beveragethermal.service.plan.GearKind;
import org.beveragethermal.service.plan.Phrase;
import org.beveragethermal.service.plan.PlanTexts;
import org.beveragethermal.service.plan.Sentence;
import org.beveragethermal.service.plan.Window;
import org.beveragethermal.service.target.StorageRange;
import org.beveragethermal.service.target.Targets;
import org.beveragethermal.service.tracking.Alert;
import org.beveragethermal.service.tracking.Facts;
import org.beveragethermal.service.tracking.Note;
import org.beveragethermal.service.tracking.Outcome;
import org.beveragethermal.service.tracking.Sensor;
import org.beveragethermal.service.tracking.TrackedModel;
import org.beveragethermal.service.tracking.TrackedVessel;
import org.beveragethermal.service.tracking.Tracker;
import org.beveragethermal.service.tracking.TrackingEvent;
import org.beveragethermal.service.tracking.TrackingRules;
import org.junit.jupiter.api.Test;

/** Cautions, choices, plans and tracking as data that an application shows in its own way. All bottles are invented. */
class ServiceInUseTest {

    private static final Instant START = Instant.parse("2027-06-18T17:00:00Z");
    private static final FilledVessel TEA = Vessels.highShouldered750().filledWith(Beverage.tea(), celsius(40));

    @Test
    void aCautionIsDataAndWords() {
        CautionReport report =
                Cautions.ofPlunge(CautionSubject.of(TEA).withGlass(GlassKind.SODA_LIME), celsius(5), celsius(95));
        Caution caution = report.cautions().stream()
                .filter(one -> one.rule().quantity() == CautionQuantity.WALL_DIFFERENCE)
                .findFirst()
                .orElseThrow();
        assertThat(caution.signal()).isGreaterThanOrEqualTo(SignalWord.WARNING);
        assertThat(caution.value().orElseThrow()).isGreaterThan(CautionLimits.SHOCK_WARNING.value());
        CautionTexts english = CautionTexts.in(Locale.ENGLISH);
        assertThat(english.of(caution)).isEqualTo(caution.text(Locale.ENGLISH));
        assertThat(english.signal(SignalWord.DANGER)).isNotBlank();
        assertThat(caution.arguments()).extracting(Argument::name).doesNotContain("");
    }

    @Test
    void aClockRunsWhileADrinkIsNeitherColdNorHot() {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            readings.add(new Reading(START.plusSeconds(900L * i), celsius(22)));
        }
        HoldingTime held = HoldingClock.of(Jurisdiction.US_FOOD_CODE).read(TemperatureHistory.logged(readings));
        // Four hours without temperature control: FDA Food Code 2022, 3-501.19.
        assertThat(held).isInstanceOf(HoldingTime.Over.class);
        assertThat(((HoldingTime.Over) held).allowed()).isEqualTo(Duration.ofHours(4));
    }

    @Test
    void aChoiceCarriesItsProof() {
        CandidateRoute cold = new CandidateRoute("bucket", List.of(0L, 2L), List.of(new Load("bucket", 3, 6, 1)));
        CandidateRoute warm = new CandidateRoute("as it is", List.of(40L, 0L), List.of());
        ChoiceProblem problem = new ChoiceProblem(
                List.of("minutes out of range", "moves"),
                12,
                List.of(SharedGear.constant("bucket", 1, 12)),
                List.of(
                        new ChoiceItem("bottle 1", List.of(cold, warm)),
                        new ChoiceItem("bottle 2", List.of(cold, warm))));
        ChoiceAnswer answer =
                RouteChooser.choose(problem, ChoiceLimits.within(Duration.ofSeconds(5)), ChoiceMonitor.none());
        assertThat(answer).isInstanceOfSatisfying(ChoiceAnswer.Proven.class, proven -> {
            Certificate certificate = proven.certificate();
            assertThat(certificate.parts()).isNotEmpty();
            assertThat(AnswerCheck.faults(problem, proven.choice())).isEmpty();
            assertThat(proven.choice().costByLevel()).containsExactly(40L, 2L);
        });
    }

    @Test
    void gearIsThereAtTimesAndSentencesHavePlaces() {
        Window evening = new Window(START, START.plus(Duration.ofHours(2)));
        Gear gear = new Gear(
                "cold", "refrigerator", GearKind.REFRIGERATOR, Refrigerator.at(celsius(5)), 6, List.of(evening));
        assertThat(gear.windows().get(0).holds(START, START.plusSeconds(60))).isTrue();
        assertThat(Sentence.NEWS_PRESENT.places()).isZero();
        assertThat(PlanTexts.in(Locale.ENGLISH, ZoneOffset.UTC).words(new Phrase(Sentence.NEWS_PRESENT, List.of())))
                .isNotBlank();
    }

    @Test
    void storageIsNoServingTemperature() {
        List<StorageRange> ranges = Targets.storageOf(Targets.style("red-full"));
        assertThat(ranges).isNotEmpty().allMatch(range -> range.contains(0.5 * (range.lowK() + range.highK())));
    }

    @Test
    void aTrackedBottleSaysWhatHappens() {
        FilledVessel bottle = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
        Tracker tracker = Tracker.of(
                List.of(TrackedModel.from("bottle", bottle)
                        .medium("refrigerator", Refrigerator.at(celsius(5)), 1.0, 0.4)
                        .medium("table", Air.at(celsius(22)))
                        .sensor(Sensor.inDrink(0.3, 0.1))
                        .build()),
                TrackingRules.usual());
        Optional<TrackedVessel> vessel = Optional.empty();
        List<Alert> alerts = new ArrayList<>();
        List<TrackingEvent> events = new ArrayList<>(List.of(
                new TrackingEvent.Placed("e1", START, "bottle 7", "bottle", "refrigerator", 285.15, 0.3),
                new TrackingEvent.Ordered(
                        "e2", START, "bottle 7", TrackingEvent.Goal.between(celsius(8), celsius(10)))));
        for (int i = 1; i <= 12; i++) {
            events.add(new TrackingEvent.Reading(
                    "r" + i, START.plusSeconds(900L * i), "bottle 7", 278.15 + 7 * Math.exp(-0.25 * i / 2.0)));
        }
        for (TrackingEvent event : events) {
            Outcome outcome = tracker.apply(vessel, event);
            vessel = outcome.vessel();
            alerts.addAll(outcome.alerts());
        }
        assertThat(alerts).extracting(Alert::code).contains(Alert.Code.AT_TARGET);
        Facts facts = alerts.get(0).facts();
        assertThat(facts.mediumId()).isEqualTo("refrigerator");
        Outcome unknown = tracker.apply(Optional.empty(), events.get(2));
        assertThat(unknown.notes()).extracting(Note::vesselId).containsOnly("bottle 7");
    }
}
