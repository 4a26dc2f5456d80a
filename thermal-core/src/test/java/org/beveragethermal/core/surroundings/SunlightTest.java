/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.cubicMetres;
import static org.beveragethermal.materials.units.Measures.degrees;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetre;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.GivenHeat;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Sunlight and what it falls on: closed forms, published figures, limits, refusals. */
class SunlightTest {

    private static final double ZERO = 273.15;
    private static final Vessel BOTTLE = Vessels.highShouldered750();
    private static final SolarIrradiance NOON =
            SolarIrradiance.of(wattsPerSquareMetre(850), wattsPerSquareMetre(110), degrees(60));

    private static Vessel cylinder(double radiusM, double heightM) {
        Profile profile = Profile.builder()
                .station(metres(0), metres(2 * radiusM), millimetres(2))
                .station(metres(heightM), metres(2 * radiusM), millimetres(2))
                .baseThickness(millimetres(2))
                .build();
        return Vessel.builder("tube")
                .shape(VesselShape.TUMBLER)
                .profile(profile)
                .wall(Solids.sodaLimeGlass())
                .nominalVolume(cubicMetres(profile.brimfulVolumeM3()))
                .build();
    }

    private static WallPatch side(Vessel vessel, double lowM, double highM) {
        return new WallPatch(
                lowM,
                highM,
                vessel.profile().outerSideAreaM2(lowM, highM),
                2 * vessel.profile().maxOuterRadiusM(),
                0.9);
    }

    private static SunlitSurface surface(Vessel vessel, WallPatch patch) {
        return SunlitSurface.of(patch, new Occupant("v", vessel));
    }

    private static WallPatch disc(double radiusM, Orientation orientation) {
        return new WallPatch(0, 0, Math.PI * radiusM * radiusM, 2 * radiusM, 0.9, orientation);
    }

    @Property(tries = 200, seed = "20261127")
    @Label("A cylinder shows D H cos + π D²/4 sin")
    void cylinderShowsItsOutline(
            @ForAll @DoubleRange(min = 0.01, max = 1.57) double elevation,
            @ForAll @DoubleRange(min = 0.02, max = 0.1) double radius,
            @ForAll @DoubleRange(min = 0.05, max = 0.4) double height) {
        Vessel tube = cylinder(radius, height);
        double shown = surface(tube, side(tube, 0, height)).beamAreaM2(elevation)
                + surface(tube, disc(radius, Orientation.END_FACING_UP)).beamAreaM2(elevation);
        double closed = 2 * radius * height * Math.cos(elevation) + Math.PI * radius * radius * Math.sin(elevation);
        assertThat(shown).isCloseTo(closed, within(1e-9));
        // The base shows nothing to a sun above the horizon.
        assertThat(surface(tube, disc(radius, Orientation.END_FACING_DOWN)).beamAreaM2(elevation))
                .isZero();
    }

    @Property(tries = 100, seed = "20261128")
    @Label("A bottle shows its outline to a low sun and its circle to a high one, in one band or in many")
    void bottleShowsItsOutline(@ForAll @DoubleRange(min = -1.57, max = 1.57) double elevation) {
        Profile profile = BOTTLE.profile();
        double height = profile.heightM();
        SunlitSurface whole = surface(BOTTLE, side(BOTTLE, 0, height));
        double bands = 0;
        double outline = 0;
        int count = 50;
        for (int i = 0; i < count; i++) {
            double low = height * i / count;
            double high = height * (i + 1) / count;
            bands += surface(BOTTLE, side(BOTTLE, low, high)).beamAreaM2(elevation);
            outline += 2 * profile.outerRadiusM(0.5 * (low + high)) * (high - low);
        }
        double mouth = Math.PI * Math.pow(profile.outerRadiusM(height), 2) * Math.sin(elevation);
        double circle = Math.PI * Math.pow(profile.maxOuterRadiusM(), 2);
        if (elevation <= 0) {
            assertThat(whole.beamAreaM2(elevation)).isZero();
        } else {
            assertThat(whole.beamAreaM2(elevation)).isCloseTo(bands, within(0.02 * outline));
            // Between what an outline that nowhere leans would show and that with its whole plan added.
            assertThat(whole.beamAreaM2(elevation) + mouth)
                    .isGreaterThan(0.99 * outline * Math.cos(elevation) + mouth)
                    .isLessThan(1.01 * outline * Math.cos(elevation) + 1.02 * circle * Math.sin(elevation) + 1e-6);
        }
    }

