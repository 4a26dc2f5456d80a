/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.Map;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.film.EvaporatingFilm;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.FoamBox;
import org.beveragethermal.core.surroundings.Freezer;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Pouring, the glass and the decanter. */
class PouringTest {

    private static final double ZERO = 273.15;
    private static final Liquid WINE = Beverage.wine(percentByVolume(12.5));
    private static final Vessel GLASS = Vessels.of(VesselShape.WHITE_WINE_GLASS, millilitres(125));
    private static final Vessel DECANTER = Vessels.of(VesselShape.DECANTER, millilitres(750));
    private static final Vessel MUG = Vessels.of(VesselShape.MUG, millilitres(250));
    private static final Air ROOM = Air.at(celsius(22)).withRelativeHumidity(percent(50));
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final NetworkSolver ALONE =
            NetworkSolver.standard().withMultipliers(Map.of(Multipliers.AIR_FILM, 0.0, Multipliers.RADIATION, 0.0));

    private static Scene.Builder table(double wineC, double glassC) {
        return Scene.builder()
                .gear("room", ROOM)
                .vessel("bottle", Vessels.highShouldered750().filledWith(WINE, celsius(wineC)), "room")
                .emptyVessel("glass", GLASS, celsius(glassC), "room");
    }

    private static double celsiusAt(ScenePrediction run, String id, double minutes) {
        return run.vessel(id).meanTemperatureK(60 * minutes) - ZERO;
    }

    /** Method of mixtures: what the drink loses a glass takes up that is full nearly to the brim. */
    @Test
    void aGlassTakesUpWhatTheMethodOfMixturesSays() {
        Vessel glass = Vessels.tastingGlass();
        ScenePrediction run = Scene.builder()
                .gear("room", ROOM)
                .vessel("jug", MUG.filledWith(Water.liquid(), celsius(80)), "room")
                .emptyVessel("glass", glass, celsius(20), "room")
                .pour("jug", MINUTE, millilitres(205), "glass")
                .build()
                .predict(Duration.ofHours(6), ALONE);
        // 0.2046 kg of water, 4190 J/(kg K) between 70 and 80 °C; glass as heavy as it is, 840 J/(kg K).
        double water = 0.2046 * 4190;
        double wall = glass.emptyMassKg() * glass.wall().specificHeatCapacity().value();
        OutsideChecks.fromMemory(
                        "glass-method-of-mixtures",
                        "closed form: m c (T − T_f) = m_g c_g (T_f − T_g), as in H. D. Young and R. A. Freedman, University"
                                + " Physics, ch. 17")
                .what("water of 80 °C poured into a glass of 20 °C, both alone: where they meet")
                .unit("°C")
                .expected((water * 80 + wall * 20) / (water + wall))
                .within(0.1)
                .check(celsiusAt(run, "glass", 359));
        assertThat(run.vessel("glass").notes()).anyMatch(note -> note.contains("scalds"));
        assertThat(run.vessel("glass").notes()).anyMatch(note -> note.contains("crack"));
    }

    @Test
    void aRefillMixesByMassAtPresentTemperatures() {
        ScenePrediction run = table(8, 8)
                .pour("bottle", MINUTE, millilitres(60), "glass")
                .pour("bottle", Duration.ofMinutes(30), millilitres(60), "glass")
                .build()
                .predict(Duration.ofMinutes(40));
        double before = run.vessel("glass").meanTemperatureK(1799.999);
        double bottle = run.vessel("bottle").meanTemperatureK(1799.999);
        double part = run.drinkKg("glass", Duration.ofMillis(1_799_999)) / run.drinkKg("glass", Duration.ofMinutes(30));
        // Heat capacity of wine changes by 0.3 % over these temperatures.
        assertThat(run.vessel("glass").meanTemperatureK(1800))
                .isCloseTo(part * before + (1 - part) * bottle, within(0.02));
        assertThat(before).isGreaterThan(bottle + 3);
    }

