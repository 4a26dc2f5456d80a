/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import static org.beveragethermal.examples.worked.Term.number;
import static org.beveragethermal.examples.worked.Term.pi;

import java.util.List;
import java.util.Map;
import org.beveragethermal.core.correlation.Radiation;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.materials.air.DryAir;

/** How much heat passes: through a wall, by free convection and radiation, along a handle, across a vacuum. */
final class HeatFlowExamples {

    private static final String INCROPERA = "F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer";
    private static final String UNIT_FILM = "W/(m² K)";

    private HeatFlowExamples() {}

    static List<WorkedExample> all() {
        return List.of(foamBox(), roomFilm(), spoon(), flask());
    }

    private static WorkedExample foamBox() {
        return WorkedExample.called("resistances-in-series", "A foam box: resistances in series")
                .question(
                        "A foam box with {A} of wall, {L} thick, stands at {T_o}; inside it is {T_i}. How much heat comes in,"
                                + " and how much ice does that melt in an hour?")
                .worked(HeatFlowExamples::workFoamBox, "Q")
                .sketched(s -> Sketch.empty()
                        .box(40, 14, 150, 136)
                        .shaded(40, 14, 12, 136)
                        .shaded(178, 14, 12, 136)
                        .bottle(90, 142)
                        .bottle(134, 142)
                        .arrow(236, 92, 196, 92)
                        .label(206, 60, "room " + s.fill("{T_o}"))
                        .label(206, 120, "foam " + s.fill("{L}"))
                        .label(206, 144, "inside " + s.fill("{T_i}")))
                .whatIf("L", 0.06)
                .whatIf("k", 0.05)
                .whatIf("h_o", 25)
                .exercise(
                        "A single pane of glass is {L} thick and conducts {k}. How much heat passes {A} of it?",
                        "Q",
                        Map.of("L", 0.004, "k", 1.0, "A", 1.0))
                .exercise(
                        "How much ice melts in an hour in a box of {L} foam at {T_o}?",
                        "m_h",
                        Map.of("L", 0.05, "T_o", 33.0))
                .remembered(
                        "Y. A. Çengel, Heat Transfer, Example 3-2",
                        "heat through a window of {A} with one pane of {L}; it goes out, so that it is negative here",
                        "Q",
                        -266,
                        0.5,
                        Map.of("A", 1.2, "L", 0.008, "k", 0.78, "h_i", 10.0, "h_o", 40.0, "T_o", -10.0, "T_i", 20.0))
                .lesson(
                        "The largest resistance decides. In a foam box that is the foam; for a pane of glass it is the air on"
                                + " either side, and better glass would change next to nothing.")
                .teaching(
                        "Have the class rank the three resistances before they add them. Edges and a lid that leaks are left"
                                + " out; a real box takes up a quarter more.");
    }

    private static void workFoamBox(Working w) {
        Term a = w.given("A", "area of the wall", 0.62, "m²");
        Term l = w.given("L", "thickness of the wall", 0.03, "m");
        Term k = w.given("k", "thermal conductivity of the wall", 0.035, "W/(m K)");
        Term hi = w.given("h_i", "film inside", 6, UNIT_FILM);
        Term ho = w.given("h_o", "film outside", 9, UNIT_FILM);
        Term to = w.given("T_o", "temperature outside", 27, "°C");
        Term ti = w.given("T_i", "temperature inside", 3, "°C");
        Term latent = w.given("L_f", "heat of fusion of ice", 333_400, "J/kg");
        Term inside =
                w.find("R_i", "resistance of the film inside", "K/W", number(1).over(hi.times(a)));
        Term wall = w.find("R_w", "resistance of the wall", "K/W", l.over(k.times(a)));
        Term outside =
                w.find("R_o", "resistance of the film outside", "K/W", number(1).over(ho.times(a)));
        Term q = w.find("Q", "heat", "W", to.minus(ti).over(inside.plus(wall).plus(outside)));
        w.find("m_h", "ice melted in an hour", "kg", q.times(number(3600)).over(latent));
        w.check(
                "Q",
                "the wall in " + Networks.SLICES
                        + " slices between two films, run in the library's solver until it is steady",
                Networks.throughWall(a.value(), l.value(), k.value(), hi.value(), ti.value(), ho.value(), to.value()),
                1e-3 * Math.abs(q.value()),
                "only the error of the steps");
    }

