/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.core.network.JunctionPath.Link;

/** Derivatives that paths state, against central differences of the flows that they state. */
final class PathDerivativesProperties {

    private static final double SIGMA = 5.670374419e-8;
    private static final HeatLaw CONDUCTION = HeatLaw.conductance(2.5);
    /** Film coefficient 3 + 0.5 ΔT²/(20 + ΔT²): smooth, slopes written out. */
    private static final HeatLaw FILM = (from, to, out) -> {
        double drive = from - to;
        double square = drive * drive;
        double coefficient = 3 + 0.5 * square / (20 + square);
        out.watts = coefficient * drive;
        out.perFromKelvin = coefficient + 0.5 * 2 * 20 * square / Math.pow(20 + square, 2);
        out.perToKelvin = -out.perFromKelvin;
    };

    private static final HeatLaw RADIATION =
            HeatLaw.of((from, to) -> 0.06 * SIGMA * (Math.pow(from, 4) - Math.pow(to, 4)));
    private static final Store WITH_AMOUNTS = new TwoAmountsStore();
    private static final Node NODE = Node.sensible("node", 1000, 280);
    private static final Node ICE = Node.of("ice", WITH_AMOUNTS, 273.15, 0.4, 0.03);
    private static final Boundary AIR = Boundary.constant("air", 295);
    private static final Boundary WALLS = Boundary.constant("walls", 290);

    /** The second amount fades the link: 1 − exp(−x/0.02). */
    private static final SmoothFunction FADE = new SmoothFunction() {
        @Override
        public double at(double x) {
            return 1 - Math.exp(-x / 0.02);
        }

        @Override
        public double slope(double x) {
            return Math.exp(-x / 0.02) / 0.02;
        }
    };

    private record TwoAmountsStore() implements Store {
        @Override
        public int amountCount() {
            return 2;
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            out.temperatureK = 273.15;
            out.kelvinPerJoule = 1e-3;
        }

        @Override
        public double enthalpyJ(double temperatureK, double... amounts) {
            return 0;
        }
    }

    @Property(seed = "20260113")
    @Label("Path derivatives = differences: direct paths")
    void directPath(@ForAll long seed) {
        check(DirectPath.of("conduction", NODE, AIR, "conduction", CONDUCTION), seed);
        check(DirectPath.of("film", NODE, ICE, "convection", FILM), seed);
        check(DirectPath.of("radiation", ICE, WALLS, "radiation", RADIATION).scaledBy("sky"), seed);
    }

    @Property(seed = "20260114")
    @Label("Path derivatives = differences: junctions of two links")
    void junctionOfTwoLinks(@ForAll long seed) {
        Link inside = Link.of(NODE, "conduction", CONDUCTION);
        Link outside = Link.of(AIR, "convection", FILM);
        check(JunctionPath.of("plain", inside, outside), seed);
        check(JunctionPath.of("scaled", inside.scaledBy("wall"), outside.scaledBy("film")), seed);
        check(JunctionPath.of("one factor for both", inside.scaledBy("same"), outside.scaledBy("same")), seed);
        // The amount belongs to a node that is no other end of the path.
        check(JunctionPath.of("weighted", inside, outside.weightedBy(new AmountWeight(ICE, 1, FADE))), seed);
    }

    @Property(seed = "20260115")
    @Label("Path derivatives = differences: junctions of three links")
    void junctionOfThreeLinks(@ForAll long seed) {
        AmountWeight weight = new AmountWeight(ICE, 1, FADE);
        Link inside = Link.of(NODE, "conduction", CONDUCTION);
        Link ice = Link.of(ICE, "contact", FILM).weightedBy(weight);
        Link air = Link.of(AIR, "convection", FILM).scaledBy("film");
        Link walls = Link.of(WALLS, "radiation", RADIATION);
        check(JunctionPath.of("plain", inside, air, walls), seed);
        // The amount belongs to an end of the path.
        check(JunctionPath.of("weighted", inside, ice, air), seed);
        check(JunctionPath.of("scaled and weighted", ice.scaledBy("contact"), air, inside), seed);
        check(JunctionPath.of("weighted twice", ice, walls.weightedBy(weight), inside.scaledBy("film")), seed);
        check(
                JunctionPath.of(
                        "two amounts of one node", ice, walls.weightedBy(new AmountWeight(ICE, 0, FADE)), inside),
                seed);
    }

