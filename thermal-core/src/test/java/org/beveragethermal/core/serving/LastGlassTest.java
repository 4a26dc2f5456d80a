/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** A bottle that is poured from through an evening. */
final class LastGlassTest {

    private static final double ZERO = 273.15;
    private static final Liquid WINE = Beverage.wine(percentByVolume(12.5));
    private static final Vessel GLASS = Vessels.of(VesselShape.WHITE_WINE_GLASS, millilitres(125));
    private static final FilledVessel BOTTLE = Vessels.highShouldered750().filledWith(WINE, celsius(8));
    private static final Air ROOM = Air.at(celsius(24)).withRelativeHumidity(percent(50));
    private static final Serving POUR =
            Serving.of(WINE, millilitres(125), GLASS, celsius(24)).in(ROOM).drunkOver(Duration.ofMinutes(15));
    private static final List<Duration> TIMES =
            Stream.of(0, 20, 40, 60, 80).map(Duration::ofMinutes).toList();

    private static final LastGlass.Evening TABLE =
            LastGlass.of(BOTTLE, ROOM, POUR).pouredAt(TIMES);

    @Test
    void everyGlassIsWarmerThanTheOneBefore() {
        System.out.println("Table: " + TABLE.explain());
        assertThat(TABLE.first().pouredK()).isCloseTo(ZERO + 8, within(1e-6));
        assertThat(TABLE.glasses()).extracting(LastGlass.Glass::pouredK).isSorted();
        assertThat(TABLE.glasses()).extracting(LastGlass.Glass::lastK).isSorted();
        assertThat(TABLE.glasses()).allMatch(g -> g.meanK() > g.pouredK() && g.meanK() < g.lastK());
        double perKelvin =
                20 / (TABLE.glasses().get(1).pouredK() - TABLE.first().pouredK());
        OutsideChecks.ruleOfThumb(
                "serving-table-kelvin",
                "a kelvin of a white at 8 °C on a table in a moist room of 24 °C, one glass poured (10 to 15 min)",
                12.5,
                perKelvin,
                "min",
                "with a glass taken out of it and dew on it");
    }

    @Test
    void aBucketKeepsTheLastGlassColder() {
        IceWaterBath ice = IceWaterBath.in(Bucket.of(millimetres(200), millimetres(240)), ROOM)
                .ice(kilograms(1.5), millimetres(25), celsius(-5))
                .water(kilograms(2), celsius(14))
                .build();
        LastGlass.Evening bucket = LastGlass.of(BOTTLE, ice, POUR).pouredAt(TIMES);
        System.out.println("Bucket: " + bucket.explain());
        assertThat(bucket.last().pouredK()).isLessThan(TABLE.last().pouredK() - 3);
    }

    /** The glasses take nothing from the bottle but what is poured: each is what it would be alone. */
    @Test
    void eachGlassIsThatOfAServingAtItsTemperature() {
        for (LastGlass.Glass glass : TABLE.glasses()) {
            GlassCourse alone = POUR.run(glass.pouredK(), Map.of());
            assertThat(glass.lastK()).isCloseTo(alone.lastK(), within(0.03));
            assertThat(glass.meanK()).isCloseTo(alone.meanK(), within(0.03));
        }
    }

    @Test
    void thePouredTemperatureIsThatOfTheBottle() {
        ScenePrediction run = Scene.builder()
                .gear("room", ROOM)
                .vessel("bottle", BOTTLE, "room")
                .drink("bottle", Duration.ZERO, millilitres(125))
                .drink("bottle", Duration.ofMinutes(20), millilitres(125))
                .build()
                .predict(Duration.ofMinutes(40));
        LastGlass.Glass third = TABLE.glasses().get(2);
        assertThat(third.pouredK()).isCloseTo(run.vessel("bottle").meanTemperatureK(2400), within(0.02));
    }

    /** Method of mixtures: a glass, full nearly to the brim, that passes nothing to the air meets the drink where their heat capacities say, and stays there. */
    @Test
    void aloneTheDrinkAndTheGlassMeet() {
        Vessel glass = Vessels.tastingGlass();
        Serving slow = Serving.of(Water.liquid(), millilitres(205), glass, celsius(24))
                .in(Air.at(celsius(24)))
                .drunkOver(Duration.ofHours(12));
        LastGlass.Evening evening = LastGlass.of(
                        Vessels.highShouldered750().filledWith(Water.liquid(), celsius(8)), Air.at(celsius(24)), slow)
                .with(NetworkSolver.standard()
                        .withMultipliers(Map.of(Multipliers.AIR_FILM, 0.0, Multipliers.RADIATION, 0.0)))
                .pouredAt(List.of(Duration.ofHours(3)));
        // 0.2046 kg of water, 4190 J/(kg K) around 10 °C; glass as heavy as it is, 840 J/(kg K).
        double water = 0.2046 * 4190;
        double wall = glass.emptyMassKg() * glass.wall().specificHeatCapacity().value();
        OutsideChecks.fromMemory(
                        "last-glass-mixtures",
                        "closed form: m c (T_f − T) = m_g c_g (T_g − T_f), as in H. D. Young and R. A. Freedman, University"
                                + " Physics, ch. 17")
                .what(
                        "205 mL of water of 8 °C from a bottle that passes nothing, in a glass of 24 °C that does neither: last mouthful")
                .unit("°C")
                .expected((water * 8 + wall * 24) / (water + wall))
                .within(0.1)
                .check(evening.last().lastK() - ZERO);
        assertThat(evening.last().pouredK()).isCloseTo(ZERO + 8, within(1e-3));
    }

    @Test
    void answersTellThemselves() {
        assertThat(TABLE.explain())
                .startsWith("Poured")
                .contains("after 80.0 min")
                .doesNotContain("NaN");
        assertThat(TABLE.snapshot().valuesSi().get("pouredK")).hasSize(5);
        assertThatThrownBy(() -> new LastGlass.Evening(List.of())).hasMessageContaining("at least one");
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        LastGlass question = LastGlass.of(BOTTLE, ROOM, POUR);
        assertThatThrownBy(() -> question.pouredAt(List.of())).hasMessageContaining("1 to 40");
        assertThatThrownBy(() -> question.pouredAt(List.of(Duration.ofMinutes(5), Duration.ofMinutes(5))))
                .hasMessageContaining("ascending");
        assertThatThrownBy(() -> question.pouredAt(List.of(Duration.ofMinutes(-5))))
                .hasMessageContaining("ascending");
        assertThatThrownBy(() -> question.pouredAt(List.of(Duration.ofDays(3)))).hasMessageContaining("ascending");
        List<Duration> seven =
                Stream.of(0, 1, 2, 3, 4, 5, 6).map(Duration::ofHours).toList();
        assertThatThrownBy(() -> question.pouredAt(seven))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("7 glasses");
        Serving tea = Serving.of(Beverage.tea(), millilitres(100), GLASS, celsius(20));
        assertThatThrownBy(() -> LastGlass.of(BOTTLE, ROOM, tea)).hasMessageContaining("the same drink");
    }
}
