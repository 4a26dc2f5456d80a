/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Layers of air between two walls, against a textbook. */
class EnclosedLayersTest {

    private static final String TEXTBOOK = "Cengel and Ghajar, Heat and Mass Transfer, 5th ed., ";

    @Test
    void aDoublePaneWindow() {
        double nu = VerticalLayer.macGregorEmery(1.05e4, 0.7344, 0.8 / 0.02);
        check(
                "enclosed-double-pane-nu",
                TEXTBOOK + "example 9-4",
                "Nusselt number of a 20 mm air gap",
                "1",
                1.40,
                2e-3,
                nu);
        check(
                "enclosed-double-pane-heat",
                TEXTBOOK + "example 9-4",
                "heat through a window of 0.8 m by 2 m with a 20 mm air gap, 10 K",
                "W",
                27.1,
                2e-3,
                nu * 0.02416 / 0.02 * 0.8 * 2 * 10);
        // The law worked apart from this project in double precision.
        assertThat(nu).isCloseTo(1.40061834, within(1e-8));
    }

    @Test
    void levelLayers() {
        check(
                "enclosed-level-1e5",
                TEXTBOOK + "eq. 9-47",
                "Nusselt number of a level layer of air, Ra = 1e5",
                "1",
                3.994,
                1e-3,
                HorizontalLayer.hollands(1e5));
        // The laws worked apart from this project in double precision.
        assertThat(HorizontalLayer.hollands(1e3)).isEqualTo(1);
        assertThat(HorizontalLayer.hollands(1708)).isEqualTo(1);
        assertThat(HorizontalLayer.hollands(1e5)).isCloseTo(3.99406526, within(1e-8));
        assertThat(HorizontalLayer.hollands(1e6)).isCloseTo(6.99309604, within(1e-8));
        assertThat(HorizontalLayer.globeDropkin(1e6, 5)).isCloseTo(7.77271728, within(1e-8));
        assertThat(HorizontalLayer.STABLE.law().nusselt(1e9, 7)).isEqualTo(1);
    }

    @Test
    void squatLayersAndLyingAnnuli() {
        // Cengel and Ghajar, 5th ed., eqs. 9-52, 9-53, 9-57 and 9-58, worked apart from this project in double
        // precision.
        assertThat(VerticalLayer.berkovskyPolevikov(1e7, 7, 1.5)).isCloseTo(19.1304203, within(1e-7));
        assertThat(VerticalLayer.berkovskyPolevikov(1e7, 7, 4)).isCloseTo(14.07609, within(1e-5));
        assertThat(HorizontalAnnulus.geometricFactor(0.10, 0.20)).isCloseTo(0.146613266, within(1e-9));
        assertThat(HorizontalAnnulus.raithbyHollands(1e5, 0.71, 0.10, 0.20)).isCloseTo(3.48258049, within(1e-8));
        assertThat(HorizontalAnnulus.raithbyHollands(1, 0.71, 0.10, 0.20)).isEqualTo(1);
    }

    /** The laws of tall layers part company towards Ra = 1e6 at 40 thicknesses, where the newer one is turbulent: 6.05 against 4.37. */
    @ParameterizedTest
    @CsvSource({"2e4, 20", "1e5, 20", "2e4, 40", "1e5, 40"})
    void tallLayersOfAirAgreeWithAnOlderLaw(double ra, double aspect) {
        OutsideChecks.published(
                        "enclosed-tall-" + (int) ra + "-" + (int) aspect,
                        "R. K. MacGregor and A. F. Emery, J. Heat Transfer 91 (1969) 391; as in " + TEXTBOOK
                                + "eq. 9-54")
                .what("Nusselt number of an upright layer of air, Ra = " + (int) ra + ", height " + (int) aspect
                        + " thicknesses")
                .unit("1")
                .expected(0.42 * Math.pow(ra, 0.25) * Math.pow(0.71, 0.012) * Math.pow(aspect, -0.3))
                // The newer one states 10 %, the older one comes from liquids.
                .withinRelative(0.25)
                .check(VerticalLayer.elSherbiny(ra, aspect));
    }

    @ParameterizedTest
    @CsvSource({"1e4", "2e4", "5e4", "1e5"})
    void tallLayersOfAirAgreeWithTheStandardForGlazing(double ra) {
        OutsideChecks.fromMemory(
                        "enclosed-glazing-" + (int) ra,
                        "EN 673:2011, glass in building, thermal transmittance: Nu = 0.035 (Gr Pr)^0.38, upright gaps")
                .what("Nusselt number of an upright layer of air, Ra = " + (int) ra + ", height 40 thicknesses")
                .unit("1")
                .expected(0.035 * Math.pow(ra, 0.38))
                .withinRelative(0.15)
                .check(VerticalLayer.elSherbiny(ra, 40));
    }

    @Test
    void littleDriveIsConduction() {
        assertThat(VerticalLayer.elSherbiny(0, 20)).isEqualTo(1);
        assertThat(VerticalLayer.elSherbiny(100, 20)).isCloseTo(1, within(1e-3));
        Correlation law = VerticalLayer.elSherbiny(20);
        assertThat(law.law().byDrive(10, 0.71)).isBetween(0.0, 1e-3);
        assertThat(law.law().byPrandtl(1e5, 0.71)).isZero();
    }

    @Test
    void refusals() {
        assertThatThrownBy(() -> VerticalLayer.elSherbiny(-1, 20)).hasMessageContaining("expected a finite number ≥ 0");
        assertThatThrownBy(() -> VerticalLayer.elSherbiny(1e4, 0)).hasMessageContaining("height over thickness");
        assertThatThrownBy(() -> VerticalLayer.macGregorEmery(1e4, 0.7, Double.NaN))
                .hasMessageContaining("height over thickness");
        assertThatThrownBy(() -> HorizontalAnnulus.geometricFactor(0.2, 0.1)).hasMessageContaining("inner < outer");
        assertThatThrownBy(() -> HorizontalLayer.hollands(Double.NaN)).hasMessageContaining("Ra = NaN");
    }

    private static void check(
            String id, String source, String what, String unit, double expected, double relative, double found) {
        OutsideChecks.published(id, source)
                .what(what)
                .unit(unit)
                .expected(expected)
                .withinRelative(relative)
                .check(found);
    }
}
