/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.correlation.VerticalCylinder;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Evaporation both ways, smooth, and at the temperature at which a wet surface balances heat and vapour. */
final class EvaporatingFilmProperties {

    private static final double ZERO = 273.15;
    private static final double PRESSURE = 101_325;
    private static final String TEXTBOOK = "Y. A. Cengel and A. J. Ghajar, Heat and Mass Transfer, 5th ed., example ";

    private static ConvectiveFilm still(double humidity) {
        return ConvectiveFilm.free(0.07, 0.3, Fluid.moistAir(PRESSURE, humidity, 1), VerticalCylinder.popiel(4));
    }

    private static ConvectiveFilm windy(double humidity) {
        return still(humidity).withStream(2, 0.075, CrossflowCylinder.CHURCHILL_BERNSTEIN);
    }

    private static ConvectiveFilm level(double humidity) {
        return ConvectiveFilm.free(0.004, 0.02, Fluid.moistAir(PRESSURE, humidity, 1), HorizontalPlate.STABLE_MCADAMS)
                .whenColder(HorizontalPlate.UNSTABLE_MCADAMS_BOTH)
                .atLeast(0.6);
    }

    private static double watts(Film film, double airK, double surfaceK) {
        HeatFlow out = new HeatFlow();
        film.evaluate(airK, surfaceK, out);
        return out.watts;
    }

    private static double conductance(ConvectiveFilm film, double airK, double surfaceK) {
        HeatFlow out = new HeatFlow();
        film.conductance(airK, surfaceK, out);
        return out.watts;
    }

    private static double root(UnivariateFunction balance, double lowC, double highC) {
        return new BrentSolver(1e-10).solve(200, balance, lowC, highC);
    }

    /** Where the film alone leaves a surface that takes heat from nothing else [°C]. */
    private static double settledC(double airC, double humidity) {
        ConvectiveFilm film = windy(humidity);
        EvaporatingFilm vapour = EvaporatingFilm.of(film, humidity, PRESSURE, 1);
        return root(
                t -> watts(film, ZERO + airC, ZERO + t) + watts(vapour, ZERO + airC, ZERO + t), airC - 40, airC + 0.01);
    }

    @Property(tries = 100, seed = "20261126")
    void awayFromTheSurfaceAboveTheDewPointAndToItBelow(
            @ForAll @DoubleRange(min = -20, max = 45) double airC,
            @ForAll @DoubleRange(min = 0.05, max = 1) double humidity,
            @ForAll @DoubleRange(min = 0.01, max = 20) double apartK) {
        double air = ZERO + airC;
        double dew = MoistAir.dewPointK(air, humidity);
        EvaporatingFilm vapour = EvaporatingFilm.of(still(humidity), humidity, PRESSURE, 1);
        if (dew > 230 && Math.abs(dew - ZERO) > 0.1) {
            assertThat(watts(vapour, air, dew + apartK)).isNegative();
            assertThat(watts(vapour, air, Math.max(dew - apartK, 223.2))).isPositive();
            // Below the dew point it is what condenses, but for the lightness of moist air.
            CondensingFilm dewOnly = CondensingFilm.of(still(humidity), humidity, PRESSURE);
            double below = Math.max(dew - 1 - apartK, 223.2);
            assertThat(watts(vapour, air, below))
                    .isCloseTo(watts(dewOnly, air, below), within(1e-9 * watts(dewOnly, air, below)));
        }
    }

    @Property(tries = 150, seed = "20261127")
    void slopesAreThoseOfTheFlow(
            @ForAll @DoubleRange(min = -10, max = 45) double airC,
            @ForAll @DoubleRange(min = 0.0, max = 1) double humidity,
            @ForAll @DoubleRange(min = -15, max = 60) double aboveK) {
        double air = ZERO + airC;
        double surface = air + aboveK;
        if (surface < 230 || Math.abs(surface - 273.15) < 0.2 || Math.abs(air - 273.16) < 1e-3 || surface > 368) {
            return;
        }
        double step = 1e-5;
        for (ConvectiveFilm through : new ConvectiveFilm[] {still(humidity), windy(humidity), level(humidity)}) {
            EvaporatingFilm film = EvaporatingFilm.of(through, humidity, PRESSURE, 0.9);
            for (Film law : new Film[] {film, through}) {
                HeatFlow out = new HeatFlow();
                law.evaluate(air, surface, out);
                double scale = Math.abs(out.perFromKelvin) + Math.abs(out.perToKelvin);
                assertThat(out.perFromKelvin)
                        .isCloseTo(
                                (watts(law, air + step, surface) - watts(law, air - step, surface)) / (2 * step),
                                within(2e-3 * scale));
                assertThat(out.perToKelvin)
                        .isCloseTo(
                                (watts(law, air, surface + step) - watts(law, air, surface - step)) / (2 * step),
                                within(2e-3 * scale));
            }
        }
    }