    @Property(seed = "20260116")
    @Label("Path derivatives = differences: links that are switched off")
    void linkThatIsSwitchedOff(@ForAll long seed) {
        Link inside = Link.of(NODE, "conduction", CONDUCTION);
        Link ice = Link.of(ICE, "contact", FILM).weightedBy(new AmountWeight(ICE, 1, FADE));
        Link air = Link.of(AIR, "convection", FILM).scaledBy("film");
        JunctionPath path = JunctionPath.of("off", inside, ice.scaledBy("contact"), air);
        SplittableRandom random = new SplittableRandom(seed);
        double[] temperatures = random.doubles(path.ends().size(), 265, 310).toArray();
        // Nothing is left of the ice, or the factor is 0: the flow is 0, what it would become is not.
        check(path, temperatures, new double[] {0.2, 0}, new double[] {1.1, 0.9});
        check(path, temperatures, new double[] {0.2, 0.01}, new double[] {0, 0.9});
        check(path, temperatures, new double[] {0.2, 0.01}, new double[] {1.1, 0});
    }

    @Property(seed = "20260205")
    @Label("Path derivatives = differences: surfaces of which a share, or nothing, is left")
    void surfaceOfWhichAShareIsLeft(@ForAll long seed) {
        AmountWeight share = new AmountWeight(ICE, 1, FADE);
        Link inside = Link.of(NODE, "conduction", CONDUCTION).scaledBy("wall");
        Link air = Link.of(AIR, "convection", FILM).scaledBy("film");
        Link walls = Link.of(WALLS, "radiation", RADIATION);
        JunctionPath whole = JunctionPath.of("whole", inside, air, walls);
        JunctionPath part =
                JunctionPath.of("part", inside.weightedBy(share), air.weightedBy(share), walls.weightedBy(share));
        check(part, seed);
        Link stiff = Link.of(AIR, "convection", HeatLaw.conductance(3000));
        check(JunctionPath.of("short-circuited", inside.weightedBy(share), stiff.weightedBy(share)), seed);
        SplittableRandom random = new SplittableRandom(seed);
        double[] temperatures = random.doubles(part.ends().size(), 265, 310).toArray();
        double[] nothing = {0.2, 0};
        check(part, temperatures, nothing, new double[] {1.1, 0.9});
        check(part, temperatures, nothing, new double[] {1.1, 0});
        // What is left of a surface is as warm as all of it.
        PathEvaluation ofWhole = new PathEvaluation(whole);
        ofWhole.evaluate(whole, 0, Arrays.copyOf(temperatures, 3));
        PathEvaluation ofPart = new PathEvaluation(part);
        ofPart.evaluate(part, 0, temperatures, nothing);
        assertThat(part.surfaceTemperatureK(ofPart)).isEqualTo(whole.surfaceTemperatureK(ofWhole));
        assertThat(part.conductanceWPerK(ofPart, 0)).isZero();
        assertThat(part.heatW(ofPart, 1)).isZero();
        ofPart.evaluate(part, 0, temperatures, new double[] {0.2, 0.01});
        double left = FADE.at(0.01);
        assertThat(part.heatW(ofPart, 1)).isEqualTo(left * whole.heatW(ofWhole, 1));
        // The surface is found from where it was last, so that the last digits may differ.
        assertThat(ofPart.flowOf(0)).isCloseTo(left * ofWhole.flowOf(0), withinPercentage(1e-9));
    }

    @Property(seed = "20260203")
    @Label("Path derivatives = differences: junctions with heat of their own")
    void junctionWithHeatOfItsOwn(@ForAll long seed) {
        HeatLaw constant = (from, to, out) -> {
            out.watts = 180;
            out.perFromKelvin = 0;
            out.perToKelvin = 0;
        };
        Link inside = Link.of(NODE, "conduction", CONDUCTION).scaledBy("wall");
        Link sun = Link.of(WALLS, "sunlight", constant).scaledBy("shade");
        check(
                JunctionPath.of(
                        "in the sun", inside, Link.of(AIR, "convection", FILM).scaledBy("film"), sun),
                seed);
        check(JunctionPath.of("sun first", sun, Link.of(AIR, "radiation", RADIATION), inside), seed);
        check(
                JunctionPath.of(
                        "ice in the sun",
                        inside,
                        Link.of(ICE, "contact", FILM),
                        sun.weightedBy(new AmountWeight(ICE, 1, FADE))),
                seed);
    }

