/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** What must hold for a solid that melts over a range, and the gel pack beside ice. */
class LatentSolidTest {
    private static final LatentSolid GEL = Solids.gelPack();
    private static final double START_K = GEL.meltingStart().value();
    private static final double END_K = GEL.meltingEnd().value();

    private static Constant constant(double value) {
        return new Constant("test", value, "1", Uncertainty.exact(), Source.published("test", "test"));
    }

    private static LatentSolid melting(double startK, double endK, double latentHeat) {
        return new LatentSolid("x", GEL.frozen(), GEL.thawed(), constant(startK), constant(endK), constant(latentHeat));
    }

    @Test
    void figuresByHand() {
        Solid frozen = solid("frozen", 2000);
        Solid thawed = solid("thawed", 4000);
        LatentSolid gel = new LatentSolid("x", frozen, thawed, constant(270), constant(272), constant(300_000));
        assertThat(gel.specificEnthalpy(272)).isZero();
        assertThat(gel.specificEnthalpy(282)).isCloseTo(40_000, within(1e-8));
        // Over the range: 300 kJ/kg and two kelvins of (2000 + 4000) / 2.
        assertThat(gel.specificEnthalpy(270)).isCloseTo(-306_000, within(1e-8));
        assertThat(gel.specificEnthalpy(260)).isCloseTo(-326_000, within(1e-8));
        // Half way: half of the latent heat, and one kelvin of (3000 + 4000) / 2.
        assertThat(gel.specificEnthalpy(271)).isCloseTo(-153_500, within(1e-8));
        assertThat(gel.specificHeatCapacity(271)).isCloseTo(153_000, within(1e-8));
        assertThat(gel.specificHeatCapacity(269.9)).isEqualTo(2000);
        assertThat(gel.specificHeatCapacity(272.1)).isEqualTo(4000);
        assertThat(gel.meltedFraction(270.5)).isCloseTo(0.25, within(1e-12));
        assertThat(gel.meltedFraction(260)).isZero();
        assertThat(gel.meltedFraction(280)).isEqualTo(1);
    }

    private static Solid solid(String name, double specificHeat) {
        return new Solid(name, constant(1000), constant(1), constant(specificHeat), constant(0.9));
    }

    @Test
    void aGelPackStoresSomewhatLessThanIce() {
        OutsideChecks.fromMemory("gel-pack-against-ice", "makers of cold packs: much like ice, somewhat less")
                .what("heat from -18 °C to 0 °C and thawed, gel pack over ice")
                .unit("1")
                .between(0.8, 1.0)
                .check((GEL.specificEnthalpy(273.15) - GEL.specificEnthalpy(255.15))
                        / (0 - Ice.specificEnthalpy(255.15)));
    }

    @Test
    void meltingIsKnownToSpanARange() {
        for (Constant constant : List.of(GEL.meltingStart(), GEL.meltingEnd(), GEL.latentHeat())) {
            assertThat(constant.standardUncertainty()).isPositive();
            assertThat(constant.source().kind()).isEqualTo(Source.Kind.FROM_MEMORY);
        }
        double latestStart = GEL.meltingStart().uncertainty().quantile(START_K, 1 - 1e-12);
        double earliestEnd = GEL.meltingEnd().uncertainty().quantile(END_K, 1e-12);
        assertThat(latestStart).as("start and end drawn at their worst").isLessThan(earliestEnd);
    }

    @Property(seed = "1211")
    void enthalpyGrows(
            @ForAll @Scale(6) @DoubleRange(min = 243.15, max = 333.14) double temperatureK,
            @ForAll @Scale(6) @DoubleRange(min = 1e-4, max = 0.01) double step) {
        assertThat(GEL.specificEnthalpy(temperatureK + step)).isGreaterThan(GEL.specificEnthalpy(temperatureK));
    }

    @Property(seed = "1212")
    void heatCapacityIsTheSlopeOfTheEnthalpy(
            @ForAll @Scale(6) @DoubleRange(min = 243.2, max = 333.1) double temperatureK) {
        double h = 1e-3;
        boolean jumps = Math.abs(temperatureK - START_K) <= h || Math.abs(temperatureK - END_K) <= h;
        if (!jumps) {
            double slope = (GEL.specificEnthalpy(temperatureK + h) - GEL.specificEnthalpy(temperatureK - h)) / (2 * h);
            // A temperature is rounded to 6e-14 K: at 1e5 J/(kg K) and over 2e-3 K that leaves 3e-6.
            assertThat(slope).isCloseTo(GEL.specificHeatCapacity(temperatureK), within(1e-5));
        }
    }

    @Test
    void enthalpyIsContinuousAtBothEndsOfMelting() {
        for (double end : new double[] {START_K, END_K}) {
            double below = GEL.specificEnthalpy(Math.nextDown(end));
            double above = GEL.specificEnthalpy(Math.nextUp(end));
            assertThat(above - below).isNotNegative().isLessThan(1e-7);
        }
    }

    @Property(seed = "1213")
    void temperatureInvertsTheEnthalpy(@ForAll @Scale(6) @DoubleRange(min = 243.15, max = 333.15) double temperatureK) {
        assertThat(GEL.temperatureK(GEL.specificEnthalpy(temperatureK))).isCloseTo(temperatureK, within(1e-9));
    }

    @Property(seed = "1214")
    void allOfTheLatentHeatIsSpentWhereverMeltingLies(
            @ForAll @Scale(6) @DoubleRange(min = 250, max = 271) double startK,
            @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 10) double widthK,
            @ForAll @Scale(1) @DoubleRange(min = 1, max = 1e6) double latentHeat) {
        double endK = Math.max(271.15, startK + widthK);
        LatentSolid solid = melting(startK, endK, latentHeat);
        double sensible = (GEL.frozen().specificHeatCapacity().value()
                        + GEL.thawed().specificHeatCapacity().value())
                / 2
                * (endK - startK);
        assertThat(solid.specificEnthalpy(endK) - solid.specificEnthalpy(startK))
                .isCloseTo(latentHeat + sensible, within(1e-6));
        double middle = (startK + endK) / 2;
        assertThat(solid.temperatureK(solid.specificEnthalpy(middle))).isCloseTo(middle, within(1e-9));
    }

    @Test
    void impossibleMeltingIsRefused() {
        assertThatThrownBy(() -> melting(270, 269, 3e5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> melting(272, 272.009, 3e5))
                .isInstanceOfSatisfying(
                        OutOfRangeException.class, e -> assertThat(e.low()).isCloseTo(272.01, within(1e-9)));
        assertThatThrownBy(() -> melting(230, 272, 3e5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> melting(274, 276, 3e5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> melting(270, 340, 3e5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> melting(270, 271, 3e5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> melting(270, 272, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> melting(270, 272, 1.1e7)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new LatentSolid(
                        "", GEL.frozen(), GEL.thawed(), GEL.meltingStart(), GEL.meltingEnd(), GEL.latentHeat()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void temperaturesAndEnthalpiesOutsideTheRangeAreRefused() {
        assertThat(GEL.temperatures().low()).isEqualTo(243.15);
        assertThat(GEL.temperatures().high()).isEqualTo(333.15);
        assertThatThrownBy(() -> GEL.specificEnthalpy(243)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> GEL.specificHeatCapacity(334)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> GEL.meltedFraction(334)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> GEL.meltedFraction(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GEL.temperatureK(-1e6)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> GEL.temperatureK(1e6)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> GEL.temperatureK(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
