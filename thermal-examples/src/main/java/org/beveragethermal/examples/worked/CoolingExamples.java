/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import static org.beveragethermal.examples.worked.Term.exp;
import static org.beveragethermal.examples.worked.Term.ln;
import static org.beveragethermal.examples.worked.Term.number;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.examples.internal.Curve;
import org.beveragethermal.examples.internal.Figure;

/** Bodies that cool or warm: one temperature, when that is allowed, and what to do when it is not. */
final class CoolingExamples {

    private static final String INCROPERA = "F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer";
    private static final String CENGEL = "Y. A. Çengel, Heat Transfer";
    private static final double DAY_S = 86_400;
    /** Biot number up to which one temperature is usual, by the textbooks named. */
    static final double LUMPED = 0.1;
    /** Biot number at which one temperature is as good as true. */
    private static final double ONE_TEMPERATURE = 1e-4;

    private CoolingExamples() {}

    static List<WorkedExample> all() {
        return List.of(oneNode(), lumpedCriterion(), sphere(), ground());
    }

    private static WorkedExample oneNode() {
        double bead = 7.06e-4;
        return WorkedExample.called("cooling-by-hand", "A bottle cools by hand: one node, one film")
                .question(
                        "A bottle of wine at {T_0} is put into a refrigerator whose air is at {T_a}. How warm is it after"
                                + " {t}, and when is it at {T_w}?")
                .worked(CoolingExamples::workOneNode, "t_w")
                .sketched(s -> Sketch.empty()
                        .box(60, 14, 150, 152)
                        .bottle(135, 156)
                        .arrow(154, 110, 196, 110)
                        .label(218, 60, "air " + s.fill("{T_a}"))
                        .label(218, 84, "wine " + s.fill("{T_0}") + " at first")
                        .label(218, 114, "heat h A (T − Ta)"))
                .whatIf("h", 18)
                .whatIf("T_a", 2)
                .whatIf("T_0", 26)
                .exercise(
                        "The refrigerator gets a fan, and the film rises to {h}. When is the bottle at {T_w}?",
                        "t_w",
                        Map.of("h", 16.0))
                .exercise(
                        "A magnum holds {m} in {m_g} of glass with {A} of wall beside it. How warm is it after {t}?",
                        "T",
                        Map.of("m", 1.48, "m_g", 0.95, "A", 0.095))
                .printed(
                        CENGEL
                                + ", Example 4-1, as worked in the textbook companions of FOSSEE (time rounded to a second)",
                        "time for a thermocouple bead to go from {T_0} to {T_w} in a gas of {T_a}",
                        "t_w",
                        10,
                        0.5,
                        bead(0.001, 8500, 320, 210, 0, 100, 99))
                .printed(
                        INCROPERA + ", Example 5.1, as worked in the textbook companions of FOSSEE",
                        "time for a thermocouple bead to go from {T_0} to {T_w} in a gas of {T_a}",
                        "t_w",
                        5.16,
                        0.01,
                        bead(bead, 8500, 400, 400, 25, 200, 199))
                .remembered(
                        CENGEL + ", Example 4-2",
                        "time for a body of {T_0} to cool to {T_w} in air of {T_a}",
                        "t_w",
                        12.2 * 3600,
                        180,
                        Map.of(
                                "m",
                                996 * Math.PI * 0.15 * 0.15 * 1.7,
                                "c",
                                4178.0,
                                "m_g",
                                0.0,
                                "h",
                                8.0,
                                "A",
                                2 * Math.PI * 0.15 * (1.7 + 0.15),
                                "T_0",
                                37.0,
                                "T_a",
                                20.0,
                                "T_w",
                                25.0))
                .lesson(
                        "Everything is in the time constant τ: after one τ 37 % of the difference is left, after two 14 %,"
                                + " after three 5 %. The nearer to the air, the longer each further kelvin takes.")
                .teaching(
                        "Let the class plot ln(T − T_a) against time before they see the formula. The usual slip is to use"
                                + " T instead of T − T_a; the second is to forget the glass, which holds a tenth of the heat."
                                + " The film is the weak point: it is known to a fifth at best, and so is every time found with it.");
    }