    @Test
    void aDrinkInAWetClothBeforeAFan() {
        // The text drives vapour by (p_s - p_v)/p; with the counterflow of air, which it leaves out, 2 % more
        // evaporates.
        // It takes the properties at 20 °C once: 30 °C less latent heat over the film's conductance there.
        ConvectiveFilm film = windy(0.4);
        EvaporatingFilm vapour = EvaporatingFilm.of(film, 0.4, PRESSURE, 1);
        double onePass = 30 + watts(vapour, ZERO + 30, ZERO + 20) / conductance(film, ZERO + 30, ZERO + 20);
        OutsideChecks.published("evaporation-wet-cloth", TEXTBOOK + "14-13")
                .what("temperature of a wet cloth before a fan, 30 °C, 40 %, with the properties of 20 °C")
                .unit("°C")
                .expected(19.4)
                .within(0.35)
                .check(onePass);
        // The same equation to its root, with the saturation pressure of Hyland and Wexler and the textbook's Lewis
        // number.
        double converged = root(
                t -> 30
                        - t
                        - 18.015
                                / 28.97
                                * (2.501e6 - 2361 * t)
                                / (1007 * Math.pow(0.8564, 2.0 / 3))
                                * (MoistAir.saturationPressure(ZERO + t) - 0.4 * MoistAir.saturationPressure(ZERO + 30))
                                / PRESSURE,
                0,
                30);
        OutsideChecks.published(
                        "evaporation-wet-cloth-root",
                        TEXTBOOK + "14-13, its equation solved to the root by Commons Math 3.6.1, BrentSolver")
                .what("temperature of the same cloth, all properties at the surface")
                .unit("°C")
                .expected(converged)
                .within(0.25)
                .check(settledC(30, 0.4));
        assertThat(converged).isCloseTo(19.817, within(0.002));
    }

    @Test
    void withRadiationItIsWarmer() {
        ConvectiveFilm film = windy(0.4);
        EvaporatingFilm vapour = EvaporatingFilm.of(film, 0.4, PRESSURE, 1);
        // Radiation a quarter as strong as convection.
        double settled = root(t -> 1.25 * watts(film, ZERO + 30, ZERO + t) + watts(vapour, ZERO + 30, ZERO + t), 0, 30);
        OutsideChecks.published(
                        "evaporation-wet-cloth-radiation",
                        TEXTBOOK + "14-13, its equation with radiation of a quarter of convection, solved to the root")
                .what("temperature of a wet cloth that also sees walls of 30 °C")
                .unit("°C")
                .expected(20.51)
                .within(0.25)
                .check(settled);
        assertThat(settled).isGreaterThan(settledC(30, 0.4) + 0.4);
    }

    @Test
    void settlesJustBelowTheWetBulb() {
        // Humidities of rooms; at 10 % it is up to 0.63 K. With a Lewis number of 0.85 and without radiation the
        // surface lies below the thermodynamic wet bulb.
        double farthest = 0;
        for (double airC : new double[] {15, 20, 25, 30, 35, 40}) {
            for (double humidity : new double[] {0.2, 0.35, 0.5, 0.7, 0.9}) {
                double wetBulb = MoistAir.wetBulbK(ZERO + airC, humidity, PRESSURE) - ZERO;
                double below = wetBulb - settledC(airC, humidity);
                if (wetBulb > 0.5) {
                    assertThat(below).as("%s °C, %s", airC, humidity).isBetween(0.0, 0.6);
                    farthest = Math.max(farthest, below);
                }
            }
        }
        assertThat(farthest).isGreaterThan(0.3);
        OutsideChecks.published(
                        "evaporation-wet-bulb",
                        "thermodynamic wet bulb of 23 °C, 60 % by the equations of ASHRAE Handbook of Fundamentals 2017, ch. 1")
                .what("temperature of a wet surface in wind without radiation")
                .unit("°C")
                .expected(17.739)
                .within(0.6)
                .check(settledC(23, 0.6));
    }

