/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Laws of heat transfer against worked examples of textbooks and the check values of a general-purpose library. */
class CorrelationTest {

    private static final String CENGEL = "Y. A. Cengel and A. J. Ghajar, Heat and Mass Transfer, 5th ed., ";
    private static final String HT = "ht (general-purpose heat transfer library, MIT), its test values: ";

    @Test
    void verticalPlateAllRayleighNumbers() {
        OutsideChecks.referenceLibrary("correlation-vertical-plate", HT + "Churchill-Chu, equals Incropera example 9.2")
                .what("Nu at Pr 0.69, Gr 2.63e9")
                .unit("1")
                .expected(147.16185223770603)
                .withinRelative(1e-9)
                .check(VerticalPlate.churchillChu(2.63e9 * 0.69, 0.69));
        assertThat(VerticalPlate.churchillChu(1e4, 0.71)).isCloseTo(5.4327454633, within(1e-8));
        assertThat(VerticalPlate.churchillChu(1e8, 7)).isCloseTo(75.288506438, within(1e-7));
        assertThat(VerticalPlate.churchillChu(0, 7)).isCloseTo(0.825 * 0.825, within(1e-15));
    }

    @Test
    void verticalPlateLaminar() {
        assertThat(VerticalPlate.churchillChuLaminar(1e6, 0.71)).isCloseTo(16.941856937, within(1e-8));
        assertThat(VerticalPlate.churchillChuLaminar(1e9, 11)).isCloseTo(111.619190929, within(1e-7));
    }

    @Test
    void slenderCylinder() {
        double pr = 0.7;
        double plate = VerticalPlate.churchillChu(1e10 * pr, pr);
        OutsideChecks.referenceLibrary("correlation-slender-cylinder", HT + "Popiel, Wojtkowiak and Bober 2007")
                .what("Nu at Pr 0.7, Gr 1e10, L/D 2.5")
                .unit("1")
                .expected(228.8979005514989)
                .withinRelative(1e-9)
                .check(plate * VerticalCylinder.slenderness(pr, 1e10, 2.5));
        assertThat(VerticalCylinder.slenderness(0.71, 1e8, 4)).isCloseTo(1.075743853447, within(1e-10));
        // Our floor on the Grashof number is invisible where the law is used.
        double withFloor = VerticalCylinder.popiel(4).law().nusselt(1e8 * 0.71, 0.71);
        assertThat(withFloor)
                .isCloseTo(
                        VerticalPlate.churchillChu(1e8 * 0.71, 0.71) * VerticalCylinder.slenderness(0.71, 1e8, 4),
                        within(2e-3));
    }

    @Test
    void horizontalPlates() {
        OutsideChecks.published("correlation-plate-stable", CENGEL + "example 9-2(c)")
                .what("Nu of a hot face down at Ra 1.195e7")
                .unit("1")
                .expected(15.87)
                .withinRelative(0.005)
                .check(HorizontalPlate.stableMcAdams(11_950_000));
        assertThat(HorizontalPlate.unstableLaminarMcAdams(16e4)).isCloseTo(0.54 * 20, within(1e-12));
        NusseltLaw both = HorizontalPlate.UNSTABLE_MCADAMS_BOTH.law();
        assertThat(both.nusselt(1e5, 1)).isEqualTo(HorizontalPlate.unstableLaminarMcAdams(1e5));
        assertThat(both.nusselt(1e8, 1)).isEqualTo(HorizontalPlate.unstableMcAdams(1e8));
        // 0.54 Ra^(1/4) = 0.15 Ra^(1/3) at Ra = 3.6¹².
        assertThat(HorizontalPlate.unstableLaminarMcAdams(Math.pow(3.6, 12)))
                .isCloseTo(HorizontalPlate.unstableMcAdams(Math.pow(3.6, 12)), within(1e-9));
        double ra = 3.21e8 * 5.54;
        OutsideChecks.referenceLibrary("correlation-plate-stable-library", HT + "McAdams, opposed")
                .what("Nu at Pr 5.54, Gr 3.21e8")
                .unit("1")
                .expected(55.44564799362829)
                .withinRelative(1e-9)
                .check(HorizontalPlate.stableMcAdams(ra));
        OutsideChecks.referenceLibrary("correlation-plate-unstable-library", HT + "McAdams, assisted")
                .what("Nu at Pr 5.54, Gr 3.21e8")
                .unit("1")
                .expected(181.73121274384457)
                .withinRelative(1e-9)
                .check(HorizontalPlate.unstableMcAdams(ra));
    }