    @Test
    void highSunSeesTheCircleAndLowSunTheOutline() {
        Profile profile = BOTTLE.profile();
        double height = profile.heightM();
        SunlitSurface whole = surface(BOTTLE, side(BOTTLE, 0, height));
        double mouth = Math.PI * Math.pow(profile.outerRadiusM(height), 2);
        double circle = Math.PI * Math.pow(profile.maxOuterRadiusM(), 2);
        assertThat(whole.beamAreaM2(Math.PI / 2) + mouth).isCloseTo(circle, within(0.02 * circle));
        // Inverted, the shoulder looks down: a high sun sees nothing of the side but the heel round the base.
        WallPatch patch = side(BOTTLE, 0, height);
        Occupant inverted = new Occupant("v", BOTTLE, Placement.of(Posture.INVERTED));
        SunlitSurface upside = SunlitSurface.of(inverted.standing(patch), inverted);
        assertThat(upside.beamAreaM2(Math.PI / 2) + profile.baseAreaM2()).isCloseTo(circle, within(0.03 * circle));
        assertThat(upside.beamAreaM2(1e-9)).isCloseTo(whole.beamAreaM2(1e-9), within(1e-6));
        assertThat(upside.skyAreaM2()).isCloseTo(whole.groundAreaM2(), within(1e-9));
        assertThat(whole.skyAreaM2() + whole.groundAreaM2()).isCloseTo(patch.outerAreaM2(), within(1e-12));
    }

    @Test
    void lyingCylinderShowsTheMeanOverItsDirections() {
        OutsideChecks.published("elliptic-second-kind", "Abramowitz and Stegun, table 17.1, E at m = 0.5")
                .what("complete elliptic integral of the second kind, modulus √0.5")
                .unit("1")
                .expected(1.350643881)
                .within(1e-8)
                .check(SunlitSurface.secondKind(Math.sqrt(0.5)));
        assertThat(SunlitSurface.secondKind(0)).isCloseTo(Math.PI / 2, within(1e-15));
        assertThat(SunlitSurface.secondKind(1)).isEqualTo(1);
        double length = 0.3;
        double diameter = 0.08;
        WallPatch patch =
                new WallPatch(0, diameter, Math.PI * diameter * length, diameter, 0.9, Orientation.LYING_WALL);
        WallPatch end = new WallPatch(0, diameter, 0.005, diameter, 0.9, Orientation.END_FACING_SIDEWAYS);
        for (double elevation : new double[] {0.02, 0.4, 0.9, 1.5}) {
            double sum = 0;
            double facing = 0;
            int directions = 20_000;
            for (int i = 0; i < directions; i++) {
                double along = Math.cos(elevation) * Math.cos(2 * Math.PI * (i + 0.5) / directions);
                sum += diameter * length * Math.sqrt(1 - along * along);
                facing += 0.005 * Math.max(0, along);
            }
            assertThat(surface(BOTTLE, patch).beamAreaM2(elevation)).isCloseTo(sum / directions, within(1e-7));
            assertThat(surface(BOTTLE, end).beamAreaM2(elevation)).isCloseTo(facing / directions, within(1e-7));
        }
    }

    @Property(tries = 300, seed = "20261129")
    @Label("Absorbed + reflected + transmitted = incident")
    void lightIsAccountedFor(
            @ForAll GlassTint glass, @ForAll DrinkTint drink, @ForAll @DoubleRange(min = 0, max = 0.2) double path) {
        SunOptics optics = SunOptics.filled(glass, drink, path);
        // What passes out again, band by band: in through one wall, across the drink, out through the other.
        double[] energy = {0.237, 0.193, 0.167, 0.179, 0.224};
        double[] water = {0.032, 0.45, 3, 35, Double.POSITIVE_INFINITY};
        double out = 0;
        for (int band = 0; band < energy.length; band++) {
            double across = path == 0 ? 1 : Math.exp(-(water[band] + drink.perMetre(band)) * path);
            out += (1 - SunOptics.GLASS_REFLECTANCE)
                    * energy[band]
                    * glass.through(band)
                    * across
                    * glass.through(band);
        }
        assertThat(optics.absorbed() + optics.transmitted() + out + SunOptics.GLASS_REFLECTANCE)
                .isCloseTo(1, within(1e-12));
        assertThat(SunOptics.filled(glass, DrinkTint.DARK, path).transmitted())
                .isGreaterThanOrEqualTo(
                        SunOptics.filled(glass, DrinkTint.PALE, path).transmitted());
        assertThat(optics.asOpaque().absorbed()).isBetween(0.0, 1.0);
    }

