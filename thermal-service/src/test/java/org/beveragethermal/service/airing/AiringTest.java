/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.airing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

class AiringTest {
    private static final Beverage RED = Beverage.wine(percentByVolume(13.5));
    private static final FilledVessel BOTTLE = Vessels.highShouldered750().filledWith(RED, celsius(12));
    private static final Duration HALF_HOUR = Duration.ofMinutes(30);
    private static final Air ROOM = Air.at(celsius(22)).withRelativeHumidity(percent(50));
    private static final Airing CARAFE = Airing.carafe(HALF_HOUR, "sideboard");
    private static final double ZERO_CELSIUS_K = 273.15;

    private static double celsiusAt(AiringCourse course, double minutes) {
        return course.prediction().meanTemperatureK(60 * minutes) - ZERO_CELSIUS_K;
    }

    /**
     * A lumped body warmed by still air, put together by hand: McAdams' simplified law for vertical planes and cylinders in air, h = 1.42
     * (ΔT/L)^¼, that for the cold surface on top, h = 0.59 (ΔT/L)^¼, and radiation of a small body with emissivity 0.9 in a room (all three
     * in textbooks, from memory). Capacity by specific heats 4.2 kJ/(kg K) of wine of 13.5 % vol and 0.84 of glass (from memory); area by
     * cones between the heights of the drawing. Above the drink the glass, 1.05 W/(m K), is a long fin: (h k t)^½ per length of the waterline
     * (textbooks, from memory). Resistance of wall and inside film in series: 1 mm of glass per 1 W/(m² K) each is no more
     * than a tenth of that outside and is left out; so is evaporation, as the drink begins at the dew point of the room.
     *
     * <p>The bound, a fifth: laws of free convection scatter by a fifth (textbooks, from memory), a tenth of the whole, since half of the
     * heat comes by radiation; what is left out in series is up to another tenth.
     */
    @Test
    void warmsAsALumpedBodyComputedByHand() {
        AiringCourse course = AiringForecast.of(CARAFE, BOTTLE, ROOM)
                .withVesselAt(celsius(12))
                .predict();
        FilledVessel carafe = CARAFE.vesselFor(BOTTLE, celsius(12));
        Profile profile = carafe.vessel().profile();
        double height = carafe.liquidHeightM();
        double side = 0;
        int cones = 50;
        for (int i = 0; i < cones; i++) {
            double low = profile.outerRadiusM(height * i / cones);
            double high = profile.outerRadiusM(height * (i + 1) / cones);
            side += Math.PI * (low + high) * Math.hypot(height / cones, high - low);
        }
        double waterline = 2 * Math.PI * profile.outerRadiusM(height);
        double thickness = profile.wallThicknessM(height);
        double radius = profile.innerRadiusM(height);
        double top = Math.PI * radius * radius;
        double capacity = 0.735 * 4200
                + 840 * (carafe.vessel().wallMassKg(0, height) + carafe.vessel().baseMassKg());
        double drinkC = 12;
        double step = 1;
        for (double t = 0; t < 1800; t += step) {
            double difference = 22 - drinkC;
            double radiative = 4 * 0.9 * 5.67e-8 * Math.pow(273.15 + 17, 3);
            double outside = 1.42 * Math.pow(difference / height, 0.25) + radiative;
            double watts = difference
                    * (side * outside
                            + waterline * Math.sqrt(outside * 1.05 * thickness)
                            + top * (0.59 * Math.pow(difference / (2 * radius), 0.25) + radiative));
            drinkC += watts * step / capacity;
        }
        OutsideChecks.fromMemory(
                        "airing-half-an-hour-decanter", "McAdams' simplified laws for air, textbooks, from memory")
                .what("rise of 750 mL of wine of 12 °C in a decanter, half an hour in still air of 22 °C")
                .unit("K")
                .expected(drinkC - 12)
                .within(0.2 * (drinkC - 12))
                .check(celsiusAt(course, 30) - 12);
    }

    /** Heat of the wall and heat of the drink, by hand: 0.735 kg of 4.2 kJ/(kg K), the glass up to a finger above the drink with 0.84 (figures from memory). */
    @Test
    void carafeGivesItsHeatToTheDrink() {
        FilledVessel cold = CARAFE.vesselFor(BOTTLE, celsius(12));
        double wall = 0.84 * cold.vessel().emptyMassKg();
        double rise = 10 * wall / (wall + 0.735 * 4.2);
        FilledVessel standing = CARAFE.vesselFor(BOTTLE, celsius(12), celsius(22));
        assertThat(standing.temperatureK() - 285.15).isCloseTo(rise, within(0.1 * rise));
        assertThat(standing.liquidMassKg()).isCloseTo(BOTTLE.liquidMassKg(), within(1e-12));
        assertThat(rise).isBetween(0.5, 1.5);
    }

