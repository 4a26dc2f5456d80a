/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.litresPerMinute;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.squareMetres;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hands, table tops and parked cars. */
class HandAndCarTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(22));
    private static final FilledVessel GLASS =
            Vessels.tastingGlass().filledWith(Beverage.wine(percentByVolume(12.5)), millilitres(100), celsius(8));
    private static final Duration TEN_MINUTES = Duration.ofMinutes(10);

    private static double wineC(Surroundings gear) {
        return Lumped.of(GLASS).expose(Exposure.in(gear, TEN_MINUTES)).meanTemperatureK(600) - ZERO;
    }

    private static Hand hand(double cm2) {
        return Hand.holding(squareMetres(cm2 * 1e-4), millimetres(0), millimetres(60), ROOM);
    }

    @Test
    void aHandGivesWhatBloodAndTissueConduct() {
        // The middle of the range that A. P. Gagge, A. P. Fobelets and L. G. Berglund, ASHRAE Trans. 92 (1986) 709 give
        // (from memory): true
        // by definition, no outside check.
        assertThat(Hand.CONDUCTANCE.value()).isCloseTo(0.5 * (5.28 + 1.163 * 6.3 + 5.28 + 1.163 * 90), within(2.0));
        Occupant glass = new Occupant("glass", GLASS.vessel());
        double area = GLASS.vessel().profile().outerSideAreaM2(0, 0.06);
        WallPatch patch = new WallPatch(0, 0.06, area, 0.08, 0.9);
        Face held = hand(20).open("hand", 0).faces(patch, glass, List.of(glass)).get(0);
        assertThat(held.name()).isEqualTo("hand");
        assertThat(held.part() * area).isCloseTo(20e-4, within(1e-9));
    }

    @Test
    void aHandWarmsAGlassAndALargerOneMore() {
        double bare = wineC(ROOM);
        double held = wineC(hand(60));
        assertThat(held).isGreaterThan(bare + 1);
        assertThat(wineC(hand(120))).isGreaterThan(held);
        assertThat(wineC(hand(60).withSkin(celsius(25)))).isBetween(bare - 0.5, held);
    }

    /** Limits: next to no hand is the room; a hand all round brings the drink to its own temperature. */
    @Test
    void limitsOfAHand() {
        // 1 cm², 60 W/(m² K), 25 K and ten minutes: 90 J, and 0.1 kg of wine.
        assertThat(wineC(hand(1))).isCloseTo(wineC(ROOM), within(0.2));
        // A closed bottle: what evaporates from an open glass keeps it colder.
        Vessel closed = Vessels.highShouldered750();
        Hand allRound = Hand.holding(
                squareMetres(0.1),
                millimetres(0),
                millimetres(1000 * closed.profile().heightM()),
                ROOM);
        double late = Lumped.of(closed.filledWith(Beverage.wine(percentByVolume(12.5)), celsius(8)))
                        .expose(Exposure.in(allRound, Duration.ofHours(6)))
                        .meanTemperatureK(6 * 3600)
                - ZERO;
        assertThat(late).isCloseTo(33, within(0.5));
    }

    @Test
    void theLedgerClosesInAHand() {
        ScenePrediction run = Scene.builder()
                .gear("table", ROOM.on(Footing.tableTop(Solids.granite(), millimetres(70))))
                .gear("hand", hand(60))
                .vessel("wine", GLASS, "table")
                .move("wine", Duration.ofMinutes(4), "hand")
                .move("wine", Duration.ofMinutes(6), "table")
                .build()
                .predict(TEN_MINUTES);
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        assertThat(run.ledger().heatInto("hand skin")).isNegative();
    }

    @Test
    void badHandsAreRefused() {
        assertThatThrownBy(() -> hand(0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> hand(60).withSkin(celsius(60))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Hand.holding(squareMetres(0.005), millimetres(50), millimetres(40), ROOM))
                .isInstanceOf(OutOfRangeException.class);
        Hand high = Hand.holding(squareMetres(0.005), millimetres(900), millimetres(950), ROOM);
        assertThatThrownBy(() -> wineC(high)).hasMessageContaining("expected a height below");
        assertThatThrownBy(() -> Scene.builder()
                        .gear("hand", hand(60))
                        .vessel("one", GLASS, "hand")
                        .vessel("other", GLASS, "hand")
                        .build()
                        .predict(TEN_MINUTES))
                .hasMessageContaining("[one, other] in hand hand: expected one vessel at a time");
        RunningTap tap = RunningTap.at(celsius(12), litresPerMinute(6), ROOM);
        assertThatThrownBy(() -> Hand.holding(squareMetres(0.005), millimetres(0), millimetres(40), tap))
                .hasMessageContaining("a hand under a running tap");
    }

    @Test
    void tableTops() {
        // A disc on a half-space, shape factor 2 D (Incropera, table 4.1, from memory), in series with 250 W/(m² K).
        double wood = Footing.tableTop(Solids.wood(), millimetres(70)).coefficient();
        double granite = Footing.tableTop(Solids.granite(), millimetres(70)).coefficient();
        double steel =
                Footing.tableTop(Solids.stainlessSteel(), millimetres(70)).coefficient();
        assertThat(wood).isCloseTo(tableTop(Solids.wood()), within(1e-9));
        assertThat(granite).isCloseTo(tableTop(Solids.granite()), within(1e-9));
        assertThat(steel).isCloseTo(tableTop(Solids.stainlessSteel()), within(1e-9));
        assertThat(wood).isBetween(3.0, 8.0);
        assertThat(granite).isBetween(55.0, 90.0);
        assertThat(steel).isBetween(granite, 250.0);
        assertThatThrownBy(() -> Footing.tableTop(Solids.wood(), millimetres(1)))
                .isInstanceOf(OutOfRangeException.class);
    }

    private static double tableTop(Solid solid) {
        double spreading = 8 * solid.thermalConductivity().value() / (Math.PI * 0.07);
        return spreading * 250 / (spreading + 250);
    }

    /**
     * Calibration, not a check: the two figures of C. McLaren, J. Null and J. Quinn, Pediatrics 116 (2005) e109, abstract, from which both
     * constants are, about 40 °F in an hour and four fifths of it in half an hour.
     */
    @Test
    void aCarInTheSunIsCalibrated() {
        Air cabin = ParkedCar.cabin(celsius(28), Duration.ofMinutes(10));
        double hour = cabin.airK().at(4200) - ZERO - 28;
        assertThat(hour).isCloseTo(40 / 1.8, within(0.2));
        assertThat((cabin.airK().at(2400) - ZERO - 28) / hour).isCloseTo(0.8, within(0.008));
        assertThat(cabin.airK().at(0)).isEqualTo(ZERO + 28);
    }

    /** Measured by another, in other cars; he is also an author of the figures above. */
    @ParameterizedTest
    @CsvSource({"10, 19", "20, 29", "30, 34", "60, 43"})
    void otherMeasurementsOfCars(int minutes, double fahrenheit) {
        Air cabin = ParkedCar.cabin(celsius(28), Duration.ZERO);
        OutsideChecks.fromMemory("car-null-" + minutes, "J. Null, table of elapsed time and rise in closed vehicles")
                .what("rise in a closed car after " + minutes + " min")
                .unit("K")
                .expected(fahrenheit / 1.8)
                .within(3)
                .check(cabin.airK().at(60.0 * minutes) - ZERO - 28);
    }

    @Test
    void theBootIsCoolerAndWhatIsStatedCounts() {
        double cabin = ParkedCar.cabin(celsius(28), Duration.ZERO).airK().at(3600);
        double boot = ParkedCar.boot(celsius(28), Duration.ZERO).airK().at(3600);
        assertThat(boot).isBetween(ZERO + 28, cabin - 10);
        Air shade = ParkedCar.cabin(celsius(28), Duration.ZERO, kelvinDifference(5));
        assertThat(shade.airK().at(3600)).isCloseTo(ZERO + 33, within(0.05));
        assertThatThrownBy(() -> ParkedCar.cabin(celsius(60), Duration.ZERO)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ParkedCar.cabin(celsius(20), Duration.ZERO, kelvinDifference(50)))
                .isInstanceOf(OutOfRangeException.class);
    }
}