    @Test
    void waterTakesUpWhatOtherFitsSay() {
        for (double metres : new double[] {0.03, 0.07, 0.15}) {
            OutsideChecks.fromMemory(
                            "water-light-" + Math.round(100 * metres) + "-cm",
                            "Bryant and Colbeck, A solar pond for London?, Solar Energy 19 (1977) 321: 0.36 - 0.08 ln(x/m)")
                    .what("sunlight that passes " + 100 * metres + " cm of water")
                    .unit("1")
                    .expected(0.36 - 0.08 * Math.log(metres))
                    .within(0.015)
                    .check(1 - SunOptics.surface(DrinkTint.CLEAR, metres).absorbed() / 0.95);
        }
        double clear = SunOptics.empty(GlassTint.COLOURLESS).absorbed();
        OutsideChecks.published(
                        "glass-light-clear",
                        "Properties of solids, table of solar absorptance: window glass 0.1; here two walls, one behind the other")
                .what("part of sunlight taken up by two walls of colourless glass")
                .unit("1")
                .expected(0.19)
                .within(0.04)
                .check(clear);
    }

    @Test
    void glassCylinderReflectsWhatFresnelSays() {
        // Unpolarised light on glass of n = 1.5, the mean over the outline of a cylinder.
        double sum = 0;
        int strips = 100_000;
        for (int i = 0; i < strips; i++) {
            double in = Math.asin((i + 0.5) / strips);
            double inside = Math.asin(Math.sin(in) / 1.5);
            double s = Math.sin(in - inside) / Math.sin(in + inside);
            double p = Math.tan(in - inside) / Math.tan(in + inside);
            sum += 0.5 * (s * s + p * p);
        }
        OutsideChecks.published("glass-cylinder-reflectance", "closed form: Fresnel's equations, refractive index 1.5")
                .what("reflectance of the side of a glass cylinder")
                .unit("1")
                .expected(sum / strips)
                .within(0.02)
                .check(SunOptics.GLASS_REFLECTANCE);
    }

    @Test
    void sunlitSurfaceIsAsWarmAsASolAirTemperature() {
        // Beside the definition itself, with and without what a level surface loses to the sky.
        double[][] rows = {{0, 60.9411765}, {63, 57.2352941}};
        Boundary air = Boundary.constant("air", ZERO + 28);
        for (double[] row : rows) {
            JunctionPath roof = JunctionPath.of(
                    "roof",
                    Link.of(Node.sensible("insulated", 1, ZERO + 28), "conduction", HeatLaw.conductance(0)),
                    Link.of(air, "convection and radiation", HeatLaw.conductance(17)),
                    Link.bringing(air, "sun", TimeFunction.constant(0.7 * 800 - row[0])));
            OutsideChecks.published(
                            "sol-air-" + (int) row[0], "ASHRAE definition of the sol-air temperature, closed form")
                    .what("insulated surface in the sun, " + row[0] + " W/m² lost to the sky")
                    .unit("°C")
                    .expected(row[1])
                    .within(1e-6)
                    .check(surfaceK(roof) - ZERO);
        }
    }

    private static double surfaceK(JunctionPath path) {
        PathEvaluation e = new PathEvaluation(path);
        double[] temperatures =
                path.ends().stream().mapToDouble(end -> ZERO + 28).toArray();
        e.evaluate(path, 0, temperatures);
        return path.surfaceTemperatureK(e);
    }

    @Test
    void bottleInTheSunComesToItsSteadyTemperature() {
        double area = 0.1;
        Boundary air = Boundary.constant("air", ZERO + 28);
        Node wall = Node.sensible("wall", 400, ZERO + 10);
        Link film = Link.of(air, "convection", HeatLaw.conductance(9 * area));
        Link radiation = Link.of(air, "radiation", new RadiativeFilm(area, 0.9));
        Link inside = Link.of(wall, "conduction", HeatLaw.conductance(50));
        TimeFunction absorbed = TimeFunction.constant(0.85 * 150 * area);
        // All taken up at the surface, all behind it, and half of each: a steady state does not care.
        for (double part : new double[] {0, 0.5, 1}) {
            JunctionPath outside = JunctionPath.of(
                    "outside", inside, film, radiation, Link.bringing(air, "sun", absorbed.times(part)));
            GivenHeat behind = GivenHeat.of("light", air, wall, "sun", absorbed.times(1 - part));
            Trajectory run = NetworkSolver.standard()
                    .withToleranceK(1e-8)
                    .solve(Network.of(List.of(wall), List.of(outside, behind)), 40_000);
            double surface = outside.surfaceTemperatureK(run.evaluate("outside", 40_000));
            OutsideChecks.published(
                            "bottle-in-the-sun-steady-" + Math.round(100 * part), "closed form: balance of heat")
                    .what("surface that takes up 127.5 W/m², 9 W/(m² K) to air of 28 °C, emissivity 0.9; "
                            + Math.round(100 * part) + " % of it at the surface")
                    .unit("°C")
                    .expected(36.6039682)
                    .within(1e-5)
                    .check(surface - ZERO);
            assertThat(run.ledger(40_000).closure()).isLessThan(1e-9);
        }
    }

