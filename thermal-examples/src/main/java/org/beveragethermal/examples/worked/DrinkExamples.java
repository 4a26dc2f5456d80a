/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import static org.beveragethermal.examples.worked.Term.exp;
import static org.beveragethermal.examples.worked.Term.ln;
import static org.beveragethermal.examples.worked.Term.number;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.List;
import java.util.Map;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.HeadspacePressure;
import org.beveragethermal.core.hazard.ThermalShock;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.CarbonDioxide;
import org.beveragethermal.materials.liquid.EthanolWater;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.caution.ScaldTime;

/** Moist air, freezing, pressure, glass and skin: what a drink does, and what can hurt. */
final class DrinkExamples {

    private static final double GAS_CONSTANT = 8.314462618;
    private static final CarbonDioxide WINE = CarbonDioxide.inWine(percentByVolume(12.5), gramsPerLitre(8));

    private DrinkExamples() {}

    static List<WorkedExample> all() {
        return List.of(wetBulb(), freezingPoint(), pressure(), shock(), scald());
    }

    private static WorkedExample wetBulb() {
        return WorkedExample.called(
                        "wet-bulb",
                        "A wet cloth and a wet thermometer: how moist is the air, and will the bottle sweat?")
                .question(
                        "A dry thermometer reads {T}, one in a wet cloth in a draught {T_w}. How moist is the air, and below what"
                                + " temperature does a bottle get wet from it?")
                .worked(DrinkExamples::workWetBulb, "T_d")
                .sketched(s -> Sketch.empty()
                        .box(60, 20, 14, 110)
                        .circle(67, 142, 12)
                        .box(130, 20, 14, 110)
                        .shaded(122, 120, 30, 34)
                        .arrow(16, 142, 48, 142)
                        .label(44, 174, "dry " + s.fill("{T}"))
                        .label(116, 174, "wet " + s.fill("{T_w}"))
                        .label(248, 80, "draught")
                        .arrow(240, 76, 168, 76))
                .whatIf("T_w", 24)
                .whatIf("T_w", 14)
                .whatIf("p", 80_000)
                .exercise(
                        "In a cellar the dry thermometer reads {T}, the wet one {T_w}. What is the relative humidity?",
                        "φ",
                        Map.of("T", 12.0, "T_w", 10.5))
                .exercise(
                        "At what temperature does a bottle begin to sweat at {T} and a wet bulb of {T_w}?",
                        "T_d",
                        Map.of("T", 30.0, "T_w", 25.0))
                .printed(
                        "PsychroLib, test values computed independently in a spreadsheet",
                        "humidity ratio of air of {T} with a wet bulb of {T_w}, first read off a chart",
                        "W",
                        0.0065,
                        2e-4,
                        Map.of("T", 40.0, "T_w", 20.0, "p", 101_325.0))
                .printed(
                        "PsychroLib, test values computed independently in a spreadsheet",
                        "humidity ratio of air of {T} with a wet bulb of {T_w} at {p}",
                        "W",
                        0.01922813,
                        8e-5,
                        Map.of("T", 30.0, "T_w", 25.0, "p", 95_461.0))
                .remembered(
                        "ASHRAE Handbook of Fundamentals, ch. 1, example on the psychrometric chart",
                        "dew point of air of {T} with a wet bulb of {T_w}",
                        "T_d",
                        7,
                        0.7,
                        Map.of("T", 40.0, "T_w", 20.0, "p", 101_325.0))
                .lesson(
                        "A wet cloth cools towards the wet bulb, no further, and only in moving, dry air. A bottle sweats below the"
                                + " dew point; sweating warms it, for what condenses gives off its heat.")
                .teaching(
                        "Two balances hide here: of heat at the wet cloth and of vapour in the air. The formula for the vapour"
                                + " pressure is one of many that fit to a thousandth; the library's is another, hence the check.");
    }

