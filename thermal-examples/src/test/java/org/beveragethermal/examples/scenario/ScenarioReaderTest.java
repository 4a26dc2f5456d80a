/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScenarioReaderTest {
    private static final Path SHIPPED = Path.of(System.getProperty("basedir", "."), "scenarios", "two-sittings.json");
    private static final double TOLERANCE_K = 1e-9;

    private final Scenario shipped = ScenarioReader.read(SHIPPED);

    @Test
    void shippedScenarioSaysThatItIsInvented() {
        assertThat(shipped.note()).containsIgnoringCase("invented");
        assertThat(shipped.startsAt()).isEqualTo(Instant.parse("2027-06-18T15:00:00Z"));
        assertThat(shipped.zone()).isEqualTo(ZoneId.of("Europe/Vienna"));
        assertThat(shipped.rangePolicy()).isEqualTo(RangePolicy.envelope());
    }

    @Test
    void shippedScenarioHasWhatMakesItDemanding() {
        assertThat(shipped.drinks())
                .extracting(drink -> drink.style().id())
                .containsExactly("sparkling-dry", "rose-young", "white-light", "white-full", "red-light", "red-full");
        assertThat(shipped.drinks()).extracting(Drink::vessel).contains(VesselKind.MAGNUM, VesselKind.SPARKLING_750);
        assertThat(shipped.sittings()).hasSize(2);
        assertThat(shipped.refrigerators()).hasSize(2);
        assertThat(shipped.buckets()).extracting(Bucket::kind).containsExactly(BucketKind.ICE_AND_WATER);
        assertThat(shipped.iceStock()).contains(new IceStock(12, 0.028, 265.15));
        assertThat(shipped.fillingWaterTemperatureK()).hasValue(290.15);
        assertThat(shipped.servings())
                .hasSize(11)
                .isSortedAccordingTo((a, b) -> a.servedAt().compareTo(b.servedAt()));
        Drink sparkling = shipped.drink("welcome-sparkling");
        assertThat(sparkling.temperatureK())
                .isGreaterThan(shipped.targetOf(sparkling).highK() + 10);
        Drink red = shipped.drink("full-red");
        assertThat(red.temperatureK()).isLessThan(shipped.targetOf(red).lowK());
    }

    @Test
    void drinksBecomeWhatTheyAre() {
        Drink sparkling = shipped.drink("welcome-sparkling");
        assertThat(sparkling.strengthByVolume()).isEqualTo(0.12);
        assertThat(sparkling.temperatureK()).isEqualTo(300.15);
        assertThat(sparkling.beverage().strengthByVolume()).isCloseTo(0.12, within(1e-6));
        assertThat(sparkling.beverage().kind())
                .isNotEqualTo(shipped.drink("full-red").beverage().kind());
        assertThat(sparkling.vessel().vessel()).isNotNull();
        assertThat(VesselKind.MAGNUM.vessel()).isNotNull();
        assertThat(VesselKind.HIGH_SHOULDERED_750.vessel()).isNotNull();
    }

    @Test
    void temperaturesOfAPlaceAreLinearBetweenTimesAndSteadyOutside() {
        Place terrace = shipped.place("terrace");
        assertThat(terrace.airTemperatureK(Duration.ZERO)).isCloseTo(304.15, within(TOLERANCE_K));
        assertThat(terrace.airTemperatureK(Duration.ofMinutes(-30))).isCloseTo(304.15, within(TOLERANCE_K));
        assertThat(terrace.airTemperatureK(Duration.ofMinutes(90))).isCloseTo(302.4, within(TOLERANCE_K));
        assertThat(terrace.radiantTemperatureK(Duration.ofMinutes(90))).isCloseTo(305.15, within(TOLERANCE_K));
        assertThat(terrace.airTemperatureK(Duration.ofHours(3))).isCloseTo(299.65, within(TOLERANCE_K));
        assertThat(terrace.airTemperatureK(Duration.ofDays(1))).isCloseTo(296.65, within(TOLERANCE_K));
        assertThat(shipped.place("dining-room").radiantTemperatureK(Duration.ofHours(3)))
                .isCloseTo(296.65, within(TOLERANCE_K));
    }

    @Test
    void serversFindTimesInTheZoneOfTheScenario() {
        Serving first = shipped.servings().get(0);
        assertThat(first.drinkId()).isEqualTo("magnum-rose");
        assertThat(first.servedAt()).isEqualTo(Instant.parse("2027-06-18T15:12:00Z"));
        assertThat(first.finishedAt()).isEqualTo(Instant.parse("2027-06-18T15:47:00Z"));
    }

    @Test
    void unknownIdentifiersAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> shipped.place("attic"))
                .withMessageContaining("attic");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> shipped.drink("ink"))
                .withMessageContaining("ink");
    }

    @Test
    void textIsBoundedAsFilesAre() {
        String endless = " ".repeat(ScenarioReader.LONGEST_FILE_BYTES + 1);
        assertThatThrownBy(() -> ScenarioReader.parse("x.json", endless))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("too long");
        String deep = "[".repeat(100_000);
        assertThatThrownBy(() -> ScenarioReader.parse("x.json", deep))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("too deep");
    }

    @Test
    void refusalCarriesItsParts() {
        assertThatThrownBy(() -> ScenarioReader.parse("x.json", "{\n  \"a\": 1}"))
                .isInstanceOfSatisfying(ScenarioException.class, e -> {
                    assertThat(e.document()).isEqualTo("x.json");
                    assertThat(e.path()).isEqualTo("$.a");
                    assertThat(e.line()).isEqualTo(2);
                    assertThat(e.column()).isEqualTo(8);
                });
    }

    private static Element text(String value) {
        return new Element("x.json", "$.t", 1, 1, new Element.Content.Text(value));
    }

    /** In 2027 clocks in Vienna go from 2:00 to 3:00 on 28 March and from 3:00 to 2:00 on 31 October (EU 2000/84/EC). */
    @ParameterizedTest
    @CsvSource({
        "2027-03-27T20:00:00+01:00, 2027-03-28T03:00, 2027-03-28T01:00:00Z",
        "2027-10-30T20:00:00+02:00, 2027-10-31T02:30, 2027-10-31T00:30:00Z",
        "2027-10-30T20:00:00+02:00, 2027-10-31T03:00, 2027-10-31T02:00:00Z",
        "2027-10-30T20:00:00+02:00, 20:00, 2027-10-30T18:00:00Z",
    })
    void clockChangesAreKnown(String start, String local, String expected) {
        ZoneId zone = TimesOfDay.zone(text("Europe/Vienna"));
        TimesOfDay times = new TimesOfDay(TimesOfDay.start(text(start), zone), zone);
        assertThat(times.local(text(local))).isEqualTo(Instant.parse(expected));
    }

    @Test
    void timeThatClocksLeaveOutIsRefused() {
        ZoneId zone = ZoneId.of("Europe/Vienna");
        TimesOfDay times = new TimesOfDay(Instant.parse("2027-03-27T19:00:00Z"), zone);
        assertThatThrownBy(() -> times.local(text("2027-03-28T02:30")))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("expected a time that exists");
    }

    @Test
    void partsAreRefusedAtTheDoor() {
        PlaceTemperature mild = new PlaceTemperature(Duration.ZERO, 293.15, 293.15);
        assertThatThrownBy(() -> new PlaceTemperature(Duration.ZERO, 20, 293.15))
                .isInstanceOfSatisfying(OutOfRangeException.class, e -> {
                    assertThat(e.parameter()).isEqualTo("air temperature");
                    assertThat(e.low()).isEqualTo(243.15);
                    assertThat(e.high()).isEqualTo(323.15);
                    assertThat(e.unit()).isEqualTo("K");
                });
        assertThatIllegalArgumentException().isThrownBy(() -> new PlaceTemperature(Duration.ZERO, 293.15, Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PlaceTemperature(Duration.ofMinutes(-1), 293.15, 293.15));
        assertThatIllegalArgumentException().isThrownBy(() -> new Place("a", "a", List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Place("a", "a", List.of(mild, mild)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Refrigerator("a", "a", RefrigeratorKind.STATIC, 278.15, 0, "b"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Refrigerator("a", "a", RefrigeratorKind.STATIC, 5, 1, "b"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Bucket("a", "a", BucketKind.WATER, 0, 0.2, 0.2, 1, "b"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Bucket("a", "a", BucketKind.WATER, 1, 200, 0.2, 1, "b"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Bucket("a", "a", BucketKind.WATER, 1, 0.2, 200, 1, "b"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Bucket("a", "a", BucketKind.WATER, 1, 0.2, 0.2, Double.NaN, "b"));
        assertThatIllegalArgumentException().isThrownBy(() -> new IceStock(-1, 0.03, 263.15));
        assertThatIllegalArgumentException().isThrownBy(() -> new IceStock(1, 30, 263.15));
        assertThatIllegalArgumentException().isThrownBy(() -> new IceStock(1, 0.03, 275));
        assertThatIllegalArgumentException().isThrownBy(() -> new Sitting("a", "a", List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Serving("a", 0, Instant.EPOCH, "b", Duration.ofMinutes(1)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Serving("a", 1, Instant.EPOCH, "b", Duration.ZERO));
    }

    @Test
    void drinksAreRefusedAtTheDoor() {
        assertThatIllegalArgumentException().isThrownBy(() -> drink(12, 293.15, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> drink(0.12, 20, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> drink(0.12, 293.15, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> drink(0.12, 264.15, 1))
                .withMessageContaining("where it begins to freeze");
        assertThat(drink(0.12, 293.15, 1).count()).isEqualTo(1);
        assertThat(drink(0, 293.15, 1).beverage().strengthByVolume()).isZero();
        assertThat(drink(0.22, 293.15, 1).beverage().strengthByVolume()).isCloseTo(0.22, within(1e-6));
    }

    @Test
    void styleDecidesWhatIsInTheBottle() {
        assertThat(drink("beer-pilsner", 0.048, 293.15, 1).beverage().kind()).isEqualTo(Beverage.Kind.BEER);
        assertThat(drink("water-still", 0, 293.15, 1).beverage()).isEqualTo(Beverage.water());
        assertThat(drink("spirit-whisky", 0.4, 293.15, 1).beverage().kind()).isEqualTo(Beverage.Kind.SPIRIT);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> drink("water-still", 0.12, 293.15, 1))
                .withMessageContaining("strength of water");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> drink("water-still", 0, 272.15, 1))
                .withMessageContaining("where it begins to freeze");
    }

    private static Drink drink(double strengthByVolume, double temperatureK, int count) {
        return drink("red-full", strengthByVolume, temperatureK, count);
    }

    private static Drink drink(String style, double strengthByVolume, double temperatureK, int count) {
        return new Drink(
                "a",
                "a",
                Targets.style(style),
                VesselKind.MAGNUM,
                strengthByVolume,
                temperatureK,
                "b",
                count,
                Optional.empty());
    }
}