    private static Map<String, Double> bead(
            double diameter, double density, double c, double h, double from, double gas, double to) {
        return Map.of(
                "m",
                density * Math.PI / 6 * diameter * diameter * diameter,
                "c",
                c,
                "m_g",
                0.0,
                "h",
                h,
                "A",
                Math.PI * diameter * diameter,
                "T_0",
                from,
                "T_a",
                gas,
                "T_w",
                to);
    }

    private static void workOneNode(Working w) {
        Term m = w.given("m", "mass of the wine", 0.74, "kg");
        Term c = w.given("c", "specific heat capacity of the wine", 4260, "J/(kg K)");
        Term mg = w.given("m_g", "mass of the glass", 0.5, "kg");
        Term cg = w.given("c_g", "specific heat capacity of glass", 830, "J/(kg K)");
        Term h = w.given("h", "film: convection and radiation together", 8.5, "W/(m² K)");
        Term a = w.given("A", "surface of the wall beside the wine", 0.06, "m²");
        Term t0 = w.given("T_0", "temperature at the start", 22, "°C");
        Term ta = w.given("T_a", "temperature of the air", 5, "°C");
        Term tw = w.given("T_w", "temperature wanted", 10, "°C");
        Term t = w.given("t", "time in the refrigerator", 3600, "s");
        Term heat =
                w.find("C", "heat capacity of wine and glass", "J/K", m.times(c).plus(mg.times(cg)));
        Term tau = w.find("τ", "time constant", "s", heat.over(h.times(a)));
        w.find(
                "T",
                "temperature after the time",
                "°C",
                ta.plus(t0.minus(ta).times(exp(t.over(tau).negated()))));
        w.find(
                "t_w",
                "time until the temperature wanted",
                "s",
                tau.times(ln(t0.minus(ta).over(tw.minus(ta)))));

        Node body = Networks.body(heat.value(), t0.value());
        double endS = 12 * tau.value();
        Trajectory run = Networks.oneNode(body, h.value() * a.value(), ta.value(), Math.max(endS, 2 * t.value()));
        w.check(
                "T",
                "the network C dT/dt = h A (T_a − T) integrated in steps by the library's solver",
                Networks.celsius(run, body, t.value()),
                1e-3,
                "only the error of the steps");
        double reached = Networks.timeTo(run, body, tw.value());
        w.check(
                "t_w",
                "the moment at which that run passes the temperature wanted",
                reached,
                1e-3 * reached,
                "only the error of the steps");
        List<Double> minutes = Curve.spaced(0, 4 * tau.value() / 60, 81);
        w.draw(Figure.of(
                "cooling",
                "Cooling with one time constant",
                "Time [min]",
                "Temperature [°C]",
                List.of(
                        Curve.of(
                                "wine",
                                minutes,
                                x -> ta.value() + (t0.value() - ta.value()) * Math.exp(-x * 60 / tau.value())),
                        Curve.of("air", minutes, x -> ta.value()))));
    }

