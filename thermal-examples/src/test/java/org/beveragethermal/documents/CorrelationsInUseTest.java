/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.core.correlation.ClearSky;
import org.beveragethermal.core.correlation.Correlation;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.correlation.FallingFilm;
import org.beveragethermal.core.correlation.FlatPlate;
import org.beveragethermal.core.correlation.HorizontalAnnulus;
import org.beveragethermal.core.correlation.HorizontalCylinder;
import org.beveragethermal.core.correlation.HorizontalLayer;
import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.correlation.NusseltLaw;
import org.beveragethermal.core.correlation.PenetrativeConvection;
import org.beveragethermal.core.correlation.PlateLaw;
import org.beveragethermal.core.correlation.PowerLaw;
import org.beveragethermal.core.correlation.SkyRadiation;
import org.beveragethermal.core.correlation.SolarPosition;
import org.beveragethermal.core.correlation.Sphere;
import org.beveragethermal.core.correlation.VerticalCylinder;
import org.beveragethermal.core.correlation.VerticalLayer;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.junit.jupiter.api.Test;

/** The laws of heat transfer as a user calls them, held against limits that need no table. */
class CorrelationsInUseTest {

    private static final List<Correlation> LAWS = List.of(
            VerticalPlate.CHURCHILL_CHU,
            VerticalCylinder.popiel(4),
            HorizontalCylinder.CHURCHILL_CHU,
            HorizontalPlate.UNSTABLE_MCADAMS,
            HorizontalPlate.STABLE_MCADAMS,
            CrossflowCylinder.CHURCHILL_BERNSTEIN,
            FlatPlate.LAMINAR,
            Sphere.WHITAKER,
            EnclosedLiquid.COOLING,
            VerticalLayer.elSherbiny(20));

    @Test
    void lawsRiseWithTheirDriveAndSayHowFast() {
        for (Correlation correlation : LAWS) {
            NusseltLaw law = correlation.law();
            double drive = 3e5;
            double step = 1e-4 * drive;
            double slope = (law.nusselt(drive + step, 0.71) - law.nusselt(drive - step, 0.71)) / (2 * step);
            assertThat(law.byDrive(drive, 0.71))
                    .as(correlation.name())
                    .isPositive()
                    .isCloseTo(slope, within(1e-4 * slope));
        }
    }

    @Test
    void aLawOfAUsersOwnIsAnExpression() {
        NusseltLaw own = NusseltLaw.of((ra, pr) -> 0.80 * Math.pow(ra, 0.25));
        NusseltLaw shipped = new PowerLaw(0.80, 0.25);
        assertThat(own.nusselt(1e8, 10)).isCloseTo(shipped.nusselt(1e8, 10), within(1e-9));
        assertThat(EnclosedLiquid.COOLING.law().nusselt(1e8, 10)).isCloseTo(80, within(1e-9));
    }

    @Test
    void atRestOnlyConductionIsLeft() {
        assertThat(HorizontalLayer.hollands(1000)).isEqualTo(1);
        assertThat(HorizontalAnnulus.raithbyHollands(1, 0.71, 0.08, 0.10)).isEqualTo(1);
        assertThat(VerticalLayer.elSherbiny(0, 20)).isEqualTo(1);
        assertThat(Sphere.whitaker(1e-9, 0.71, 1)).isCloseTo(2, within(1e-3));
        assertThat(PenetrativeConvection.heatFlux(0.57, 0, 1e13, 1, 9.80665)).isZero();
        // The first root of the Bessel function J0 is 2.404826 (Abramowitz and Stegun, table 9.5).
        assertThat(EnclosedLiquid.conduction(1)).isCloseTo(2.404826 * 2.404826 / 2, within(1e-5));
    }

    @Test
    void aSlenderCylinderTakesMoreThanAPlate() {
        PlateLaw slender = (PlateLaw) VerticalCylinder.popiel(8).law();
        assertThat(slender.heightOverDiameter()).isEqualTo(8);
        assertThat(slender.nusselt(1e7, 0.71)).isGreaterThan(VerticalPlate.churchillChu(1e7, 0.71));
        assertThat(FlatPlate.laminar(1e4, 1)).isCloseTo(66.4, within(1e-9));
    }

    @Test
    void aFilmThatRunsDownIsNeverThinnerThanItsLongRun() {
        assertThat(FallingFilm.wilke(100, 7, 10)).isGreaterThan(FallingFilm.wilke(100, 7, 1e9));
    }

    @Test
    void theSunOfAnEquinoxStandsOverTheEquatorAndTheSkyIsColderThanTheAir() {
        double equinox = SolarPosition.declination(81);
        assertThat(equinox).isCloseTo(0, within(0.01));
        double noon = SolarPosition.elevation(0, equinox, 12);
        assertThat(noon).isCloseTo(Math.PI / 2, within(0.01));
        assertThat(ClearSky.beam(81, false, noon))
                .isGreaterThan(ClearSky.diffuse(81, false, noon))
                .isLessThan(1361);
        assertThat(SkyRadiation.clearSky(288.15, 283.15)).isLessThan(288.15).isGreaterThan(SkyRadiation.swinbank(260));
    }
}
