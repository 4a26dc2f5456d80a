/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.degrees;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.watts;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.icemaking.FreezerAir;
import org.beveragethermal.core.icemaking.IceBatches;
import org.beveragethermal.core.icemaking.IceMaking;
import org.beveragethermal.core.icemaking.IceMould;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Sunlight;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** How much ice: the answer and every way in which there is none, beside energy alone and measured baths with too little of it. */
class IceBudgetTest {

    private static final double ZERO = 273.15;
    private static final Air TERRACE = Air.at(celsius(27)).withRelativeHumidity(percent(50));
    private static final Bucket BUCKET = Bucket.of(millimetres(240), millimetres(260));
    private static final Wanted COLD = Wanted.between(celsius(0), celsius(8));

    private static FilledVessel bottle(double celsius) {
        return Vessels.sparkling750().filledWith(Beverage.wine(percentByVolume(12)), celsius(celsius));
    }

    private static Duration minutes(long minutes) {
        return Duration.ofMinutes(minutes);
    }

    private static IceBudget.Builder one() {
        return IceBudget.of(BUCKET, TERRACE).vessels(bottle(16), 1, COLD).from(minutes(60), minutes(150));
    }

    private static IceAnswer.Never never(IceBudget.Builder asked, IceAnswer.Reason reason) {
        IceAnswer answer = asked.build().answer();
        assertThat(answer).isInstanceOf(IceAnswer.Never.class);
        IceAnswer.Never never = (IceAnswer.Never) answer;
        assertThat(never.reason()).isEqualTo(reason);
        assertThat(never.explain()).isNotBlank();
        assertThat(never.snapshot().answer()).isEqualTo("never " + never.reason());
        return never;
    }

    @Test
    void theExampleOfThePackage() {
        Air terrace = Air.at(celsius(27)).withRelativeHumidity(percent(50));
        FilledVessel bottle = Vessels.sparkling750().filledWith(Beverage.wine(percentByVolume(12)), celsius(16));
        IceBudget budget = IceBudget.of(Bucket.of(millimetres(240), millimetres(260)), terrace)
                .vessels(bottle, 2, Wanted.between(celsius(0), celsius(8)))
                .from(Duration.ofMinutes(60), Duration.ofMinutes(150))
                .blocks(IceBlock.cube(millimetres(30)), celsius(-12))
                .waterAt(celsius(14))
                .build();
        IceAnswer answer = budget.answer();
        assertThat(answer).isInstanceOf(IceAnswer.Enough.class);
        if (answer instanceof IceAnswer.Enough enough) {
            IceMaking making = IceMaking.of(IceMould.of(enough.shape()), FreezerAir.at(celsius(-18)), celsius(15));
            IceBatches batches = IceBatches.of(kilograms(enough.totalKg()), making, 60, watts(60));
            assertThat(batches.batches()).isEqualTo(2);
            assertThat(enough.explain()).contains("kg of ice", "by energy alone");
            assertThat(enough.iceKg()).isBetween(1.0, 3.0);
            assertThat(enough.blocks())
                    .isEqualTo((int) Math.ceil(enough.iceKg() / (Ice.density(ZERO) * Math.pow(0.03, 3))));
            assertThat(enough.iceKg()).isGreaterThan(enough.energy().everythingKg());
            assertThat(enough.energy().everythingKg())
                    .isGreaterThan(enough.energy().drinksKg());
            assertThat(enough.topUps()).isEmpty();
            assertThat(enough.runs()).isLessThanOrEqualTo(16);
            assertThat(enough.vessels()).hasSize(2).allSatisfy(course -> {
                assertThat(course.readyK()).isLessThanOrEqualTo(ZERO + 8);
                assertThat(course.warmestK()).isLessThanOrEqualTo(ZERO + 8);
                assertThat(course.coldestK()).isGreaterThan(ZERO);
            });
            assertThat(enough.notes()).anyMatch(note -> note.contains("do not use this ice in drinks"));
        }
    }