    @Property(seed = "20261126", tries = 200)
    @Label("Path derivatives = differences: heat that depends on time")
    void heatByTime(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 7200) double timeS) {
        TimeFunction day = TimeFunction.smooth(t -> 80 + 120 * Math.sin(t / 1800));
        AmountWeight weight = new AmountWeight(ICE, 1, FADE);
        Link inside = Link.of(NODE, "conduction", CONDUCTION);
        Link air = Link.of(AIR, "convection", FILM).scaledBy("film");
        Link sun = Link.bringing(AIR, "sun", day).scaledBy("sun");
        Path whole = JunctionPath.of("in the sun", inside, air, sun);
        Path share =
                JunctionPath.of("share", inside.weightedBy(weight), air.weightedBy(weight), sun.weightedBy(weight));
        Path ice = JunctionPath.of("ice", inside, Link.of(ICE, "contact", FILM), sun.weightedBy(weight));
        Path given = GivenHeat.of("given", AIR, NODE, "sun", day).scaledBy("sun");
        Path faded = GivenHeat.of("faded", AIR, NODE, "sun", day).weightedBy(weight);
        Path fadedItself = GivenHeat.of("itself", AIR, ICE, "sun", day).weightedBy(weight);
        SplittableRandom random = new SplittableRandom(seed);
        for (Path path : new Path[] {whole, share, ice, given, faded, fadedItself}) {
            check(path, seed);
            double[] temperatures = random.doubles(path.ends().size(), 265, 310).toArray();
            double[] amounts = path.ends().contains(ICE) ? new double[] {0.2, 0.01} : new double[0];
            PathEvaluation at = new PathEvaluation(path);
            at.evaluate(path, timeS, temperatures, amounts);
            PathEvaluation before = new PathEvaluation(path);
            before.evaluate(path, timeS - 1, temperatures, amounts);
            PathEvaluation after = new PathEvaluation(path);
            after.evaluate(path, timeS + 1, temperatures, amounts);
            for (int account = 0; account < path.accounts().size(); account++) {
                double difference = (after.flowOf(account) - before.flowOf(account)) / 2;
                assertThat(at.timeDerivativeOf(account))
                        .as(path.name() + " account " + account)
                        .isCloseTo(difference, within(1e-4));
            }
        }
    }

    @Property(seed = "20260204")
    @Label("Path derivatives = differences: junctions that are short-circuited")
    void junctionThatIsShortCircuited(@ForAll long seed) {
        Link inside = Link.of(NODE, "conduction", CONDUCTION).scaledBy("wall");
        Link air = Link.of(AIR, "convection", FILM);
        for (double stiff : new double[] {240, 800, 3000}) {
            Link bath = Link.of(WALLS, "convection", HeatLaw.conductance(stiff)).scaledBy("bath");
            check(JunctionPath.of("last", inside, air, bath), seed);
            check(JunctionPath.of("first", bath, inside, air), seed);
        }
    }

    @Property(seed = "20260117")
    @Label("Path derivatives = differences: heat laws")
    void lawsHaveTheSlopesTheyState(
            @ForAll @DoubleRange(min = 250, max = 350) double from,
            @ForAll @DoubleRange(min = 250, max = 350) double to) {
        for (HeatLaw law : new HeatLaw[] {CONDUCTION, FILM, RADIATION}) {
            HeatFlow flow = new HeatFlow();
            law.evaluate(from, to, flow);
            double perFrom = flow.perFromKelvin;
            double perTo = flow.perToKelvin;
            assertThat(perFrom).isNotNegative();
            assertThat(perTo).isNotPositive();
            compare("from", perFrom, 0.01, x -> watts(law, from + x, to));
            compare("to", perTo, 0.01, x -> watts(law, from, to + x));
            law.evaluate(from, from, flow);
            assertThat(flow.watts).isZero();
        }
    }

    @Property(seed = "20260118")
    @Label("First law: flows into a surface without heat capacity balance")
    void flowsIntoASurfaceBalance(@ForAll long seed) {
        JunctionPath path = JunctionPath.of(
                "surface",
                Link.of(NODE, "conduction", CONDUCTION),
                Link.of(AIR, "convection", FILM),
                Link.of(WALLS, "radiation", RADIATION));
        double[] temperatures = new SplittableRandom(seed).doubles(3, 265, 310).toArray();
        PathEvaluation e = new PathEvaluation(path);
        e.evaluate(path, 0, temperatures);
        double surface = path.surfaceTemperatureK(e);
        assertThat(surface)
                .isBetween(
                        Math.min(temperatures[0], Math.min(temperatures[1], temperatures[2])),
                        Math.max(temperatures[0], Math.max(temperatures[1], temperatures[2])));
        double given = watts(CONDUCTION, temperatures[0], surface);
        assertThat(given - e.flowOf(0) - e.flowOf(1)).isBetween(-1e-8, 1e-8);
        assertThat(e.flowOf(0)).isEqualTo(-watts(FILM, temperatures[1], surface));
    }

    private static double watts(HeatLaw law, double from, double to) {
        HeatFlow flow = new HeatFlow();
        law.evaluate(from, to, flow);
        return flow.watts;
    }

    private static void check(Path path, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int amounts = 0;
        for (End end : path.ends()) {
            amounts += end instanceof Node node ? node.store().amountCount() : 0;
        }
        check(
                path,
                random.doubles(path.ends().size(), 265, 310).toArray(),
                random.doubles(amounts, 0.001, 0.1).toArray(),
                random.doubles(path.multipliers().size(), 0.2, 3).toArray());
    }

    private static void check(Path path, double[] temperaturesK, double[] amounts, double[] multipliers) {
        PathEvaluation e = new PathEvaluation(path);
        setMultipliers(e, multipliers);
        e.evaluate(path, 0, temperaturesK, amounts);
        for (int account = 0; account < path.accounts().size(); account++) {
            int a = account;
            for (int i = 0; i < temperaturesK.length; i++) {
                int input = i;
                compare(
                        path.name() + " by temperature " + i,
                        e.derivativeOf(account, i),
                        0.01,
                        x -> flow(path, a, plus(temperaturesK, input, x), amounts, multipliers));
            }
            for (int i = 0; i < amounts.length; i++) {
                int input = i;
                compare(
                        path.name() + " by amount " + i,
                        e.derivativeOf(account, temperaturesK.length + i),
                        1e-5,
                        x -> flow(path, a, temperaturesK, plus(amounts, input, x), multipliers));
            }
            for (int i = 0; i < multipliers.length; i++) {
                int input = i;
                compare(
                        path.name() + " by multiplier " + i,
                        e.multiplierDerivativeOf(account, i),
                        1e-4,
                        x -> flow(path, a, temperaturesK, amounts, plus(multipliers, input, x)));
            }
        }
    }

    private static double flow(Path path, int account, double[] temperaturesK, double[] amounts, double[] multipliers) {
        PathEvaluation e = new PathEvaluation(path);
        setMultipliers(e, multipliers);
        e.evaluate(path, 0, temperaturesK, amounts);
        return e.flowOf(account);
    }

    private static void setMultipliers(PathEvaluation e, double[] multipliers) {
        for (int m = 0; m < multipliers.length; m++) {
            e.setMultiplier(m, multipliers[m]);
        }
    }

    private static double[] plus(double[] values, int index, double change) {
        double[] changed = values.clone();
        changed[index] += change;
        return changed;
    }

    private static void compare(String what, double stated, double step, DoubleUnaryOperator flow) {
        double difference = (flow.applyAsDouble(step) - flow.applyAsDouble(-step)) / (2 * step);
        // The surface is known to 1e-12 of its temperature, some 3e-10 K or 1e-9 W.
        double rounding = 5e-9 / step;
        assertThat(stated)
                .as(what)
                .isBetween(
                        difference - rounding - 1e-5 * Math.abs(difference),
                        difference + rounding + 1e-5 * Math.abs(difference));
    }
}
