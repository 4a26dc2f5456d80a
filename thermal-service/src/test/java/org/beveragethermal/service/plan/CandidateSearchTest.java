/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.service.plan.ReplanEvenings.START;
import static org.beveragethermal.service.plan.ReplanEvenings.after;
import static org.beveragethermal.service.plan.ReplanEvenings.bucket;
import static org.beveragethermal.service.plan.ReplanEvenings.refrigerator;
import static org.beveragethermal.service.plan.ReplanEvenings.room;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Candidates of one bottle against every minute at which it could be put somewhere, each tried. */
class CandidateSearchTest {

    /** What a search works with. */
    private record Bench(Site site, Assessor assessor, GearPools pools) {

        static Bench of(PlanRequest request) {
            Site site = new Site(request);
            FlowTables tables = new FlowTables(site, request.bottles());
            Task task = new Task(site, tables, request.bottles().get(0));
            Assessor assessor =
                    new Assessor(task, new Forecaster(site, tables), new Danger(site), Earlier.NONE, route -> 0);
            return new Bench(site, assessor, new GearPools(request));
        }

        List<Candidate> candidates(List<String> means, int queueMin, boolean wide) {
            return new CandidateSearch(site, assessor, means, pools, queueMin).candidates(Optional.empty(), wide);
        }

        /** In gear from a minute until it is served, and drunk at its table or there. */
        Candidate put(String where, int minute, boolean keptThere) {
            Task task = assessor.task();
            return assessor.assess(Route.of(
                    Route.Kind.ONE_MEANS,
                    new Leg(task.order().startsIn(), 0, 60.0 * minute),
                    new Leg(where, 60.0 * minute, task.servedS()),
                    new Leg(keptThere ? where : "room", task.servedS(), task.finishedS())));
        }
    }

    private static double leaves(Candidate candidate) {
        Leg first = candidate.route().legs().get(0);
        return first.where().equals("room") ? first.toS() : 0;
    }

    private static Gear open(String id, double celsius, long fromMin, long toMin) {
        return new Gear(
                id,
                id,
                GearKind.REFRIGERATOR,
                Refrigerator.at(celsius(celsius)),
                6,
                List.of(new Window(after(fromMin), after(toMin))));
    }

    /** No minute at which it is put into the gear serves it better than the best candidate, and none that serves as well is later. */
    @ParameterizedTest
    @CsvSource({"cold, 22, 30", "cold, 22, 90", "cold, 16, 200", "bucket, 24, 25", "bucket, 20, 60", "bucket, 15, 120"})
    void noMinuteServesBetter(String gear, double celsius, int servedMin) {
        Bench bench = Bench.of(room().gear(refrigerator())
                .gear(bucket())
                .bottle(white("white", celsius, "room", servedMin))
                .build());
        List<Candidate> found = bench.candidates(List.of(gear), 0, false);
        Candidate best = found.stream()
                .reduce((one, other) -> other.servesBetterThan(one) ? other : one)
                .orElseThrow();
        List<Candidate> every = new ArrayList<>();
        for (int minute = 0; minute < servedMin; minute++) {
            every.add(bench.put(gear, minute, false));
        }
        for (Candidate one : every) {
            assertThat(one.servesBetterThan(best))
                    .as("leaving at %s s", leaves(one))
                    .isFalse();
        }
        double latest = every.stream()
                .filter(one -> !best.servesBetterThan(one))
                .mapToDouble(CandidateSearchTest::leaves)
                .max()
                .orElse(0);
        assertThat(found).anySatisfy(candidate -> {
            assertThat(best.servesBetterThan(candidate)).isFalse();
            assertThat(leaves(candidate)).isGreaterThanOrEqualTo(latest);
        });
    }

    /** Gear that is there for a while is used only in that while, to its very ends; costs rise along the list. */
    @ParameterizedTest
    @CsvSource({"0, 60, 0", "20, 90, 0", "30, 100, 4", "10, 40, 2"})
    void candidatesKeepTheWindowsOfGear(long fromMin, long toMin, int queueMin) {
        Bench bench = Bench.of(room().gear(open("some", 3, fromMin, toMin))
                .gear(bucket())
                .bottle(white("white", 21, "room", 100))
                .build());
        for (boolean wide : new boolean[] {false, true}) {
            List<Candidate> found = bench.candidates(List.of("room", "terrace", "some", "bucket"), queueMin, wide);
            assertThat(found)
                    .anyMatch(candidate -> candidate.route().legs().stream()
                            .anyMatch(leg -> leg.where().equals("some")));
            for (Candidate candidate : found) {
                List<Leg> legs = candidate.route().legs();
                assertThat(legs.get(0).fromS()).isZero();
                assertThat(legs.get(legs.size() - 1).toS()).isEqualTo(120 * 60);
                for (int i = 0; i < legs.size(); i++) {
                    assertThat(i == 0 || legs.get(i).fromS() == legs.get(i - 1).toS())
                            .isTrue();
                    assertThat(legs.get(i).toS()).isGreaterThan(legs.get(i).fromS());
                    if (legs.get(i).where().equals("some")) {
                        assertThat(legs.get(i).fromS()).isGreaterThanOrEqualTo(60.0 * fromMin);
                        assertThat(legs.get(i).toS()).isLessThanOrEqualTo(60.0 * toMin);
                    }
                }
            }
            for (int i = 1; i < found.size(); i++) {
                assertThat(found.get(i).isCheaperThan(found.get(i - 1))).isFalse();
            }
        }
    }