    @Test
    void whatWasFoundIsTheLeast() {
        IceAnswer.Enough enough = (IceAnswer.Enough) one().build().answer();
        assertThat(warmestC(enough.iceKg(), enough.waterKg())).isLessThanOrEqualTo(8.001);
        double less = 0.95 * enough.iceKg();
        assertThat(warmestC(less, enough.iceKg() + enough.waterKg() - less)).isGreaterThan(8.0);
        // What the halving rests on: more ice in place of water never makes it warmer.
        double before = Double.POSITIVE_INFINITY;
        for (double kg : new double[] {0.02, 0.3, 0.8, 1.4, 2, 3, 4, 5}) {
            double warmest = warmestC(kg, enough.iceKg() + enough.waterKg() - kg);
            assertThat(warmest).isLessThan(before);
            before = warmest;
        }
    }

    /** By a scene of its own, at the tolerance that everybody else has. */
    private static double warmestC(double iceKg, double waterKg) {
        ScenePrediction run = Scene.builder()
                .gear(
                        "bath",
                        IceWaterBath.in(BUCKET, TERRACE)
                                .ice(kilograms(iceKg), IceBlock.cube(millimetres(25)), celsius(-10))
                                .water(kilograms(waterKg), celsius(15))
                                .build())
                .vessel("bottle", bottle(16), "bath")
                .build()
                .predict(minutes(150));
        double warmest = 0;
        for (int minute = 60; minute <= 150; minute++) {
            warmest = Math.max(warmest, run.vessel("bottle").meanTemperatureK(60.0 * minute) - ZERO);
        }
        return warmest;
    }

    @Test
    void energyAlone() {
        FilledVessel warm = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
        // Water as cold as the range neither helps nor has to be cooled.
        IceEnergy energy = IceEnergy.of(List.of(warm), List.of(ZERO + 8), 8, ZERO + 8, ZERO);
        // Own arithmetic with round figures: 0.74 kg of wine and 0.5 kg of glass by 14 K, over the latent heat of ice,
        // 333.5
        // kJ/kg (IAPWS), and the warming of melt water by 8 K.
        assertThat(energy.everythingKg())
                .isCloseTo((0.74 * 4.2 + 0.5 * 0.8) * 14 / (333.5 + 4.2 * 8), withinPercentage(6.0));
        assertThat(energy.drinksKg()).isLessThan(energy.everythingKg());
        // Six kilograms of water of 15 °C to 8 °C beside it.
        IceEnergy bath = IceEnergy.of(List.of(warm), List.of(ZERO + 8), 6, ZERO + 15, ZERO);
        double heat = (0.74 * 4.2 + 0.46 * 0.8) * 14 + 6 * 4.19 * 7;
        assertThat(bath.everythingKg()).isCloseTo(heat / (333.5 + 4.19 * 15), within(0.01));
        assertThat(IceEnergy.of(List.of(warm), List.of(ZERO + 25), 6, ZERO + 15, ZERO)
                        .everythingKg())
                .isZero();
    }

    @Test
    void iceIsAddedWhereTheBucketIsTooSmallForTheTime() {
        Air hot = Air.at(celsius(35)).withRelativeHumidity(percent(60));
        IceBudget.Builder asked =
                IceBudget.of(BUCKET, hot).vessels(bottle(16), 1, COLD).from(minutes(60), minutes(420));
        IceAnswer.Enough enough = (IceAnswer.Enough) asked.build().answer();
        assertThat(enough.topUps()).hasSize(1);
        TopUp topUp = enough.topUps().get(0);
        assertThat(topUp.after()).isBetween(minutes(60), minutes(400));
        assertThat(topUp.pourOffKg()).isEqualTo(topUp.iceKg());
        assertThat(enough.totalKg()).isEqualTo(enough.iceKg() + topUp.iceKg());
        assertThat(enough.explain()).contains("pour off");
        assertThat(enough.snapshot().valuesSi().get("topUpIceKg"))
                .hasSameSizeAs(enough.topUps())
                .contains(enough.topUps().get(0).iceKg());
        assertThat(enough.margin()).isEmpty();
        IceAnswer.Never once = never(asked.topUps(0), IceAnswer.Reason.ICE_RUNS_OUT);
        assertThat(once.help()).contains("additions");
    }

