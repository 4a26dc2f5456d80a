/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.examples.scenario.Drink;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.examples.scenario.ScenarioReader;
import org.beveragethermal.examples.scenario.Serving;
import org.beveragethermal.service.plan.BottleOrder;
import org.beveragethermal.service.plan.Gear;
import org.beveragethermal.service.plan.GearKind;
import org.beveragethermal.service.plan.PlanRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a scenario says must arrive in the request: nothing lost, nothing made up, and no more ice than there is. */
class PlanRequestsTest {

    private static final Path SHIPPED = Path.of("scenarios", "two-sittings.json");
    /** What the mapping says lies between a bucket's wall and still air [W/(m² K)]; its own round figure. */
    private static final double OUTSIDE_COEFFICIENT = 8;

    private static final String BUCKET = "\"id\": \"deep-bucket\", \"name\": \"deep bucket\"";

    private static final String DINING_ROOM_WARM = "\"airTemperatureCelsius\": 23.5";

    @TempDir
    Path folder;

    private final Scenario shipped = ScenarioReader.read(SHIPPED);
    private final PlanRequest request = PlanRequests.from(shipped);

    /** The shipped scenario with one part of its text replaced. */
    private Scenario changed(String from, String to) throws IOException {
        String json = Files.readString(SHIPPED);
        assertThat(json).contains(from);
        return ScenarioReader.read(Files.writeString(folder.resolve("changed.json"), json.replace(from, to)));
    }

    /** The shipped scenario with a second bucket for ice and another stock. */
    private Scenario twoBuckets(int stockKg) throws IOException {
        String json = Files.readString(SHIPPED);
        int opens = json.lastIndexOf('{', json.indexOf(BUCKET));
        String bucket = json.substring(opens, json.indexOf('}', opens) + 1);
        String second = bucket.replace(BUCKET, "\"id\": \"second-bucket\", \"name\": \"second bucket\"");
        String both = json.replace(bucket, bucket + ", " + second)
                .replace("\"massKilograms\": 12", "\"massKilograms\": " + stockKg);
        return ScenarioReader.read(Files.writeString(folder.resolve("two-buckets.json"), both));
    }

    private static List<IceWaterBath> iceBaths(PlanRequest request) {
        return request.gear().values().stream()
                .filter(gear -> gear.kind() == GearKind.ICE_BATH)
                .map(gear -> (IceWaterBath) gear.surroundings())
                .toList();
    }

    @Test
    void everyBottleServedIsOrderedOnce() {
        int served = shipped.servings().stream().mapToInt(Serving::bottles).sum();
        assertThat(request.bottles()).hasSize(served);
        assertThat(request.bottles()).extracting(BottleOrder::id).doesNotHaveDuplicates();
        for (Serving serving : shipped.servings()) {
            Drink drink = shipped.drink(serving.drinkId());
            assertThat(request.bottles())
                    .filteredOn(order -> order.servedAt().equals(serving.servedAt()))
                    .filteredOn(order -> order.id().startsWith(drink.id() + " "))
                    .hasSize(serving.bottles())
                    .allSatisfy(order -> carries(order, drink, serving));
        }
    }

    private void carries(BottleOrder order, Drink drink, Serving serving) {
        assertThat(order.startsIn()).isEqualTo(drink.placeId());
        assertThat(order.servedIn()).isEqualTo(serving.placeId());
        assertThat(order.finishedAt()).isEqualTo(serving.finishedAt());
        assertThat(order.target()).usingRecursiveComparison().isEqualTo(shipped.targetOf(drink));
        assertThat(order.bottle().temperatureK()).isCloseTo(drink.temperatureK(), within(1e-9));
        assertThat(order.bottle().liquid()).isEqualTo(drink.beverage());
        assertThat(order.bottle().vessel()).isEqualTo(drink.vessel().vessel());
    }

    @Test
    void bottlesOfADrinkAreNumberedInOrderOfServing() {
        assertThat(request.bottles())
                .filteredOn(order -> order.id().startsWith("welcome-sparkling"))
                .extracting(BottleOrder::id)
                .containsExactly("welcome-sparkling 1", "welcome-sparkling 2", "welcome-sparkling 3");
        assertThat(request.bottles()).isSortedAccordingTo((a, b) -> a.servedAt().compareTo(b.servedAt()));
    }

    @Test
    void aMagnumTakesTwoPlacesAndHoldsTwice() {
        BottleOrder magnum = request.bottles().stream()
                .filter(order -> order.id().equals("magnum-rose 1"))
                .findFirst()
                .orElseThrow();
        assertThat(magnum.bottlePlaces()).isEqualTo(2);
        // Nominal volume 1.5 L, Directive 2007/45/EC, annex; filled at 20 °C, here at 27 °C.
        assertThat(magnum.bottle().liquidVolumeM3()).isCloseTo(1.5e-3, within(0.01e-3));
        assertThat(request.bottles())
                .filteredOn(order -> !order.equals(magnum))
                .allMatch(order -> order.bottlePlaces() == 1);
    }