    private static WorkedExample lumpedCriterion() {
        return WorkedExample.called(
                        "one-temperature", "May a cooling ball be taken as one temperature? The Biot number")
                .question(
                        "A steel ball of {D} comes from the freezer at {T_0} and is dropped into a drink of {T_d}, of which"
                                + " there is so much that it stays as warm as it is. May the ball be described by one temperature, and"
                                + " how warm is it after {t}?")
                .worked(CoolingExamples::workLumped, "T")
                .sketched(s -> Sketch.empty()
                        .tub(120, 160, 130, 130)
                        .dashed(58, 60, 182, 60)
                        .circle(120, 118, 26)
                        .arrow(176, 118, 150, 118)
                        .label(204, 70, "drink " + s.fill("{T_d}"))
                        .label(204, 96, "ball " + s.fill("{T_0}"))
                        .label(204, 122, "diameter " + s.fill("{D}")))
                .whatIf("k", 1.1, "Bi")
                .whatIf("h", 1000)
                .whatIf("D", 0.05)
                .exercise(
                        "A ball of granite conducts {k}. What is its Biot number, and may it be taken as one temperature?",
                        "Bi",
                        Map.of("k", 2.8, "ρ", 2650.0, "c", 790.0))
                .exercise(
                        "The steel ball is only {D} thick. How warm is it after {t}?",
                        "T",
                        Map.of("D", 0.012, "t", 5.0))
                .printed(
                        CENGEL + ", Example 4-1 (data as worked in the textbook companions of FOSSEE)",
                        "Biot number of a thermocouple bead of {D}",
                        "Bi",
                        0.001,
                        5e-5,
                        Map.of("D", 0.001, "h", 210.0, "k", 35.0))
                .caution(
                        "A ball from the freezer freezes to wet skin and lips. Do not drink where it may touch them, and let"
                                + " nobody swallow small ones.")
                .lesson(
                        "Below Bi = 0.1 a body is of one temperature to a few per cent. The drink itself is another matter: at"
                                + " rest its Bi is far above 0.1, and only its own circulation lets one treat it as one node.")
                .teaching(
                        "The limit is not sharp. The comparison with shells shows what it costs: a few per cent of the first"
                                + " difference. Ask what happens with glass, stone and plastic before the numbers are put in.");
    }

    private static void workLumped(Working w) {
        Term d = w.given("D", "diameter of the ball", 0.025, "m");
        Term k = w.given("k", "thermal conductivity of stainless steel", 15, "W/(m K)");
        Term rho = w.given("ρ", "density of steel", 7900, "kg/m³");
        Term c = w.given("c", "specific heat capacity of steel", 480, "J/(kg K)");
        Term h = w.given("h", "film between ball and drink", 250, "W/(m² K)");
        Term t0 = w.given("T_0", "temperature of the ball at the start", -18, "°C");
        Term td = w.given("T_d", "temperature of the drink", 18, "°C");
        Term t = w.given("t", "time in the drink", 60, "s");
        Term length = w.find("L_c", "volume over surface of a sphere", "m", d.over(number(6)));
        Term biot = w.find("Bi", "Biot number", "1", h.times(length).over(k));
        Term tau = w.find(
                "τ",
                "time constant of the ball",
                "s",
                rho.times(c).times(length).over(h));
        w.find(
                "T",
                "temperature after the time",
                "°C",
                td.plus(t0.minus(td).times(exp(t.over(tau).negated()))));
        DoubleUnaryOperator shells = conductivity -> Networks.sphereMean(
                d.value() / 2,
                conductivity,
                conductivity / (rho.value() * c.value()),
                h.value(),
                t0.value(),
                td.value(),
                t.value());
        double difference = Math.abs(t0.value() - td.value());
        w.check(
                "T",
                "a ball in " + Networks.SHELLS + " shells that conduct so well that none is warmer than another (Bi of "
                        + Show.exact(ONE_TEMPERATURE) + ")",
                shells.applyAsDouble(k.value() * biot.value() / ONE_TEMPERATURE),
                ONE_TEMPERATURE * difference,
                "by half that Biot number of the first difference, and the error of the steps");
        if (biot.value() <= LUMPED) {
            w.check(
                    "T",
                    "the ball in as many shells that conduct as it does, mean of all",
                    shells.applyAsDouble(k.value()),
                    difference * (0.01 + biot.value() / 2),
                    "the shells resist; by half the Biot number of the first difference at most");
        }
    }