    /** With a quarter of the ice left a can on a hot terrace would be too warm already. */
    @Test
    void iceIsAddedBeforeAVesselIsTooWarm() {
        IceAnswer.Enough enough =
                (IceAnswer.Enough) cans(16, Air.at(celsius(35)).withRelativeHumidity(percent(60)))
                        .from(minutes(60), minutes(420))
                        .filledTo(millimetres(240))
                        .build()
                        .answer();
        assertThat(enough.topUps()).hasSizeBetween(1, 3);
        assertThat(enough.vessels().get(0).warmestK()).isLessThanOrEqualTo(ZERO + 8);
        Duration before = Duration.ZERO;
        for (TopUp topUp : enough.topUps()) {
            assertThat(topUp.after()).isGreaterThan(before);
            before = topUp.after();
        }
    }

    private static IceBudget.Builder cans(double celsius, Air room) {
        FilledVessel can = Vessels.of(VesselShape.CAN, millilitres(355))
                .filledWith(Beverage.beer(percentByVolume(5)), celsius(celsius));
        return IceBudget.of(BUCKET, room).vessels(can, 1, COLD);
    }

    @Test
    void eachAdditionCarriesItsMargin() {
        Air hot = Air.at(celsius(35)).withRelativeHumidity(percent(60));
        IceAnswer.Enough enough = (IceAnswer.Enough) IceBudget.of(BUCKET, hot)
                .vessels(bottle(16), 1, COLD)
                .from(minutes(60), minutes(420))
                .withMargin(Ensemble.of(3, 7))
                .build()
                .answer();
        IceMargin start = enough.margin().orElseThrow();
        IceMargin added = enough.topUps().get(0).margin().orElseThrow();
        assertThat(start.draws()).isEqualTo(3);
        assertThat(added.draws()).isEqualTo(3);
        // The bucket is full at the start, and what is added is the least that is enough: in some draws less is, in
        // others not.
        assertThat(start.kg90().orElse(99)).isGreaterThan(0.3 * enough.iceKg());
        assertThat(added.kg95().orElse(99)).isGreaterThanOrEqualTo(added.kg90().orElse(99));
        assertThat(added.kg95().orElse(99))
                .isGreaterThan(0.5 * enough.topUps().get(0).iceKg());
        assertThat(enough.explain()).contains("90 %", "pour off", "blocks");
    }

    @Test
    void sleevedCansTakeLonger() {
        VesselModel sleeved = VesselModel.lumped().wrappedIn(Layer.of(Solids.neopreneFoam(), millimetres(4)));
        IceAnswer.Enough bare = (IceAnswer.Enough)
                cans(22, TERRACE).from(minutes(30), minutes(150)).build().answer();
        never(cans(22, TERRACE).describedAs(sleeved).from(minutes(30), minutes(150)), IceAnswer.Reason.TIME_TOO_SHORT);
        IceAnswer.Enough later = (IceAnswer.Enough) cans(22, TERRACE)
                .describedAs(sleeved)
                .from(minutes(150), minutes(210))
                .build()
                .answer();
        assertThat(later.energy()).isEqualTo(bare.energy());
        assertThat(later.notes()).anyMatch(note -> note.contains("layers around the wall"));
    }

