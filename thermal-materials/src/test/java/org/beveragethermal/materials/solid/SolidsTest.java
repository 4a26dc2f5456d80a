/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The table of solids as a whole, and the refusals of a solid. */
class SolidsTest {
    private static final double NEARLY_ONE = 1 - 1e-12;

    static List<Solid> all() {
        return Solids.all();
    }

    static double diffusivity(Solid solid) {
        return solid.thermalConductivity().value()
                / (solid.density().value() * solid.specificHeatCapacity().value());
    }

    static Stream<Constant> constants(Solid solid) {
        return Stream.concat(
                Stream.of(
                        solid.density(), solid.thermalConductivity(), solid.specificHeatCapacity(), solid.emissivity()),
                solid.solarAbsorptance().stream());
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyFigureHasAUnitAnUncertaintyAndASource(Solid solid) {
        assertThat(solid.density().unit()).isEqualTo("kg/m³");
        assertThat(solid.density().name()).isEqualTo("density of " + solid.name());
        assertThat(solid.thermalConductivity().unit()).isEqualTo("W/(m K)");
        assertThat(solid.thermalConductivity().name()).isEqualTo("thermal conductivity of " + solid.name());
        assertThat(solid.specificHeatCapacity().unit()).isEqualTo("J/(kg K)");
        assertThat(solid.specificHeatCapacity().name()).isEqualTo("specific heat capacity of " + solid.name());
        assertThat(solid.emissivity().unit()).isEqualTo("1");
        assertThat(solid.emissivity().name()).isEqualTo("emissivity of " + solid.name());
        assertThat(constants(solid)).allSatisfy(constant -> {
            assertThat(constant.value()).isPositive().isFinite();
            assertThat(constant.standardUncertainty()).isPositive().isLessThan(constant.value());
            assertThat(constant.uncertainty().quantile(constant.value(), 1 - NEARLY_ONE))
                    .as("lowest draw")
                    .isPositive();
            assertThat(constant.source().citation()).hasSizeGreaterThan(10);
        });
        Stream.concat(Stream.of(solid.emissivity()), solid.solarAbsorptance().stream())
                .forEach(part -> {
                    assertThat(part.uncertainty().quantile(part.value(), 1 - NEARLY_ONE))
                            .isNotNegative();
                    assertThat(part.uncertainty().quantile(part.value(), NEARLY_ONE))
                            .isLessThanOrEqualTo(1);
                });
    }

    /** A remembered figure may hide neither in the text of a citation nor behind a published one. */
    @ParameterizedTest
    @MethodSource("all")
    void whatIsRememberedSaysSo(Solid solid) {
        assertThat(constants(solid))
                .filteredOn(constant -> constant.source().key().contains("from memory"))
                .allSatisfy(constant ->
                        assertThat(constant.source().kind()).isGreaterThanOrEqualTo(Source.Kind.FROM_MEMORY));
        assertThat(constants(solid))
                .filteredOn(constant -> constant.source().kind() == Source.Kind.FROM_MEMORY)
                .allSatisfy(constant -> assertThat(constant.source().citation()).contains("from memory"));
    }

    /** A slip of a power of ten in one of three properties leaves the range from rubber to pure aluminium. */
    @ParameterizedTest
    @MethodSource("all")
    void diffusivityIsThatOfASolid(Solid solid) {
        boolean metal = solid.thermalConductivity().value() > 10;
        double low = metal ? 3e-6 : 8e-8;
        double high = metal ? 1e-4 : 1.5e-6;
        assertThat(diffusivity(solid)).isBetween(low, high);
    }

    @Test
    void glassAndSteelKeepTheNumbersThatResultsRestOn() {
        Solid glass = Solids.sodaLimeGlass();
        assertThat(constants(glass).map(Constant::value)).startsWith(2500.0, 1.025, 795.0, 0.9);
        assertThat(constants(glass).limit(4).map(Constant::uncertainty))
                .containsExactly(
                        Uncertainty.rectangular(30),
                        Uncertainty.rectangular(0.05),
                        Uncertainty.rectangular(45),
                        Uncertainty.rectangular(0.05));
        Solid steel = Solids.stainlessSteel();
        assertThat(constants(steel).map(Constant::value)).startsWith(7950.0, 16.5, 470.0, 0.4);
        assertThat(constants(steel).limit(4).map(Constant::uncertainty))
                .containsExactly(
                        Uncertainty.rectangular(50),
                        Uncertainty.rectangular(0.5),
                        Uncertainty.rectangular(10),
                        Uncertainty.rectangular(0.2));
    }

    @Test
    void everySolidIsListedOnceAndFoundByItsName() {
        assertThat(Solids.all()).extracting(Solid::name).doesNotHaveDuplicates().hasSizeGreaterThan(30);
        assertThat(Solids.all())
                .allSatisfy(solid -> assertThat(Solids.named(solid.name())).isSameAs(solid));
        assertThat(Solids.named("Dry Terracotta")).isSameAs(Solids.terracotta());
        assertThat(Solids.all())
                .contains(Solids.gelPack().frozen(), Solids.gelPack().thawed());
    }

    /** Called by reflection so that a new solid cannot be left out of the list. */
    @Test
    void everyAccessorIsListed() throws ReflectiveOperationException {
        for (var method : Solids.class.getMethods()) {
            if (method.getReturnType() == Solid.class && method.getParameterCount() == 0) {
                assertThat(Solids.all()).as(method.getName()).contains((Solid) method.invoke(null));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"adamantium", "", "cork "})
    void anUnknownNameIsRefusedWithTheNamesThereAre(String name) {
        assertThatThrownBy(() -> Solids.named(name))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("solid '" + name + "': expected one of")
                .hasMessageContaining("cork, wood, dry terracotta");
    }

    @Test
    void groundConductsBetterTheWetterItIs() {
        assertThat(List.of(Solids.drySand(), Solids.dampSand(), Solids.wetSand()))
                .isSortedAccordingTo((a, b) -> Double.compare(
                        a.thermalConductivity().value(), b.thermalConductivity().value()))
                .isSortedAccordingTo((a, b) -> Double.compare(
                        a.specificHeatCapacity().value(),
                        b.specificHeatCapacity().value()));
        assertThat(List.of(Solids.dryClay(), Solids.dampClay(), Solids.wetClay()))
                .isSortedAccordingTo((a, b) -> Double.compare(
                        a.thermalConductivity().value(), b.thermalConductivity().value()))
                .isSortedAccordingTo((a, b) -> Double.compare(
                        a.specificHeatCapacity().value(),
                        b.specificHeatCapacity().value()));
    }

    @Test
    void whatHoldsWaterIsNotForFrost() {
        assertThat(List.of(
                        Solids.wetTerracotta(),
                        Solids.wetCotton(),
                        Solids.wetPaper(),
                        Solids.dampSand(),
                        Solids.wetSand(),
                        Solids.dampClay(),
                        Solids.wetClay()))
                .allSatisfy(solid -> assertThat(solid.temperatures().low()).isEqualTo(273.15));
        assertThat(List.of(Solids.crushedIce(), Solids.freshSnow(), Solids.compactedSnow()))
                .allSatisfy(solid -> assertThat(solid.temperatures().high()).isEqualTo(273.15));
        assertThat(Solids.cork().temperatures()).isEqualTo(Solid.AMBIENT);
    }

    @Test
    void aSolidWithImpossiblePropertiesIsRefused() {
        Solid glass = Solids.sodaLimeGlass();
        Constant zero = constant(0);
        Constant two = constant(2);
        Constant huge = constant(100_001);
        assertThatThrownBy(() -> new Solid(
                        "x", zero, glass.thermalConductivity(), glass.specificHeatCapacity(), glass.emissivity()))
                .isInstanceOfSatisfying(
                        OutOfRangeException.class, e -> assertThat(e.given()).isZero());
        assertThatThrownBy(() -> new Solid(
                        "x", huge, glass.thermalConductivity(), glass.specificHeatCapacity(), glass.emissivity()))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(
                        () -> new Solid("x", glass.density(), zero, glass.specificHeatCapacity(), glass.emissivity()))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Solid("x", glass.density(), glass.thermalConductivity(), zero, glass.emissivity()))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() ->
                        new Solid("x", glass.density(), glass.thermalConductivity(), glass.specificHeatCapacity(), two))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> glass.withSolarAbsorptance(two)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> glass.withSolarAbsorptance(constant(-0.1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Solid(
                        " ",
                        glass.density(),
                        glass.thermalConductivity(),
                        glass.specificHeatCapacity(),
                        glass.emissivity()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aSolidOfOnesOwnIsForAmbientTemperaturesAndOfUnknownColour() {
        Solid cork = Solids.cork();
        Solid own = new Solid(
                "own", cork.density(), cork.thermalConductivity(), cork.specificHeatCapacity(), cork.emissivity());
        assertThat(own.temperatures()).isEqualTo(Solid.AMBIENT);
        assertThat(own.solarAbsorptance()).isEmpty();
        Constant black = constant(0.9);
        Solid painted = own.withSolarAbsorptance(black);
        assertThat(painted.solarAbsorptance()).isEqualTo(Optional.of(black));
        assertThat(painted.density()).isEqualTo(own.density());
    }

    private static Constant constant(double value) {
        return new Constant("test", value, "1", Uncertainty.exact(), Source.published("test", "test"));
    }
}