    private static WorkedExample sphere() {
        return WorkedExample.called("a-fruit-in-ice-water", "How long until the middle is cold? One term of the series")
                .question(
                        "An orange for the punch, a sphere of {r_0} radius at {T_0}, lies in stirred ice water of {T_b}. When"
                                + " is its middle at {T_w}?")
                .worked(CoolingExamples::workSphere, "t")
                .sketched(s -> Sketch.empty()
                        .tub(120, 164, 150, 130)
                        .dashed(48, 54, 192, 54)
                        .ice(56, 40, 6, 16)
                        .circle(120, 114, 36)
                        .line(120, 114, 145, 89)
                        .label(208, 70, "water " + s.fill("{T_b}"))
                        .label(208, 96, "fruit " + s.fill("{T_0}"))
                        .label(208, 122, "radius " + s.fill("{r_0}")))
                .whatIf("r_0", 0.0175)
                .whatIf("h", 8)
                .whatIf("T_w", 4)
                .exercise("A grape has a radius of {r_0}. When is its middle at {T_w}?", "t", Map.of("r_0", 0.0095))
                .exercise(
                        "How long does the orange take in the air of a refrigerator of {T_b}, where the film is {h}?",
                        "t",
                        Map.of("T_b", 4.0, "h", 9.0))
                .remembered(
                        CENGEL + ", Example 4-3 (boiling eggs)",
                        "time until the middle of an egg of {r_0} radius goes from {T_0} to {T_w} in water of {T_b}",
                        "t",
                        865,
                        5,
                        Map.of(
                                "r_0", 0.025, "k", 0.627, "α", 0.151e-6, "h", 1200.0, "T_0", 5.0, "T_b", 95.0, "T_w",
                                70.0))
                .lesson(
                        "Time goes with the square of the size: half the radius, a quarter of the time. A better film hardly"
                                + " helps once Bi is large, because the inside decides.")
                .teaching(
                        "One term suffices once Fo is above 0.2; have the class check it. λ is the root of 1 − λ cot λ = Bi;"
                                + " a table or a few steps of bisection do. Fruit is not a solid sphere, and this one has no peel.");
    }

    private static void workSphere(Working w) {
        Term r = w.given("r_0", "radius", 0.036, "m");
        Term k = w.given("k", "thermal conductivity of fruit", 0.56, "W/(m K)");
        Term alpha = w.given("α", "thermal diffusivity of fruit", 1.4e-7, "m²/s");
        Term h = w.given("h", "film between water and fruit", 400, "W/(m² K)");
        Term t0 = w.given("T_0", "temperature at the start", 20, "°C");
        Term tb = w.given("T_b", "temperature of the bath", 0.5, "°C");
        Term tw = w.given("T_w", "temperature wanted in the middle", 6, "°C");
        Term bi = w.find("Bi", "Biot number on the radius", "1", h.times(r).over(k));
        double root = new BrentSolver(1e-12).solve(200, x -> 1 - x / Math.tan(x) - bi.value(), 1e-6, Math.PI - 1e-9);
        Term lambda = w.look("λ", "first root of 1 − λ cot λ = Bi", "1", root, "by bisection, or from a table");
        Term sine = sin(lambda);
        Term a = w.find(
                "A_1",
                "first coefficient",
                "1",
                number(4)
                        .times(sine.minus(lambda.times(cos(lambda))))
                        .over(number(2).times(lambda).minus(sin(number(2).times(lambda)))));
        Term fo = w.find(
                "Fo",
                "Fourier number; above 0.2 one term is enough",
                "1",
                ln(a.times(t0.minus(tb)).over(tw.minus(tb))).over(lambda.squared()));
        Term t = w.find(
                "t",
                "time until the middle is as wanted",
                "s",
                fo.times(r.squared()).over(alpha));
        w.check(
                "t",
                Networks.SHELLS
                        + " shells in the library's solver, the moment at which the middle passes the temperature",
                Networks.sphereMiddle(
                        r.value(), k.value(), alpha.value(), h.value(), t0.value(), tb.value(), tw.value()),
                0.01 * t.value(),
                "shells are not infinitely thin, and the series has more terms");
    }

    private static Term sin(Term of) {
        return Term.function("sin", of, Math::sin);
    }

    private static Term cos(Term of) {
        return Term.function("cos", of, Math::cos);
    }

