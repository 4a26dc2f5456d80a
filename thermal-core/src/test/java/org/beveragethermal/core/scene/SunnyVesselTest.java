/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.degrees;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetre;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.prediction.Explanation;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature.Reached;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.BareIce;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.DrinkTint;
import org.beveragethermal.core.surroundings.Footing;
import org.beveragethermal.core.surroundings.GlassTint;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.SolarIrradiance;
import org.beveragethermal.core.surroundings.SunOptics;
import org.beveragethermal.core.surroundings.Sunlight;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Vessels in the sun and under the night sky. */
class SunnyVesselTest {

    private static final Liquid WINE = Beverage.wine(percentByVolume(12.5));
    private static final Vessel BOTTLE = Vessels.highShouldered750();
    private static final FilledVessel COLD = BOTTLE.filledWith(WINE, celsius(8));
    private static final Duration TWO_HOURS = Duration.ofHours(2);
    private static final Air TERRACE = Air.at(celsius(25));
    private static final SolarIrradiance NOON =
            SolarIrradiance.of(wattsPerSquareMetre(850), wattsPerSquareMetre(110), degrees(55));
    private static final Air SUNNY = TERRACE.withSun(Sunlight.constant(NOON));
    private static final VesselModel RED = VesselModel.lumped().tinted(GlassTint.GREEN, DrinkTint.DARK);
    private static final VesselModel WHITE = VesselModel.lumped().tinted(GlassTint.COLOURLESS, DrinkTint.PALE);

    private static Prediction run(VesselModel model, Air air, Duration time) {
        return Layered.of(COLD, model).expose(in(air, time));
    }

    private static double sunJ(Prediction run) {
        return run.ledger().entries().stream()
                .filter(entry -> entry.mechanism().equals("sun"))
                .mapToDouble(entry -> entry.from().contains("sun") ? entry.heatJ() : -entry.heatJ())
                .sum();
    }

    private static double minutesTo(Prediction run, double celsius) {
        return ((Reached) run.timeTo(celsius(celsius))).after().toMillis() / 60_000.0;
    }

    @Test
    void aBottleInTheSunWarmsMuchFasterThanInTheShade() {
        double shade = minutesTo(run(RED, TERRACE, Duration.ofHours(4)), 16);
        double red = minutesTo(run(RED, SUNNY, Duration.ofHours(4)), 16);
        double white = minutesTo(run(WHITE, SUNNY, Duration.ofHours(4)), 16);
        double label = minutesTo(
                run(
                        VesselModel.lumped().wrappedIn(Layer.of(Solids.paper(), millimetres(0.1))),
                        SUNNY,
                        Duration.ofHours(4)),
                16);
        System.out.printf(
                Locale.ROOT,
                "750 mL from 8 to 16 °C, air 25 °C: shade %.0f min; sun 850 W/m² at 55°: dark glass and red wine %.0f min, clear"
                        + " glass and white wine %.0f min, in paper all round %.0f min%n",
                shade,
                red,
                white,
                label);
        OutsideChecks.commonPractice("sun-warms-faster")
                .what("minutes from 8 to 16 °C in the shade over those in the sun, red wine in green glass, air 25 °C")
                .unit("1")
                .between(1.5, 6)
                .check(shade / red);
        assertThat(white).isGreaterThan(red).isLessThan(shade);
        assertThat(label).isLessThan(shade);
    }

    @Test
    void nothingFromTheSunIsAsIfThereWereNone() {
        Air night = TERRACE.withSun(Sunlight.constant(
                        SolarIrradiance.of(wattsPerSquareMetre(900), wattsPerSquareMetre(0), degrees(-5))))
                .withSpeed(metresPerSecond(0));
        for (VesselModel model : List.of(RED, VesselModel.axial(8), VesselModel.radial(5), VesselModel.mixed())) {
            Prediction dark = run(model, TERRACE, TWO_HOURS);
            Prediction same = run(model, night, TWO_HOURS);
            for (int minute = 10; minute <= 120; minute += 10) {
                assertThat(same.profileK(60 * minute)).isEqualTo(dark.profileK(60 * minute));
                assertThat(same.wallTemperatureK(0, 60 * minute)).isEqualTo(dark.wallTemperatureK(0, 60 * minute));
            }
            assertThat(sunJ(same)).isZero();
        }
    }

