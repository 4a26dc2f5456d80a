/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a junction answers about its surface and about one of its links, against the rules for conductances that meet at a point (a surface is as
 * warm as its ends, each weighed by its conductance) and against roots found with Apache Commons Math.
 */
final class JunctionAnswersTest {

    private static final double SIGMA = 5.670374419e-8;
    private static final HeatLaw RADIATION = (from, to, out) -> {
        out.watts = 0.05 * SIGMA * (Math.pow(from, 4) - Math.pow(to, 4));
        out.perFromKelvin = 0.05 * SIGMA * 4 * Math.pow(from, 3);
        out.perToKelvin = -0.05 * SIGMA * 4 * Math.pow(to, 3);
    };
    /** Natural convection in still air, heat with the power 5/4 of the difference; rounded off below a tenth of a kelvin. */
    private static final HeatLaw FILM = (from, to, out) -> {
        double drive = from - to;
        double square = drive * drive + 0.01;
        out.watts = 0.2 * Math.pow(square, 0.125) * drive;
        out.perFromKelvin = 0.2 * (Math.pow(square, 0.125) + 0.25 * Math.pow(square, -0.875) * drive * drive);
        out.perToKelvin = -out.perFromKelvin;
    };

    private record TwoAmounts() implements Store {
        @Override
        public int amountCount() {
            return 2;
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            out.temperatureK = 280;
            out.kelvinPerJoule = 1;
        }

        @Override
        public double enthalpyJ(double temperatureK, double... amounts) {
            return 0;
        }
    }

    /** A parabola, so that value and slope are known by heart: a + x². */
    private record Parabola(double a) implements SmoothFunction {
        @Override
        public double at(double x) {
            return a + x * x;
        }

        @Override
        public double slope(double x) {
            return 2 * x;
        }
    }

    private final Node body = Node.sensible("body", 1000, 290);
    private final Node ice = Node.of("ice", new TwoAmounts(), 275, 0.4, 0.7);
    private final Boundary air = Boundary.constant("air", 300);
    private final Boundary walls = Boundary.constant("walls", 285);
    private final Boundary sun = Boundary.constant("sun", 295);

    private static final double TIME_S = 100;

    private static PathEvaluation at(
            JunctionPath path, Map<String, Double> factors, double[] kelvin, double... amounts) {
        PathEvaluation e = new PathEvaluation(path, factors);
        e.evaluate(path, TIME_S, kelvin, amounts);
        return e;
    }

    private static double brent(HeatLaw[] laws, double[] kelvin, double broughtW) {
        HeatFlow flow = new HeatFlow();
        return new BrentSolver(1e-14, 1e-12)
                .solve(
                        1000,
                        surface -> {
                            double sum = broughtW;
                            for (int i = 0; i < laws.length; i++) {
                                laws[i].evaluate(kelvin[i], surface, flow);
                                sum += flow.watts;
                            }
                            return sum;
                        },
                        100,
                        900);
    }

    @Test
    void linksOfConstantConductanceShareASurfaceByTheirConductances() {
        JunctionPath path = JunctionPath.of(
                "skin",
                Link.of(body, "conduction", HeatLaw.conductance(3)).scaledBy("wall"),
                Link.of(air, "convection", HeatLaw.conductance(2)).scaledBy("film"),
                Link.of(walls, "radiation", HeatLaw.conductance(0.8)).scaledBy("wall"),
                Link.of(sun, "contact", HeatLaw.conductance(0.1)).scaledBy("film"));
        assertThat(path.multipliers()).containsExactly("wall", "film");
        assertThat(path.links())
                .hasSize(4)
                .first()
                .isEqualTo(new Link(body, "conduction", HeatLaw.conductance(3), "wall", null));
        double[] kelvin = {290, 300, 285, 295};
        double[] g = {3 * 0.5, 2 * 4, 0.8 * 0.5, 0.1 * 4};
        PathEvaluation e = at(path, Map.of("wall", 0.5, "film", 4.0), kelvin);
        double surface = (g[0] * 290 + g[1] * 300 + g[2] * 285 + g[3] * 295) / (g[0] + g[1] + g[2] + g[3]);
        assertThat(path.surfaceTemperatureK(e)).isCloseTo(surface, within(1e-9));
        for (int i = 0; i < 4; i++) {
            assertThat(path.conductanceWPerK(e, i)).isCloseTo(g[i], within(1e-9));
            assertThat(path.heatW(e, i)).isCloseTo(g[i] * (kelvin[i] - surface), within(1e-8));
            assertThat(path.bringsHeatOfItsOwn(e, i)).isFalse();
        }
        // A factor of which nothing is said is 1.
        PathEvaluation plain = new PathEvaluation(path);
        plain.evaluate(path, TIME_S, kelvin);
        assertThat(path.conductanceWPerK(plain, 1)).isCloseTo(2, within(1e-9));
    }

