/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import static org.beveragethermal.examples.worked.Term.number;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.icemaking.IceMaking;
import org.beveragethermal.core.icemaking.IceMould;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.ice.IceBudget;

/** Balances of heat: what is mixed, what melts, how much ice it takes and how long that ice takes to make. */
final class IceExamples {

    private static final String CAPACITY = "J/(kg K)";

    private IceExamples() {}

    static List<WorkedExample> all() {
        return List.of(pouring(), iceInDrink(), howMuchIce(), iceBalls());
    }

    private static WorkedExample pouring() {
        return WorkedExample.called("method-of-mixtures", "A warm glass: the method of mixtures")
                .question(
                        "{m_1} of wine at {T_1} is poured into a glass of {m_2} at {T_2}. What temperature do both take, if"
                                + " nothing is lost?")
                .worked(IceExamples::workPouring, "T")
                .sketched(s -> Sketch.empty()
                        .tub(120, 150, 80, 84)
                        .dashed(84, 96, 156, 96)
                        .line(120, 150, 120, 168)
                        .line(90, 168, 150, 168)
                        .arrow(120, 20, 120, 90)
                        .label(176, 60, "wine " + s.fill("{T_1}"))
                        .label(176, 120, "glass " + s.fill("{T_2}")))
                .whatIf("m_1", 0.05)
                .whatIf("T_2", 5)
                .whatIf("m_2", 0.35)
                .exercise(
                        "A ceramic cup of {m_2} (c = {c_2}) at {T_2} gets {m_1} of tea at {T_1}. How hot is the tea then?",
                        "T",
                        Map.of("m_2", 0.3, "c_2", 850.0, "T_2", 20.0, "m_1", 0.2, "T_1", 90.0, "c_1", 4190.0))
                .exercise("Only {m_1} is poured for tasting. How warm is it?", "T", Map.of("m_1", 0.04))
                .remembered(
                        "OpenStax, College Physics, example on cold water poured into a hot aluminium pan",
                        "{m_1} of water of {T_1} poured into {m_2} of aluminium of {T_2}",
                        "T",
                        59.1,
                        0.05,
                        Map.of("m_1", 0.25, "c_1", 4186.0, "T_1", 20.0, "m_2", 0.5, "c_2", 900.0, "T_2", 150.0))
                .lesson(
                        "The first sip is always warmer than the bottle: a glass holds as much heat as a sixth of the wine in"
                                + " it. Rinse it cold, or pour colder.")
                .teaching(
                        "The weights are heat capacities, not masses. Ask for the answer's range before computing: it must lie"
                                + " between the two, nearer to the larger heat capacity.");
    }

    private static void workPouring(Working w) {
        Term m1 = w.given("m_1", "mass of the wine", 0.12, "kg");
        Term c1 = w.given("c_1", "its specific heat capacity", 4260, CAPACITY);
        Term t1 = w.given("T_1", "its temperature", 8, "°C");
        Term m2 = w.given("m_2", "mass of the glass that is wetted", 0.1, "kg");
        Term c2 = w.given("c_2", "specific heat capacity of glass", 830, CAPACITY);
        Term t2 = w.given("T_2", "temperature of the glass", 24, "°C");
        Term first = w.find("C_1", "heat capacity of the wine", "J/K", m1.times(c1));
        Term second = w.find("C_2", "heat capacity of the glass", "J/K", m2.times(c2));
        w.find(
                "T",
                "common temperature",
                "°C",
                first.times(t1).plus(second.times(t2)).over(first.plus(second)));
        w.check(
                "T",
                "two nodes with a path between them, run in the library's solver until nothing changes",
                Networks.joined(first.value(), t1.value(), second.value(), t2.value()),
                1e-3,
                "only the error of the steps");
    }