    @Test
    void theLedgerHasTheSunsHeat() {
        Air open = SUNNY.on(Footing.open());
        double profile = 0;
        double height = BOTTLE.profile().heightM();
        int count = 2000;
        for (int i = 0; i < count; i++) {
            profile += 2 * BOTTLE.profile().outerRadiusM(height * (i + 0.5) / count) * height / count;
        }
        double elevation = NOON.elevationRad();
        double side = BOTTLE.profile().outerSideAreaM2(0, height);
        double level = 850 * Math.sin(elevation) + 110;
        // From the outline alone: shoulders that lean back get up to a sixth more.
        double least = 850 * Math.cos(elevation) * profile + side * 0.5 * (110 + 0.2 * level);
        double most = least
                + 850
                        * Math.sin(elevation)
                        * Math.PI
                        * Math.pow(BOTTLE.profile().maxOuterRadiusM(), 2);
        SunOptics optics = SunOptics.filled(GlassTint.GREEN, DrinkTint.DARK, Math.PI / 4 * 0.07);
        double taken = optics.absorbed() + optics.transmitted();
        for (VesselModel model : List.of(
                RED,
                VesselModel.axial(10).tinted(GlassTint.GREEN, DrinkTint.DARK),
                VesselModel.radial(6).tinted(GlassTint.GREEN, DrinkTint.DARK),
                VesselModel.mixed().tinted(GlassTint.GREEN, DrinkTint.DARK))) {
            for (Exposure exposure : List.of(
                    in(SUNNY, TWO_HOURS),
                    in(open, TWO_HOURS),
                    in(SUNNY, TWO_HOURS).lying())) {
                Prediction run = Layered.of(COLD, model).expose(exposure);
                assertThat(run.ledger().closure()).isLessThan(1e-9);
                Explanation explained = run.explainAt(Duration.ofHours(1));
                assertThat(explained.account().closure()).isLessThan(1e-9);
                assertThat(explained.text()).contains("by sun from");
                assertThat(run.notes()).anyMatch(note -> note.contains("sun"));
            }
            double joules = sunJ(run(model, SUNNY, TWO_HOURS));
            assertThat(joules / 7200)
                    .as(model.toString())
                    .isGreaterThan(0.93 * taken * least)
                    .isLessThan(1.02 * taken * most);
        }
    }

    @Test
    void everyDescriptionTakesUpTheSame() {
        double lumped = sunJ(run(WHITE, SUNNY, TWO_HOURS));
        double axial = sunJ(run(VesselModel.axial(12).tinted(GlassTint.COLOURLESS, DrinkTint.PALE), SUNNY, TWO_HOURS));
        double radial = sunJ(run(VesselModel.radial(8).tinted(GlassTint.COLOURLESS, DrinkTint.PALE), SUNNY, TWO_HOURS));
        assertThat(radial).isCloseTo(lumped, within(1e-6 * lumped));
        // Slices know how wide the bottle is where the light passes, and have a closure.
        assertThat(axial).isCloseTo(lumped, within(0.08 * lumped));
        // Nothing is lost where the vessel stands on its mouth or lies.
        VesselModel slices = VesselModel.axial(12).tinted(GlassTint.COLOURLESS, DrinkTint.PALE);
        for (Exposure exposure :
                List.of(in(SUNNY, TWO_HOURS).inverted(), in(SUNNY, TWO_HOURS).lying())) {
            Prediction run = Layered.of(COLD, slices).expose(exposure);
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            double light = run.ledger().entries().stream()
                    .filter(entry -> entry.path().contains("light into"))
                    .mapToDouble(LedgerEntry::heatJ)
                    .sum();
            assertThat(light).isGreaterThan(0.3 * sunJ(run)).isLessThan(0.9 * sunJ(run));
        }
    }

    @Test
    void shadeFromAMinuteOnEndsTheSunThere() {
        Air terrace = TERRACE.withSun(Sunlight.constant(NOON).withShadeFrom(Duration.ofMinutes(30), percent(0)));
        Prediction shaded = run(RED, terrace, TWO_HOURS);
        Prediction sunny = run(RED, SUNNY, TWO_HOURS);
        assertThat(shaded.meanTemperatureK(1800)).isCloseTo(sunny.meanTemperatureK(1800), within(2e-3));
        assertThat(sunJ(shaded)).isCloseTo(0.25 * sunJ(sunny), within(1e-6 * sunJ(sunny)));
        // The same by a move into the shade.
        Prediction moved =
                Layered.of(COLD, RED).expose(in(SUNNY, Duration.ofMinutes(30)), in(TERRACE, Duration.ofMinutes(90)));
        for (int minute = 40; minute <= 120; minute += 20) {
            assertThat(shaded.meanTemperatureK(60 * minute))
                    .isCloseTo(moved.meanTemperatureK(60 * minute), within(3e-3));
        }
    }

