/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Brine;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;

/** What holds for any bucket of ice, salted or not: nothing is lost, nothing is negative, nothing is colder than it can be. */
final class IceFamilyProperties {

    private static final double ZERO = 273.15;
    private static final int MINUTES = 90;
    private static final Bucket BUCKET = Bucket.of(millimetres(220), millimetres(400));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    private static ScenePrediction run(Surroundings gear) {
        return Scene.builder()
                .gear("bath", gear)
                .vessel("wine", BOTTLE, "bath")
                .build()
                .predict(Duration.ofMinutes(MINUTES));
    }

    @Property(tries = 100, seed = "20261125")
    void bareIceKeepsItsWater(
            @ForAll @DoubleRange(min = 0.05, max = 5) double iceKg,
            @ForAll @DoubleRange(min = 4, max = 60) double sideMm,
            @ForAll @DoubleRange(min = -30, max = 0) double iceC,
            @ForAll @DoubleRange(min = 0, max = 40) double roomC,
            @ForAll boolean drained) {
        BareIce.Builder builder =
                BareIce.in(BUCKET, Air.at(celsius(roomC))).ice(kilograms(iceKg), millimetres(sideMm), celsius(iceC));
        ScenePrediction run = run(drained ? builder.drained().build() : builder.build());
        double left = iceKg;
        for (int minutes = 0; minutes <= MINUTES; minutes += 10) {
            Duration time = Duration.ofMinutes(minutes);
            assertThat(run.gearMassKg("bath", time)).isCloseTo(iceKg, within(1e-4 * Math.max(1, iceKg)));
            double ice = run.iceKg("bath", time);
            assertThat(ice).isBetween(0.0, left + 1e-6);
            left = ice;
            assertThat(run.vessel("wine").meanTemperatureK(60.0 * minutes))
                    .isBetween(ZERO + iceC - 0.01, ZERO + Math.max(22, roomC) + 0.01);
        }
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Property(tries = 100, seed = "20261126")
    void saltedIceKeepsItsWaterAndItsSalt(
            @ForAll @DoubleRange(min = 0.2, max = 4) double iceKg,
            @ForAll @DoubleRange(min = 5, max = 50) double sideMm,
            @ForAll @DoubleRange(min = -20, max = 0) double iceC,
            @ForAll @DoubleRange(min = 0.12, max = 1) double waterPerIce,
            @ForAll @DoubleRange(min = 0, max = 30) double waterC,
            @ForAll @DoubleRange(min = 0, max = 0.5) double saltPerIce,
            @ForAll @DoubleRange(min = 0, max = 0.3) double speed) {
        SaltedIce bath = SaltedIce.in(BUCKET, Air.at(celsius(21)))
                .ice(kilograms(iceKg), millimetres(sideMm), celsius(iceC))
                .water(kilograms(iceKg * waterPerIce), celsius(waterC))
                .salt(kilograms(iceKg * saltPerIce))
                .agitation(Agitation.stirred(metresPerSecond(speed)))
                .build();
        ScenePrediction run = run(bath);
        double total = iceKg * (1 + waterPerIce);
        double salt = iceKg * saltPerIce;
        for (int minutes = 0; minutes <= MINUTES; minutes += 10) {
            Duration time = Duration.ofMinutes(minutes);
            assertThat(run.gearMassKg("bath", time)).isCloseTo(total, within(2e-4 * Math.max(1, total)));
            assertThat(run.iceKg("bath", time)).isBetween(0.0, total);
            double dissolved = run.dissolvedSaltKg("bath", time);
            assertThat(dissolved + run.undissolvedSaltKg("bath", time)).isCloseTo(salt, within(1e-5));
            assertThat(dissolved).isLessThanOrEqualTo(bath.dissolvableKg() + 1e-3 * total);
            double brineK = run.gearTemperaturesK("bath", time).getOrDefault("brine", Double.NaN);
            assertThat(brineK).isBetween(Math.min(Brine.EUTECTIC_K, ZERO + iceC) - 0.01, ZERO + 30.0);
        }
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }
}