    private static void workWetBulb(Working w) {
        Term t = w.given("T", "temperature of the air", 26, "°C");
        Term tw = w.given("T_w", "temperature of the wet cloth", 19, "°C");
        Term p = w.given("p", "pressure of the air", 101_325, "Pa");
        Term atWet = w.find("p_w", "vapour pressure at the cloth", "Pa", magnus(tw));
        Term ws = w.find(
                "W_s",
                "humidity ratio of air that is saturated at the cloth",
                "1",
                number(0.622).times(atWet).over(p.minus(atWet)));
        Term ratio = w.find(
                "W",
                "humidity ratio of the air: heat that the cloth takes from it evaporates its water",
                "1",
                number(2501)
                        .minus(number(2.326).times(tw))
                        .times(ws)
                        .minus(number(1.006).times(t.minus(tw)))
                        .over(number(2501)
                                .plus(number(1.86).times(t))
                                .minus(number(4.186).times(tw))));
        Term pv = w.find(
                "p_v",
                "vapour pressure of the air",
                "Pa",
                ratio.times(p).over(number(0.622).plus(ratio)));
        w.find("φ", "relative humidity", "1", pv.over(magnus(t)));
        Term y = w.find("y", "logarithm for the dew point", "1", ln(pv.over(number(611.2))));
        w.find(
                "T_d",
                "dew point",
                "°C",
                number(243.12).times(y).over(number(17.62).minus(y)));
        double found = MoistAir.humidityRatioAtWetBulb(Kelvin.of(t), Kelvin.of(tw), p.value());
        double humidity = MoistAir.relativeHumidity(Kelvin.of(t), found, p.value());
        w.check(
                "W",
                "MoistAir.humidityRatioAtWetBulb of the library",
                found,
                0.01 * found + 5e-5,
                "vapour pressures by another formula");
        w.check(
                "T_d",
                "MoistAir.dewPointK of the library",
                Kelvin.celsius(MoistAir.dewPointK(Kelvin.of(t), humidity)),
                0.3,
                "vapour pressures by another formula");
    }

    /** Vapour pressure over water by the formula of Magnus with the coefficients of the WMO guide (from memory) [Pa]. */
    private static Term magnus(Term celsius) {
        return number(611.2)
                .times(exp(number(17.62).times(celsius).over(number(243.12).plus(celsius))));
    }

    private static WorkedExample freezingPoint() {
        return WorkedExample.called("freezing-point", "When does wine freeze? Lowering of the freezing point")
                .question("Of the volume of a dry wine {v} is alcohol. At what temperature does it begin to freeze?")
                .worked(DrinkExamples::workFreezing, "T_f")
                .sketched(s -> Sketch.empty()
                        .bottle(100, 160)
                        .ice(92, 128, 2, 10)
                        .label(150, 70, "part of alcohol: " + s.fill("{v}"))
                        .label(150, 100, "pure water freezes first,")
                        .label(150, 118, "the rest gets stronger"))
                .whatIf("v", 0.05)
                .whatIf("v", 0.2)
                .exercise(
                        "Of a beer {v} is alcohol. When does it begin to freeze, by alcohol alone?",
                        "T_f",
                        Map.of("v", 0.05))
                .exercise("And a wine of {v}?", "T_f", Map.of("v", 0.14))
                .printed(
                        "Lange's Handbook of Chemistry, 15th ed., Table 5.13, ethanol, freezing points (converted to strength by"
                                + " the formula of this example)",
                        "beginning of freezing of ethanol and water, ethanol by mass {x}",
                        "T_f",
                        -2.0,
                        0.25,
                        Map.of("v", 0.0602))
                .printed(
                        "Lange's Handbook of Chemistry, 15th ed., Table 5.13, ethanol, freezing points (converted to strength by"
                                + " the formula of this example)",
                        "beginning of freezing of ethanol and water, ethanol by mass {x}",
                        "T_f",
                        -5.0,
                        0.25,
                        Map.of("v", 0.1403))
                .caution(
                        "A full bottle that freezes bursts, a sparkling one sooner: it holds pressure already. Set an alarm when a"
                                + " bottle goes into a freezer, and do not open one that has frozen; let it thaw in a closed box.")
                .lesson(
                        "Every molecule counts alike, sugar and acid as well. The rule for thin solutions is good to a quarter of a"
                                + " kelvin for wine and fails for spirits.")
                .teaching(
                        "The density of the mixture is a given here; mixing shrinks it, which is a fine experiment. Above some 20 % by"
                                + " volume real solutions freeze lower than the rule says; let them find where.");
    }