    /** Asked by whoever plans a wedding: an answer at once, without a run. */
    @Test
    void moreVesselsThanTheBucketTakes() {
        IceAnswer.Never many = never(
                IceBudget.of(BUCKET, TERRACE).vessels(bottle(16), 500, COLD).from(minutes(60), minutes(150)),
                IceAnswer.Reason.BUCKET_TOO_SMALL);
        assertThat(many.runs()).isZero();
        // Five bottles of 88 mm just stand in 2.70 times 88 mm, 238 mm; a sixth takes 264 mm (packing of circles).
        assertThat(many.help()).startsWith("5 of them").contains("100 such buckets");
        // 500 times 0.75 kg · 4.2 kJ/(kg K) · 8 K over what a kilogram of ice of −10 °C takes until 8 °C.
        double kg = 500 * 0.745 * 4.25 * 8 / (333.5 + 4.2 * 8 + 20.5);
        assertThat(kilogramsIn(many.help())).isCloseTo(kg, within(0.05 * kg));
        IceAnswer.Never tub = never(
                IceBudget.of(Bucket.of(millimetres(800), millimetres(300)), TERRACE)
                        .vessels(bottle(16), 30, COLD)
                        .from(minutes(60), minutes(150)),
                IceAnswer.Reason.TOO_MANY_VESSELS);
        assertThat(tub.runs()).isZero();
        assertThat(tub.energy().orElseThrow().everythingKg()).isPositive();
        IceAnswer.Never full = never(one().holding(kilograms(30)), IceAnswer.Reason.BUCKET_TOO_SMALL);
        assertThat(full.why()).contains("30.00 kg of ice and water");
    }

    private static double kilogramsIn(String words) {
        String upTo = words.substring(0, words.lastIndexOf(" kg"));
        return Double.parseDouble(upTo.substring(upTo.lastIndexOf(' ') + 1));
    }

    @Test
    void noIceAtHand() {
        IceAnswer.Never none = never(one().iceAtHand(kilograms(0)), IceAnswer.Reason.NOT_ENOUGH_ICE);
        assertThat(none.why()).contains("0.00 kg");
        assertThat(IceBudget.of(BUCKET, Air.at(celsius(5)))
                        .vessels(bottle(6), 1, COLD)
                        .waterAt(celsius(6))
                        .from(minutes(10), minutes(60))
                        .iceAtHand(kilograms(0))
                        .build()
                        .answer())
                .isInstanceOf(IceAnswer.Enough.class);
    }

    @Test
    void whyThereIsNone() {
        IceAnswer.Never soon = never(
                IceBudget.of(BUCKET, TERRACE).vessels(bottle(24), 1, COLD).from(minutes(10), minutes(150)),
                IceAnswer.Reason.TIME_TOO_SHORT);
        assertThat(soon.help()).contains("time");
        assertThat(soon.energy()).isPresent();
        never(
                IceBudget.of(BUCKET, TERRACE)
                        .vessels(bottle(16), 1, Wanted.between(celsius(0), celsius(2)))
                        .from(minutes(60), minutes(150)),
                IceAnswer.Reason.COLDER_THAN_THE_BATH);
        IceAnswer.Never frozen = never(
                IceBudget.of(BUCKET, TERRACE)
                        .vessels(bottle(16), 1, Wanted.between(celsius(-4), celsius(0)))
                        .from(minutes(60), minutes(150)),
                IceAnswer.Reason.COLDER_THAN_THE_BATH);
        assertThat(frozen.runs()).isZero();
        IceAnswer.Never full = never(
                IceBudget.of(Bucket.of(millimetres(180), millimetres(220)), TERRACE)
                        .vessels(bottle(16), 5, COLD)
                        .from(minutes(60), minutes(150)),
                IceAnswer.Reason.BUCKET_TOO_SMALL);
        assertThat(full.help()).contains("wider");
        assertThat(full.why()).contains("beside each other");
        IceAnswer.Never little = never(one().iceAtHand(kilograms(0.3)), IceAnswer.Reason.NOT_ENOUGH_ICE);
        assertThat(little.explain()).contains("0.30 kg");
        IceAnswer.Never cold = never(
                IceBudget.of(BUCKET, TERRACE)
                        .vessels(bottle(16), 1, Wanted.between(celsius(9.5), celsius(10)))
                        .from(minutes(60), minutes(120)),
                IceAnswer.Reason.BECOMES_TOO_COLD);
        assertThat(cold.help()).contains("Take it out");
    }

