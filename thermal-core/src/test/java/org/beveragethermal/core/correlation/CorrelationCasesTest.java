/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The laws at further points. Unless a line names another source, the figures are the published formulas worked apart from this
 * project in double precision.
 */
class CorrelationCasesTest {

    private static final Percentage MILLIONTH = Percentage.withPercentage(1e-4);
    /** Printed figures of the textbook's examples have three or four digits. */
    private static final Percentage PRINTED = Percentage.withPercentage(0.5);

    @ParameterizedTest
    @CsvSource({
        "0.71, 1e4, 5.4327454632929415, 5.822450690544765",
        "0.71, 1e6, 16.558402863936177, 16.94185693722717",
        "7, 1e8, 75.28850643825406, 61.910820384084744",
        "11, 1e9, 156.11175431565434, 111.61919092928787"
    })
    void verticalPlate(double pr, double ra, double allRange, double laminar) {
        assertThat(VerticalPlate.churchillChu(ra, pr)).isCloseTo(allRange, MILLIONTH);
        assertThat(VerticalPlate.churchillChuLaminar(ra, pr)).isCloseTo(laminar, MILLIONTH);
        assertThat(VerticalPlate.CHURCHILL_CHU.law().nusselt(ra, pr)).isCloseTo(allRange, MILLIONTH);
    }

    @Test
    void bottleInAir() {
        // 75 mm wide, 300 mm high, Gr 1e8.
        double plate = VerticalPlate.churchillChu(1e8 * 0.71, 0.71);
        double factor = VerticalCylinder.slenderness(0.71, 1e8, 0.30 / 0.075);
        assertThat(plate).isCloseTo(55.15477268619152, MILLIONTH);
        assertThat(factor).isCloseTo(1.075743853447168, MILLIONTH);
        assertThat(plate * factor).isCloseTo(59.33240770544627, MILLIONTH);
        // 35 L/Gr^(1/4) is the diameter from which a cylinder counts as a plate (Cengel and Ghajar, 5th ed., eq. 9-28):
        // there the slenderness factor must be small change.
        assertThat(VerticalCylinder.slenderness(0.71, 1e8, 0.2 / 0.07)).isBetween(1.0, 1.07);
    }

    @Test
    void hotPlateFacingDown() {
        // Cengel and Ghajar, 5th ed., example 9-2(c): Nu 15.87, h 2.971 W/(m² K), 64.2 W from 0.36 m² at 60 K.
        double nu = HorizontalPlate.stableMcAdams(1.195e7);
        assertThat(nu).isCloseTo(15.87470781256549, MILLIONTH);
        assertThat(nu * 0.02808 / 0.15).isCloseTo(2.971, PRINTED);
        assertThat(nu * 0.02808 / 0.15 * 0.36 * 60).isCloseTo(64.2, PRINTED);
    }

    @Test
    void pipeInWind() {
        // Cengel and Ghajar, 5th ed., example 7-5: Re 4.219e4, Nu 124, h 34.8 W/(m² K), 1093 W per metre at 100 K.
        double re = 8 * 0.1 / 1.896e-5;
        double nu = CrossflowCylinder.churchillBernstein(re, 0.7202);
        double h = nu * 0.02808 / 0.1;
        assertThat(nu).isCloseTo(124.45299349501266, MILLIONTH);
        assertThat(h).isCloseTo(34.8, PRINTED);
        assertThat(h * Math.PI * 0.1 * 100).isCloseTo(1093, PRINTED);
        // No stream leaves conduction and free convection to others: the constant term alone.
        assertThat(CrossflowCylinder.churchillBernstein(0, 0.7202)).isCloseTo(0.3, within(1e-15));
    }

    @Test
    void bottleInAStreamOfWater() {
        // Water at 10 °C, Pr 9.4.
        assertThat(CrossflowCylinder.churchillBernstein(2_000, 9.4)).isCloseTo(59.21289848795276, MILLIONTH);
        assertThat(CrossflowCylinder.churchillBernstein(15_000, 9.4)).isCloseTo(175.62375610924093, MILLIONTH);
    }