    @Test
    void aDayOfSunIsSolvedToItsTolerance() {
        Air garden = Air.at(celsius(20)).withSun(Sunlight.clearDay(degrees(45), 172, LocalTime.of(3, 0)));
        Prediction coarse = run(RED, garden, Duration.ofHours(24));
        Prediction fine = Layered.of(COLD, RED)
                .with(NetworkSolver.standard().withToleranceK(1e-5))
                .expose(in(garden, Duration.ofHours(24)));
        for (int hour = 2; hour <= 24; hour += 2) {
            assertThat(coarse.meanTemperatureK(3600 * hour))
                    .isCloseTo(fine.meanTemperatureK(3600 * hour), within(1e-2));
        }
        assertThat(coarse.ledger().closure()).isLessThan(1e-9);
        assertThat(coarse.meanTemperatureK(14 * 3600)).isGreaterThan(coarse.meanTemperatureK(24 * 3600) + 3);
    }

    @Test
    void glassThatIsWrappedIsAsOpaqueAsItsLayer() {
        Layer black = Layer.of(Solids.neopreneFoam(), millimetres(3)).withSolarAbsorptance(0.95);
        Layer white = black.withSolarAbsorptance(0.2);
        double dark = sunJ(run(WHITE.wrappedIn(black), SUNNY, TWO_HOURS));
        double pale = sunJ(run(WHITE.wrappedIn(white), SUNNY, TWO_HOURS));
        assertThat(dark / pale).isCloseTo(0.95 / 0.2, within(1e-9));
        assertThat(run(WHITE.wrappedIn(white), SUNNY, TWO_HOURS).ledger().entries())
                .noneMatch(entry -> entry.path().contains("light into"));
    }

    @Test
    void theSunIsUncertainAsAFactor() {
        Prediction more = Layered.of(COLD, RED)
                .with(NetworkSolver.standard().withMultipliers(Map.of(Multipliers.SUN, 1.1)))
                .expose(in(SUNNY, TWO_HOURS));
        assertThat(sunJ(more)).isCloseTo(1.1 * sunJ(run(RED, SUNNY, TWO_HOURS)), within(1.0));
    }

    @Test
    void aVesselInIceGetsItsSunWhereItReachesOut() {
        BareIce ice = BareIce.crushed(Bucket.of(millimetres(200), millimetres(240)), kilograms(1.5), SUNNY);
        Prediction run = Layered.of(COLD, VesselModel.axial(8)).expose(in(ice, Duration.ofMinutes(20)));
        assertThat(sunJ(run))
                .isPositive()
                .isLessThan(0.7 * sunJ(run(VesselModel.axial(8), SUNNY, Duration.ofMinutes(20))));
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void theNightSkyCoolsBelowTheAir() {
        FilledVessel warm = BOTTLE.filledWith(WINE, celsius(15));
        Air night = Air.at(celsius(15));
        Duration nineHours = Duration.ofHours(9);
        Prediction under = Lumped.of(warm).expose(in(night.withClearSky(), nineHours));
        Prediction humid = Lumped.of(warm)
                .expose(in(night.withRelativeHumidity(percent(60)).withClearSky(), nineHours));
        Prediction cloudy = Lumped.of(warm).expose(in(night.withSky(celsius(15)), nineHours));
        double end = 9 * 3600;
        double colder = 288.15 - under.meanTemperatureK(end);
        System.out.printf(
                Locale.ROOT,
                "750 mL of 15 °C after a clear night of 9 h, still air of 15 °C: %.1f °C by Swinbank, %.1f °C at 60 %% humidity%n",
                under.meanTemperatureK(end) - 273.15,
                humid.meanTemperatureK(end) - 273.15);
        OutsideChecks.commonPractice("night-sky-cools")
                .what("how far a bottle falls below still air of 15 °C in a clear night of 9 h")
                .unit("K")
                .between(1, 8)
                .check(colder);
        assertThat(cloudy.meanTemperatureK(end)).isCloseTo(288.15, within(1e-9));
        // Never below the sky itself, and less deep under moist air; windy air ties it to the air.
        assertThat(under.meanTemperatureK(end)).isGreaterThan(0.0552 * Math.pow(288.15, 1.5));
        Prediction windy = Lumped.of(warm).expose(in(night.withClearSky().withSpeed(metresPerSecond(4)), nineHours));
        assertThat(windy.meanTemperatureK(end)).isGreaterThan(under.meanTemperatureK(end));
        Prediction dry = Lumped.of(warm)
                .expose(in(night.withRelativeHumidity(percent(25)).withClearSky(), nineHours));
        assertThat(humid.meanTemperatureK(end)).isGreaterThan(dry.meanTemperatureK(end));
        assertThat(under.ledger().closure()).isLessThan(1e-9);
        // A sky as warm as the walls is the room itself, but for the order of sums.
        Prediction room = Lumped.of(COLD).expose(in(TERRACE, TWO_HOURS));
        Prediction same = Lumped.of(COLD).expose(in(TERRACE.withSky(celsius(25)), TWO_HOURS));
        assertThat(same.meanTemperatureK(7200)).isCloseTo(room.meanTemperatureK(7200), within(1e-6));
    }
}
