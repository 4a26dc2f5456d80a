/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Laws of a lying cylinder, outside and inside. */
class HorizontalCylinderTest {

    @Test
    void pipeOfATextbook() {
        OutsideChecks.published(
                        "correlation-horizontal-cylinder",
                        "Y. A. Cengel and A. J. Ghajar, Heat and Mass Transfer, 5th ed., example 9-1")
                .what("Nu of a level pipe of 80 mm at 70 °C in air of 20 °C, Ra 1.867e6, Pr 0.7241")
                .unit("1")
                .expected(17.39)
                .withinRelative(0.002)
                .check(HorizontalCylinder.churchillChu(1.867e6, 0.7241));
        assertThat(HorizontalCylinder.churchillChu(1_867_000, 0.7241)).isCloseTo(17.3933181, within(1e-6));
        assertThat(HorizontalCylinder.churchillChu(0, 7)).isCloseTo(0.36, within(1e-15));
    }

    @Test
    void otherLawsLieWithinTheScatter() {
        // Morgan 1975 and Kuehn and Goldstein 1976, as the test values of a general-purpose library have them.
        double[] grashof = {1e4, 1e7, 1e10};
        double[] morgan = {4.707784, 26.29068, 258.0315};
        for (int i = 0; i < 3; i++) {
            OutsideChecks.referenceLibrary(
                            "correlation-horizontal-cylinder-morgan-" + i,
                            "ht (general-purpose heat transfer library, MIT), its test values: Morgan 1975")
                    .what(String.format(
                            java.util.Locale.ROOT,
                            "Nu of a level cylinder by another law, Pr 0.9, Gr %.0e",
                            grashof[i]))
                    .unit("1")
                    .expected(morgan[i])
                    .withinRelative(0.15)
                    .check(HorizontalCylinder.churchillChu(0.9 * grashof[i], 0.9));
        }
        OutsideChecks.referenceLibrary(
                        "correlation-horizontal-cylinder-kuehn",
                        "ht (general-purpose heat transfer library, MIT), its test values: Kuehn and Goldstein 1976")
                .what("Nu of a level cylinder by another law, Pr 0.69, Gr 2.63e9")
                .unit("1")
                .expected(122.9932)
                .withinRelative(0.15)
                .check(HorizontalCylinder.churchillChu(0.69 * 2.63e9, 0.69));
    }

    @Test
    void slopesAreThoseOfTheFormula() {
        NusseltLaw law = HorizontalCylinder.CHURCHILL_CHU.law();
        for (double ra : new double[] {1e3, 1e6, 1e9}) {
            for (double pr : new double[] {0.7, 7, 20}) {
                double byRa = (law.nusselt(ra * 1.0001, pr) - law.nusselt(ra * 0.9999, pr)) / (2e-4 * ra);
                double byPr = (law.nusselt(ra, pr * 1.0001) - law.nusselt(ra, pr * 0.9999)) / (2e-4 * pr);
                assertThat(law.byDrive(ra, pr)).isCloseTo(byRa, within(1e-6 * byRa));
                assertThat(law.byPrandtl(ra, pr)).isCloseTo(byPr, within(1e-6 * byPr));
            }
        }
    }

    @Test
    void aRoundWallAgainstAPlaneOne() {
        // The integral of the thin layer by the midpoint rule; for the outside of cylinders Raithby and Hollands give
        // the
        // same 0.772 (from memory).
        int n = 2_000_000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += Math.cbrt(Math.sin(Math.PI * (i + 0.5) / n)) * Math.PI / 2 / n;
        }
        assertThat(EnclosedLiquid.ROUND_WALL).isCloseTo(Math.pow(sum, 0.75) / (Math.PI / 2), within(1e-5));
        OutsideChecks.fromMemory(
                        "correlation-round-wall",
                        "G. D. Raithby and K. G. T. Hollands, thin-layer factor of a horizontal cylinder")
                .what("mean laminar coefficient of a circle over that of an upright wall as high")
                .unit("1")
                .expected(0.772)
                .within(5e-4)
                .check(EnclosedLiquid.ROUND_WALL);
    }

    @Test
    void aLyingLiquidAgainstAMeasuredCylinder() {
        // Measured inside a level cylinder whose wall warms steadily, Nu on diameter and wall to mean of the liquid:
        // 1.181 Ra^0.214 (constants and range from memory).
        for (double ra : new double[] {1e6, 1e7}) {
            OutsideChecks.fromMemory(
                            "correlation-lying-liquid-" + Math.round(Math.log10(ra)),
                            "T. G. Deaver and E. R. G. Eckert, 4th Int. Heat Transfer Conf., Paris 1970, liquid in a level"
                                    + " cylinder whose wall warms steadily: Nu = 1.181 Ra^0.214")
                    .what(String.format(
                            java.util.Locale.ROOT, "Nu of a liquid warming in a level cylinder, Ra %.0e", ra))
                    .unit("1")
                    .expected(1.181 * Math.pow(ra, 0.214))
                    .withinRelative(0.30)
                    .check(EnclosedLiquid.LYING_WARMING.law().nusselt(ra, 7));
        }
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> HorizontalCylinder.churchillChu(-1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HorizontalCylinder.churchillChu(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HorizontalCylinder.churchillChu(Double.NaN, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
