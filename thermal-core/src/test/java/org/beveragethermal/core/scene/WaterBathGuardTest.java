/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.litresPerMinute;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeInRange;
import org.beveragethermal.core.prediction.TimeInRange.Leaves;
import org.beveragethermal.core.prediction.TimeInRange.NeverEntered;
import org.beveragethermal.core.prediction.TimeInRange.Stays;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Warm and cold baths, taps that run into them, and drinks that are forgotten in them. */
class WaterBathGuardTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(20));
    private static final Bucket BUCKET = Bucket.of(millimetres(220), millimetres(250));
    private static final WaterBath WARM = WaterBath.of(BUCKET, litres(6), celsius(38), ROOM);
    private static final FilledVessel COLD =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(8));

    private static Prediction warmed(WaterBath bath, Duration time) {
        return Lumped.of(COLD).expose(in(bath, time));
    }

    @Test
    void aTapHoldsTheBathWhereHeatsBalance() {
        // The room takes so little that the bath ends at the tap; by hand: ṁ c ΔT = U A (T − room) with U A from two
        // rates of flow.
        double[] below = new double[2];
        for (int i = 0; i < 2; i++) {
            double flow = 0.5 * (i + 1);
            ScenePrediction run = Scene.builder()
                    .gear("bath", WARM.withInflow(litresPerMinute(flow), celsius(38)))
                    .vessel("wine", COLD, "bath")
                    .build()
                    .predict(Duration.ofHours(6));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            below[i] =
                    38 - (run.gearTemperaturesK("bath", Duration.ofHours(6)).getOrDefault("water", Double.NaN) - ZERO);
            assertThat(run.ledger().entries())
                    .anyMatch(entry -> entry.mechanism().equals("inflow"));
        }
        // Loss of wall and surface at 18 K: about 0.2 m² at about 10 W/(m² K) against 35 W/K of the tap.
        assertThat(below[0]).isBetween(0.3, 2.0);
        // Twice the flow, half the difference, but for the loss that falls along.
        assertThat(below[1] / below[0]).isBetween(0.48, 0.56);
    }

    @Test
    void endlessInflowIsABoundary() {
        ScenePrediction run = Scene.builder()
                .gear(
                        "bath",
                        WaterBath.of(BUCKET, litres(2), celsius(20), ROOM).withInflow(litresPerMinute(20), celsius(12)))
                .vessel("wine", COLD, "bath")
                .build()
                .predict(Duration.ofHours(1));
        assertThat(run.gearTemperaturesK("bath", Duration.ofHours(1)).getOrDefault("water", Double.NaN))
                .isCloseTo(ZERO + 12, within(0.05));
        // What comes in replaces what is there: a third of a litre a second through two litres, for one time constant.
        double afterS = 6;
        OutsideChecks.published("bath-inflow", "closed form: stirred tank, T = T_in + (T_0 − T_in) exp(−t V̇/V)")
                .what("bath of 2 L at 20 °C, 20 L/min at 12 °C running in, after 6 s; bottle and room may add 0.3 K")
                .unit("°C")
                .expected(12 + 8 * Math.exp(-afterS * 20 / 60 / 2))
                .within(0.3)
                .check(run.gearTemperaturesK("bath", Duration.ofSeconds(6)).getOrDefault("water", Double.NaN) - ZERO);
    }

    @Test
    void aDecanterIsWarmedAndHotWaterCautioned() {
        FilledVessel decanter = Vessels.of(VesselShape.DECANTER, millilitres(750))
                .filledWith(Beverage.wine(percentByVolume(13)), celsius(10));
        for (FilledVessel vessel : new FilledVessel[] {decanter, COLD}) {
            Prediction run = Lumped.of(vessel).expose(in(WARM.startingAt(celsius(30)), Duration.ofMinutes(20)));
            assertThat(run.meanTemperatureK(1200)).isBetween(ZERO + 16, ZERO + 30);
            assertThat(run.ledger().closure()).isLessThan(1e-9);
        }
        assertThat(warmed(WARM.startingAt(celsius(60)), Duration.ofMinutes(1)).notes())
                .anyMatch(note -> note.contains("scalds"))
                .anyMatch(note -> note.contains("may crack"));
        assertThat(warmed(WARM, Duration.ofMinutes(1)).notes()).noneMatch(note -> note.contains("scalds"));
        assertThatThrownBy(() -> WARM.startingAt(celsius(71))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> WARM.withInflow(litresPerMinute(21), celsius(20)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void readyAndTooWarm() {
        Prediction run = warmed(WARM, Duration.ofHours(2));
        Leaves leaves = (Leaves) run.timeInRange(celsius(16), celsius(18));
        assertThat(leaves.tooWarm()).isTrue();
        double ready = leaves.enteredAfter().toMillis() / 1000.0;
        double left = leaves.leftAfter().toMillis() / 1000.0;
        assertThat(run.meanTemperatureK(ready) - ZERO).isCloseTo(16, within(1e-4));
        assertThat(run.meanTemperatureK(left) - ZERO).isCloseTo(18, within(1e-4));
        assertThat(leaves.leeway()).isEqualTo(leaves.leftAfter().minus(leaves.enteredAfter()));
        assertThat(leaves.kelvinPerSecond())
                .isCloseTo((run.meanTemperatureK(left + 5) - run.meanTemperatureK(left - 5)) / 10, within(2e-5));
        double furthest = leaves.furthestAfter().toMillis() / 1000.0;
        for (int s = 0; s <= 7200; s += 60) {
            assertThat(run.meanTemperatureK(s)).isLessThanOrEqualTo(leaves.furthestK() + 1e-9);
        }
        assertThat(run.meanTemperatureK(furthest)).isCloseTo(leaves.furthestK(), within(1e-5));
    }

    @Test
    void staysOrNeverEnters() {
        Prediction run = warmed(WARM, Duration.ofHours(2));
        Stays stays = (Stays) run.timeInRange(celsius(16), celsius(37));
        assertThat(stays.highestK()).isBetween(ZERO + 25, ZERO + 37);
        assertThat(stays.lowestK() - ZERO).isCloseTo(16, within(1e-4));
        NeverEntered never = (NeverEntered) run.timeInRange(celsius(40), celsius(45));
        assertThat(never.closestK()).isCloseTo(stays.highestK(), within(1e-6));
        assertThat(never.closestAfter()).isEqualTo(stays.highestAfter());
        // Begins on the end of the range and goes inwards, or outwards.
        assertThat(run.timeInRangeK(COLD.temperatureK(), ZERO + 50, Part.MEAN, 0))
                .isInstanceOf(Stays.class);
        assertThat(((Leaves) run.timeInRangeK(0, COLD.temperatureK(), Part.MEAN, 0)).leftAfter())
                .isLessThan(Duration.ofSeconds(20));
        assertThat(run.timeInRangeK(ZERO + 10, Double.POSITIVE_INFINITY, Part.WARMEST, 0))
                .isInstanceOf(Stays.class);
        assertThatThrownBy(() -> run.timeInRange(celsius(18), celsius(16)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> run.timeInRangeK(Double.NaN, 300, Part.MEAN, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theWarmestLayerIsTooWarmBeforeTheMean() {
        Prediction run = Layered.axial(COLD).expose(in(WARM, Duration.ofMinutes(60)));
        TimeInRange mean = run.timeInRangeK(0, ZERO + 18, Part.MEAN, 0);
        TimeInRange warmest = run.timeInRangeK(0, ZERO + 18, Part.WARMEST, 0);
        assertThat(((Leaves) warmest).leftAfter()).isLessThan(((Leaves) mean).leftAfter());
        assertThat(run.temperatureK(Part.COLDEST, 600)).isLessThan(run.temperatureK(Part.WARMEST, 600));
    }

    @Test
    void theWarmestHarmlessBathIsThatOfMixingWhenNothingIsLost() {
        // A room at the limit and a wall that insulates: what is lost is small, and lost on the harmless side.
        WaterBath closed = WaterBath.of(
                BUCKET.withWall(wattsPerSquareMetreKelvin(0.05)), litres(6), celsius(30), Air.at(celsius(18)));
        BathGuard guard = BathGuard.of(closed, COLD);
        HarmlessBath.UpTo upTo = (HarmlessBath.UpTo) guard.warmest(celsius(18));
        double mixing = guard.withoutRoomK(ZERO + 18);
        // By hand, from memory: 0.74 kg of wine at 4.3 and 0.5 kg of glass at 0.84 kJ/(kg K) warmed by 10 K, 25 kJ/K of
        // water.
        assertThat(mixing - ZERO).isCloseTo(18 + (0.74 * 4.3 + 0.5 * 0.84) * 10 / (6 * 4.18), within(0.2));
        assertThat(upTo.startK()).isBetween(mixing - 0.05, mixing + 1);
        assertThat(upTo.extremeK()).isBetween(ZERO + 17.95, ZERO + 18);
        // In slices the warmest is warmest when all are, at the end, so that watching it allows as much.
        HarmlessBath.UpTo watched = (HarmlessBath.UpTo)
                guard.watching(VesselModel.axial(4), Part.WARMEST).warmest(celsius(18));
        assertThat(watched.startK()).isCloseTo(upTo.startK(), within(0.1));
        // A degree warmer is too warm.
        Prediction worse = warmed(closed.startingAt(celsius(upTo.startK() - ZERO + 1)), Duration.ofHours(20));
        assertThat(worse.timeInRangeK(0, ZERO + 18, Part.MEAN, 0)).isInstanceOf(Leaves.class);
    }

    @Test
    void noBathHelpsInAWarmRoomOrForAWarmDrink() {
        BathGuard guard = BathGuard.of(WARM, COLD);
        HarmlessBath.None room = (HarmlessBath.None) guard.warmest(celsius(18));
        assertThat(room.cause()).isEqualTo(HarmlessBath.Cause.ROOM);
        assertThat(room.atK()).isEqualTo(ZERO + 20);
        assertThat(((HarmlessBath.None) guard.warmest(celsius(7))).cause()).isEqualTo(HarmlessBath.Cause.DRINK);
        assertThat(guard.warmest(celsius(69))).isInstanceOf(HarmlessBath.Any.class);
        BathGuard hotTap = BathGuard.of(WARM.withInflow(litresPerMinute(5), celsius(60)), COLD);
        assertThat(((HarmlessBath.None) hotTap.warmest(celsius(30))).cause()).isEqualTo(HarmlessBath.Cause.BATH);
    }

    @Test
    void theColdestHarmlessBath() {
        FilledVessel warm = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(24));
        HarmlessBath.UpTo answer = (HarmlessBath.UpTo) BathGuard.of(WARM, warm).coldest(celsius(14));
        assertThat(answer.startK()).isBetween(ZERO + 5, ZERO + 14);
        assertThat(answer.extremeK()).isBetween(ZERO + 14, ZERO + 14.05);
    }
}