    @Test
    void waterThatIsColdEnoughNeedsNoIce() {
        IceAnswer.Enough enough = (IceAnswer.Enough) IceBudget.of(BUCKET, Air.at(celsius(5)))
                .vessels(bottle(6), 1, COLD)
                .waterAt(celsius(6))
                .from(minutes(10), minutes(60))
                .build()
                .answer();
        assertThat(enough.iceKg()).isEqualTo(0.01);
        assertThat(enough.energy().everythingKg()).isZero();
        assertThat(enough.notes()).anyMatch(note -> note.contains("water alone"));
    }

    @Test
    void marginFromDraws() {
        IceAnswer.Enough sure =
                (IceAnswer.Enough) one().withMargin(Ensemble.of(6, 7)).build().answer();
        IceMargin margin = sure.margin().orElseThrow();
        assertThat(margin.draws()).isEqualTo(6);
        assertThat(margin.kg90().orElseThrow()).isGreaterThanOrEqualTo(0.9 * sure.iceKg());
        assertThat(margin.kg95().orElseThrow())
                .isGreaterThanOrEqualTo(margin.kg90().orElseThrow());
        assertThat(sure.explain()).contains("90 %");
        IceMargin counted = IceMargin.of(new double[] {3, 1, 2, Double.POSITIVE_INFINITY, 5, 4, 7, 6, 9, 8});
        assertThat(counted.kg90()).hasValue(9);
        assertThat(counted.kg95()).isEmpty();
        assertThat(counted.never()).isEqualTo(1);
    }

    @Test
    void stirringAndFinerContents() {
        IceAnswer.Enough still = (IceAnswer.Enough) one().build().answer();
        IceAnswer.Enough stirred = (IceAnswer.Enough) one().agitation(Agitation.stirred(metresPerSecond(0.02)))
                .build()
                .answer();
        // Nothing of the water stays warm below the ice.
        assertThat(stirred.iceKg()).isLessThan(still.iceKg());
        assertThat(stirred.iceKg()).isGreaterThan(stirred.energy().everythingKg());
        IceAnswer axial = one().describedAs(VesselModel.axial(4))
                .filledTo(millimetres(200))
                .build()
                .answer();
        assertThat(axial.explain()).isNotBlank();
    }

    /**
     * A can of 355 mL of beer in 16 cups of water with 5 cups of ice (hobby or school write-up, rows M056 to M059 of the measured data:
     * 14.1, 13.7, 13.1 and 13.3 °C after 20 minutes, all ice melted; with half a cup of salt in the second and the last, which the balance
     * of energy hardly feels). Start and tap water are not stated: 22 °C is taken for both, cups of ice are packed to 57 %.
     */
    @Test
    void measuredBathsWithTooLittleIce() {
        double iceKg = 5 * 0.2365882 * 0.917 * 0.57;
        double waterKg = 16 * 0.2365882;
        Air room = Air.at(celsius(22));
        Bucket pail = Bucket.of(millimetres(220), millimetres(220));
        FilledVessel can = Vessels.of(VesselShape.CAN, millilitres(355))
                .filledWith(Beverage.beer(percentByVolume(5)), celsius(22));
        String[] rows = {"M056", "M057 (salted)", "M058", "M059 (salted)"};
        double[] measured = {14.1, 13.7, 13.1, 13.3};
        for (int i = 0; i < rows.length; i++) {
            Agitation moved = i < 2 ? Agitation.STILL : Agitation.stirred(metresPerSecond(0.05));
            IceWaterBath bath = IceWaterBath.in(pail, room)
                    .ice(kilograms(iceKg), IceBlock.cube(millimetres(25)), celsius(-10))
                    .water(kilograms(waterKg), celsius(22))
                    .agitation(moved)
                    .build();
            ScenePrediction run = Scene.builder()
                    .gear("bath", bath)
                    .vessel("can", can, "bath")
                    .build()
                    .predict(minutes(20), NetworkSolver.standard().withToleranceK(0.02));
            double predicted = run.vessel("can").meanTemperatureK(1200) - ZERO;
            OutsideChecks.ruleOfThumb(
                    "ice-budget-too-little-" + rows[i].substring(0, 4).toLowerCase(Locale.ROOT),
                    "beer after 20 min in 16 cups of water with 5 cups of ice, measured and predicted, " + rows[i],
                    measured[i],
                    predicted,
                    "°C",
                    "hobby or school write-up; measured, not a rule; start, tap water, mass of ice not stated (22 °C, 22 °C, "
                            + String.format(
                                    Locale.ROOT,
                                    "%.2f kg), salt left out; ice left %.2f kg",
                                    iceKg,
                                    run.iceKg("bath", minutes(20))));
            // It stays lukewarm, as measured; that stirring brings it nearer to 0 °C than measured is known from the
            // measured rows.
            assertThat(predicted).isGreaterThan(7);
        }
        IceAnswer.Never never = never(
                IceBudget.of(pail, room)
                        .vessels(can, 1, Wanted.between(celsius(0), celsius(5)))
                        .from(minutes(20), minutes(20))
                        .holding(kilograms(iceKg + waterKg))
                        .waterAt(celsius(22))
                        .agitation(Agitation.stirred(metresPerSecond(0.05)))
                        .iceAtHand(kilograms(iceKg)),
                IceAnswer.Reason.NOT_ENOUGH_ICE);
        // Own balance, not published: by energy alone these baths would have needed more ice than was in them, which is
        // why their
        // beer stayed at 13 °C to 14 °C.
        assertThat(never.energy().orElseThrow().everythingKg()).isBetween(iceKg, 1.0);
    }

