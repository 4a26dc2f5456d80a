/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fahrenheit;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Percentage;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Explanation;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.Resistance;
import org.beveragethermal.core.prediction.TimeToTemperature.Reached;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/**
 * Resistances of an explanation, half-way to the target, against a computation of its own: published formulas, the
 * liquids' properties, and surface temperatures found here by bisection from the temperatures of drink, wall and water alone.
 *
 * <p>Formulas: Churchill and Chu 1975 (plate), Churchill and Bernstein 1977 (cylinder across a stream), fourth powers for
 * combined convection (Incropera; Cengel; exponent from memory). The inside law 0.80 and 0.95 Ra^¼ is the project's own.
 */
class ExplanationByHandTest {

    private static final double GRAVITY = 9.80665;
    private static final Liquid WINE = Beverage.wine(percentByVolume(12.5));
    private static final Liquid WATER = Water.liquid();
    private static final Vessel BOTTLE = Vessels.highShouldered750();
    private static final Profile PROFILE = BOTTLE.profile();
    private static final Air ROOM = Air.at(celsius(21));
    /** Room for the fits of the properties. */
    private static final Percentage CLOSE = Percentage.withPercentage(0.5);

    @Test
    void insideAndWallInStillIceWater() {
        checkInsideAndWall(iceWater(Agitation.STILL), 65, 0.80);
    }

    @Test
    void stirredIceWater() {
        checkInsideAndWall(iceWater(Agitation.stirred(metresPerSecond(0.1))), 65, 0.80)
                .checkOutside(0.1);
    }

    @Test
    void warmWater() {
        WaterBath bath = WaterBath.of(Bucket.of(millimetres(300), millimetres(350)), litres(20), fahrenheit(70), ROOM);
        checkInsideAndWall(bath, 55, 0.95).checkOutside(0);
    }

    private static IceWaterBath iceWater(Agitation agitation) {
        return IceWaterBath.in(Bucket.of(millimetres(170), millimetres(400)), ROOM)
                .ice(kilograms(3), millimetres(25), celsius(-5))
                .water(kilograms(3), celsius(15))
                .agitation(agitation)
                .build();
    }

    private static Moment checkInsideAndWall(Surroundings bath, double startFahrenheit, double insideFactor) {
        FilledVessel filled = BOTTLE.filledWith(WINE, fahrenheit(startFahrenheit));
        Prediction prediction = Lumped.of(filled).expose(in(bath, Duration.ofMinutes(30)));
        double target = startFahrenheit > 60 ? 55 : 65;
        long millis = ((Reached) prediction.timeTo(fahrenheit(target))).after().toMillis() / 2;
        double at = millis / 1000.0;
        Explanation.Band band =
                prediction.explainAt(Duration.ofMillis(millis)).bands().get(0);
        double high = prediction.bands().get(0).highM();
        double outerArea = PROFILE.outerSideAreaM2(0, high);
        double innerArea = PROFILE.innerSideAreaM2(0, Math.min(high, filled.liquidHeightM()));
        // The wall as a cylinder's, cut half-way: ln(r/r')/(2 π k h).
        double outerRadius = outerArea / (2 * Math.PI * high);
        double innerRadius = Math.sqrt(outerRadius * outerRadius - PROFILE.wallVolumeM3(0, high) / (Math.PI * high));
        double middle = 0.5 * (innerRadius + outerRadius);
        double glass = BOTTLE.wall().thermalConductivity().value();
        double innerCoefficient = glass / (innerRadius * Math.log(middle / innerRadius));
        double outerCoefficient = glass / (outerRadius * Math.log(outerRadius / middle));
        double wall = prediction.wallTemperatureK(0, at);
        double drink = prediction.meanTemperatureK(at);

        double inner = surface(drink, wall, innerCoefficient, s -> inside(filled, drink, s, insideFactor));
        Resistance inside = band.inSeries().get(0);
        assertThat(inside.coefficient()).isCloseTo(inside(filled, drink, inner, insideFactor), CLOSE);
        assertThat(inside.kelvinPerWatt())
                .isCloseTo(1 / (inside(filled, drink, inner, insideFactor) * innerArea), CLOSE);

        Resistance wallPart = band.inSeries().get(1);
        assertThat(wallPart.kelvinPerWatt())
                .isCloseTo(1 / (innerCoefficient * innerArea) + 1 / (outerCoefficient * outerArea), CLOSE);

        // Side by side the parts are the whole wetted wall.
        double share = outside(band).stream()
                .mapToDouble(part -> 1 / (part.kelvinPerWatt() * part.coefficient() * outerArea))
                .sum();
        assertThat(share).isCloseTo(1, CLOSE);
        return new Moment(prediction, band, at, wall, high, outerCoefficient);
    }