    private static WorkedExample iceInDrink() {
        return WorkedExample.called("ice-in-the-glass", "Ice in the glass: the balance with melting")
                .question(
                        "{m_i} of ice at {T_i} is put into {m} of lemonade at {T_0}. How cold is it when the ice has melted, and"
                                + " what part of the cooling is melting?")
                .worked(IceExamples::workIceInDrink, "T")
                .sketched(s -> Sketch.empty()
                        .tub(110, 160, 90, 120)
                        .dashed(67, 66, 153, 66)
                        .ice(78, 70, 3, 20)
                        .label(176, 70, "ice " + s.fill("{m_i}") + " at " + s.fill("{T_i}"))
                        .label(176, 110, "drink " + s.fill("{m}") + " at " + s.fill("{T_0}")))
                .whatIf("m_i", 0.03)
                .whatIf("T_i", 0)
                .whatIf("T_0", 28)
                .exercise(
                        "How cold do {m_i} of ice at {T_i} make a jug of {m}?",
                        "T",
                        Map.of("m_i", 0.3, "m", 1.5, "T_i", 0.0))
                .exercise("What part of the cooling is melting if the ice comes at {T_i}?", "f", Map.of("T_i", -18.0))
                .remembered(
                        "OpenStax, College Physics, example on cooling soda with ice cubes (data read, printed answer remembered)",
                        "{m_i} of ice at {T_i} in {m} of soda of {T_0}",
                        "T",
                        13,
                        0.5,
                        Map.of("m", 0.25, "c", 4186.0, "T_0", 20.0, "m_i", 0.018, "T_i", 0.0, "L_f", 334_000.0))
                .lesson(
                        "Melting does nearly all of it: a gram of ice takes as much heat as four grams of water that warm from 0 to"
                                + " 20 °C. And the drink is thinner for it.")
                .teaching(
                        "If the result comes out below 0 °C, not all the ice melts: the formula does not know that, the student"
                                + " must. Ask them to find the mass of ice at which it happens.");
    }

    private static void workIceInDrink(Working w) {
        Term m = w.given("m", "mass of the drink", 0.25, "kg");
        Term c = w.given("c", "specific heat capacity of drink and melt water", 4190, CAPACITY);
        Term t0 = w.given("T_0", "temperature of the drink", 20, "°C");
        Term mi = w.given("m_i", "mass of the ice", 0.045, "kg");
        Term ti = w.given("T_i", "temperature of the ice", -8, "°C");
        Term ci = w.given("c_i", "specific heat capacity of ice", 2070, CAPACITY);
        Term latent = w.given("L_f", "heat of fusion of ice", 333_400, "J/kg");
        Term toMelt =
                w.find("e", "heat that a kilogram takes until it is water of 0 °C", "J/kg", latent.minus(ci.times(ti)));
        Term t = w.find(
                "T",
                "temperature when all has melted",
                "°C",
                m.times(c).times(t0).minus(mi.times(toMelt)).over(m.plus(mi).times(c)));
        w.find(
                "f",
                "part of the cooling that is melting",
                "1",
                mi.times(latent).over(m.times(c).times(t0.minus(t))));
        Water water = Water.liquid();
        double enthalpy =
                m.value() * water.specificEnthalpy(Kelvin.of(t0)) + mi.value() * Ice.specificEnthalpy(Kelvin.of(ti));
        double kelvin = new BrentSolver(1e-9)
                .solve(200, x -> (m.value() + mi.value()) * water.specificEnthalpy(x) - enthalpy, 268.15, 313.15);
        w.check(
                "T",
                "enthalpies of water and ice by IAPWS from the library, the temperature at which they balance",
                Kelvin.celsius(kelvin),
                0.15,
                "heat capacities are not constant");
    }