    private static WorkedExample roomFilm() {
        return WorkedExample.called("film-of-a-room", "Where h comes from: free convection and radiation side by side")
                .question(
                        "A cold bottle with a surface of {T_s} stands in a still room of {T_a}. What film does the room make on"
                                + " it, by convection and by radiation?")
                .worked(HeatFlowExamples::workRoomFilm, "h")
                .sketched(s -> Sketch.empty()
                        .bottle(90, 156)
                        .arrow(66, 54, 66, 132)
                        .arrow(114, 54, 114, 132)
                        .arrow(200, 100, 116, 100)
                        .label(136, 60, "cold air sinks along the wall")
                        .label(206, 104, "walls radiate")
                        .label(136, 150, "surface " + s.fill("{T_s}") + ", room " + s.fill("{T_a}")))
                .whatIf("T_s", 2)
                .whatIf("H", 0.12)
                .whatIf("ε", 0.05)
                .exercise(
                        "A polished metal cooler has ε = {ε}. What is its film at a surface of {T_s}?",
                        "h",
                        Map.of("ε", 0.08, "T_s", 14.0))
                .exercise(
                        "What is the Nusselt number of a can of {H} at {T_s} in a room of {T_a}?",
                        "Nu",
                        Map.of("H", 0.115, "T_s", 6.0, "T_a", 28.0))
                .remembered(
                        INCROPERA
                                + ", Example 9.2 (glass screen of a fireplace, there of 232 °C; the library's air ends 1 K below its mean)",
                        "film of free convection on {H} of hot glass in a room of {T_a}",
                        "h_c",
                        7.0,
                        0.1,
                        Map.of("H", 0.71, "T_s", 230.0, "T_a", 23.0))
                .lesson(
                        "In a still room radiation brings as much heat to a bottle as the air does. That is why a bright metal"
                                + " cooler keeps cold better than it feels it should, and why a fan helps less than one thinks.")
                .teaching(
                        "Students look for one h in a table; here they see that it depends on the difference it is asked to"
                                + " carry. The law scatters by a tenth.");
    }

    private static void workRoomFilm(Working w) {
        Term ts = w.given("T_s", "temperature of the surface", 10, "°C");
        Term ta = w.given("T_a", "temperature of air and walls", 22, "°C");
        Term height = w.given("H", "height of the wall", 0.22, "m");
        Term emissivity = w.given("ε", "emissivity of glass", 0.9, "1");
        Term tf = w.find(
                "T_f",
                "mean of both, absolute",
                "K",
                Kelvin.in(ts).plus(Kelvin.in(ta)).over(number(2)));
        double filmK = tf.value();
        double pressure = DryAir.STANDARD_PRESSURE_PA;
        Term nu = w.look(
                "ν",
                "kinematic viscosity of air at that temperature",
                "m²/s",
                DryAir.kinematicViscosity(filmK, pressure),
                "the library's dry air, or a table");
        Term k = w.look(
                "k",
                "thermal conductivity of air",
                "W/(m K)",
                DryAir.thermalConductivity(filmK),
                "the library's dry air, or a table");
        Term pr = w.look(
                "Pr", "Prandtl number of air", "1", DryAir.prandtlNumber(filmK), "the library's dry air, or a table");
        double difference = Math.abs(ts.value() - ta.value());
        Term delta = w.look("ΔT", "difference, whichever is warmer", "K", difference, "T_a and T_s");
        Term ra = w.find(
                "Ra",
                "Rayleigh number",
                "1",
                number(ConvectiveFilm.GRAVITY)
                        .times(delta)
                        .times(height.toThe(3))
                        .times(pr)
                        .over(tf.times(nu.squared())));
        Term nusselt = w.find(
                "Nu",
                "Nusselt number by Churchill and Chu",
                "1",
                number(0.825)
                        .plus(number(0.387)
                                .times(ra.toThe(1, 6))
                                .over(number(1)
                                        .plus(number(0.492).over(pr).toThe(9, 16))
                                        .toThe(8, 27)))
                        .squared());
        Term hc =
                w.find("h_c", "film of convection", UNIT_FILM, nusselt.times(k).over(height));
        Term hr = w.find(
                "h_r",
                "film of radiation",
                UNIT_FILM,
                number(4)
                        .times(emissivity)
                        .times(number(Radiation.STEFAN_BOLTZMANN))
                        .times(tf.toThe(3)));
        w.find("h", "both together", UNIT_FILM, hc.plus(hr));
        double exact = VerticalPlate.churchillChu(ra.value(), pr.value());
        w.check(
                "Nu",
                "the library's VerticalPlate.churchillChu",
                exact,
                1e-9 * exact,
                "the same law as the library codes it");
        double laminar = VerticalPlate.churchillChuLaminar(ra.value(), pr.value()) * k.value() / height.value();
        w.check(
                "h_c",
                "the law of the same authors for laminar films alone",
                laminar,
                0.15 * laminar,
                "each law scatters by about a tenth");
        double radiated =
                Radiation.greySurface(emissivity.value(), Kelvin.of(ts), Kelvin.of(ta)) / (ts.value() - ta.value());
        w.check(
                "h_r",
                "ε σ (T_s⁴ − T_a⁴)/(T_s − T_a), not linearised",
                radiated,
                0.06 * radiated,
                "the fourth power is not a straight line; the wider the difference, the less");
    }