    @Test
    void radiationIsLinearisedAsDefined() {
        HeatFlow flow = new HeatFlow();
        new RadiativeFilm(1, 0.9).evaluate(298.15, 281.15, flow);
        OutsideChecks.published("radiation-net-flux", "closed form: Stefan and Boltzmann's law, σ of CODATA 2018")
                .what("radiation from 298.15 K to a surface of 281.15 K and emissivity 0.9")
                .unit("W/m²")
                .expected(84.4029448)
                .withinRelative(1e-8)
                .check(flow.watts);
        OutsideChecks.published("radiation-coefficient", "closed form: ε σ (T + Ts)(T² + Ts²)")
                .what("coefficient of that radiation")
                .unit("W/(m² K)")
                .expected(4.96487911)
                .withinRelative(1e-8)
                .check(new RadiativeFilm(1, 0.9).describe(298.15, 281.15).coefficient());
    }

    @Test
    void shadeCutsTheBeamAndKeepsAShareOfTheRest() {
        Sunlight sun = Sunlight.constant(NOON)
                .withShade(Duration.ofMinutes(20), Duration.ofMinutes(30), percent(40))
                .withShadeFrom(Duration.ofMinutes(50), percent(0))
                .behindPane(percent(80));
        assertThat(sun.at(0).beamWPerM2()).isCloseTo(680, within(1e-9));
        assertThat(sun.at(1199.9).diffuseWPerM2()).isCloseTo(88, within(1e-9));
        assertThat(sun.at(1200).beamWPerM2()).isZero();
        assertThat(sun.at(1500).diffuseWPerM2()).isCloseTo(35.2, within(1e-9));
        assertThat(sun.at(1800).beamWPerM2()).isCloseTo(680, within(1e-9));
        assertThat(sun.at(1e6)).isEqualTo(new SolarIrradiance(0, 0, NOON.elevationRad()));
        TimeFunction falling = sun.on(surface(BOTTLE, side(BOTTLE, 0, 0.1)), 600);
        assertThat(falling.knots()).containsExactly(600, 1200, 2400);
        assertThat(falling.at(600)).isLessThan(0.1 * falling.at(599));
        assertThat(falling.at(2400)).isZero();
        assertThat(falling.rate(100)).isZero();
    }

    @Test
    void whatFallsOnASurfaceIsBeamSkyAndGround() {
        double area = 0.005;
        double radius = Math.sqrt(area / Math.PI);
        Sunlight sun = Sunlight.constant(NOON).withGroundReflectance(percent(30));
        double level = 850 * Math.sin(Math.PI / 3) + 110;
        assertThat(sun.on(surface(BOTTLE, disc(radius, Orientation.END_FACING_UP)), 0)
                        .at(0))
                .isCloseTo(area * level, within(1e-9));
        assertThat(sun.on(surface(BOTTLE, disc(radius, Orientation.END_FACING_DOWN)), 0)
                        .at(0))
                .isCloseTo(area * 0.3 * level, within(1e-9));
        Vessel tube = cylinder(0.04, 0.2);
        double wall = 2 * Math.PI * 0.04 * 0.2;
        assertThat(sun.on(surface(tube, side(tube, 0, 0.2)), 0).at(0))
                .isCloseTo(0.08 * 0.2 * 0.5 * 850 + wall * (0.5 * 110 + 0.5 * 0.3 * level), within(1e-9));
    }