    private static WorkedExample ground() {
        return WorkedExample.called("buried-in-the-ground", "How deep does a cold spell reach? The half-infinite solid")
                .question(
                        "Bottles lie buried in earth of {T_i}. A cold spell brings the surface to {T_s} and keeps it there for"
                                + " {t}. Down to what depth does the earth get colder than {T_w}?")
                .worked(CoolingExamples::workGround, "x")
                .sketched(s -> Sketch.empty()
                        .line(20, 40, 340, 40)
                        .label(24, 28, "surface " + s.fill("{T_s}"))
                        .dashed(20, 104, 340, 104)
                        .label(24, 98, s.fill("{T_w}") + " at this depth")
                        .arrow(200, 42, 200, 102)
                        .arrow(200, 102, 200, 42)
                        .label(208, 76, "x")
                        .box(240, 124, 76, 22)
                        .label(24, 160, "far below " + s.fill("{T_i}")))
                .whatIf("t", 30 * DAY_S)
                .whatIf("T_s", -15)
                .whatIf("α", 9e-7)
                .exercise(
                        "In dry sand α = {α}. How deep does it get colder than {T_w} in {t}?", "x", Map.of("α", 2.5e-7))
                .exercise(
                        "A heat wave keeps the surface at {T_s} for {t}. Down to what depth does earth of {T_i} get warmer than"
                                + " {T_w}?",
                        "x",
                        Map.of("T_s", 40.0, "T_i", 13.0, "T_w", 16.0, "t", 5 * DAY_S))
                .printed(
                        "Y. A. Çengel and A. J. Ghajar, Heat and Mass Transfer, 5th ed., Example 4-6",
                        "depth of frost in soil of {T_i} after {t} at {T_s}",
                        "x",
                        0.80,
                        0.005,
                        Map.of("T_i", 15.0, "T_s", -10.0, "T_w", 0.0, "α", 0.15e-6, "t", 90 * DAY_S))
                .remembered(
                        INCROPERA + ", Example 5.6",
                        "burial depth of a water main in soil of {T_i} after {t} at {T_s}",
                        "x",
                        0.68,
                        0.005,
                        Map.of("T_i", 20.0, "T_s", -15.0, "T_w", 0.0, "α", 0.138e-6, "t", 60 * DAY_S))
                .lesson(
                        "Depth goes with the square root of time: to keep off four times as long a spell, dig twice as deep.")
                .teaching(
                        "Ask first for the dimension: only √(α t) is a length. Moist ground that freezes gives off latent heat,"
                                + " which this leaves out, so that real frost goes less deep.");
    }

    private static void workGround(Working w) {
        Term alpha = w.given("α", "thermal diffusivity of moist earth", 5e-7, "m²/s");
        Term ti = w.given("T_i", "temperature of the earth at the start", 11, "°C");
        Term ts = w.given("T_s", "temperature of the surface", -8, "°C");
        Term tw = w.given("T_w", "temperature not to be passed", 2, "°C");
        Term t = w.given("t", "duration", 7 * DAY_S, "s");
        Term part = w.find(
                "θ",
                "part of the step that is left at that depth",
                "1",
                tw.minus(ts).over(ti.minus(ts)));
        Term eta = w.look(
                "η",
                "number whose error function is θ",
                "1",
                Erf.erfInv(part.value()),
                "from a table of erf, or the machine");
        Term x = w.find("x", "depth", "m", number(2).times(eta).times(Term.sqrt(alpha.times(t))));
        w.check(
                "T_w",
                Networks.SLICES
                        + " slices above that depth and a long column below, in the library's solver: the temperature there",
                Networks.groundAt(x.value(), alpha.value(), ti.value(), ts.value(), t.value()),
                0.02,
                "slices are not infinitely thin");
        DoubleUnaryOperator profile = depth ->
                ts.value() + (ti.value() - ts.value()) * Erf.erf(depth / (2 * Math.sqrt(alpha.value() * t.value())));
        w.draw(Figure.of(
                "ground",
                "Temperature below the surface at the end",
                "Depth [m]",
                "Temperature [°C]",
                List.of(Curve.of("earth", Curve.spaced(0, 3 * x.value(), 81), profile))));
    }
}