    /** Where hands are few there are the same ways a minute, two, four and eight earlier, or by each minute. */
    @Test
    void whereHandsAreFewItCanBeDoneEarlier() {
        Bench bench = Bench.of(room().gear(refrigerator())
                .bottle(white("white", 22, "room", 100))
                .build());
        List<Double> many = starts(bench.candidates(List.of("cold"), 0, false));
        List<Double> few = starts(bench.candidates(List.of("cold"), 3, false));
        double latest = many.stream().mapToDouble(start -> start).max().orElseThrow();
        assertThat(few).contains(latest, latest - 60, latest - 120, latest - 240, latest - 480);
        assertThat(starts(bench.candidates(List.of("cold"), 5, true)))
                .contains(latest - 60, latest - 120, latest - 180, latest - 240, latest - 300);
        assertThat(few).allMatch(start -> start >= 0);
    }

    private static List<Double> starts(List<Candidate> candidates) {
        return candidates.stream()
                .filter(candidate -> candidate.route().kind() == Route.Kind.ONE_MEANS)
                .filter(candidate -> candidate.route().legs().stream()
                        .anyMatch(leg -> leg.where().equals("cold")))
                .map(CandidateSearchTest::leaves)
                .toList();
    }

    /** What an earlier plan had is a candidate, though no search would come upon its minute. */
    @Test
    void theEarlierRouteIsTried() {
        PlanRequest request = room().gear(refrigerator())
                .bottle(white("white", 22, "room", 200))
                .build();
        Bench bench = Bench.of(request);
        Route earlier = bench.put("cold", 73, false).route();
        List<Candidate> found = new CandidateSearch(bench.site(), bench.assessor(), List.of("cold"), bench.pools(), 1)
                .candidates(Optional.of(earlier), false);
        assertThat(found).extracting(Candidate::route).contains(earlier);
    }

    private static PlanRequest.Builder heat() {
        return PlanRequest.startingAt(START).place(new Place("room", "room", Air.at(celsius(38))));
    }

    private static String keptIn(Candidate candidate, Bench bench) {
        return candidate
                .route()
                .beginningAtOrBefore(bench.assessor().task().servedS())
                .where();
    }

    /** As wanted already, but not for long in the heat: it stays, and is then kept in gear that it has not been in. */
    @Test
    void whatStaysMayBeKeptElsewhere() {
        Bench bench = Bench.of(heat().gear(open("cool", 11, 0, 500))
                .bottle(white("white", 11, "room", 2))
                .build());
        assertThat(bench.candidates(List.of("room", "cool"), 0, false))
                .anyMatch(candidate -> candidate.route().kind() == Route.Kind.STAY
                        && keptIn(candidate, bench).equals("cool"));
    }

    /** Ice brings it there, but would bring it too far while it is drunk, and the room is hot: it is kept in a third place. */
    @Test
    void whatIceHasCooledMayBeKeptElsewhere() {
        Bench bench = Bench.of(heat().gear(bucket())
                .gear(open("cool", 11, 0, 500))
                .bottle(white("white", 26, "room", 60))
                .build());
        assertThat(bench.candidates(List.of("room", "bucket", "cool"), 0, false))
                .anyMatch(candidate -> candidate.isInRange()
                        && candidate.route().legs().stream()
                                .anyMatch(leg -> leg.where().equals("bucket"))
                        && candidate.route().kind() == Route.Kind.ONE_MEANS
                        && keptIn(candidate, bench).equals("cool"));
    }

    /** Put into a freezer at once it would freeze before it is served; put there later it does not. */
    @Test
    void whereAtOnceIsDangerousLaterIsTried() {
        Bench bench = Bench.of(room().gear(open("freezer", -20, 0, 500))
                .bottle(white("white", 22, "room", 400))
                .build());
        assertThat(bench.assessor().isDangerous(bench.put("freezer", 0, false))).isTrue();
        List<Candidate> found = bench.candidates(List.of("room", "freezer"), 0, false);
        assertThat(found).noneMatch(bench.assessor()::isDangerous);
        assertThat(found)
                .anyMatch(candidate -> candidate.isInRange()
                        && candidate.route().legs().stream()
                                .anyMatch(leg -> leg.where().equals("freezer")));
    }

    /** What stands in gear that leaves has to be out of it by then, wherever it goes. */
    @Test
    void aBottleLeavesGearThatLeaves() {
        Bench bench = Bench.of(room().gear(open("some", 10, 0, 60))
                .gear(refrigerator())
                .bottle(white("white", 10, "some", 150))
                .build());
        List<Candidate> found = bench.candidates(List.of("room", "cold"), 0, true);
        assertThat(found).isNotEmpty();
        for (Candidate candidate : found) {
            for (Leg leg : candidate.route().legs()) {
                assertThat(!leg.where().equals("some") || leg.toS() <= 3600).isTrue();
            }
        }
        assertThat(found).anyMatch(candidate -> candidate.route().legs().get(0).toS() == 3600);
    }

    /** Where a terrace is hot and the wine would be too warm with the last glass, it is kept in the gear that cooled it. */
    @Test
    void whatWarmsAtItsTableMayBeKeptWhereItWas() {
        PlanRequest request = PlanRequest.startingAt(START)
                .place(new Place("room", "room", Air.at(celsius(45))))
                .gear(open("cold", 8.3, 0, 500))
                .bottle(white("white", 13.5, "room", 200))
                .build();
        Bench bench = Bench.of(request);
        List<Candidate> found = bench.candidates(List.of("cold"), 0, false);
        assertThat(found)
                .anyMatch(candidate -> candidate
                        .route()
                        .beginningAtOrBefore(bench.assessor().task().servedS())
                        .where()
                        .equals("cold"));
    }
}