    private static WorkedExample howMuchIce() {
        return WorkedExample.called("how-much-ice", "How much ice for two bottles? The least that energy allows")
                .question(
                        "{n} bottles at {T_0} are to come to {T_e} in a bucket that holds {M} of ice and water; the water comes"
                                + " at {T_w}. How much of the {M} must be ice, at the least?")
                .worked(IceExamples::workHowMuchIce, "m_i")
                .sketched(s -> Sketch.empty()
                        .tub(120, 166, 160, 100)
                        .dashed(48, 92, 192, 92)
                        .bottle(92, 160)
                        .bottle(146, 160)
                        .ice(50, 82, 1, 16)
                        .ice(166, 82, 1, 16)
                        .label(214, 70, "bottles " + s.fill("{T_0}"))
                        .label(214, 96, "water " + s.fill("{T_w}"))
                        .label(214, 122, "ice of 0 °C")
                        .label(214, 148, "to become " + s.fill("{T_e}")))
                .whatIf("T_w", 10)
                .whatIf("n", 1)
                .whatIf("T_0", 28)
                .exercise("How much ice for {n} bottles at {T_0}?", "m_i", Map.of("n", 3.0, "T_0", 18.0))
                .exercise("How much if the water comes at {T_w}?", "m_i", Map.of("T_w", 5.0))
                .caution(
                        "A full bucket is heavy and wet glass slips: carry it with two hands and dry the bottles. Salted ice is"
                                + " colder than −15 °C and freezes skin; it is not needed here.")
                .lesson(
                        "Cold water saves more ice than anything else: more than half of the ice goes into the water of the bucket."
                                + " The room, the time and the melting rate come on top; IceBudget.answer() of the library finds that.")
                .teaching(
                        "A bound, not a recipe: with exactly this much the last gram melts at the last moment. No published answer"
                                + " is known to us; the check is the library's balance with its own enthalpies.");
    }

    private static void workHowMuchIce(Working w) {
        Term n = w.given("n", "number of bottles", 2, "1");
        Term m = w.given("m", "mass of the wine in each", 0.738, "kg");
        Term c = w.given("c", "its specific heat capacity", 4290, CAPACITY);
        Term mg = w.given("m_g", "mass of the glass of each", 0.5, "kg");
        Term cg = w.given("c_g", "specific heat capacity of glass", 800, CAPACITY);
        Term t0 = w.given("T_0", "temperature of the bottles", 22, "°C");
        Term te = w.given("T_e", "temperature wanted of all", 8, "°C");
        Term total = w.given("M", "mass of ice and water together", 5, "kg");
        Term cw = w.given("c_w", "specific heat capacity of water", 4200, CAPACITY);
        Term tw = w.given("T_w", "temperature of the water", 16, "°C");
        Term latent = w.given("L_f", "heat of fusion of ice", 333_400, "J/kg");
        Term bottles = w.find(
                "Q_b",
                "heat of the bottles",
                "J",
                n.times(m.times(c).plus(mg.times(cg))).times(t0.minus(te)));
        Term water = w.find("q_w", "heat that a kilogram of the water gives", "J/kg", cw.times(tw.minus(te)));
        Term ice = w.find("q_i", "heat that a kilogram of the ice takes", "J/kg", latent.plus(cw.times(te)));
        Term mi = w.find(
                "m_i",
                "ice, from m_i q_i = Q_b + (M − m_i) q_w",
                "kg",
                bottles.plus(total.times(water)).over(ice.plus(water)));
        FilledVessel bottle =
                Vessels.highShouldered750().filledWith(Beverage.dryWine(percentByVolume(12.5)), celsius(t0.value()));
        IceBudget budget = IceBudget.of(Bucket.of(millimetres(260), millimetres(280)), Air.at(celsius(t0.value())))
                .vessels(bottle, (int) Math.round(n.value()), Wanted.between(celsius(0), celsius(te.value())))
                .from(Duration.ofMinutes(60), Duration.ofMinutes(120))
                .blocks(IceBlock.cube(millimetres(30)), celsius(0))
                .waterAt(celsius(tw.value()))
                .holding(kilograms(total.value()))
                .build();
        w.check(
                "m_i",
                "IceBudget.energy() of the library: the same balance for a described bottle, with the enthalpies of"
                        + " wine, glass, ice and water",
                budget.energy().everythingKg(),
                0.03 * mi.value(),
                "its bottle is not exactly the one given");
    }

