/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.beveragethermal.service.plan.ReplanEvenings.bucket;
import static org.beveragethermal.service.plan.ReplanEvenings.refrigerator;
import static org.beveragethermal.service.plan.ReplanEvenings.room;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** What is counted of a round, and what is told while there are rounds. */
class PlanningRoundTest {

    private final BottleOrder one = white("one", 22, "room", 60);
    private final BottleOrder two = white("two", 22, "room", 60);
    private final BottleOrder three = white("three", 22, "room", 60);
    private final PlanRequest request = room().gear(refrigerator())
            .gear(bucket())
            .bottle(one)
            .bottle(two)
            .bottle(three)
            .build();

    /** In range is 8 °C to 14 °C. */
    private static Outcome outcome(double... celsius) {
        List<Double> pours = new ArrayList<>();
        for (double here : celsius) {
            pours.add(273.15 + here);
        }
        boolean in = pours.stream().allMatch(k -> k > 281.15 && k < 287.15);
        return new Outcome(pours, 280, 290, in ? OptionalDouble.empty() : OptionalDouble.of(3600));
    }

    private static Candidate promised(long outside) {
        Forecast forecast = new Forecast(
                new double[] {283}, new double[] {0.5}, new double[] {283}, true, 0, new double[0], new double[0]);
        return new Candidate(
                Route.of(Route.Kind.STAY, new Leg("room", 0, 4800)),
                forecast,
                List.of(Math.min(1, outside), outside, 0L, 0L, 0L, 0L, 0L));
    }

    private Planning.Round round(List<Candidate> chosen, List<Outcome> outcomes) {
        ServicePlan.Chosen any = Planner.plan(request).chosen();
        Map<BottleOrder, Candidate> taken = new LinkedHashMap<>();
        Map<BottleOrder, Outcome> came = new LinkedHashMap<>();
        List<BottleOrder> orders = List.of(one, two, three);
        for (int i = 0; i < orders.size(); i++) {
            taken.put(orders.get(i), chosen.get(i));
            came.put(orders.get(i), outcomes.get(i));
        }
        return new Planning.Round(
                1,
                any.problem(),
                any.answer(),
                taken,
                Map.of(),
                Map.of(),
                new CoupledRuns.Together(came, Map.of(), List.of()));
    }

    @Test
    void bottlesAndPoursOutsideAreCounted() {
        Planning.Round round = round(
                List.of(promised(0), promised(0), promised(0)),
                List.of(outcome(10, 11), outcome(13, 15), outcome(15, 7)));
        assertThat(round.bottlesOutside()).isEqualTo(2);
        assertThat(round.poursOutside()).isEqualTo(3);
        assertThat(round.lacks()).isFalse();
        assertThat(round.fails()).isTrue();
    }

    @Test
    void whatWasNotPromisedDoesNotFail() {
        Planning.Round lacking =
                round(List.of(promised(0), promised(2), promised(0)), List.of(outcome(10), outcome(16), outcome(12)));
        assertThat(lacking.lacks()).isTrue();
        assertThat(lacking.fails()).isFalse();
        assertThat(lacking.bottlesOutside()).isEqualTo(1);
        Planning.Round good =
                round(List.of(promised(0), promised(0), promised(0)), List.of(outcome(10), outcome(9), outcome(12)));
        assertThat(good.lacks()).isFalse();
        assertThat(good.fails()).isFalse();
        assertThat(good.bottlesOutside()).isZero();
        assertThat(good.poursOutside()).isZero();
    }

    /** Stages come in their order, each from nothing or to all of it, and every one of them can be the last. */
    @Test
    void everyStageIsToldInOrderAndMayBeTheLast() {
        List<String> told = new ArrayList<>();
        ServicePlan plan = Planner.plan(request, PlanLimits.standard(), (stage, part) -> {
            String next = stage + " " + part;
            if (told.isEmpty() || !told.get(told.size() - 1).equals(next)) {
                told.add(next);
            }
            return true;
        });
        assertThat(plan.works()).isTrue();
        assertThat(plan.chosen().rounds()).isEqualTo(1);
        assertThat(told)
                .containsSubsequence(
                        "TABLES 0.0", "CANDIDATES 1.0", "CHOICE 1.0", "COUPLED_RUN 0.0", "COUPLED_RUN 1.0");
        for (String last :
                List.of("TABLES 0.0", "CANDIDATES 1.0", "CHOICE 1.0", "COUPLED_RUN 0.0", "COUPLED_RUN 1.0")) {
            assertThatExceptionOfType(CancellationException.class)
                    .as(last)
                    .isThrownBy(() -> Planner.plan(
                            request, PlanLimits.standard(), (stage, part) -> !last.equals(stage + " " + part)))
                    .withMessageContaining(last.substring(0, last.indexOf(' ')));
        }
    }
}