    /** A hot cup loses a sip to the air while it is drunk; the sips take a part each, so that none is asked for that is not there. */
    @Test
    void aHotCupIsDrunkToTheEndWhateverEvaporates() {
        ScenePrediction run = Scene.builder()
                .gear("room", ROOM)
                .vessel("mug", MUG.filledWith(Water.liquid(), celsius(90)), "room")
                .drinkEvenly("mug", MINUTE, half(), millilitres(0))
                .build()
                .predict(Duration.ofMinutes(40));
        assertThat(run.drinkKg("mug", Duration.ofMinutes(29))).isPositive();
        assertThat(run.drinkKg("mug", half())).isZero();
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void anOpenGlassDoesNotStandUnderWater() {
        Scene flooded = Scene.builder()
                .gear("tub", WaterBath.of(Bucket.of(millimetres(300), millimetres(400)), litres(20), celsius(10), ROOM))
                .vessel("glass", GLASS.filledWith(WINE, celsius(20)), "tub")
                .build();
        assertThatThrownBy(() -> flooded.predict(half()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("vessel glass, open")
                .hasMessageContaining("rim is under");
    }

    private static Duration half() {
        return Duration.ofMinutes(30);
    }

    /** What evaporates in a closed box goes into the air of the box. */
    @Test
    void aGlassInABoxMeetsTheAirOfTheBox() {
        ScenePrediction run = Scene.builder()
                .gear(
                        "box",
                        FoamBox.of(
                                millimetres(300),
                                millimetres(300),
                                millimetres(300),
                                Layer.of(Solids.expandedPolystyrene(), millimetres(30)),
                                celsius(25),
                                ROOM))
                .vessel("glass", GLASS.filledWith(WINE, celsius(10)), "box")
                .build()
                .predict(Duration.ofHours(2));
        assertThat(run.ledger().entries())
                .filteredOn(entry -> entry.mechanism().equals(EvaporatingFilm.MECHANISM))
                .extracting(LedgerEntry::to)
                .containsOnly("box air");
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void anEmptyGlassHasNoDrink() {
        ScenePrediction run = table(8, 20)
                .pour("bottle", Duration.ofMinutes(10), millilitres(100), "glass")
                .drink("glass", Duration.ofMinutes(20), millilitres(100))
                .pour("bottle", Duration.ofMinutes(30), millilitres(50), "glass")
                .build()
                .predict(Duration.ofMinutes(40));
        Prediction glass = run.vessel("glass");
        assertThat(glass.isFilled(599)).isFalse();
        assertThat(glass.isFilled(600)).isTrue();
        assertThat(glass.isFilled(1500)).isFalse();
        assertThat(glass.drinkTemperatureK(0)).isEmpty();
        assertThat(glass.drinkTemperatureK(700)).isPresent();
        assertThatThrownBy(() -> glass.meanTemperatureK(1500))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("empty");
        assertThat(run.drinkKg("glass", Duration.ofMinutes(25))).isZero();
        assertThat(run.drinkVolume("glass", Duration.ofMinutes(25)).getValue().doubleValue())
                .isZero();
        // It is above 9 °C when it is poured; the refill takes it below 11.5 °C again and not below 11 °C.
        assertThat(glass.timeTo(celsius(9))).isInstanceOf(TimeToTemperature.NeverReached.class);
        assertThat(glass.timeTo(celsius(11)))
                .isInstanceOfSatisfying(
                        TimeToTemperature.Reached.class,
                        reached ->
                                assertThat(reached.after()).isBetween(Duration.ofMinutes(11), Duration.ofMinutes(20)));
        assertThat(glass.timeTo(celsius(11.5)))
                .isInstanceOfSatisfying(
                        TimeToTemperature.ReachedThenLost.class,
                        reached -> assertThat(reached.lostAfter()).isEqualTo(Duration.ofMinutes(30)));
        for (double outside : new double[] {-5, Double.NaN, Double.POSITIVE_INFINITY, 2400.001}) {
            assertThatThrownBy(() -> glass.isFilled(outside))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("0 to 2400.0 s");
            assertThatThrownBy(() -> glass.drinkTemperatureK(outside)).isInstanceOf(IllegalArgumentException.class);
        }
        for (Duration outside : new Duration[] {Duration.ofSeconds(-5), Duration.ofMinutes(41)}) {
            assertThatThrownBy(() -> run.drinkVolume("glass", outside)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(glass.timeTo(celsius(60))).isInstanceOf(TimeToTemperature.NeverReached.class);
        assertThat(glass.notes()).allMatch(note -> !note.contains("NaN"));
        assertThat(glass.explainAt(Duration.ofMinutes(15)).bands()).isNotEmpty();
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        assertThat(run.ledger().entries().stream().map(LedgerEntry::path)).contains("drunk");
    }

    @Test
    void whatIsPouredOutAtOnceOrNeverPouredHasNoTemperature() {
        ScenePrediction run = table(8, 20)
                .emptyVessel("decanter", DECANTER, celsius(20), "room")
                .pourAll("bottle", Duration.ZERO, "decanter")
                .pour("decanter", Duration.ofHours(2), millilitres(100), "glass")
                .build()
                .predict(Duration.ofHours(1));
        for (String id : new String[] {"bottle", "glass"}) {
            Prediction none = run.vessel(id);
            assertThat(none.isFilled(0)).isFalse();
            assertThat(none.isFilled(3600)).isFalse();
            assertThat(none.notes()).anyMatch(note -> note.startsWith("poured or drunk from"));
            assertThat(none.stayAdvice()).isEmpty();
            assertThatThrownBy(() -> none.timeTo(celsius(10))).hasMessageContaining("empty throughout");
        }
        assertThat(run.vessel("decanter").isFilled(0)).isTrue();
        assertThat(celsiusAt(run, "decanter", 0)).isCloseTo(8, within(1e-6));
    }

    @Test
    void aBottleLeftPartFullWarmsFaster() {
        ScenePrediction full = table(8, 20)
                .pour("bottle", MINUTE, millilitres(10), "glass")
                .build()
                .predict(Duration.ofHours(1));
        ScenePrediction part = table(8, 20)
                .pour("bottle", MINUTE, millilitres(125), "glass")
                .drink("bottle", MINUTE, millilitres(500))
                .build()
                .predict(Duration.ofHours(1));
        assertThat(celsiusAt(part, "bottle", 60)).isGreaterThan(celsiusAt(full, "bottle", 60) + 1);
    }

    /** Mass goes with the heat of evaporation. */
    @Test
    void aHotDrinkLosesWhatEvaporates() {
        ScenePrediction run = Scene.builder()
                .gear("room", ROOM)
                .vessel("mug", MUG.filledWith(Beverage.tea(), celsius(85)), "room")
                .build()
                .predict(Duration.ofMinutes(60));
        double evaporation = run.ledger().entries().stream()
                .filter(entry -> entry.mechanism().equals(EvaporatingFilm.MECHANISM))
                .mapToDouble(LedgerEntry::heatJ)
                .sum();
        double lost = run.drinkKg("mug", Duration.ZERO) - run.drinkKg("mug", Duration.ofMinutes(60));
        // Heat of evaporation at 45 °C and 85 °C, ASHRAE Handbook of Fundamentals 2017, ch. 1, table 3 (from memory).
        assertThat(evaporation / lost).isBetween(2.296e6, 2.394e6);
        assertThat(lost / run.drinkKg("mug", Duration.ZERO)).isBetween(0.02, 0.08);
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void saturatedAirAtTheDrinksTemperatureChangesNothing() {
        ScenePrediction run = Scene.builder()
                .gear("room", Air.at(celsius(20)).withRelativeHumidity(percent(100)))
                .vessel("mug", MUG.filledWith(Water.liquid(), celsius(20)), "room")
                .build()
                .predict(Duration.ofHours(2));
        assertThat(celsiusAt(run, "mug", 120)).isCloseTo(20, within(1e-6));
        assertThat(run.drinkKg("mug", Duration.ofHours(2))).isCloseTo(run.drinkKg("mug", Duration.ZERO), within(1e-9));
    }

    @Test
    void decantingWarmsByTheDecanterAndAirsFromThere() {
        ScenePrediction run = Scene.builder()
                .gear("room", ROOM)
                .vessel("bottle", Vessels.highShouldered750().filledWith(WINE, celsius(12)), "room")
                .emptyVessel("decanter", DECANTER, celsius(22), "room")
                .pourAll("bottle", MINUTE, "decanter")
                .build()
                .predict(Duration.ofMinutes(61));
        assertThat(run.drinkKg("bottle", MINUTE)).isZero();
        assertThat(run.vessel("bottle").isFilled(61)).isFalse();
        assertThat(run.vessel("bottle").notes()).isNotEmpty();
        // The wall alone warms it by what the method of mixtures says, air and surface by some kelvins more.
        double warmed = celsiusAt(run, "decanter", 61) - 12;
        assertThat(warmed).isBetween(2.0, 8.0);
    }

    /** One cylinder of the mean cross-section of the stream, across air of its mean speed. */
    @Test
    void aFallingStreamIsAboutACylinderOfItsMeanSize() {
        double flow = 750e-6 / 60;
        double fall = 0.2;
        double gravity = 9.81;
        double seconds = (Math.sqrt(0.3 * 0.3 + 2 * gravity * fall) - 0.3) / gravity;
        double diameter = Math.sqrt(4 * flow * seconds / fall / Math.PI);
        // Air at 17 °C: 1.48e-5 m²/s, 0.0254 W/(m K), Prandtl number 0.71; wine: 4.15e6 J/(m³ K); radiation: 5.3 W/(m²
        // K).
        double nusselt = 0.683 * Math.pow(fall / seconds * diameter / 1.48e-5, 0.466) * Math.cbrt(0.71);
        double conductance = (nusselt * 0.0254 / diameter + 5.3) * Math.PI * diameter * fall;
        OutsideChecks.fromMemory(
                        "falling-stream",
                        "free fall; Hilpert's law for a cylinder across a stream, F. P. Incropera et al., Fundamentals of Heat and"
                                + " Mass Transfer, 7th ed., table 7.2, which gives 20 % as the uncertainty of such laws")
                .what(
                        "part of its difference to the air that a bottle of wine loses, decanted in a minute through 20 cm")
                .unit("1")
                .expected(conductance / (flow * 4.15e6))
                .withinRelative(0.2)
                .check(FallingStream.exchangedPart(
                        WINE, ZERO + 12, ZERO + 22, millilitres(750), MINUTE, millimetres(200)));
    }

    /** Skin burns at 50 °C in minutes: a drink of 55 °C has the caution as hot water has it, one of 45 °C does not. */
    @Test
    void drinksScaldFromWhereWaterDoes() {
        for (double drinkC : new double[] {45, 55}) {
            ScenePrediction run = Scene.builder()
                    .gear("room", ROOM)
                    .vessel("jug", MUG.filledWith(Water.liquid(), celsius(drinkC)), "room")
                    .emptyVessel("cup", MUG, celsius(20), "room")
                    .pour("jug", Duration.ZERO, millilitres(100), "cup")
                    .build()
                    .predict(MINUTE);
            assertThat(run.vessel("cup").notes().stream().anyMatch(note -> note.contains("scalds")))
                    .isEqualTo(drinkC > 50);
        }
    }

    /** A thinner or slower stream loses more; none loses more than all. */
    @Test
    void aFallingStream() {
        double plain =
                FallingStream.exchangedPart(WINE, ZERO + 12, ZERO + 22, millilitres(750), MINUTE, millimetres(200));
        assertThat(FallingStream.exchangedPart(WINE, ZERO + 12, ZERO + 22, millilitres(75), MINUTE, millimetres(200)))
                .isGreaterThan(plain);
        assertThat(FallingStream.exchangedPart(WINE, ZERO + 12, ZERO + 22, millilitres(750), MINUTE, millimetres(400)))
                .isGreaterThan(plain);
        assertThat(FallingStream.exchangedPart(
                        WINE, ZERO + 12, ZERO + 22, millilitres(1), Duration.ofHours(1), millimetres(2000)))
                .isBetween(0.9, 1.0);
        assertThat(catchThrowableOfType(
                                OutOfRangeException.class,
                                () -> FallingStream.exchangedPart(
                                        WINE, ZERO + 12, ZERO + 22, millilitres(750), MINUTE, millimetres(3000)))
                        .parameter())
                .isEqualTo("height of the fall");
    }

    @Test
    void aPouredDrinkFreezesToo() {
        ScenePrediction run = Scene.builder()
                .gear("freezer", Freezer.at(celsius(-18)))
                .vessel("bottle", Vessels.highShouldered750().filledWith(Beverage.water(), celsius(4)), "freezer")
                .emptyVessel("glass", GLASS, celsius(-18), "freezer")
                .pour("bottle", MINUTE, millilitres(100), "glass")
                .build()
                .predict(Duration.ofHours(3));
        assertThat(run.vessel("glass").iceFraction(10_800)).isBetween(0.2, 1.0);
        assertThat(run.vessel("glass").notes()).anyMatch(note -> note.contains("begins to freeze"));
    }

    @Test
    void refusals() {
        assertThatThrownBy(() -> table(8, 20).build()).hasMessageContaining("glass is empty");
        OutOfRangeException tooMuch = catchThrowableOfType(
                OutOfRangeException.class,
                () -> table(8, 20).pour("bottle", MINUTE, litres(0.8), "glass").build());
        assertThat(tooMuch.parameter()).contains("poured from bottle into glass");
        OutOfRangeException overflow = catchThrowableOfType(
                OutOfRangeException.class,
                () -> table(8, 20).pour("bottle", MINUTE, litres(0.5), "glass").build());
        assertThat(overflow.parameter()).contains("volume in glass");
        assertThatThrownBy(() -> table(8, 20).pour("bottle", MINUTE, litres(0), "glass"))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> table(8, 20).pour("bottle", MINUTE, litres(-0.1), "glass"))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> table(8, 20).pour("bottle", MINUTE, litres(0.1), "bottle"))
                .hasMessageContaining("into itself");
        assertThatThrownBy(() -> table(8, 20).pour("bottle", MINUTE, litres(0.1), "cup"))
                .hasMessageContaining("cup");
        assertThatThrownBy(() -> table(8, 20).pour("bottle", MINUTE, litres(0.1), ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> table(8, 20).pour("bottle", MINUTE.negated(), litres(0.1), "glass"))
                .hasMessageContaining("at least 0");
        assertThatThrownBy(() -> table(8, 20)
                        .drink("glass", MINUTE, millilitres(10))
                        .pour("bottle", MINUTE.multipliedBy(2), millilitres(50), "glass")
                        .build())
                .hasMessageContaining("empty then");
        assertThatThrownBy(() -> table(8, 20).drinkEvenly("glass", MINUTE, MINUTE, millilitres(10)))
                .hasMessageContaining("end after");
        assertThatThrownBy(() -> table(8, 20)
                        .pour("bottle", MINUTE, millilitres(50), "glass")
                        .drinkEvenly("glass", MINUTE, MINUTE.multipliedBy(9), millilitres(60))
                        .build())
                .isInstanceOf(OutOfRangeException.class);
        FilledVessel beer = Vessels.of(VesselShape.LONG_NECK, millilitres(330))
                .filledWith(Beverage.beer(percentByVolume(5)), celsius(8));
        assertThatThrownBy(() -> table(8, 20)
                        .vessel("beer", beer, "room")
                        .pour("bottle", MINUTE, millilitres(50), "glass")
                        .pour("beer", MINUTE, millilitres(50), "glass")
                        .build())
                .hasMessageContaining("the same drink");
        assertThatThrownBy(() -> table(8, 20)
                        .vessel("layered", beer, "room", VesselModel.axial(), Posture.UPRIGHT)
                        .pour("layered", MINUTE, millilitres(50), "glass"))
                .hasMessageContaining("lumped");
        assertThatThrownBy(() -> table(8, 20)
                        .pour("bottle", MINUTE, millilitres(50), "glass")
                        .move("bottle", MINUTE, "room", Posture.LYING)
                        .build())
                .hasMessageContaining("upright throughout");
        assertThatThrownBy(() -> Scene.builder().gear("room", ROOM).emptyVessel("glass", GLASS, celsius(200), "room"))
                .isInstanceOf(OutOfRangeException.class);
    }
}