    private static WorkedExample spoon() {
        return WorkedExample.called("a-spoon-in-mulled-wine", "The hot end of a ladle: a rod as a fin")
                .question(
                        "A metal ladle sticks {L} out of mulled wine of {T_b} into air of {T_a}. How much heat does its handle"
                                + " lead away, and how hot is the end that one takes hold of?")
                .worked(HeatFlowExamples::workSpoon, "Q")
                .sketched(s -> Sketch.empty()
                        .tub(90, 166, 130, 90)
                        .dashed(30, 96, 150, 96)
                        .line(84, 150, 210, 30)
                        .line(88, 154, 214, 34)
                        .label(34, 140, s.fill("{T_b}"))
                        .label(222, 36, "end?")
                        .label(222, 60, "air " + s.fill("{T_a}"))
                        .label(222, 84, "length " + s.fill("{L}"))
                        .label(222, 108, "diameter " + s.fill("{D}")))
                .whatIf("k", 390)
                .whatIf("L", 0.05)
                .whatIf("k", 0.2)
                .exercise("The handle is aluminium, k = {k}. How hot is its end?", "T_e", Map.of("k", 200.0))
                .exercise(
                        "A rod {D} thick, {L} long: how much heat does it lead away?",
                        "Q",
                        Map.of("D", 0.012, "L", 0.3))
                .remembered(
                        INCROPERA + ", Example 3.9",
                        "heat from a very long copper rod of {D}",
                        "Q",
                        8.3,
                        0.05,
                        Map.of("D", 0.005, "L", 1.5, "k", 398.0, "h", 100.0, "T_b", 100.0, "T_a", 25.0))
                .remembered(
                        INCROPERA + ", Example 3.9",
                        "the same of stainless steel",
                        "Q",
                        1.6,
                        0.05,
                        Map.of("D", 0.005, "L", 0.4, "k", 14.0, "h", 100.0, "T_b", 100.0, "T_a", 25.0))
                .caution(
                        "Mulled wine burns skin in seconds, and a metal handle may. Keep it below 60 °C, use a cloth, keep"
                                + " children away, and do not heat it over an open flame: its vapour burns.")
                .lesson(
                        "How far heat creeps along a rod is 1/m, the root of k D/(4 h). Beyond three times that a longer handle"
                                + " changes nothing; a worse conductor does.")
                .teaching(
                        "The end is taken as insulated; adding a quarter of the diameter to the length corrects for it. Let them"
                                + " compare silver, steel and wood before they compute.");
    }

    private static void workSpoon(Working w) {
        Term d = w.given("D", "diameter of the handle", 0.008, "m");
        Term l = w.given("L", "free length", 0.18, "m");
        Term k = w.given("k", "thermal conductivity of stainless steel", 15, "W/(m K)");
        Term h = w.given("h", "film in still air", 10, UNIT_FILM);
        Term tb = w.given("T_b", "temperature at the root", 70, "°C");
        Term ta = w.given("T_a", "temperature of the air", 8, "°C");
        Term m = w.find(
                "m",
                "how steeply the excess falls, per metre",
                "1/m",
                Term.sqrt(number(4).times(h).over(k.times(d))));
        Term section =
                w.find("A_c", "cross-section", "m²", pi().times(d.squared()).over(number(4)));
        Term ml = w.find("mL", "length in units of 1/m", "1", m.times(l));
        Term q = w.find(
                "Q",
                "heat led away",
                "W",
                k.times(section).times(m).times(tb.minus(ta)).times(Term.function("tanh", ml, Math::tanh)));
        w.find(
                "T_e",
                "temperature of the end",
                "°C",
                ta.plus(tb.minus(ta).over(Term.function("cosh", ml, Math::cosh))));
        w.check(
                "Q",
                Networks.SLICES + " slices of the rod in the library's solver, run until they are steady",
                Networks.fin(l.value(), d.value(), k.value(), h.value(), tb.value(), ta.value()),
                0.02 * q.value(),
                "slices are not infinitely short");
    }