    private static WorkedExample iceBalls() {
        return WorkedExample.called("freezing-ice-balls", "How long does an ice ball take to freeze? Plank's formula")
                .question(
                        "Water in a ball mould of {d} stands in a freezer of {T_f}; film and mould together pass {U}. How long"
                                + " does it take to freeze, once it is at 0 °C?")
                .worked(IceExamples::workIceBalls, "t")
                .sketched(s -> Sketch.empty()
                        .circle(110, 92, 60)
                        .circle(110, 92, 34)
                        .label(86, 96, "water")
                        .label(92, 50, "ice")
                        .arrow(146, 92, 190, 92)
                        .label(196, 70, "freezer " + s.fill("{T_f}"))
                        .label(196, 116, "diameter " + s.fill("{d}")))
                .whatIf("d", 0.03)
                .whatIf("U", 25)
                .whatIf("T_f", -24)
                .exercise("How long does a marble of {d} take?", "t", Map.of("d", 0.02))
                .exercise("How long does the ball take in a freezer of {T_f}?", "t", Map.of("T_f", -12.0))
                .remembered(
                        "R. P. Singh and D. R. Heldman, Introduction to Food Engineering, worked example of Plank's formula",
                        "time to freeze a ball of food of {d} in air of {T_f}",
                        "t",
                        2.04 * 3600,
                        36,
                        Map.of(
                                "d", 0.07, "ρ", 1000.0, "L_f", 250_000.0, "U", 50.0, "k", 1.2, "T_m", -1.25, "T_f",
                                -15.0))
                .caution(
                        "Water grows by a tenth when it freezes: leave room in moulds and never freeze a closed glass bottle. Ice"
                                + " straight from a freezer sticks to wet skin.")
                .lesson(
                        "In the still air of a freezer the film decides, so that time goes with the diameter; only in a cold bath"
                                + " does it go with the square.")
                .teaching(
                        "Plank leaves out the heat of cooling the water before and the ice after. The run has both, and takes"
                                + " longer; for water of 0 °C the two are near each other.");
    }

    private static void workIceBalls(Working w) {
        Term d = w.given("d", "diameter", 0.05, "m");
        Term rho = w.given("ρ", "density of ice", 917, "kg/m³");
        Term latent = w.given("L_f", "heat of fusion", 333_400, "J/kg");
        Term k = w.given("k", "thermal conductivity of ice", 2.3, "W/(m K)");
        Term u = w.given("U", "film and mould together", 11, "W/(m² K)");
        Term tm = w.given("T_m", "temperature of freezing", 0, "°C");
        Term tf = w.given("T_f", "temperature of the freezer", -18, "°C");
        Term outside = w.find(
                "R_u",
                "resistance of the film, P d/U with P = 1/6",
                "m³ K/W",
                d.over(number(6).times(u)));
        Term inside = w.find(
                "R_k",
                "resistance of the ice, R d²/k with R = 1/24",
                "m³ K/W",
                d.squared().over(number(24).times(k)));
        Term t = w.find(
                "t", "time to freeze", "s", rho.times(latent).over(tm.minus(tf)).times(outside.plus(inside)));
        IceMaking making = IceMaking.under(
                IceMould.of(IceBlock.sphere(metres(d.value()))),
                celsius(tf.value()),
                wattsPerSquareMetreKelvin(u.value()),
                celsius(0));
        w.check(
                "t",
                "IceMaking.predicted() of the library: water at 0 °C in shells that freeze one after the other",
                seconds(making.predicted()),
                0.12 * t.value(),
                "the run also cools the ice below 0 °C, and starts from real ice");
    }

    private static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }
}