    /** What plans begin with, against the scene in which the wall has a temperature of its own. */
    @Test
    void vesselForPlansComesToWhatTheSceneComesTo() {
        AiringCourse course = AiringForecast.of(CARAFE, BOTTLE, ROOM)
                .withVesselAt(celsius(22))
                .predict();
        Prediction simple =
                Lumped.of(CARAFE.vesselFor(BOTTLE, celsius(12), celsius(22))).expose(in(ROOM, HALF_HOUR));
        assertThat(SiValues.temperatureK(course.firstPour(), "first glass"))
                .isCloseTo(simple.meanTemperatureK(1800), within(0.15));
    }

    @Test
    void courseBeginsAtTheBottleAndEndsWithTheLastGlass() {
        AiringCourse course = AiringForecast.of(CARAFE, BOTTLE, ROOM)
                .withVesselAt(celsius(22))
                .drunkOver(Duration.ofMinutes(45))
                .predict();
        assertThat(celsiusAt(course, 0)).isCloseTo(12, within(1e-6));
        assertThat(course.prediction().end()).isEqualTo(Duration.ofMinutes(75));
        assertThat(course.firstPour()).isEqualTo(course.at(HALF_HOUR));
        AiringForecast forecast = AiringForecast.of(CARAFE, BOTTLE, ROOM).withVesselAt(celsius(22));
        assertThat(SiValues.temperatureK(forecast.firstPour(), "first glass") - ZERO_CELSIUS_K)
                .isCloseTo(celsiusAt(course, 30), within(1e-3));
        assertThat(course.lastPour()).isEqualTo(course.at(Duration.ofMinutes(75)));
        assertThat(celsiusAt(course, 75)).isBetween(celsiusAt(course, 30), 22.0);
        assertThat(course.prediction().ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void openedBottleWarmsMoreSlowlyThanADecanter() {
        AiringCourse bottle = AiringForecast.of(Airing.opened(HALF_HOUR, "sideboard"), BOTTLE, ROOM)
                .withVesselAt(celsius(50))
                .predict();
        AiringCourse carafe = AiringForecast.of(CARAFE, BOTTLE, ROOM)
                .withVesselAt(celsius(12))
                .predict();
        assertThat(celsiusAt(bottle, 30)).isBetween(12.5, celsiusAt(carafe, 30));
        Prediction closed = Lumped.of(BOTTLE).expose(in(ROOM, HALF_HOUR));
        assertThat(celsiusAt(bottle, 30)).isCloseTo(closed.meanTemperatureK(1800) - ZERO_CELSIUS_K, within(0.15));
    }

    @Test
    void decantingTemperatureLeadsToTheFirstGlass() {
        AiringForecast forecast = AiringForecast.of(CARAFE, BOTTLE, ROOM).withVesselAt(celsius(22));
        assertThat(forecast.decantingFor(celsius(16))).isInstanceOfSatisfying(DecantingAnswer.At.class, at -> {
            assertThat(at.temperatureK()).isBetween(284.15, 289.15);
            AiringCourse course = AiringForecast.of(CARAFE, BOTTLE.atTemperature(kelvins(at.temperatureK())), ROOM)
                    .withVesselAt(celsius(22))
                    .predict();
            assertThat(celsiusAt(course, 30)).isCloseTo(16, within(2e-4));
        });
    }

    @Test
    void whatNoBeginningLeadsToIsSaid() {
        Airing day = Airing.carafe(Duration.ofHours(24), "sideboard");
        assertThat(AiringForecast.of(day, BOTTLE, ROOM).decantingFor(celsius(10)))
                .isInstanceOfSatisfying(DecantingAnswer.Never.class, never -> {
                    assertThat(never.wantedK()).isEqualTo(283.15);
                    assertThat(never.coldestK()).isBetween(289.15, 295.15);
                    assertThat(never.warmestK()).isBetween(never.coldestK(), 295.25);
                });
        assertThat(AiringForecast.of(CARAFE, BOTTLE, ROOM).decantingFor(celsius(95)))
                .isInstanceOf(DecantingAnswer.Never.class);
    }

    @Test
    void smallestDecanterOfTheTableThatHoldsItIsTaken() {
        assertThat(CARAFE.vesselFor(BOTTLE, celsius(12)).vessel().shape()).isEqualTo(VesselShape.DECANTER);
        FilledVessel litre =
                Vessels.of(VesselShape.HIGH_SHOULDERED, millilitres(1000)).filledWith(RED, celsius(12));
        assertThat(CARAFE.vesselFor(litre, celsius(12)).vessel().name()).isEqualTo("carafe 1 L");
        FilledVessel magnum = Vessels.magnum().filledWith(RED, celsius(12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CARAFE.vesselFor(magnum, celsius(12)))
                .withMessageContaining("decanting 1500 mL: expected a vessel that holds it")
                .withMessageContaining("decanter for 750 mL");
        Vessel own = Vessels.of(VesselShape.CARAFE, millilitres(1000));
        assertThat(Airing.carafe(HALF_HOUR, "a", own)
                        .vesselFor(BOTTLE, celsius(12))
                        .vessel()
                        .name())
                .isEqualTo(own.name());
        assertThatThrownBy(() -> Airing.carafe(HALF_HOUR, "a", own).vesselFor(magnum, celsius(12)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void openedBottleStandsOpen() {
        Airing opened = Airing.opened(HALF_HOUR, "a");
        FilledVessel standing = opened.vesselFor(BOTTLE, celsius(14));
        assertThat(standing.vessel().isOpen()).isTrue();
        assertThat(standing.liquidMassKg()).isCloseTo(BOTTLE.liquidMassKg(), within(1e-12));
        assertThat(opened.vesselFor(BOTTLE, celsius(14), celsius(30)).temperatureK())
                .isEqualTo(287.15);
        assertThat(standing.vessel().profile().heightM()).isBetween(0.25, 0.30);
    }

    /** A drink rises in a narrow neck as it warms. */
    @Test
    void whatStandsCanWarmToAnySummersDay() {
        FilledVessel cold = BOTTLE.atTemperature(celsius(2));
        for (Airing airing : List.of(CARAFE, Airing.opened(HALF_HOUR, "a"))) {
            FilledVessel standing = airing.vesselFor(cold, celsius(2));
            assertThat(standing.atTemperature(celsius(45)).headspaceM3()).isPositive();
            assertThat(airing.vesselFor(cold, celsius(45)).temperatureK()).isEqualTo(318.15);
        }
    }

    @Test
    void timesAreCutToMilliseconds() {
        assertThat(Airing.opened(HALF_HOUR.plusNanos(1_999_999), "a").before()).isEqualTo(HALF_HOUR.plusMillis(1));
    }

    @Test
    void badInputIsRefusedAtTheDoor() {
        assertThatIllegalArgumentException().isThrownBy(() -> Airing.carafe(Duration.ofMinutes(-1), "a"));
        assertThatIllegalArgumentException().isThrownBy(() -> Airing.opened(Duration.ofHours(25), "a"));
        assertThatIllegalArgumentException().isThrownBy(() -> Airing.opened(HALF_HOUR, " "));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Airing.carafe(HALF_HOUR, "a", Vessels.magnum()))
                .withMessageContaining("expected a vessel that stands open");
        Optional<Vessel> carafe = Optional.of(Vessels.of(VesselShape.CARAFE, millilitres(1000)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Airing(HALF_HOUR, "a", false, carafe));
        AiringForecast forecast = AiringForecast.of(CARAFE, BOTTLE, ROOM);
        assertThatIllegalArgumentException().isThrownBy(() -> forecast.drunkOver(Duration.ZERO));
        assertThatIllegalArgumentException().isThrownBy(() -> forecast.drunkOver(Duration.ofDays(2)));
        assertThatIllegalArgumentException().isThrownBy(() -> forecast.begunAfter(Duration.ofMinutes(-1)));
        assertThatIllegalArgumentException().isThrownBy(() -> forecast.withVesselAt(celsius(101)));
        assertThatIllegalArgumentException().isThrownBy(() -> forecast.withVesselAt(celsius(Double.NaN)));
        assertThatThrownBy(() -> CARAFE.vesselFor(BOTTLE, celsius(200))).isInstanceOf(OutOfRangeException.class);
    }

    /** At once: what is poured first is what was decanted. */
    @Test
    void noAiringAtAllIsAnAiring() {
        Airing none = Airing.carafe(Duration.ZERO, "sideboard");
        AiringCourse course = AiringForecast.of(none, BOTTLE, ROOM).predict();
        assertThat(celsiusAt(course, 0)).isCloseTo(12, within(1e-6));
    }
}