    @Test
    void cylinderInCrossflow() {
        OutsideChecks.published("correlation-crossflow", CENGEL + "example 7-5")
                .what("Nu of a pipe of 0.1 m in wind of 8 m/s")
                .unit("1")
                .expected(124)
                .withinRelative(0.005)
                .check(CrossflowCylinder.churchillBernstein(8 * 0.1 / 1.896e-5, 0.7202));
        assertThat(CrossflowCylinder.churchillBernstein(2000, 9.4)).isCloseTo(59.21289848795, within(1e-9));
        assertThat(CrossflowCylinder.churchillBernstein(15000, 9.4)).isCloseTo(175.6237561092, within(1e-8));
    }

    @Test
    void sphereInAStream() {
        OutsideChecks.published("correlation-sphere", CENGEL + "example 7-6")
                .what("Nu of a ball in air, Re 4.802e4")
                .unit("1")
                .expected(135)
                .withinRelative(0.005)
                .check(Sphere.whitaker(48_020, 0.7296, 1.849e-5 / 2.76e-5));
    }

    @Test
    void radiation() {
        OutsideChecks.referenceLibrary("correlation-radiation", HT + "grey surface, 400 K in 305 K, older constant")
                .what("net flux at emissivity 0.85")
                .unit("W/m²")
                .expected(816.7821722650002)
                .withinRelative(1e-5)
                .check(Radiation.greySurface(0.85, 400, 305));
        assertThat(Radiation.greySurface(0.9, 298.15, 281.15)).isCloseTo(84.40294480162, within(1e-9));
        assertThat(Radiation.greySurface(0.9, 290, 290)).isZero();
    }

    @Test
    void conductionInACylinder() {
        // First root of J0 is 2.40483 (Abramowitz and Stegun, table 9.5).
        assertThat(EnclosedLiquid.conduction(1)).isCloseTo(2.4048256 * 2.4048256 / 2, within(1e-6));
    }

    @Test
    void penetrativeConvectionByHand() {
        // 0.15 · 0.57 · (9.81 · 3e-5 · 5e12)^(1/3) · 2, worked by hand: the cube root is 1137.5.
        assertThat(PenetrativeConvection.heatFlux(0.57, 3e-5, 5e12, 2, 9.81))
                .isCloseTo(0.15 * 0.57 * 1137.5 * 2, within(0.1));
        assertThat(PenetrativeConvection.heatFlux(0.57, 0, 5e12, 2, 9.81)).isZero();
    }

    @Test
    void slopesAreThoseOfTheLaw() {
        List<Correlation> all = List.of(
                VerticalPlate.CHURCHILL_CHU,
                VerticalCylinder.popiel(4),
                HorizontalPlate.STABLE_MCADAMS,
                HorizontalPlate.UNSTABLE_MCADAMS,
                HorizontalPlate.UNSTABLE_MCADAMS_BOTH,
                CrossflowCylinder.CHURCHILL_BERNSTEIN,
                Sphere.WHITAKER,
                EnclosedLiquid.COOLING,
                EnclosedLiquid.WARMING);
        for (Correlation correlation : all) {
            for (double drive : new double[] {10, 1e4, 3e7}) {
                for (double pr : new double[] {0.71, 7, 25}) {
                    NusseltLaw law = correlation.law();
                    double h = 1e-4;
                    double byDrive =
                            (law.nusselt(drive * (1 + h), pr) - law.nusselt(drive * (1 - h), pr)) / (2 * h * drive);
                    double byPrandtl =
                            (law.nusselt(drive, pr * (1 + h)) - law.nusselt(drive, pr * (1 - h))) / (2 * h * pr);
                    double scale = law.nusselt(drive, pr);
                    assertThat(law.byDrive(drive, pr) * drive)
                            .as(correlation.name())
                            .isCloseTo(byDrive * drive, within(1e-5 * scale));
                    assertThat(law.byPrandtl(drive, pr) * pr)
                            .as(correlation.name())
                            .isCloseTo(byPrandtl * pr, within(1e-5 * scale));
                }
            }
        }
    }

    @Test
    void useOutsideTheRangeIsSaid() {
        assertThat(VerticalPlate.CHURCHILL_CHU.outside(1e8, 0.7)).isEmpty();
        assertThat(EnclosedLiquid.COOLING.outside(5e9, 10).orElseThrow())
                .contains("0.80 Ra^(1/4)")
                .contains("Rayleigh number")
                .contains("5.00e+09");
        assertThat(EnclosedLiquid.COOLING.outside(1e8, 100).orElseThrow()).contains("Prandtl number");
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> VerticalPlate.churchillChu(-1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalPlate.churchillChu(Double.NaN, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalPlate.churchillChuLaminar(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalCylinder.slenderness(1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VerticalCylinder.popiel(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HorizontalPlate.stableMcAdams(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HorizontalPlate.unstableMcAdams(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CrossflowCylinder.churchillBernstein(-1, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Sphere.whitaker(1, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Radiation.greySurface(1.1, 300, 300)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Radiation.greySurface(0.5, -1, 300)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> EnclosedLiquid.conduction(0)).isInstanceOf(IllegalArgumentException.class);
    }
}