    private static WorkedExample flask() {
        return WorkedExample.called("a-vacuum-flask", "A vacuum flask: radiation between two cylinders")
                .question(
                        "Coffee of {T_1} is in a vacuum flask whose silvered walls have emissivities of {ε_1} and {ε_2}; the"
                                + " outer wall is at {T_2}. How much heat crosses the vacuum, and how fast does the coffee cool by it?")
                .worked(HeatFlowExamples::workFlask, "Q")
                .sketched(s -> Sketch.empty()
                        .box(70, 20, 90, 144)
                        .box(82, 30, 66, 124)
                        .arrow(148, 92, 160, 92)
                        .label(90, 96, s.fill("{T_1}"))
                        .label(178, 60, "outside " + s.fill("{T_2}"))
                        .label(178, 86, "radii " + s.fill("{r_1}") + ", " + s.fill("{r_2}"))
                        .label(178, 112, "vacuum: only radiation"))
                .whatIf("ε_1", 0.9)
                .whatIf("T_1", 95)
                .whatIf("m", 0.25, "v")
                .exercise(
                        "The silver has aged to {ε_1} on both walls. How much heat crosses?",
                        "Q",
                        Map.of("ε_1", 0.10, "ε_2", 0.10))
                .exercise(
                        "Ice water of {T_1} stands in the flask in a car of {T_2}. How much heat comes in? (It is negative.)",
                        "Q",
                        Map.of("T_1", 0.0, "T_2", 45.0))
                .remembered(
                        INCROPERA + ", 7th ed., Problem 13.63 (data read, answer remembered)",
                        "heat gained (negative here) by a metre of a tube of {r_1} radius at {T_1} in one of {r_2} at {T_2}",
                        "Q",
                        -0.50,
                        0.005,
                        Map.of(
                                "r_1",
                                0.01,
                                "r_2",
                                0.025,
                                "H",
                                1.0,
                                "ε_1",
                                0.02,
                                "ε_2",
                                0.05,
                                "T_1",
                                Kelvin.celsius(77),
                                "T_2",
                                Kelvin.celsius(300)))
                .caution(
                        "Coffee that is kept hot scalds hours later; open the flask upright. A flask of glass can implode: no"
                                + " ice cubes dropped in, no spoon.")
                .lesson(
                        "Two bright walls pass a fiftieth of what two dull ones would. What really cools a flask is its neck and"
                                + " stopper.")
                .teaching(
                        "Temperatures must be absolute, which half the class forgets. The check follows the rays from wall to"
                                + " wall, and shows why the formula has the shape it has.");
    }

    private static void workFlask(Working w) {
        Term r1 = w.given("r_1", "radius of the inner wall", 0.040, "m");
        Term r2 = w.given("r_2", "radius of the outer wall", 0.045, "m");
        Term height = w.given("H", "height", 0.22, "m");
        Term e1 = w.given("ε_1", "emissivity of the inner wall", 0.03, "1");
        Term e2 = w.given("ε_2", "emissivity of the outer wall", 0.03, "1");
        Term t1 = w.given("T_1", "temperature of the inner wall", 85, "°C");
        Term t2 = w.given("T_2", "temperature of the outer wall", 20, "°C");
        Term m = w.given("m", "mass of the coffee", 1, "kg");
        Term c = w.given("c", "its specific heat capacity", 4190, "J/(kg K)");
        Term sigma = w.given("σ", "constant of Stefan and Boltzmann", Radiation.STEFAN_BOLTZMANN, "W/(m² K⁴)");
        Term area = w.find(
                "A_1",
                "surface of the inner wall",
                "m²",
                number(2).times(pi()).times(r1).times(height));
        Term q = w.find(
                "Q",
                "heat across the vacuum",
                "W",
                sigma.times(area)
                        .times(Kelvin.in(t1).toThe(4).minus(Kelvin.in(t2).toThe(4)))
                        .over(number(1)
                                .over(e1)
                                .plus(number(1).minus(e2).over(e2).times(r1.over(r2)))));
        w.find("v", "rate of cooling", "K/h", q.times(number(3600)).over(m.times(c)));
        w.check(
                "Q",
                "what each wall sends, followed from reflection to reflection until nothing changes",
                reflected(area.value(), r1.value() / r2.value(), e1.value(), e2.value(), Kelvin.of(t1), Kelvin.of(t2)),
                1e-4 * Math.abs(q.value()),
                "the last reflections are left out");
    }

    private static double reflected(double area, double ratio, double e1, double e2, double hotK, double coldK) {
        double emitted1 = Radiation.STEFAN_BOLTZMANN * Math.pow(hotK, 4);
        double emitted2 = Radiation.STEFAN_BOLTZMANN * Math.pow(coldK, 4);
        double leaving1 = 0;
        double leaving2 = 0;
        for (int i = 0; i < 20_000; i++) {
            // All that reaches the inner wall comes from the outer one; the outer one also sees itself.
            double reaching2 = ratio * leaving1 + (1 - ratio) * leaving2;
            leaving2 = e2 * emitted2 + (1 - e2) * reaching2;
            leaving1 = e1 * emitted1 + (1 - e1) * leaving2;
        }
        return area * (leaving1 - leaving2);
    }
}