    @Test
    void placesKeepTheirCourseOfTemperature() {
        assertThat(request.places().keySet()).containsExactly("kitchen", "dining-room", "terrace");
        var terrace = Objects.requireNonNull(request.places().get("terrace")).air();
        assertThat(terrace.airK().at(0)).isCloseTo(304.15, within(1e-9));
        assertThat(terrace.wallsK().at(0)).isCloseTo(310.15, within(1e-9));
        // Half way between 31 °C and 30 °C, and between 37 °C and 34 °C.
        assertThat(terrace.airK().at(1800)).isCloseTo(303.65, within(1e-9));
        assertThat(terrace.wallsK().at(1800)).isCloseTo(308.65, within(1e-9));
        // Where the file gives no radiant temperature it is that of the air.
        assertThat(terrace.wallsK().at(180 * 60)).isCloseTo(299.65, within(1e-9));
        assertThat(terrace.airK().at(24 * 3600)).isCloseTo(296.65, within(1e-9));
    }

    @Test
    void gearKeepsItsKindAndItsPlaces() {
        assertThat(request.startsAt()).isEqualTo(shipped.startsAt());
        assertThat(request.gear().values())
                .extracting(Gear::id)
                .containsExactly("kitchen-refrigerator", "bar-cabinet", "deep-bucket");
        assertThat(request.gear().values()).extracting(Gear::capacity).containsExactly(6, 8, 3);
        assertThat(request.gear().values())
                .extracting(Gear::kind)
                .containsExactly(GearKind.REFRIGERATOR, GearKind.REFRIGERATOR, GearKind.ICE_BATH);
    }

    @Test
    void oneBucketTakesNoMoreIceThanThereIs() throws IOException {
        assertThat(iceBaths(request)).hasSize(1).allMatch(bath -> bath.iceKg() > 0 && bath.iceKg() <= 12);
        Scenario little = changed("\"massKilograms\": 12", "\"massKilograms\": 3");
        assertThat(iceBaths(PlanRequests.from(little)))
                .singleElement()
                .satisfies(bath -> assertThat(bath.iceKg()).isCloseTo(3, within(1e-12)));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5, 12, 13, 100})
    void twoBucketsDivideTheIce(int stockKg) throws IOException {
        List<IceWaterBath> baths = iceBaths(PlanRequests.from(twoBuckets(stockKg)));
        assertThat(baths).hasSize(2);
        assertThat(baths.get(0).iceKg()).isCloseTo(baths.get(1).iceKg(), within(1e-12));
        assertThat(baths.stream().mapToDouble(IceWaterBath::iceKg).sum())
                .isPositive()
                .isLessThanOrEqualTo(stockKg + 1e-12);
    }

    /** Wall and air in series make the conductance that the file states for the whole way. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 1.2, 1.9})
    void theWallKeepsTheConductanceOfTheFile(double conductanceWPerK) throws IOException {
        Scenario scenario = changed(
                "\"wallConductanceWattsPerKelvin\": 1.2", "\"wallConductanceWattsPerKelvin\": " + conductanceWPerK);
        var bucket = iceBaths(PlanRequests.from(scenario)).get(0).bucket();
        double areaM2 = Math.PI * 0.260 * 0.300;
        double resistance = 1 / (bucket.wallCoefficient() * areaM2) + 1 / (OUTSIDE_COEFFICIENT * areaM2);
        assertThat(1 / resistance).isCloseTo(conductanceWPerK, within(1e-9));
    }

    /** At its ends the range of the file meets what a wall can be: as good as closed, or bare metal. */
    @Test
    void aWallIsNeverBetterThanClosedNorWorseThanBare() throws IOException {
        String stated = "\"wallConductanceWattsPerKelvin\": 1.2";
        double closed = wall(changed(stated, "\"wallConductanceWattsPerKelvin\": 0"));
        double bare = wall(changed(stated, "\"wallConductanceWattsPerKelvin\": 20"));
        assertThat(closed).isPositive().isLessThanOrEqualTo(0.1);
        assertThat(bare).isGreaterThan(1000 * OUTSIDE_COEFFICIENT);
    }

    private static double wall(Scenario scenario) {
        return iceBaths(PlanRequests.from(scenario)).get(0).bucket().wallCoefficient();
    }

    @Test
    void aBucketOfWaterNeedsNoIce() throws IOException {
        Scenario scenario = changed("\"kind\": \"ice-and-water\"", "\"kind\": \"water\"");
        Gear bucket = Objects.requireNonNull(PlanRequests.from(scenario).gear().get("deep-bucket"));
        assertThat(bucket.kind()).isEqualTo(GearKind.WATER_BATH);
        assertThat(bucket.surroundings()).isInstanceOf(WaterBath.class);
    }

    /** A bucket of metal far below 0 °C freezes in hours, and no model tells what comes after; slightly below it lasts an evening. */
    @Test
    void aBathThatMayFreezeIsRefused() throws IOException {
        String bare = Files.readString(SHIPPED)
                .replace("\"wallConductanceWattsPerKelvin\": 1.2", "\"wallConductanceWattsPerKelvin\": 20");
        for (String kind : List.of("ice-and-water", "water")) {
            String bucket = bare.replace("\"kind\": \"ice-and-water\"", "\"kind\": \"" + kind + "\"");
            assertThatExceptionOfType(IllegalArgumentException.class)
                    .isThrownBy(() -> PlanRequests.from(roomAt(bucket, -20)))
                    .withMessageContaining("bucket deep-bucket: at -20.0 °C its bath may freeze within the");
            assertThat(PlanRequests.from(roomAt(bucket, -0.4)).gear()).containsKey("deep-bucket");
        }
    }

    private static Scenario roomAt(String json, double celsius) {
        String changed = json.replace(DINING_ROOM_WARM, "\"airTemperatureCelsius\": " + celsius);
        assertThat(changed).isNotEqualTo(json);
        return ScenarioReader.parse("cold.json", changed);
    }
}
