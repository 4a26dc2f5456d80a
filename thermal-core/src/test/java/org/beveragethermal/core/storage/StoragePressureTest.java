/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.HeadspacePressure;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** What a swing of temperature does under a closure. */
final class StoragePressureTest {

    private static final double ZERO = 273.15;
    private static final ClosedVessel BOTTLE = ClosedVessel.of(
            Vessels.highShouldered750().filledWith(Beverage.dryWine(percentByVolume(12.5)), celsius(20)));

    private static TemperatureHistory between(double low, double high) {
        return TemperatureHistory.of(new double[] {0, 3600, 7200}, new double[] {ZERO + low, ZERO + high, ZERO + low});
    }

    @Test
    void aSwingIsThatOfItsEnds() {
        StoragePressure.Breathes swing = (StoragePressure.Breathes) StoragePressure.of(BOTTLE, between(10, 20));
        HeadspacePressure.Gas cold = (HeadspacePressure.Gas) BOTTLE.pressureAtK(ZERO + 10);
        assertThat(swing.highestGaugePa()).isCloseTo(0, within(1e-6));
        assertThat(swing.lowestGaugePa()).isCloseTo(cold.gaugePa(), within(1e-6));
        assertThat(swing.amplitudePa()).isCloseTo(-cold.gaugePa() / 2, within(1e-6));
        // By hand: 6.5 mL of headspace grow by some 1.4 mL on cooling by 10 K.
        assertThat(swing.lowestGaugePa()).isBetween(-30_000.0, -15_000.0);
        assertThat(swing.explain()).contains("common practice, no source").contains("less than the bar");
        StoragePressure hot = StoragePressure.of(BOTTLE, between(15, 36));
        assertThat(hot.explain()).contains("as much as or more");
    }

    @Test
    void whatFillsTheVesselForcesIt() {
        double full = BOTTLE.fullAtK().orElseThrow();
        StoragePressure.Forced forced =
                (StoragePressure.Forced) StoragePressure.of(BOTTLE, between(full - ZERO - 10, full - ZERO + 10));
        assertThat(forced.after()).isBetween(Duration.ofMinutes(29), Duration.ofMinutes(31));
        assertThat(forced.explain()).contains("pushes the closure out");
    }

    @Test
    void carbonatedDrinksAreMeantForIt() {
        ClosedVessel sparkling = ClosedVessel.of(
                Vessels.sparkling750().filledWith(Beverage.sparklingWine(percentByVolume(12)), celsius(20)));
        StoragePressure.Breathes swing = (StoragePressure.Breathes) StoragePressure.of(sparkling, between(8, 18));
        assertThat(swing.still()).isFalse();
        assertThat(swing.lowestGaugePa()).isGreaterThan(300_000);
        assertThat(swing.explain()).contains("made for such pressures");
    }

    @Test
    void iceIsNotKnown() {
        assertThat(StoragePressure.of(BOTTLE, between(-9, 10)))
                .isInstanceOfSatisfying(
                        StoragePressure.NotKnown.class,
                        answer -> assertThat(answer.explain()).contains("ice may form"));
    }
}
