/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;

/**
 * The rule for solids with water in their pores, against measured pairs and against bounds that no mixture can leave.
 */
class WettingTest {
    private static final Source OWN = new Source("test", "made up for a test", Source.Kind.OWN_ASSUMPTION);
    private static final double ROOM_K = 293.15;

    private static Constant exact(double value) {
        return new Constant("test", value, "1", Uncertainty.exact(), OWN);
    }

    private static Solid dry(double density, double conductivity, double specificHeat) {
        return new Solid("dry", exact(density), exact(conductivity), exact(specificHeat), exact(0.8));
    }

    @Test
    void bricksDryAndSoaked() {
        SolidRows pairs = SolidRows.read("brick-dry-and-soaked.csv");
        for (SolidRows.Row row : pairs.rows()) {
            pairs.check(row)
                    .what("conductivity of soaked brick from that of the dry one, " + row.text("dryConductivity")
                            + " W/(m K), and its water, " + row.text("waterFraction") + " of its volume")
                    .unit("W/(m K)")
                    .expected(row.number("expected"))
                    .withinRelative(Wetting.DOUBT_OF_FIRED_CLAY)
                    .check(Wetting.conductivity(row.number("dryConductivity"), row.number("waterFraction")));
        }
    }

    @Test
    void specificHeatOfMoistGround() {
        SolidRows rows = SolidRows.read("soil-specific-heat.csv");
        for (SolidRows.Row row : rows.rows()) {
            Solid dry = dry(row.number("dryDensity"), 0.2, row.number("drySpecificHeat"));
            rows.check(row)
                    .what("specific heat capacity from dry mass and water")
                    .unit("J/(kg K)")
                    .expected(row.number("expected"))
                    .within(10)
                    .check(Solids.wetted(dry, "moist", exact(row.number("waterFraction")))
                            .specificHeatCapacity()
                            .value());
        }
    }

    @Test
    void theWaterInThePoresIsThatOfTheLiquids() {
        Water water = Water.liquid();
        assertThat(Wetting.WATER_DENSITY).isCloseTo(water.density(ROOM_K), within(0.05));
        assertThat(Wetting.WATER_HEAT).isCloseTo(water.specificHeatCapacity(ROOM_K), within(2.0));
        assertThat(Wetting.WATER_CONDUCTIVITY).isCloseTo(water.thermalConductivity(ROOM_K), within(0.001));
    }

    @Test
    void thePartsOfTheUncertaintyAddUpBySquares() {
        Solid dry = new Solid(
                "dry",
                new Constant("density", 400, "kg/m³", Uncertainty.normal(40), OWN),
                new Constant("conductivity", 0.06, "W/(m K)", Uncertainty.normal(0.006), OWN),
                new Constant("specific heat", 1300, "J/(kg K)", Uncertainty.normal(130), OWN),
                exact(0.8));
        Constant fraction = new Constant("fraction", 0.6, "1", Uncertainty.normal(0.05), OWN);
        Solid wet = Solids.wetted(dry, "wet", fraction);
        // By hand: water 598.92 kg/m³ ± hypot(0.05 * 998.2, 0.02 * 598.92) = 51.32.
        assertThat(wet.density().value()).isCloseTo(998.92, within(1e-9));
        assertThat(wet.density().standardUncertainty()).isCloseTo(Math.hypot(40, 51.32), within(0.01));
        double ratio = 0.598 / DryAir.thermalConductivity(ROOM_K);
        assertThat(wet.thermalConductivity().value()).isCloseTo(0.06 * Math.pow(ratio, 0.6), within(1e-12));
        assertThat(wet.thermalConductivity().standardUncertainty()
                        / wet.thermalConductivity().value())
                .isCloseTo(Math.sqrt(0.1 * 0.1 + Math.pow(0.05 * Math.log(ratio), 2) + 0.4 * 0.4 / 3), within(1e-12));
        // Sensitivities by differences of the mixture itself.
        double heat = heat(400, 1300, 598.92, 4184);
        assertThat(wet.specificHeatCapacity().value()).isCloseTo(heat, within(1e-9));
        double byHand = Math.sqrt(Math.pow(heat(400, 1430, 598.92, 4184) - heat, 2)
                + Math.pow(heat(400.01, 1300, 598.92, 4184) - heat, 2) * 1e4 * 1600
                + Math.pow(heat(400, 1300, 598.93, 4184) - heat, 2) * 1e4 * 51.32 * 51.32
                + Math.pow(heat(400, 1300, 598.92, 4184 * 1.02) - heat, 2));
        assertThat(wet.specificHeatCapacity().standardUncertainty()).isCloseTo(byHand, within(0.01));
    }

    private static double heat(double mass, double heat, double waterMass, double waterHeat) {
        return (mass * heat + waterMass * waterHeat) / (mass + waterMass);
    }

    @Test
    void aWetSolidOwnsUpToTheRule() {
        assertThat(Solids.wetTerracotta().thermalConductivity().source().kind()).isEqualTo(Source.Kind.OWN_ASSUMPTION);
        assertThat(Solids.wetCotton().thermalConductivity().source().citation())
                .contains("own rule", "dry cotton cloth", "from memory");
        assertThat(Solids.wetCotton().solarAbsorptance()).isEmpty();
    }

    @Test
    void impossibleWaterIsRefused() {
        Solid dry = dry(400, 0.06, 1300);
        assertThatThrownBy(() -> Solids.wetted(dry, "wet", exact(0.96))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Solids.wetted(dry, "wet", exact(0))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Solids.wetted(dry, " ", exact(0.5))).isInstanceOf(IllegalArgumentException.class);
    }

    /** The Wiener bounds: layers along the heat flow conduct best, layers across it worst. */
    @Property(seed = "1201")
    void conductivityLiesBetweenLayersAcrossAndLayersAlong(
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 10) double solidConductivity,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.95) double porosity,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.95) double water) {
        Assume.that(water <= porosity);
        double air = DryAir.thermalConductivity(ROOM_K);
        double liquid = Wetting.WATER_CONDUCTIVITY;
        double dry = Math.pow(solidConductivity, 1 - porosity) * Math.pow(air, porosity);
        double across = 1 / ((1 - porosity) / solidConductivity + water / liquid + (porosity - water) / air);
        double along = (1 - porosity) * solidConductivity + water * liquid + (porosity - water) * air;
        assertThat(Wetting.conductivity(dry, water)).isBetween(across * (1 - 1e-12), along * (1 + 1e-12));
    }

    @Property(seed = "1202")
    void wetIsHeavierConductsBetterAndStoresBetweenDryAndWater(
            @ForAll @Scale(3) @DoubleRange(min = 20, max = 2500) double density,
            @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 3) double conductivity,
            @ForAll @Scale(3) @DoubleRange(min = 500, max = 3000) double specificHeat,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.94) double water) {
        Solid dry = dry(density, conductivity, specificHeat);
        Solid wet = Solids.wetted(dry, "wet", exact(water));
        Solid wetter = Solids.wetted(dry, "wetter", exact(water + 0.01));
        assertThat(wet.density().value()).isStrictlyBetween(density, density + 998.2);
        assertThat(wet.specificHeatCapacity().value()).isStrictlyBetween(specificHeat, 4184.0);
        assertThat(wet.thermalConductivity().value())
                .isGreaterThan(conductivity)
                .isLessThan(wetter.thermalConductivity().value());
        assertThat(wet.specificHeatCapacity().value())
                .isLessThan(wetter.specificHeatCapacity().value());
    }
}