    private static void workFreezing(Working w) {
        Term v = w.given("v", "volume of alcohol per volume of wine", 0.125, "1");
        Term rhoE = w.given("ρ_e", "density of ethanol at 20 °C", 789.2, "kg/m³");
        Term kf = w.given("K_f", "cryoscopic constant of water", 1.86, "K kg/mol");
        Term molar = w.given("M", "molar mass of ethanol", 0.04607, "kg/mol");
        Term rho = w.find(
                "ρ",
                "density of the mixture near 20 °C, a straight line close to OIV-MA-AS312-02, table I (984.71 at 10 % by"
                        + " volume)",
                "kg/m³",
                number(998.2).minus(number(132).times(v)));
        Term part = w.find("x", "ethanol by mass", "1", v.times(rhoE).over(rho));
        Term b = w.find(
                "b",
                "ethanol in a kilogram of water",
                "mol/kg",
                part.over(molar.times(number(1).minus(part))));
        w.find("T_f", "beginning of freezing", "°C", kf.times(b).negated());
        double strength = v.value();
        double library = EthanolWater.freezingTemperatureK(EthanolWater.massFractionFromStrength(strength));
        w.check(
                "T_f",
                "EthanolWater.freezingTemperatureK of the library, from measured tables",
                Kelvin.celsius(library),
                0.3 + 30 * Math.pow(strength, 3),
                "real solutions are not thin");
    }

    private static WorkedExample pressure() {
        return WorkedExample.called("pressure-in-a-bottle", "Pressure in a bottle of sparkling wine: Henry's law")
                .question(
                        "A bottle of sparkling wine holds {c} of carbon dioxide per volume of wine; its headspace is {g} of the"
                                + " wine's volume. What pressure stands under the cork at {T}?")
                .worked(DrinkExamples::workPressure, "p")
                .sketched(s -> Sketch.empty()
                        .bottle(100, 160)
                        .arrow(100, 78, 100, 44)
                        .label(146, 60, "gas: pressure p")
                        .label(146, 100, "dissolved: s p")
                        .label(146, 130, s.fill("{T}")))
                .whatIf("T", 6)
                .whatIf("T", 35)
                .whatIf("g", 0.08)
                .exercise("What pressure stands under the cork at {T}?", "p", Map.of("T", 12.0))
                .exercise(
                        "The bottle holds only {c}. What pressure stands in it at {T}?",
                        "p",
                        Map.of("c", 6.0, "T", 20.0))
                .printed(
                        "G. Liger-Belair, D. Cordier, J. Honvault, C. Cilindre, Scientific Reports 7 (2017) 10938, table 1 (ullage of"
                                + " 25 mL assumed)",
                        "partial pressure in a bottle with {c} at {T}",
                        "p",
                        7.5e5,
                        0.75e5,
                        Map.of("T", 19.85, "c", 11.4, "g", 1 / 30.0))
                .printed(
                        "G. Liger-Belair, D. Cordier, J. Honvault, C. Cilindre, Scientific Reports 7 (2017) 10938, table 1 (ullage of"
                                + " 25 mL assumed)",
                        "partial pressure in a bottle with {c} at {T}",
                        "p",
                        4.7e5,
                        0.47e5,
                        Map.of("T", 5.85, "c", 11.4, "g", 1 / 30.0))
                .caution(
                        "A warm bottle of sparkling wine stands under about three times the pressure of a car's tyre. Cool it before opening,"
                                + " point the cork away from people, hold it, keep bottles out of the sun and never heat or freeze them.")
                .lesson(
                        "Warmth drives gas out of the wine and into the neck: from the refrigerator to a hot car the pressure more"
                                + " than doubles.")
                .teaching(
                        "Solubility at one temperature and its heat give it at another (van 't Hoff). Watch units: a kilogram per"
                                + " cubic metre is a gram per litre.");
    }

