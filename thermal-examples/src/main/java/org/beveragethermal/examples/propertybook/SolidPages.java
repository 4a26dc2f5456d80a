/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

import java.util.List;
import java.util.stream.Stream;
import org.beveragethermal.examples.internal.Curve;
import org.beveragethermal.examples.internal.Figure;
import org.beveragethermal.examples.internal.Html;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.solid.LatentSolid;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;

/** The page on solids: what vessels, gear, sleeves and ground are made of. */
final class SolidPages {

    private static final double MILLI = 1e3;
    private static final double MILLION = 1e6;
    private static final double ICE_POINT_K = 273.15;
    private static final int POINTS = 121;

    private SolidPages() {}

    static Page solids() {
        LatentSolid gel = Solids.gelPack();
        List<Double> celsius = Curve.spaced(
                Provenance.celsius(gel.temperatures().low()),
                Provenance.celsius(gel.temperatures().high()),
                POINTS);
        Figure melting = Figure.of(
                "solids-gel-pack",
                "Gel pack: specific enthalpy",
                "Temperature [°C]",
                "Specific enthalpy [kJ/kg]",
                List.of(Curve.of("specific enthalpy", celsius, c -> gel.specificEnthalpy(kelvin(gel, c)) / MILLI)));
        String body = Html.paragraph(
                        "With two standard uncertainties. Where sources disagree, their spread is the uncertainty."
                                + " Emissivity is for thermal radiation near room temperature; solar absorptance is left open where the"
                                + " colour decides.")
                + Html.table(
                        List.of(
                                "Solid",
                                "Density [kg/m³]",
                                "Conductivity [W/(m K)]",
                                "Heat capacity [J/(kg K)]",
                                "Diffusivity [mm²/s]",
                                "Emissivity",
                                "Solar absorptance"),
                        Solids.all().stream().map(SolidPages::row).toList())
                + Html.heading("A pack that melts over a range")
                + Html.figures(List.of(melting))
                + Html.heading("Where it comes from")
                + Provenance.ofConstants(constants().toList());
        return new Page("solids", "Solids", "walls, gear, sleeves, ground", body, List.of(melting));
    }

    /** Every figure of every solid. */
    static Stream<Constant> constants() {
        LatentSolid gel = Solids.gelPack();
        return Stream.of(
                        Solids.all().stream().flatMap(SolidPages::constants),
                        constants(gel.frozen()),
                        constants(gel.thawed()),
                        Stream.of(gel.meltingStart(), gel.meltingEnd(), gel.latentHeat()))
                .flatMap(each -> each);
    }

    private static Stream<Constant> constants(Solid solid) {
        return Stream.concat(
                Stream.of(
                        solid.density(), solid.thermalConductivity(), solid.specificHeatCapacity(), solid.emissivity()),
                solid.solarAbsorptance().stream());
    }

    private static List<String> row(Solid solid) {
        double diffusivity = solid.thermalConductivity().value()
                / (solid.density().value() * solid.specificHeatCapacity().value());
        return List.of(
                Html.text(solid.name()),
                withSpread(solid.density()),
                withSpread(solid.thermalConductivity()),
                withSpread(solid.specificHeatCapacity()),
                Html.number(diffusivity * MILLION),
                withSpread(solid.emissivity()),
                solid.solarAbsorptance().map(SolidPages::withSpread).orElse("–"));
    }

    private static String withSpread(Constant constant) {
        return Html.number(constant.value()) + " ± " + Html.shortNumber(2 * constant.standardUncertainty());
    }

    private static double kelvin(LatentSolid solid, double celsius) {
        return Math.max(
                solid.temperatures().low(), Math.min(solid.temperatures().high(), celsius + ICE_POINT_K));
    }
}