    @Test
    void sunOnWhatStandsOutOfTheBathTakesIce() {
        Air sunny = TERRACE.withSun(Sunlight.clearDay(degrees(45), 196, LocalTime.of(12, 30)));
        IceBudget.Builder shade = one().filledTo(millimetres(140));
        IceBudget.Builder sun = IceBudget.of(BUCKET, sunny)
                .vessels(bottle(16), 1, COLD)
                .from(minutes(60), minutes(150))
                .filledTo(millimetres(140));
        double inShadeKg = ((IceAnswer.Enough) shade.build().answer()).totalKg();
        assertThat(sun.build().answer())
                .isInstanceOfSatisfying(
                        IceAnswer.Enough.class,
                        enough -> assertThat(enough.totalKg()).isGreaterThan(inShadeKg));
    }

    @Test
    void refusals() {
        IceBudget.Builder builder = IceBudget.of(BUCKET, TERRACE);
        assertThatThrownBy(builder::build).hasMessageContaining("number of vessels 0");
        assertThatThrownBy(() -> builder.vessels(bottle(16), 0, COLD)).hasMessageContaining("number of vessels 0");
        assertThatThrownBy(() -> builder.vessels(bottle(16), 10_001, COLD)).hasMessageContaining("10000");
        assertThatThrownBy(() -> builder.iceAtHand(kilograms(-1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> builder.waterAt(celsius(-1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> builder.blocks(IceBlock.cube(millimetres(20)), celsius(1)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> builder.from(minutes(0), minutes(1))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.from(minutes(2), minutes(1))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.from(minutes(2), Duration.ofDays(3))).hasMessageContaining("PT48H");
        assertThatThrownBy(() -> builder.startingAfter(minutes(-1))).hasMessageContaining("start");
        assertThatThrownBy(() -> builder.topUps(-1)).hasMessageContaining("0 to 12");
        assertThatThrownBy(() -> builder.filledTo(millimetres(300))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> builder.holding(kilograms(0))).isInstanceOf(OutOfRangeException.class);
        builder.vessels(bottle(16), 1, COLD);
        assertThatThrownBy(builder::build).hasMessageContaining("no time");
        builder.from(minutes(30), minutes(60)).blocks(IceBlock.cube(millimetres(250)), celsius(-5));
        assertThatThrownBy(builder::build).hasMessageContaining("mouth");
    }
}