    private static void workPressure(Working w) {
        Term c = w.given("c", "carbon dioxide per volume of wine", 11.4, "kg/m³");
        Term g = w.given("g", "headspace per volume of wine", 0.0333, "1");
        Term t = w.given("T", "temperature", 20, "°C");
        Term heat = w.given("H", "heat that dissolving gives off", CarbonDioxide.ENTHALPY_OF_SOLUTION.value(), "J/mol");
        Term molar = w.given("M", "molar mass of carbon dioxide", CarbonDioxide.MOLAR_MASS, "kg/mol");
        Term s20 = w.look(
                "s_20",
                "solubility in wine at 20 °C",
                "kg/(m³ Pa)",
                WINE.solubility(Kelvin.of(20)),
                "CarbonDioxide.inWine(…) of the library, from a European regulation");
        Term kelvin = w.find("T_K", "absolute temperature", "K", Kelvin.in(t));
        Term s = w.find(
                "s",
                "solubility at the temperature",
                "kg/(m³ Pa)",
                s20.times(exp(heat.over(number(GAS_CONSTANT))
                        .times(number(1).over(kelvin).minus(number(1).over(number(293.15)))))));
        Term gas = w.find(
                "s_g",
                "gas in the headspace per pascal and volume of wine",
                "kg/(m³ Pa)",
                g.times(molar).over(number(GAS_CONSTANT).times(kelvin)));
        Term p = w.find("p", "pressure of the gas, absolute", "Pa", c.over(s.plus(gas)));
        FilledVessel bottle = Vessels.sparkling750()
                .filledWith(
                        Beverage.sparklingWine(percentByVolume(12.5), gramsPerLitre(8))
                                .withCarbonDioxide(gramsPerLitre(c.value())),
                        celsius(20));
        ClosedVessel closed = ClosedVessel.of(bottle).withHeadspace(litres(0.75 * g.value()));
        if (closed.pressureAtK(kelvin.value()) instanceof HeadspacePressure.Gas found) {
            w.check(
                    "p",
                    "ClosedVessel.pressureAt of the library: the same bottle, whose wine grows with temperature and takes room"
                            + " from the gas",
                    found.carbonDioxidePa(),
                    0.05 * p.value(),
                    "the wine grows, and its strength shifts the solubility a little");
        }
    }

    private static WorkedExample shock() {
        return WorkedExample.called("thermal-shock", "Why cold glass cracks in hot water: thermal stress")
                .question(
                        "A glass that bears a tension of {σ} is plunged from hot into cold. What step of temperature does it bear, if"
                                + " the surface follows at once?")
                .worked(DrinkExamples::workShock, "ΔT")
                .sketched(s -> Sketch.empty()
                        .shaded(90, 20, 26, 140)
                        .arrow(60, 60, 88, 60)
                        .arrow(60, 120, 88, 120)
                        .label(14, 92, "cold")
                        .label(128, 60, "inside still hot")
                        .label(128, 90, "surface wants to shrink,")
                        .label(128, 108, "is held: tension"))
                .whatIf("α", 3.3e-6)
                .whatIf("σ", 20e6)
                .exercise(
                        "What step does borosilicate glass bear (α = {α}, E = {E})?",
                        "ΔT",
                        Map.of("α", 3.3e-6, "E", 64e9))
                .exercise("A scratched glass bears only {σ}. What step is that?", "ΔT", Map.of("σ", 25e6))
                .caution(
                        "Do not test it. Warm glass before hot drinks go in, keep a bottle from the freezer out of hot water, and wear"
                                + " gloves and glasses where glass may break.")
                .lesson(
                        "Expansion decides: borosilicate bears three times the step because it expands a third. Thin walls bear more,"
                                + " for the surface never gets all of the step.")
                .teaching(
                        "Strength of glass is a matter of scratches and scatters by a factor of two, hence the wide check. No"
                                + " published answer is at hand; the library's limit is itself remembered and says so.");
    }