    @Test
    void sphere() {
        // Cengel and Ghajar, 5th ed., example 7-6 prints 135.
        assertThat(Sphere.whitaker(48_020, 0.7296, 1.849e-5 / 2.76e-5)).isCloseTo(135.12352390894603, MILLIONTH);
        // Pure conduction from a sphere into a still medium: Nu 2, any textbook.
        assertThat(Sphere.whitaker(0, 7, 1)).isCloseTo(2, within(1e-15));
        // The law used in runs leaves the viscosity ratio out.
        assertThat(Sphere.WHITAKER.law().nusselt(3000, 11)).isEqualTo(Sphere.whitaker(3000, 11, 1));
    }

    @Test
    void radiation() {
        assertThat(Radiation.greySurface(0.85, 400, 305)).isCloseTo(816.7832409272114, MILLIONTH);
        assertThat(Radiation.greySurface(0, 400, 0)).isZero();
        assertThat(Radiation.greySurface(1, 0, 0)).isZero();
        assertThat(Radiation.greySurface(1, 400, 0)).isCloseTo(1451.615851264, MILLIONTH);
        // Linearised: ε σ (T + T_s)(T² + T_s²) at 8 °C and 25 °C.
        double flux = Radiation.greySurface(0.9, 298.15, 281.15);
        assertThat(flux).isCloseTo(84.40294480161967, MILLIONTH);
        assertThat(flux / (298.15 - 281.15)).isCloseTo(4.964879105977627, MILLIONTH);
        assertThat(Radiation.greySurface(0.9, 281.15, 298.15)).isEqualTo(-flux);
    }

    @Test
    void rangesAreThoseOfTheSources() {
        assertThat(VerticalPlate.CHURCHILL_CHU.outside(1e13, 7).orElseThrow()).contains("Churchill-Chu");
        assertThat(HorizontalPlate.UNSTABLE_MCADAMS.outside(9e6, 7)).isPresent();
        assertThat(HorizontalPlate.UNSTABLE_MCADAMS.outside(1.1e7, 7)).isEmpty();
        assertThat(HorizontalPlate.STABLE_MCADAMS.outside(9e4, 7)).isPresent();
        assertThat(HorizontalPlate.STABLE_MCADAMS.outside(1.1e5, 7)).isEmpty();
        assertThat(Sphere.WHITAKER.outside(9e4, 7).orElseThrow()).contains("Reynolds number");
        assertThat(Sphere.WHITAKER.outside(7e4, 7)).isEmpty();
        assertThat(Sphere.WHITAKER.outside(7e4, 0.6).orElseThrow()).contains("Prandtl number");
        assertThat(VerticalCylinder.popiel(4).outside(2e9, 0.71)).isPresent();
        assertThat(CrossflowCylinder.CHURCHILL_BERNSTEIN.outside(1e4, 9)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        // Each of the three parts is the largest once; the last row is conduction but for a part in 1e9.
        "5000, 110, 1.0477849905984686",
        "1e6, 40, 6.049999999999998",
        "2e5, 5, 4.320914607629552",
        "100, 110, 1.0000000009621073"
    })
    void uprightLayer(double ra, double aspect, double nusselt) {
        assertThat(VerticalLayer.elSherbiny(ra, aspect)).isCloseTo(nusselt, MILLIONTH);
        assertThat(VerticalLayer.elSherbiny(aspect).law().nusselt(ra, 0.71)).isCloseTo(nusselt, MILLIONTH);
    }

    @Test
    void uprightLayerAboveTenMillion() {
        assertThat(VerticalLayer.macGregorEmery(2e8, 7, 20)).isCloseTo(26.900963191558358, MILLIONTH);
    }

    @ParameterizedTest
    @CsvSource({
        // Laminar, wavy and turbulent in turn.
        "10, 7, 0.6034065483706439",
        "100, 200, 0.6618434412776973",
        "2000, 7, 0.5555535599889992"
    })
    void fallingFilm(double re, double pr, double nusselt) {
        assertThat(FallingFilm.HEATED.law().nusselt(re, pr)).isCloseTo(nusselt, MILLIONTH);
    }