    @Test
    void twoLinksAreAsGoodAsTheirResistancesInSeries() {
        JunctionPath path = JunctionPath.of(
                "skin",
                Link.of(body, "conduction", HeatLaw.conductance(3)),
                Link.of(air, "convection", HeatLaw.conductance(7)));
        PathEvaluation e = at(path, Map.of(), new double[] {290, 320});
        double series = 30 / (1 / 3.0 + 1 / 7.0);
        assertThat(path.heatW(e, 1)).isCloseTo(series, within(1e-8));
        assertThat(path.heatW(e, 0)).isCloseTo(-series, within(1e-8));
        assertThat(e.flowOf(0)).isCloseTo(-series, within(1e-8));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-40, -3, 0, 0.5, 12, 90})
    void radiationFilmAndSunlightMeetWhereBrentFindsThem(double sunW) {
        Link brought = Link.bringing(sun, "sunlight", TimeFunction.constant(sunW));
        JunctionPath path = JunctionPath.of(
                "skin", Link.of(air, "convection", FILM), Link.of(walls, "radiation", RADIATION), brought);
        double[] kelvin = {303, 284, 295};
        PathEvaluation e = at(path, Map.of(), kelvin);
        double surface = brent(new HeatLaw[] {FILM, RADIATION}, kelvin, sunW);
        assertThat(path.surfaceTemperatureK(e)).isCloseTo(surface, within(1e-8));
        double film = 0.2 * Math.pow((303 - surface) * (303 - surface) + 0.01, 0.125);
        double radiation = 0.05 * SIGMA * (284 + surface) * (284 * 284 + surface * surface);
        assertThat(path.conductanceWPerK(e, 0)).isCloseTo(film, withinPercentage(1e-7));
        assertThat(path.conductanceWPerK(e, 1)).isCloseTo(radiation, withinPercentage(1e-7));
        assertThat(path.heatW(e, 0)).isCloseTo(film * (303 - surface), within(1e-8));
        assertThat(path.heatW(e, 1)).isCloseTo(radiation * (284 - surface), within(1e-8));
        assertThat(path.heatW(e, 2)).isEqualTo(sunW);
        assertThat(path.heatW(e, 0) + path.heatW(e, 1) + path.heatW(e, 2)).isCloseTo(0, within(1e-8));
        // The path books what the air gives to the walls and to the sun.
        assertThat(e.flowOf(0)).isCloseTo(-path.heatW(e, 1), within(1e-8));
        assertThat(e.flowOf(1)).isCloseTo(-sunW, within(1e-12));
    }

    /** Where nothing flows there is no ratio of heat and difference; its limit is the slope: 4 σ T³, and 0.2 · 0.01^(1/8). */
    @Test
    void conductanceWithoutADifferenceIsTheSlope() {
        JunctionPath path =
                JunctionPath.of("skin", Link.of(air, "convection", FILM), Link.of(walls, "radiation", RADIATION));
        PathEvaluation e = at(path, Map.of(), new double[] {300, 300});
        assertThat(path.conductanceWPerK(e, 0)).isCloseTo(0.2 * Math.pow(0.01, 0.125), withinPercentage(1e-9));
        assertThat(path.conductanceWPerK(e, 1)).isCloseTo(0.05 * SIGMA * 4 * 2.7e7, withinPercentage(1e-9));
        assertThat(path.heatW(e, 0)).isZero();
        // A slope that differs from the ratio, told apart at a difference of 2 K.
        HeatLaw cubic = (from, to, out) -> {
            double drive = from - to;
            out.watts = drive * drive * drive;
            out.perFromKelvin = 3 * drive * drive;
            out.perToKelvin = -out.perFromKelvin;
        };
        JunctionPath even = JunctionPath.of("even", Link.of(air, "a", cubic), Link.of(walls, "b", cubic));
        assertThat(even.conductanceWPerK(at(even, Map.of(), new double[] {302, 298}), 0))
                .isCloseTo(4, within(1e-8));
    }

    @Test
    void heatOfItsOwnIsHeatThatNoTemperatureChanges() {
        HeatLaw lamp = law(5, 0, 0);
        HeatLaw nothing = law(0, 0, 0);
        HeatLaw fromBody = law(5, 1e-3, 0);
        HeatLaw offSurface = law(5, 0, -1e-3);
        JunctionPath path = JunctionPath.of(
                "skin",
                Link.of(body, "conduction", HeatLaw.conductance(3)),
                Link.of(air, "lamp", lamp),
                Link.of(air, "off", nothing),
                Link.of(air, "inside", fromBody),
                Link.of(air, "outside", offSurface),
                Link.bringing(air, "sun", TimeFunction.linear(new double[] {0, 200}, new double[] {0, 50})));
        PathEvaluation e = at(path, Map.of(), new double[] {290, 300, 300, 300, 300, 300});
        boolean[] expected = {false, true, false, false, false, true};
        for (int i = 0; i < 6; i++) {
            assertThat(path.bringsHeatOfItsOwn(e, i))
                    .as(path.links().get(i).mechanism())
                    .isEqualTo(expected[i]);
        }
        // Half of the way up to 50 W at 100 s.
        assertThat(path.heatW(e, 5)).isCloseTo(25, within(1e-12));
    }

    private static HeatLaw law(double watts, double perFrom, double perTo) {
        return (from, to, out) -> {
            out.watts = watts;
            out.perFromKelvin = perFrom;
            out.perToKelvin = perTo;
        };
    }

    @Test
    void knotsAreThoseOfAllStrengthsInOrderAndOnce() {
        TimeFunction morning = TimeFunction.linear(new double[] {50, 100}, new double[] {0, 1});
        TimeFunction day = TimeFunction.linear(new double[] {0, 100, 900}, new double[] {0, 1, 0});
        Link inside = Link.of(body, "conduction", HeatLaw.conductance(3));
        JunctionPath path =
                JunctionPath.of("skin", Link.bringing(sun, "a", morning), inside, Link.bringing(sun, "b", day));
        assertThat(path.knots()).containsExactly(0, 50, 100, 900);
        assertThat(path.isSteady()).isFalse();
        assertThat(JunctionPath.of("skin", inside, Link.bringing(sun, "a", TimeFunction.constant(3)))
                        .isSteady())
                .isTrue();
        assertThat(JunctionPath.of("skin", inside, inside).isSteady()).isTrue();
        assertThat(JunctionPath.of("skin", inside, inside).knots()).isEmpty();
    }

    /** Every kind of factor at once, on links of constant conductance: all is known in closed form. */
    @Test
    void surfaceFollowsWhatItsLinksAreScaledBy() {
        AmountWeight first = new AmountWeight(ice, 0, new Parabola(0.5));
        AmountWeight second = new AmountWeight(ice, 1, new Parabola(0.2));
        JunctionPath path = JunctionPath.of(
                "skin",
                Link.of(body, "conduction", HeatLaw.conductance(3)).scaledBy("wall"),
                Link.of(ice, "contact", HeatLaw.conductance(2))
                        .weightedBy(first)
                        .scaledBy("ice"),
                Link.of(air, "convection", HeatLaw.conductance(0.8))
                        .weightedBy(second)
                        .scaledBy("ice"),
                Link.bringing(sun, "sun", TimeFunction.linear(new double[] {0, 200}, new double[] {0, 50}))
                        .weightedBy(second)
                        .scaledBy("sun"));
        double wall = 0.6;
        double iceFactor = 1.5;
        double shade = 0.3;
        double x = 0.4;
        double y = 0.7;
        double[] kelvin = {290, 275, 300, 295};
        double w = 0.5 + x * x;
        double v = 0.2 + y * y;
        double[] g = {3 * wall, 2 * w * iceFactor, 0.8 * v * iceFactor};
        double all = g[0] + g[1] + g[2];
        double sunW = 25 * v * shade;
        double surface = (g[0] * 290 + g[1] * 275 + g[2] * 300 + sunW) / all;
        // A second evaluation at the same place says the same: nothing adds up, the surface is taken from the first.
        PathEvaluation e = new PathEvaluation(path, Map.of("wall", wall, "ice", iceFactor, "sun", shade));
        for (int time = 0; time < 2; time++) {
            double found = evaluate(path, e, kelvin, x, y);
            assertThat(found).isCloseTo(surface, within(1e-9));
            for (int end = 0; end < 3; end++) {
                assertThat(path.surfaceByTemperature(e, end)).isCloseTo(g[end] / all, within(1e-12));
            }
            assertThat(path.surfaceByTemperature(e, 3)).isZero();
            double byX = 2 * 2 * x * iceFactor * (275 - surface) / all;
            double byY = 2 * y * (0.8 * iceFactor * (300 - surface) + 25 * shade) / all;
            assertThat(path.surfaceByAmount(e, found, 1, 0)).isCloseTo(byX, within(1e-9));
            assertThat(path.surfaceByAmount(e, found, 1, 1)).isCloseTo(byY, within(1e-9));
            double byWall = 3 * (290 - surface) / all;
            double byIce = (2 * w * (275 - surface) + 0.8 * v * (300 - surface)) / all;
            double bySun = 25 * v / all;
            assertThat(path.surfaceByMultiplier(e, found, 0)).isCloseTo(byWall, within(1e-9));
            assertThat(path.surfaceByMultiplier(e, found, 1)).isCloseTo(byIce, within(1e-9));
            assertThat(path.surfaceByMultiplier(e, found, 2)).isCloseTo(bySun, within(1e-9));
            double sunRate = 0.25 * v * shade;
            assertThat(path.surfaceByTime(e, found)).isCloseTo(sunRate / all, within(1e-12));
            // What the body gives to the ice, to the air and to the sun.
            assertThat(e.flowOf(0)).isCloseTo(g[1] * (surface - 275), within(1e-8));
            assertThat(e.flowOf(1)).isCloseTo(g[2] * (surface - 300), within(1e-8));
            assertThat(e.flowOf(2)).isCloseTo(-sunW, within(1e-12));
            assertThat(e.timeDerivativeOf(0)).isCloseTo(g[1] * sunRate / all, within(1e-12));
            assertThat(e.timeDerivativeOf(1)).isCloseTo(g[2] * sunRate / all, within(1e-12));
            assertThat(e.timeDerivativeOf(2)).isCloseTo(-sunRate, within(1e-12));
            // Inputs: four temperatures, then the two amounts of the ice.
            assertThat(e.derivativeOf(0, 4)).isCloseTo(4 * x * iceFactor * (surface - 275) + g[1] * byX, within(1e-8));
            assertThat(e.derivativeOf(0, 5)).isCloseTo(g[1] * byY, within(1e-8));
            assertThat(e.derivativeOf(1, 4)).isCloseTo(g[2] * byX, within(1e-8));
            assertThat(e.derivativeOf(1, 5))
                    .isCloseTo(2 * y * 0.8 * iceFactor * (surface - 300) + g[2] * byY, within(1e-8));
            assertThat(e.derivativeOf(2, 5)).isCloseTo(-2 * y * 25 * shade, within(1e-9));
            assertThat(e.multiplierDerivativeOf(0, 0)).isCloseTo(g[1] * byWall, within(1e-8));
            assertThat(e.multiplierDerivativeOf(0, 1)).isCloseTo(2 * w * (surface - 275) + g[1] * byIce, within(1e-8));
            assertThat(e.multiplierDerivativeOf(1, 1))
                    .isCloseTo(0.8 * v * (surface - 300) + g[2] * byIce, within(1e-8));
            assertThat(e.multiplierDerivativeOf(2, 2)).isCloseTo(-25 * v, within(1e-9));
        }
    }

    private static double evaluate(JunctionPath path, PathEvaluation e, double[] kelvin, double... amounts) {
        e.evaluate(path, TIME_S, kelvin, amounts);
        return path.evaluateAtSurface(e);
    }

    /** The amount belongs to a node that no link leads to: its temperature does not move the surface, its amount does. */
    @Test
    void surfaceFollowsAnAmountOfANodeBesideIt() {
        JunctionPath path = JunctionPath.of(
                "skin",
                Link.of(body, "conduction", HeatLaw.conductance(3)),
                Link.of(air, "convection", HeatLaw.conductance(2))
                        .weightedBy(new AmountWeight(ice, 1, new Parabola(0.5))));
        assertThat(path.ends()).containsExactly(body, air, ice);
        PathEvaluation e = new PathEvaluation(path);
        double found = evaluate(path, e, new double[] {290, 300, 260}, 0.4, 0.7);
        double g = 2 * (0.5 + 0.49);
        double surface = (3 * 290 + g * 300) / (3 + g);
        assertThat(found).isCloseTo(surface, within(1e-9));
        assertThat(path.surfaceByTemperature(e, 2)).isZero();
        assertThat(path.surfaceByTemperature(e, 1)).isCloseTo(g / (3 + g), within(1e-12));
        assertThat(path.surfaceByAmount(e, found, 2, 0)).isZero();
        assertThat(path.surfaceByAmount(e, found, 2, 1)).isCloseTo(2 * 1.4 * (300 - surface) / (3 + g), within(1e-9));
        assertThat(path.surfaceByAmount(e, found, 1, 1)).isZero();
    }

    /** A conductance that grows with time, scaled and weighed by its own end: 5 W/K · 0.7 · (0.2 + y²) · t/200 s. */
    @Test
    void firstLinkMayHaveEveryFactorAtOnce() {
        JunctionPath path = JunctionPath.of(
                "skin",
                new Link(
                        ice,
                        "contact",
                        HeatLaw.conductance(5),
                        "ice",
                        new AmountWeight(ice, 1, new Parabola(0.2)),
                        TimeFunction.linear(new double[] {0, 200}, new double[] {0, 1})),
                Link.of(air, "convection", HeatLaw.conductance(2)));
        PathEvaluation e = new PathEvaluation(path, Map.of("ice", 0.7));
        double y = 0.6;
        double weight = 0.2 + y * y;
        double g = 5 * 0.7 * weight * 0.5;
        double surface = (g * 275 + 2 * 300) / (g + 2);
        double drive = (275 - surface) / (g + 2);
        for (int time = 0; time < 2; time++) {
            double found = evaluate(path, e, new double[] {275, 300}, 0.4, y);
            assertThat(found).isCloseTo(surface, within(1e-9));
            double byAmount = 5 * 0.7 * 2 * y * 0.5 * drive;
            double byFactor = 5 * weight * 0.5 * drive;
            double byTime = 5 * 0.7 * weight / 200 * drive;
            assertThat(path.surfaceByAmount(e, found, 0, 0)).isZero();
            assertThat(path.surfaceByAmount(e, found, 0, 1)).isCloseTo(byAmount, within(1e-9));
            assertThat(path.surfaceByMultiplier(e, found, 0)).isCloseTo(byFactor, within(1e-9));
            assertThat(path.surfaceByTime(e, found)).isCloseTo(byTime, within(1e-11));
            assertThat(e.flowOf(0)).isCloseTo(2 * (surface - 300), within(1e-8));
            assertThat(e.derivativeOf(0, 2)).isZero();
            assertThat(e.derivativeOf(0, 3)).isCloseTo(2 * byAmount, within(1e-8));
            assertThat(e.multiplierDerivativeOf(0, 0)).isCloseTo(2 * byFactor, within(1e-8));
            assertThat(e.timeDerivativeOf(0)).isCloseTo(2 * byTime, within(1e-10));
        }
    }

    /** A link that a factor of 0 hides still says what it would bring. */
    @Test
    void hiddenLinksStillMoveTheSurface() {
        AmountWeight gone = new AmountWeight(ice, 0, new Parabola(-0.4 * 0.4));
        JunctionPath path = JunctionPath.of(
                "skin",
                Link.of(body, "conduction", HeatLaw.conductance(3)),
                Link.of(air, "convection", HeatLaw.conductance(2)).scaledBy("film"),
                Link.of(ice, "contact", HeatLaw.conductance(5)).weightedBy(gone),
                Link.bringing(sun, "sun", TimeFunction.linear(new double[] {100, 200}, new double[] {0, 50})));
        PathEvaluation e = new PathEvaluation(path, Map.of("film", 0.0));
        double found = evaluate(path, e, new double[] {290, 300, 275, 295}, 0.4, 0);
        assertThat(found).isCloseTo(290, within(1e-9));
        assertThat(path.surfaceByMultiplier(e, found, 0)).isCloseTo(2 * 10 / 3.0, within(1e-8));
        assertThat(path.surfaceByAmount(e, found, 2, 0)).isCloseTo(5 * 0.8 * (275 - 290) / 3.0, within(1e-8));
        assertThat(path.surfaceByTime(e, found)).isCloseTo(0.5 / 3, within(1e-12));
        assertThat(path.conductanceWPerK(e, 1)).isZero();
        assertThat(path.conductanceWPerK(e, 2)).isZero();
    }

    /** Weights of which no two are alike are no share of the surface, and strengths on all links all count. */
    @Test
    void everyLinkMayHaveAFactorOfItsOwn() {
        JunctionPath weighted = JunctionPath.of(
                "weighted",
                Link.of(body, "conduction", HeatLaw.conductance(3))
                        .weightedBy(new AmountWeight(ice, 0, new Parabola(1))),
                Link.of(air, "convection", HeatLaw.conductance(2))
                        .weightedBy(new AmountWeight(ice, 0, new Parabola(5))));
        PathEvaluation e = at(weighted, Map.of(), new double[] {290, 300, 275}, 0.4, 0.7);
        double warm = 2 * 5.16;
        double cold = 3 * 1.16;
        assertThat(weighted.surfaceTemperatureK(e)).isCloseTo((cold * 290 + warm * 300) / (cold + warm), within(1e-9));
        assertThat(e.flowOf(0)).isCloseTo(-10 / (1 / cold + 1 / warm), within(1e-8));
        assertThat(weighted.conductanceWPerK(e, 1)).isCloseTo(warm, within(1e-8));

        TimeFunction half = TimeFunction.linear(new double[] {0, 200}, new double[] {0, 1});
        TimeFunction fifth = TimeFunction.linear(new double[] {0, 500}, new double[] {0, 1});
        JunctionPath timed = JunctionPath.of(
                "timed",
                new Link(body, "conduction", HeatLaw.conductance(3), null, null, half),
                new Link(air, "convection", HeatLaw.conductance(2), null, null, fifth));
        PathEvaluation f = at(timed, Map.of(), new double[] {290, 300});
        assertThat(f.flowOf(0)).isCloseTo(-10 / (1 / 1.5 + 1 / 0.4), within(1e-8));
        assertThat(timed.conductanceWPerK(f, 0)).isCloseTo(1.5, within(1e-8));
        // Both grow in proportion to time, so does the flow.
        assertThat(f.timeDerivativeOf(0)).isCloseTo(f.flowOf(0) / TIME_S, within(1e-9));
    }

    /** A share of the whole surface scales what each link carries and moves the surface not at all. */
    @Test
    void aShareOfTheSurfaceLeavesItAsWarmAsItIs() {
        AmountWeight share = new AmountWeight(ice, 1, new Parabola(0.1));
        JunctionPath path = JunctionPath.of(
                "part",
                Link.of(body, "conduction", HeatLaw.conductance(3))
                        .weightedBy(share)
                        .scaledBy("wall"),
                Link.of(air, "convection", HeatLaw.conductance(2)).weightedBy(share),
                Link.bringing(sun, "sun", TimeFunction.linear(new double[] {0, 200}, new double[] {0, 50}))
                        .weightedBy(share));
        PathEvaluation e = new PathEvaluation(path, Map.of("wall", 2.0));
        double left = 0.1 + 0.49;
        double surface = (6 * 290 + 2 * 300 + 25) / 8.0;
        double found = evaluate(path, e, new double[] {290, 300, 295, 275}, 0.4, 0.7);
        assertThat(found).isCloseTo(surface, within(1e-9));
        assertThat(path.surfaceByAmount(e, found, 3, 1)).isZero();
        assertThat(path.surfaceByMultiplier(e, found, 0)).isCloseTo(3 * (290 - surface) / 8, within(1e-9));
        assertThat(path.surfaceByTime(e, found)).isCloseTo(0.25 / 8, within(1e-12));
        assertThat(e.timeDerivativeOf(0)).isCloseTo(left * 2 * 0.25 / 8, within(1e-12));
        assertThat(e.timeDerivativeOf(1)).isCloseTo(-left * 0.25, within(1e-12));
        assertThat(e.derivativeOf(0, 5)).isCloseTo(1.4 * 2 * (surface - 300), within(1e-8));
        assertThat(path.heatW(e, 0)).isCloseTo(left * 6 * (290 - surface), within(1e-8));
        assertThat(path.conductanceWPerK(e, 0)).isCloseTo(left * 6, within(1e-8));
        assertThat(path.conductanceWPerK(e, 1)).isCloseTo(left * 2, within(1e-8));
    }

    /** A surface that nothing conducts to has no slope, no flow and no preference for one of its ends. */
    @Test
    void surfaceThatNothingConductsToLiesMidway() {
        HeatLaw none = HeatLaw.conductance(0);
        JunctionPath path = JunctionPath.of(
                "surface", Link.of(body, "a", none), Link.of(air, "b", none).scaledBy("b"));
        PathEvaluation e = new PathEvaluation(path);
        double found = evaluate(path, e, new double[] {290, 300});
        assertThat(found).isEqualTo(295);
        assertThat(path.surfaceByTemperature(e, 0)).isZero();
        assertThat(path.surfaceByMultiplier(e, found, 0)).isZero();
        assertThat(path.surfaceByTime(e, found)).isZero();
        assertThat(evaluate(path, e, new double[] {290, 310})).isEqualTo(300);
    }

    /** Of a flow far below what a rounding error of the surface would bring through the stiff film, all digits are kept. */
    @Test
    void smallHeatThroughAStiffFilmKeepsItsDigits() {
        for (boolean first : new boolean[] {true, false}) {
            Link stiff = Link.of(air, "convection", HeatLaw.conductance(1e7));
            Link faint = Link.of(body, "conduction", HeatLaw.conductance(1e-6));
            JunctionPath path = first ? JunctionPath.of("skin", stiff, faint) : JunctionPath.of("skin", faint, stiff);
            PathEvaluation e = at(path, Map.of(), first ? new double[] {300, 290} : new double[] {290, 300});
            assertThat(e.flowOf(0)).isCloseTo(first ? 1e-5 : -1e-5, withinPercentage(1e-6));
        }
    }

    @Test
    void endsAndAmountsAreListedOnce() {
        AmountWeight first = new AmountWeight(ice, 0, new Parabola(1));
        AmountWeight second = new AmountWeight(ice, 1, new Parabola(2));
        JunctionPath path = JunctionPath.of(
                "skin",
                List.of(
                        Link.of(body, "a", HeatLaw.conductance(1)).weightedBy(second),
                        Link.of(air, "b", HeatLaw.conductance(1)).weightedBy(first),
                        Link.of(walls, "c", HeatLaw.conductance(1))));
        assertThat(path.ends()).containsExactly(body, air, walls, ice);
        assertThat(path.accounts()).extracting(Account::mechanism).containsExactly("b", "c");
        double[] kelvin = {290, 300, 280, 275};
        PathEvaluation e = at(path, Map.of(), kelvin, 0.4, 0.7);
        double[] g = {2.49, 1.16, 1};
        double surface =
                (g[0] * 290 + g[1] * 300 + g[2] * 280) / Arrays.stream(g).sum();
        assertThat(path.surfaceTemperatureK(e)).isCloseTo(surface, within(1e-9));
    }
}