    private static void workShock(Working w) {
        Term strength = w.given("σ", "tension that the glass bears for a moment", 40e6, "Pa");
        Term young = w.given("E", "Young's modulus of soda-lime glass", 70e9, "Pa");
        Term alpha = w.given("α", "linear expansion of soda-lime glass", 9e-6, "1/K");
        Term poisson = w.given("ν", "Poisson's ratio", 0.22, "1");
        w.find(
                "ΔT",
                "step of temperature that breaks it",
                "K",
                strength.times(number(1).minus(poisson)).over(young.times(alpha)));
        if (w.isUnchanged()) {
            double limit = ThermalShock.ALLOWABLE_QUENCH.value();
            w.check(
                    "ΔT",
                    "ThermalShock.ALLOWABLE_QUENCH of the library (measured on containers of soda-lime glass; it says nothing"
                            + " about another glass)",
                    limit,
                    limit / 3,
                    "known to a third either way");
        }
    }

    private static WorkedExample scald() {
        return WorkedExample.called(
                        "scald-time", "How long may skin touch a hot drink? Reading between the lines of a table")
                .question(
                        "Hot water of {T_1} burns skin through in {t_1}, of {T_2} in {t_2}. How long does a drink of {T} take?")
                .worked(DrinkExamples::workScald, "t")
                .sketched(s -> Sketch.empty()
                        .arrow(50, 150, 330, 150)
                        .arrow(50, 150, 50, 20)
                        .line(80, 50, 300, 130)
                        .circle(80, 50, 4)
                        .circle(300, 130, 4)
                        .circle(172, 83, 4)
                        .label(60, 28, "time, logarithmic")
                        .label(240, 170, "temperature")
                        .label(92, 50, s.fill("{T_1}") + ": " + s.fill("{t_1}"))
                        .label(252, 92, s.fill("{T_2}") + ": " + s.fill("{t_2}")))
                .whatIf("T", 59)
                .whatIf("T", 56)
                .exercise("How long at {T}?", "t", Map.of("T", 58.0))
                .exercise(
                        "Between {T_1} ({t_1}) and {T_2} ({t_2}): how long at {T}?",
                        "t",
                        Map.of("T_1", 60.0, "t_1", 5.0, "T_2", 65.0, "t_2", 2.0, "T", 62.0))
                .caution(
                        "Serve hot drinks below 60 °C to those who hold them badly, keep them from table edges and from children. A"
                                + " burn: cool running water for twenty minutes, then a doctor. Tables are for adults and differ by two.")
                .lesson(
                        "Five kelvins make a factor of six. A straight line between the times would be wrong by far; a straight line"
                                + " between their logarithms is not.")
                .teaching(
                        "A good place to show why one interpolates on the scale on which the law is straight. Compare with the"
                                + " linear reading.");
    }

    private static void workScald(Working w) {
        Term t1 = w.given("T_1", "lower temperature of the table", 55, "°C");
        Term s1 = w.given("t_1", "time there", 30, "s");
        Term t2 = w.given("T_2", "upper temperature of the table", 60, "°C");
        Term s2 = w.given("t_2", "time there", 5, "s");
        Term t = w.given("T", "temperature of the drink", 57, "°C");
        Term x = w.find("x", "part of the way", "1", t.minus(t1).over(t2.minus(t1)));
        Term time = w.find(
                "t",
                "time that burns through",
                "s",
                exp(number(1).minus(x).times(ln(s1)).plus(x.times(ln(s2)))));
        w.check(
                "t",
                "ScaldTime.deepBurnS of the library",
                ScaldTime.deepBurnS(Kelvin.of(t)).orElseThrow(),
                0.01 * time.value(),
                "the library reads the same table");
    }
}