    @Test
    void plateAlongTheFlow() {
        // Cengel and Ghajar, example 7-1, hot oil over a plate (from memory): Re 4.024e4, Pr 2962, Nu 1913.
        assertThat(FlatPlate.laminar(4.024e4, 2962)).isCloseTo(1913, PRINTED);
        assertThat(FlatPlate.LAMINAR.law().nusselt(5e4, 0.71)).isCloseTo(132.4562730687281, MILLIONTH);
    }

    @Test
    void levelLayerOfAir() {
        // 1 + 1.44 (1 − 1708/Ra) + Ra^(1/3)/18 − 1 at Ra = 1e6: 1 + 1.4375405 + 4.5555556.
        assertThat(HorizontalLayer.HOLLANDS.law().nusselt(1e6, 0.71)).isCloseTo(6.99309603556, MILLIONTH);
    }

    @Test
    void partsOfTheLawOfAPlateMakeTheLaw() {
        for (Correlation correlation : new Correlation[] {VerticalPlate.CHURCHILL_CHU, VerticalCylinder.popiel(4)}) {
            PlateLaw law = (PlateLaw) correlation.law();
            for (double pr : new double[] {0.71, 7, 25}) {
                double ra = 3e7;
                double root = law.leastRoot() + law.rootPerSixthRoot(pr) * Math.pow(ra, 1.0 / 6);
                double slender =
                        Math.sqrt(32) * Math.pow(ra / pr + law.grashofFloor(), -0.25) * law.heightOverDiameter();
                double factor = 1 + law.slendernessFactor(pr) * Math.pow(slender, law.slendernessExponent(pr));
                assertThat(law.nusselt(ra, pr)).isCloseTo(root * root * factor, MILLIONTH);
            }
        }
    }

    @Test
    void conductionGoesWithTheProportions() {
        // Flow through a side grows as the height and falls as the radius.
        assertThat(EnclosedLiquid.conduction(3)).isCloseTo(3 * EnclosedLiquid.conduction(1), MILLIONTH);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1e-9})
    void aLayersDriveThatIsNoneIsRefused(double drive) {
        assertThatThrownBy(() -> VerticalLayer.macGregorEmery(drive, 7, 20))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalLayer.berkovskyPolevikov(drive, 7, 2))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalLayer.berkovskyPolevikov(1e5, 7, drive))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalLayer.elSherbiny(0, drive)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalLayer.elSherbiny(drive)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HorizontalLayer.globeDropkin(drive, 7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HorizontalPlate.unstableLaminarMcAdams(drive))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HorizontalAnnulus.raithbyHollands(drive, 7, 0.1, 0.2))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FlatPlate.laminar(drive, 7)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1e-9})
    void aDriveThatIsNoneIsRefused(double drive) {
        assertThatThrownBy(() -> VerticalPlate.churchillChu(drive, 7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalPlate.churchillChuLaminar(drive, 7))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalCylinder.slenderness(7, drive, 4))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HorizontalPlate.stableMcAdams(drive)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HorizontalPlate.unstableMcAdams(drive)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CrossflowCylinder.churchillBernstein(drive, 7))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Sphere.whitaker(drive, 7, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Radiation.greySurface(drive, 300, 300)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Radiation.greySurface(0.9, 300, drive)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> EnclosedLiquid.conduction(drive)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalCylinder.popiel(drive)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 0, -7})
    void aPrandtlNumberThatIsNoneIsRefused(double pr) {
        assertThatThrownBy(() -> VerticalPlate.churchillChu(1e8, pr)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalPlate.churchillChuLaminar(1e8, pr))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalCylinder.slenderness(pr, 1e8, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CrossflowCylinder.churchillBernstein(1e4, pr))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Sphere.whitaker(1e4, pr, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Sphere.whitaker(1e4, 7, pr)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalCylinder.slenderness(7, 1e8, pr)).isInstanceOf(IllegalArgumentException.class);
    }
}
