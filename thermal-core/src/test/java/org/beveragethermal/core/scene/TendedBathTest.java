/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Sensitivity;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.BareIce;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Baths of ice and water to which somebody adds, from which he pours off, and which he stirs. */
class TendedBathTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(22));
    private static final Bucket BUCKET = Bucket.of(millimetres(220), millimetres(300));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Duration THEN = Duration.ofMinutes(20);
    private static final Duration BEFORE = THEN.minusMillis(1);
    private static final Duration END = Duration.ofMinutes(60);

    private static IceWaterBath bath(double iceKg, double waterKg) {
        return IceWaterBath.of(BUCKET, kilograms(iceKg), kilograms(waterKg), ROOM);
    }

    private static Scene.Builder scene(IceWaterBath bath) {
        return Scene.builder().gear("bath", bath).gear("room", ROOM).vessel("wine", BOTTLE, "bath");
    }

    private static ScenePrediction run(IceWaterBath bath, UnaryOperator<Scene.Builder> tending) {
        return tending.apply(scene(bath)).build().predict(END);
    }

    private static Node node(ScenePrediction run, String name) {
        return RandomScenes.nodes(run.trajectory()).stream()
                .filter(node -> node.name().equals("bath " + name))
                .findFirst()
                .orElseThrow();
    }

    private static double enthalpyJ(ScenePrediction run, Duration time) {
        double sum = 0;
        for (String name : List.of("ice", "water among ice", "clear water")) {
            sum += run.trajectory().enthalpyJ(node(run, name), 1e-3 * time.toMillis());
        }
        return sum;
    }

    private static double amount(ScenePrediction run, int amount, Duration time) {
        return run.trajectory().amount(node(run, "ice"), amount, 1e-3 * time.toMillis());
    }

    private static double booked(ScenePrediction run, String mechanism) {
        return run.ledger().entries().stream()
                .filter(entry -> entry.mechanism().equals(mechanism))
                .mapToDouble(LedgerEntry::heatJ)
                .sum();
    }

    private static double temperatureC(ScenePrediction run, String part, Duration time) {
        return run.gearTemperaturesK("bath", time).getOrDefault(part, Double.NaN) - ZERO;
    }

    /** Between two milliseconds a bath of this size takes up less than this from bottle and room. */
    private static final double A_MOMENT_J = 5;

    @Test
    void iceAddedBringsItsMassAndItsEnthalpy() {
        ScenePrediction run = run(bath(1.5, 3), scene -> scene.topUpIce("bath", THEN, kilograms(1), celsius(-8)));
        assertThat(run.iceKg("bath", THEN) - run.iceKg("bath", BEFORE)).isCloseTo(1, within(1e-4));
        assertThat(run.gearMassKg("bath", BEFORE)).isCloseTo(4.5, within(1e-9));
        assertThat(run.gearMassKg("bath", END)).isCloseTo(5.5, within(1e-9));
        // Own arithmetic: a kilogram of ice of −8 °C lies 333.4 kJ + 8 K · 2.09 kJ/K below water of 0 °C.
        assertThat(booked(run, "adding ice")).isCloseTo(-333_430 - 8 * 2090, within(700.0));
        assertThat(enthalpyJ(run, THEN) - enthalpyJ(run, BEFORE))
                .isCloseTo(booked(run, "adding ice"), within(A_MOMENT_J));
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        assertThat(run.ledger().heatInto("bath ice added"))
                .isCloseTo(-Ice.specificEnthalpy(ZERO - 8), within(1e-6 * 333_000));
    }

    /** Worked example, twentyfold: 69 g of ice of −20 °C bring 0.25 kg of water from 25 °C to 0 °C, all melted. */
    @Test
    void iceAddedTakesWhatTheTextbookSays() {
        double ice = 20 * 0.069;
        ScenePrediction run = run(bath(1.5, 3), scene -> scene.topUpIce("bath", THEN, kilograms(ice), celsius(-20)));
        OutsideChecks.fromMemory(
                        "tended-textbook-ice",
                        "H. D. Young and R. A. Freedman, University Physics, example on a chilled drink")
                .what(
                        "heat that 1.38 kg of ice of −20 °C lacks to water of 0 °C: twenty times 0.25 kg · 4190 J/(kg K) · 25 K")
                .unit("kJ")
                .expected(20 * 0.25 * 4.19 * 25)
                .withinRelative(0.02)
                .check(-1e-3 * booked(run, "adding ice"));
    }

    @Test
    void waterAddedAndPouredOffTakesItsEnthalpyAlong() {
        ScenePrediction added = run(bath(1.5, 3), scene -> scene.topUpWater("bath", THEN, kilograms(0.8), celsius(18)));
        assertThat(booked(added, "adding water"))
                .isCloseTo(0.8 * Water.liquid().specificEnthalpy(ZERO + 18), within(1.0));
        assertThat(enthalpyJ(added, THEN) - enthalpyJ(added, BEFORE))
                .isCloseTo(booked(added, "adding water"), within(A_MOMENT_J));
        assertThat(added.gearMassKg("bath", END)).isCloseTo(5.3, within(1e-9));
        assertThat(added.ledger().closure()).isLessThan(1e-9);
        ScenePrediction poured = run(bath(1.5, 3), scene -> scene.pourOff("bath", THEN, kilograms(1.2)));
        double mixedC = temperatureC(poured, "clear water", THEN);
        assertThat(temperatureC(poured, "water among ice", THEN)).isCloseTo(mixedC, within(1e-3));
        assertThat(booked(poured, "water poured off"))
                .isCloseTo(1.2 * Water.liquid().specificEnthalpy(ZERO + mixedC), within(1e-3 * 1.2 * 4200));
        assertThat(poured.gearMassKg("bath", END)).isCloseTo(3.3, within(1e-9));
        assertThat(poured.ledger().closure()).isLessThan(1e-9);
    }

    /**
     * Two additions to a full bucket. As long as it is not known how much has melted all of it is taken to be left: the water then stands too
     * low, too little melts until the second addition, and that seemed to find no room.
     */
    @Test
    void whatFitsIsNotRefusedForWhatIsNotKnownYet() {
        Duration first = Duration.ofHours(6);
        Duration second = Duration.ofHours(9);
        Duration end = Duration.ofHours(10);
        Scene.Builder once = topUp(fullBucket(), first, 4);
        double leftKg = once.build().predict(second).iceKg("bath", second.minusMillis(1));
        Scene.Builder twice = topUp(topUp(fullBucket(), first, 4), second, 4.5);
        ScenePrediction run = twice.build().predict(end);
        assertThat(run.iceKg("bath", second.minusMillis(1))).isCloseTo(leftKg, within(0.01 * leftKg + 1e-3));
        assertThat(run.iceKg("bath", second) - run.iceKg("bath", second.minusMillis(1)))
                .isCloseTo(4.5, within(1e-3));
        assertThat(run.gearMassKg("bath", end)).isCloseTo(9.5, within(1e-9));
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        // 1.1 kg are left then: with 5.5 kg more it is more than the bucket holds as a pack, 6.15 kg.
        Scene.Builder tooMuch = topUp(topUp(fullBucket(), first, 4), second, 5.5);
        OutOfRangeException refusal = catchThrowableOfType(
                OutOfRangeException.class, () -> tooMuch.build().predict(end));
        assertThat(refusal).isNotNull().hasMessageContaining("volume of ice in bath after PT9H");
        assertThat(refusal.given()).isCloseTo((leftKg + 5.5) / Ice.density(ZERO), within(1e-5));
    }

    private static Scene.Builder fullBucket() {
        Air hot = Air.at(celsius(35)).withRelativeHumidity(percent(60));
        IceWaterBath bath =
                IceWaterBath.of(Bucket.of(millimetres(240), millimetres(260)), kilograms(5.4), kilograms(4.1), hot);
        return Scene.builder().gear("bath", bath).vessel("wine", BOTTLE, "bath");
    }

    private static Scene.Builder topUp(Scene.Builder scene, Duration after, double kg) {
        return scene.pourOff("bath", after, kilograms(kg)).topUpIce("bath", after, kilograms(kg), celsius(-10));
    }

    @Test
    void oldAndNewBlocksTogetherHaveTheVolumeAndTheSurfaceOfBoth() {
        IceBlock slab = IceBlock.brick(millimetres(20), millimetres(60), millimetres(90));
        IceWaterBath bath = IceWaterBath.in(BUCKET, ROOM)
                .blocks(12, slab, celsius(-5))
                .water(kilograms(3), celsius(15))
                .build();
        ScenePrediction run = run(bath, scene -> scene.topUpIce("bath", THEN, kilograms(0.6), celsius(-5)));
        double left = amount(run, IceStore.SIDE, BEFORE);
        double fresh = 0.6 / (Ice.density(ZERO) * 0.02 * 0.06 * 0.09);
        assertThat(left).isBetween(0.004, 0.019);
        double volume = 12 * left * (left + 0.04) * (left + 0.07) + fresh * 0.02 * 0.06 * 0.09;
        double surface = 24 * (left * (left + 0.04) + left * (left + 0.07) + (left + 0.04) * (left + 0.07))
                + 2 * fresh * (0.02 * 0.06 + 0.02 * 0.09 + 0.06 * 0.09);
        double mean = amount(run, IceStore.SIDE, THEN);
        double blocks = amount(run, IceStore.BLOCKS, THEN);
        assertThat(blocks * slab.volumeM3(mean)).isCloseTo(volume, within(1e-6 * volume));
        assertThat(blocks * slab.surfaceM2(mean)).isCloseTo(surface, within(1e-6 * surface));
        assertThat(run.iceKg("bath", THEN)).isCloseTo(volume * Ice.density(ZERO), within(1e-3));
        assertThat(amount(run, IceStore.BLOCKS, END)).isCloseTo(blocks, within(1e-9 * blocks));
    }

    /** The limit of a bath whose ice is gone: with new ice it is a new bath, with water as warm as that is by then. */
    @Test
    void toppedUpAfterTheIceIsGoneItIsANewBath() {
        IceWaterBath little = IceWaterBath.in(BUCKET, ROOM)
                .ice(kilograms(0.1), millimetres(10), celsius(0))
                .water(kilograms(5), celsius(9))
                .build();
        Scene.Builder builder = Scene.builder()
                .gear("room", ROOM)
                .gear("bath", little)
                .vessel("wine", BOTTLE, "room")
                .topUpIce("bath", END, kilograms(1.5), celsius(-6))
                .move("wine", END, "bath");
        ScenePrediction run = builder.build().predict(Duration.ofHours(2));
        assertThat(run.iceKg("bath", END.minusMillis(1))).isLessThan(1e-6);
        IceWaterBath anew = IceWaterBath.in(BUCKET, ROOM)
                .ice(kilograms(1.5), millimetres(10), celsius(-6))
                .water(kilograms(5.1), celsius(temperatureC(run, "clear water", END)))
                .build();
        Prediction fresh = Scene.builder()
                .gear("room", ROOM)
                .gear("bath", anew, END)
                .vessel("wine", BOTTLE, "room")
                .move("wine", END, "bath")
                .build()
                .predict(Duration.ofHours(2))
                .vessel("wine");
        for (int minutes = 65; minutes <= 120; minutes += 5) {
            assertThat(run.vessel("wine").meanTemperatureK(60 * minutes))
                    .isCloseTo(fresh.meanTemperatureK(60 * minutes), within(5e-3));
        }
    }

    @Test
    void stirringNowAndThenEndsTheStallForAWhile() {
        ScenePrediction still = run(bath(2, 5), scene -> scene);
        ScenePrediction stirred = run(bath(2, 5), scene -> {
            for (int minutes = 5; minutes < 60; minutes += 5) {
                scene.stir("bath", Duration.ofMinutes(minutes));
            }
            return scene;
        });
        Duration time = Duration.ofMinutes(30);
        assertThat(temperatureC(stirred, "clear water", time))
                .isCloseTo(temperatureC(stirred, "water among ice", time), within(1e-3));
        assertThat(temperatureC(stirred, "clear water", time.minusMillis(1)))
                .isGreaterThan(temperatureC(stirred, "clear water", time) + 0.1);
        assertThat(stirred.vessel("wine").meanTemperatureK(3600))
                .isLessThan(still.vessel("wine").meanTemperatureK(3600) - 0.5);
        assertThat(stirred.gearMassKg("bath", END)).isCloseTo(7, within(1e-9));
        assertThat(stirred.ledger().closure()).isLessThan(1e-9);
        // What is in the bath loses and gains nothing by it.
        assertThat(enthalpyJ(stirred, time)).isCloseTo(enthalpyJ(stirred, time.minusMillis(1)), within(A_MOMENT_J));
    }

    @Test
    void stirringWhatIsMixedChangesNothing() {
        UnaryOperator<Scene.Builder> once = scene -> scene.stir("bath", THEN);
        ScenePrediction one = run(bath(2, 5), once);
        ScenePrediction two = run(bath(2, 5), scene -> once.apply(once.apply(scene)));
        assertThat(two.vessel("wine").meanTemperatureK(3600))
                .isCloseTo(one.vessel("wine").meanTemperatureK(3600), within(1e-9));
    }

    @Test
    void whatStandsAboveTheRimRunsOff() {
        ScenePrediction run = run(bath(2, 6), scene -> scene.topUpWater("bath", THEN, kilograms(4), celsius(10)));
        // Archimedes by hand: up to the rim there is room for what the bottle, 300 mm of it, leaves; floating ice and
        // its melt
        // water displace as much as water of their mass.
        double holdsKg = 1000
                * (Math.PI / 4 * 0.22 * 0.22 * 0.3
                        - BOTTLE.vessel()
                                .profile()
                                .outerVolumeM3(
                                        0,
                                        Math.min(0.3, BOTTLE.vessel().profile().heightM())));
        assertThat(run.gearMassKg("bath", END)).isCloseTo(holdsKg, within(1e-6));
        assertThat(run.vessel("wine").notes()).anyMatch(note -> note.contains("run over the rim after PT20M"));
        double overKg = 2 + 6 + 4 - holdsKg;
        double mixedC = temperatureC(run, "clear water", THEN);
        assertThat(booked(run, "water over the rim"))
                .isCloseTo(overKg * Water.liquid().specificEnthalpy(ZERO + mixedC), within(1e-3 * overKg * 4200));
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    /** Archimedes by hand: ice and water stand as high as water of their mass beside the bottle. */
    @Test
    void theWaterlineFollowsWhatIsAdded() {
        ScenePrediction run = run(bath(1, 3), scene -> scene.topUpWater("bath", THEN, kilograms(1.5), celsius(10)));
        for (double massKg : new double[] {4, 5.5}) {
            assertThat(run.vessel("wine").bands()).anyMatch(band -> Math.abs(band.highM() - depth(massKg)) < 1e-6);
        }
    }

    private static double depth(double massKg) {
        double area = Math.PI / 4 * 0.22 * 0.22;
        double low = 0;
        double high = 0.3;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            double filled = area * middle - BOTTLE.vessel().profile().outerVolumeM3(0, middle);
            if (1000 * filled < massKg) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** So much ice that it stands on the floor: how high the water stands then depends on how much has melted. */
    @Test
    void whereIceStandsOnTheFloorTheWaterlineKnowsWhatHasMelted() {
        ScenePrediction run = run(bath(4, 1.5), scene -> scene.topUpIce("bath", THEN, kilograms(0.5), celsius(-5)));
        double waterKg = 1.5 + 4 - run.iceKg("bath", BEFORE);
        double standing = depth(waterKg / (1 - IceWaterBath.PACK_SOLID_FRACTION.value()));
        assertThat(waterKg).isGreaterThan(1.6);
        assertThat(run.vessel("wine").bands()).anyMatch(band -> Math.abs(band.highM() - standing) < 1e-3);
    }

    @Test
    void moreIceCoolsFurther() {
        double alone = run(bath(0.6, 5), scene -> scene).vessel("wine").meanTemperatureK(3600);
        double toppedUp = run(bath(0.6, 5), scene -> scene.topUpIce("bath", THEN, kilograms(1.5), celsius(-10)))
                .vessel("wine")
                .meanTemperatureK(3600);
        assertThat(toppedUp).isLessThan(alone - 0.5);
    }

    @Test
    void nothingHappensBeforeItAndTheDrinkDoesNotJump() {
        ScenePrediction plain = run(bath(1.5, 4), scene -> scene);
        ScenePrediction stirred = run(bath(1.5, 4), scene -> scene.stir("bath", THEN));
        for (int seconds = 0; seconds < 1200; seconds += 100) {
            assertThat(stirred.vessel("wine").meanTemperatureK(seconds))
                    .isCloseTo(plain.vessel("wine").meanTemperatureK(seconds), within(1e-4));
        }
        ScenePrediction tended = run(bath(1.5, 4), scene -> scene.topUpIce("bath", THEN, kilograms(1), celsius(-8)));
        assertThat(tended.vessel("wine").notes()).anyMatch(note -> note.contains("after PT20M is taken to mix"));
        double across = tended.vessel("wine").meanTemperatureK(1200)
                - tended.vessel("wine").meanTemperatureK(1199.999);
        assertThat(across).isCloseTo(0, within(1e-3));
    }

    @Test
    void slopesAreCarriedAcross() {
        Scene scene = scene(bath(1.5, 4))
                .topUpIce("bath", THEN, kilograms(1), celsius(-8))
                .pourOff("bath", Duration.ofMinutes(30), kilograms(1))
                .build();
        NetworkSolver solver = NetworkSolver.standard().withToleranceK(1e-5);
        ScenePrediction run = scene.predict(END, solver);
        for (String factor : List.of(Multipliers.ICE_FILM, Multipliers.WATER_FILM)) {
            double slope = Sensitivity.of(run.trajectory(), List.of(factor), List.of())
                    .temperatureSlope(factor, node(run, "clear water"), 2400);
            double step = 0.01;
            double up = clearK(scene.predict(END, solver.withMultipliers(Map.of(factor, 1 + step))));
            double down = clearK(scene.predict(END, solver.withMultipliers(Map.of(factor, 1 - step))));
            assertThat(slope).isCloseTo((up - down) / (2 * step), within(0.02 * Math.abs(slope) + 2e-3));
        }
    }

    private static double clearK(ScenePrediction run) {
        Trajectory trajectory = run.trajectory();
        return trajectory.temperatureK(node(run, "clear water"), 2400);
    }

    private static ScenePrediction bare(BareIce ice, UnaryOperator<Scene.Builder> tending) {
        return tending.apply(
                        Scene.builder().gear("bath", ice).gear("room", ROOM).vessel("wine", BOTTLE, "bath"))
                .build()
                .predict(Duration.ofHours(4));
    }

    @Test
    void bareIceIsToppedUpAndItsMeltWaterPouredOff() {
        Duration time = Duration.ofMinutes(100);
        Duration before = time.minusMillis(1);
        for (boolean drained : new boolean[] {false, true}) {
            BareIce.Builder builder =
                    BareIce.in(BUCKET, Air.at(celsius(30))).ice(kilograms(2.5), millimetres(20), celsius(-6));
            BareIce ice = drained ? builder.drained().build() : builder.build();
            ScenePrediction run = bare(ice, scene -> {
                if (!drained) {
                    scene.pourOff("bath", time, kilograms(0.4));
                }
                return scene.topUpIce("bath", time, kilograms(1), celsius(-10));
            });
            double brought = drained ? 1 : 0.6;
            assertThat(run.gearMassKg("bath", before)).isCloseTo(2.5, within(1e-4));
            assertThat(run.gearMassKg("bath", time)).isCloseTo(2.5 + brought, within(1e-4));
            assertThat(run.gearMassKg("bath", Duration.ofHours(3))).isCloseTo(2.5 + brought, within(1e-4));
            assertThat(run.iceKg("bath", time) - run.iceKg("bath", before)).isCloseTo(1, within(1e-3));
            // By hand: cubes of both sizes, of together the same volume and surface.
            double left = amount(run, IceStore.SIDE, before);
            double old = amount(run, IceStore.BLOCKS, before);
            double fresh = 1 / (Ice.density(ZERO) * Math.pow(0.02, 3));
            double mean = (old * Math.pow(left, 3) + fresh * Math.pow(0.02, 3))
                    / (old * left * left + fresh * Math.pow(0.02, 2));
            assertThat(left).isBetween(0.010, 0.0199);
            assertThat(amount(run, IceStore.SIDE, time)).isCloseTo(mean, within(5e-3 * mean));
            double blocks = amount(run, IceStore.BLOCKS, time);
            assertThat(blocks * Math.pow(amount(run, IceStore.SIDE, time), 3) * Ice.density(ZERO))
                    .isCloseTo(run.iceKg("bath", time), within(1e-6));
            assertThat(booked(run, "adding ice")).isCloseTo(Ice.specificEnthalpy(ZERO - 10), within(1.0));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            // Mean of old ice at 0 °C and new ice of −10 °C: by mass and the heat capacity of ice, which varies by 4 %.
            double iceKg = run.iceKg("bath", before);
            assertThat(temperatureC(run, "ice", time)).isCloseTo(-10 / (1 + iceKg), within(0.2));
        }
    }

    /** The limit of a bucket whose ice is gone: with new ice it is a new bucket. */
    @Test
    void drainedAndToppedUpAfterTheIceIsGoneItIsANewBucket() {
        Duration time = Duration.ofHours(3);
        BareIce.Builder drained = BareIce.in(BUCKET, Air.at(celsius(30))).drained();
        BareIce little =
                drained.ice(kilograms(0.05), millimetres(15), celsius(0)).build();
        BareIce anew = drained.ice(kilograms(2), millimetres(15), celsius(-6)).build();
        ScenePrediction run = bare(
                little,
                scene -> scene.topUpIce("bath", time, kilograms(2), celsius(-6)).move("wine", time, "bath"));
        ScenePrediction fresh = Scene.builder()
                .gear("little", little)
                .gear("bath", anew, time)
                .vessel("wine", BOTTLE, "little")
                .move("wine", time, "bath")
                .build()
                .predict(Duration.ofHours(4));
        assertThat(run.iceKg("bath", time.minusMillis(1))).isLessThan(1e-5);
        for (int minutes = 185; minutes <= 240; minutes += 5) {
            assertThat(run.vessel("wine").meanTemperatureK(60 * minutes))
                    .isCloseTo(fresh.vessel("wine").meanTemperatureK(60 * minutes), within(0.02));
        }
    }

    private static void refused(String named, ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(named);
    }

    @Test
    void whatCannotBeDoneIsRefused() {
        refused("gear cellar", () -> scene(bath(1, 3)).stir("cellar", THEN));
        refused("gear room", () -> scene(bath(1, 3)).topUpIce("room", THEN, kilograms(1), celsius(-8)));
        refused("PT0S", () -> scene(bath(1, 3)).stir("bath", Duration.ZERO));
        refused("PT-1M", () -> scene(bath(1, 3)).stir("bath", Duration.ofMinutes(-1)));
        refused(
                "prepared after PT1H",
                () -> scene(bath(1, 3))
                        .gear("later", bath(1, 3), Duration.ofHours(1))
                        .stir("later", THEN));
        refused(
                "ice and water",
                () -> scene(bath(1, 3))
                        .gear("ice", BareIce.of(BUCKET, kilograms(1), ROOM))
                        .stir("ice", THEN));
        refused(
                "ice and water",
                () -> scene(bath(1, 3))
                        .gear("water", WaterBath.of(BUCKET, litres(3), celsius(5), ROOM))
                        .pourOff("water", THEN, kilograms(1)));
        refused(
                "gear ice",
                () -> scene(bath(1, 3))
                        .gear(
                                "ice",
                                BareIce.in(BUCKET, ROOM)
                                        .ice(kilograms(1), millimetres(20), celsius(-5))
                                        .drained()
                                        .build())
                        .pourOff("ice", THEN, kilograms(0.1)));
        refused("mass of ice added", () -> scene(bath(1, 3)).topUpIce("bath", THEN, kilograms(-1), celsius(-8)));
        refused("temperature of ice", () -> scene(bath(1, 3)).topUpIce("bath", THEN, kilograms(1), celsius(1)));
        refused("mass of water added", () -> scene(bath(1, 3)).topUpWater("bath", THEN, kilograms(0), celsius(8)));
        refused("temperature of water", () -> scene(bath(1, 3)).topUpWater("bath", THEN, kilograms(1), celsius(61)));
        refused("poured off", () -> scene(bath(1, 3)).pourOff("bath", THEN, kilograms(2001)));
    }

    @Test
    void moreThanThereIsOrFitsIsRefusedByTheRun() {
        OutOfRangeException refusal = catchThrowableOfType(
                OutOfRangeException.class, () -> run(bath(2, 3), scene -> scene.pourOff("bath", THEN, kilograms(4.9))));
        assertThat(refusal)
                .hasMessageContaining("poured off of bath after PT20M")
                .hasMessageContaining("a tenth of the ice");
        assertThat(refusal.given()).isEqualTo(4.9);
        // 3 kg of water, and what has melted, but for a tenth of the ice.
        assertThat(refusal.high()).isBetween(3.0, 4.5);
        refused(
                "volume of ice in bath after PT20M",
                () -> run(bath(2, 3), scene -> scene.topUpIce("bath", THEN, kilograms(8), celsius(-8))));
        refused(
                "immersion of vessel wine in gear bath after PT30M",
                () -> Scene.builder()
                        .gear("bath", bath(2, 5))
                        .gear("room", ROOM)
                        .vessel("wine", BOTTLE, "room")
                        .pourOff("bath", THEN, kilograms(3))
                        .move(
                                "wine",
                                Duration.ofMinutes(30),
                                "bath",
                                Placement.upright().immersedTo(millimetres(180)))
                        .build()
                        .predict(END));
    }
}