    @Test
    void anOpenBath() {
        double humidity = 0.52;
        double pressure = 92_000;
        double air = ZERO + 25;
        double surface = ZERO + 50;
        ConvectiveFilm film = ConvectiveFilm.free(
                        3.5, 0.3889, Fluid.moistAir(pressure, humidity, 1), HorizontalPlate.STABLE_MCADAMS)
                .whenColder(HorizontalPlate.UNSTABLE_MCADAMS_BOTH);
        OutsideChecks.published("open-bath-convection", TEXTBOOK + "14-14")
                .what("coefficient of free convection over water at 50 °C, moist air being lighter")
                .unit("W/(m² K)")
                .expected(5.47)
                .withinRelative(0.05)
                .check(conductance(film, air, surface) / 3.5);
        OutsideChecks.published("open-bath-radiation", TEXTBOOK + "14-14")
                .what("radiation of an open bath of 3.5 m² at 50 °C to 20 °C")
                .unit("W")
                .expected(663)
                .withinRelative(0.005)
                .check(-watts(new RadiativeFilm(3.5, 0.95), 293, 323));
        // The text leaves out the counterflow of air (8 % at this vapour pressure) and takes each density of vapour at
        // its own
        // temperature (5 %); that and 3 % of the coefficient are what is allowed.
        OutsideChecks.published("open-bath-evaporation", TEXTBOOK + "14-14, evaporation by its formulas, recomputed")
                .what("heat that evaporates from the bath")
                .unit("W")
                .expected(3473)
                .withinRelative(0.17)
                .check(-watts(EvaporatingFilm.of(film, humidity, pressure, 1), air, surface));
        ConvectiveFilm dry = ConvectiveFilm.free(3.5, 0.3889, Fluid.air(pressure), HorizontalPlate.STABLE_MCADAMS)
                .whenColder(HorizontalPlate.UNSTABLE_MCADAMS_BOTH);
        assertThat(conductance(film, air, surface) / conductance(dry, air, surface))
                .isBetween(1.05, 1.20);
    }

    @Test
    void vapourTakesItsEnthalpyAlong() {
        OutsideChecks.fromMemory("vapour-enthalpy", "steam tables: saturated vapour at 20 °C")
                .what("enthalpy of water vapour at 20 °C above liquid water at 0 °C")
                .unit("kJ/kg")
                .expected(2537.4)
                .withinRelative(0.001)
                .check(EvaporatingFilm.vapourEnthalpy().at(ZERO + 20) / 1000);
        // Over ice it is the same vapour: heat of sublimation less what ice lies below water.
        assertThat(EvaporatingFilm.vapourEnthalpy().at(ZERO - 10))
                .isCloseTo(2.8365e6 - 333.4e3 - 10 * 2070, within(2e3));
        HeatFlow mass = new HeatFlow();
        EvaporatingFilm film = EvaporatingFilm.of(windy(0.5), 0.5, PRESSURE, 1);
        film.massFlow(ZERO + 20, ZERO + 18, mass);
        assertThat(mass.watts * MoistAir.latentHeatOfEvaporation(ZERO + 18))
                .isCloseTo(watts(film, ZERO + 20, ZERO + 18), within(1e-4));
    }

    @Test
    void drinksEvaporateLess() {
        double wine = EvaporatingFilm.idealWaterActivity(
                Beverage.wine(Measures.percentByVolume(12)).composition());
        double spirit = EvaporatingFilm.idealWaterActivity(
                Beverage.spirit(Measures.percentByVolume(40)).composition());
        assertThat(wine).isBetween(0.955, 0.967);
        assertThat(spirit).isBetween(0.83, 0.86);
        assertThat(EvaporatingFilm.idealWaterActivity(Beverage.water().composition()))
                .isEqualTo(1);
        double air = ZERO + 20;
        assertThat(-watts(EvaporatingFilm.of(still(0.5), 0.5, PRESSURE, wine), air, air))
                .isLessThan(-watts(EvaporatingFilm.of(still(0.5), 0.5, PRESSURE, 1), air, air));
        // Saturated air at the temperature of pure water gives and takes nothing.
        assertThat(watts(EvaporatingFilm.of(still(1), 1, PRESSURE, 1), air, air))
                .isCloseTo(0, within(1e-12));
    }

    @Test
    void badInputAndFarFromAnything() {
        ConvectiveFilm film = still(0.5);
        assertThatThrownBy(() -> EvaporatingFilm.of(film, 1.2, PRESSURE, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> EvaporatingFilm.of(film, 0.5, 3e4, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> EvaporatingFilm.of(film, 0.5, PRESSURE, 0))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("water activity");
        assertThatThrownBy(() -> Fluid.moistAir(PRESSURE, -0.1, 1)).isInstanceOf(OutOfRangeException.class);
        EvaporatingFilm wet = EvaporatingFilm.of(level(1), 1, PRESSURE, 1);
        for (double surface : new double[] {100, 223, 372, 380, 400, 2000}) {
            assertThat(watts(wet, ZERO + 30, surface)).isFinite();
            assertThat(wet.describe(ZERO + 30, surface).law()).contains(surface < ZERO ? "ice" : "wet surface");
        }
    }
}