    @Property(tries = 200, seed = "20261130")
    @Label("What falls on a wall changes at the rate it states; below the horizon there is exactly no beam")
    void rateAndNight(@ForAll @DoubleRange(min = 0, max = 90_000) double timeS) {
        Sunlight day = Sunlight.clearDay(degrees(43), 200, LocalTime.of(3, 0));
        Sunlight record = Sunlight.varying(Map.of(
                Duration.ZERO,
                SolarIrradiance.none(),
                Duration.ofHours(8),
                NOON,
                Duration.ofHours(20),
                SolarIrradiance.of(wattsPerSquareMetre(500), wattsPerSquareMetre(20), degrees(-10))));
        for (Sunlight sun : List.of(day, record)) {
            SolarIrradiance now = sun.at(timeS);
            if (now.elevationRad() <= 0) {
                assertThat(now.beamWPerM2()).isZero();
            }
            for (Orientation orientation : Orientation.values()) {
                TimeFunction falling = sun.on(surface(BOTTLE, side(BOTTLE, 0, 0.2)), 0);
                if (orientation != Orientation.UPRIGHT_WALL) {
                    falling = sun.on(surface(BOTTLE, disc(0.04, orientation)), 0);
                }
                boolean atKnot = false;
                for (double knot : falling.knots()) {
                    atKnot |= Math.abs(knot - timeS) < 2;
                }
                if (!atKnot) {
                    double difference = (falling.at(timeS + 1) - falling.at(timeS - 1)) / 2;
                    assertThat(falling.rate(timeS)).isCloseTo(difference, within(2e-5));
                }
            }
        }
        assertThat(day.at(timeS + 86_400).beamWPerM2()).isCloseTo(day.at(timeS).beamWPerM2(), within(1e-6));
    }

    @Test
    void clearDayFollowsSunAndSeason() {
        Sunlight july = Sunlight.clearDay(degrees(43), 200, LocalTime.of(12, 0));
        assertThat(july.at(0).elevationRad()).isCloseTo(Math.toRadians(90 - 43 + 21), within(0.02));
        assertThat(july.at(12 * 3600).beamWPerM2()).isZero();
        assertThat(july.at(12 * 3600).diffuseWPerM2()).isZero();
        assertThat(july.groundReflectance()).isEqualTo(0.2);
    }

    @Test
    void badInputIsNamed() {
        OutOfRangeException bright = catchThrowableOfType(
                OutOfRangeException.class,
                () -> SolarIrradiance.of(wattsPerSquareMetre(2000), wattsPerSquareMetre(100), degrees(50)));
        assertThat(bright).hasMessageContaining("beam irradiance").hasMessageContaining("2000");
        assertThat(bright.getMessage()).contains("1100");
        assertThatThrownBy(() -> SolarIrradiance.of(wattsPerSquareMetre(-1), wattsPerSquareMetre(0), degrees(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SolarIrradiance.of(wattsPerSquareMetre(0), wattsPerSquareMetre(800), degrees(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("diffuse irradiance")
                .hasMessageContaining("700");
        assertThatThrownBy(() -> SolarIrradiance.of(wattsPerSquareMetre(0), wattsPerSquareMetre(0), degrees(95)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("elevation of the sun")
                .hasMessageContaining("90");
        assertThatThrownBy(() -> new SolarIrradiance(Double.NaN, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        Sunlight sun = Sunlight.constant(NOON);
        assertThatThrownBy(() -> sun.withGroundReflectance(percent(101))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> sun.behindPane(percent(-1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("transmittance of the pane");
        assertThatThrownBy(() -> sun.withShade(Duration.ofHours(2), Duration.ofHours(1), percent(50)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("later end");
        assertThatThrownBy(() -> sun.withShadeFrom(Duration.ofHours(1), percent(50))
                        .withShade(Duration.ofHours(2), Duration.ofHours(3), percent(50)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("do not overlap");
        assertThatThrownBy(() -> Sunlight.varying(Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least one");
        assertThatThrownBy(() -> Sunlight.varying(Map.of(Duration.ofNanos(1), NOON, Duration.ofNanos(2), NOON)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("one irradiance for each time");
        assertThatThrownBy(() -> Sunlight.clearDay(degrees(91), 1, LocalTime.NOON))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("latitude");
        assertThatThrownBy(() -> Sunlight.clearDay(degrees(45), 0, LocalTime.NOON))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Air.at(celsius(20)).withSky(celsius(-90)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("sky temperature");
        assertThatThrownBy(() -> new SunOptics(0.6, 0.5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SunOptics.filled(GlassTint.GREEN, DrinkTint.DARK, -0.01))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Glass stays glass when its emissivity is stated anew. */
    @Test
    void figuresOfYourOwnDoNotMakeGlassOpaque() {
        Solid glass = Solids.sodaLimeGlass();
        Solid own = new Solid(
                glass.name(),
                glass.density(),
                glass.thermalConductivity(),
                glass.specificHeatCapacity(),
                Solids.granite().emissivity(),
                glass.solarAbsorptance(),
                glass.temperatures());
        assertThat(SunOptics.isTransparent(own)).isTrue();
        assertThat(SunOptics.isTransparent(Solids.stainlessSteel())).isFalse();
    }
}