    /** What the outside of a wall is at a moment. */
    private record Moment(
            Prediction prediction,
            Explanation.Band band,
            double atS,
            double wallK,
            double wettedHeightM,
            double outerCoefficient) {

        void checkOutside(double speed) {
            for (Resistance part : outside(band)) {
                double water = waterK(prediction, part.name(), atS);
                double outer =
                        surface(water, wallK, outerCoefficient, s -> outsideFilm(water, s, wettedHeightM, speed));
                assertThat(part.coefficient())
                        .as(part.name())
                        .isCloseTo(outsideFilm(water, outer, wettedHeightM, speed), CLOSE);
            }
        }
    }

    private static List<Resistance> outside(Explanation.Band band) {
        return band.outside().isEmpty() ? List.of(band.inSeries().get(2)) : band.outside();
    }

    /** Temperature of the water that a part of the explanation names. */
    private static double waterK(Prediction prediction, String part, double atS) {
        String name = part.substring(0, part.indexOf(", "));
        for (var path : prediction.trajectory().paths(atS)) {
            for (End end : path.ends()) {
                if (end.name().equals(name) && end instanceof Node node) {
                    return prediction.trajectory().temperatureK(node, atS);
                }
            }
        }
        throw new AssertionError("no node is called " + name);
    }

    /** Where as much heat arrives through the film as leaves through half the wall; by bisection. */
    private static double surface(
            double fluidK, double wallK, double halfCoefficient, DoubleUnaryOperator filmCoefficient) {
        double low = Math.min(fluidK, wallK);
        double high = Math.max(fluidK, wallK);
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            double balance =
                    filmCoefficient.applyAsDouble(middle) * (fluidK - middle) - halfCoefficient * (middle - wallK);
            if (balance > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    private static double inside(FilledVessel filled, double drinkK, double surfaceK, double factor) {
        double height = filled.liquidHeightM();
        double radius = Math.sqrt(filled.liquidVolumeM3() / (Math.PI * height));
        double free = factor * Math.pow(rayleigh(WINE, drinkK, surfaceK, height), 0.25);
        // First root of J0 (Abramowitz and Stegun, table 9.5).
        double conduction = 2.4048256 * 2.4048256 / 2 * height / radius;
        double nu = Math.pow(Math.pow(free, 4) + Math.pow(conduction, 4), 0.25);
        return nu * WINE.thermalConductivity(0.5 * (drinkK + surfaceK)) / height;
    }

    private static double outsideFilm(double waterK, double surfaceK, double heightM, double speed) {
        double film = 0.5 * (waterK + surfaceK);
        double pr = WATER.prandtlNumber(film);
        double k = WATER.thermalConductivity(film);
        double root = 0.825
                + 0.387
                        * Math.pow(rayleigh(WATER, waterK, surfaceK, heightM), 1.0 / 6)
                        / Math.pow(1 + Math.pow(0.492 / pr, 9.0 / 16), 8.0 / 27);
        double free = root * root * k / heightM;
        if (speed == 0) {
            return free;
        }
        double diameter = 2 * PROFILE.maxOuterRadiusM();
        double re = speed * diameter / WATER.kinematicViscosity(film);
        double nu = 0.3
                + 0.62
                        * Math.sqrt(re)
                        * Math.cbrt(pr)
                        / Math.pow(1 + Math.pow(0.4 / pr, 2.0 / 3), 0.25)
                        * Math.pow(1 + Math.pow(re / 282_000, 0.625), 0.8);
        return Math.pow(Math.pow(free, 4) + Math.pow(nu * k / diameter, 4), 0.25);
    }

    private static double rayleigh(Liquid liquid, double bulkK, double wallK, double lengthM) {
        double film = 0.5 * (bulkK + wallK);
        return GRAVITY
                * drive(liquid, bulkK, wallK)
                * Math.pow(lengthM, 3)
                / (liquid.kinematicViscosity(film) * liquid.thermalDiffusivity(film));
    }

    /** Three times the integral of the density excess through the layer, up and down apart, by the trapezoidal rule. */
    private static double drive(Liquid liquid, double bulkK, double wallK) {
        int steps = 400;
        double bulk = liquid.density(bulkK);
        double up = 0;
        double down = 0;
        for (int i = 0; i <= steps; i++) {
            double s = (double) i / steps;
            double excess = 1 - liquid.density(bulkK + (wallK - bulkK) * s * s) / bulk;
            double weight = (i == 0 || i == steps ? 0.5 : 1.0) / steps;
            up += 3 * weight * Math.max(excess, 0);
            down += 3 * weight * Math.max(-excess, 0);
        }
        return Math.sqrt(up * up + down * down - up * down);
    }
}
