/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.examples.internal.Curve;
import org.beveragethermal.examples.internal.Figure;
import org.beveragethermal.examples.internal.Html;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.FreezingCurve;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.provenance.PropertyRecord;

/** One page for a liquid: figures, a table, and where it comes from. */
final class LiquidPages {

    private static final double ICE_POINT_K = 273.15;
    private static final int POINTS = 101;
    private static final double TABLE_STEP_K = 10;
    private static final double MILLI = 1e3;
    private static final double MILLION = 1e6;
    /** Ends of the figures of freezing: a little above the onset, and where the curve ends. */
    private static final double ABOVE_ONSET_K = 1.5;

    private record Property(
            String name, String key, String unit, double factor, boolean logarithmic, DoubleUnaryOperator value) {}

    private LiquidPages() {}

    static Page of(String file, String summary, Liquid liquid) {
        List<Property> properties = properties(liquid);
        List<Double> celsius = temperatures(liquid);
        List<Figure> figures = new ArrayList<>();
        for (Property property : properties) {
            figures.add(figure(file, liquid, property, celsius));
        }
        String body = Html.paragraph(
                        "Liquid at atmospheric pressure, from "
                                + Html.number(Provenance.celsius(
                                        liquid.temperatureRange().low())) + " to "
                                + Html.number(Provenance.celsius(
                                        liquid.temperatureRange().high()))
                                + " °C; below its freezing point as if it stayed liquid. Grey lines: two standard uncertainties.")
                + Html.figures(figures)
                + Html.heading("Values")
                + table(liquid, properties)
                + Html.heading("Where it comes from")
                + Provenance.ofRecords(liquid.properties());
        if (liquid instanceof Beverage beverage) {
            body += freezing(file, FreezingCurve.of(beverage), figures);
        }
        return new Page(file, liquid.name(), summary, body, figures);
    }

    private static List<Property> properties(Liquid liquid) {
        return List.of(
                new Property("density", "density", "kg/m³", 1, false, liquid::density),
                new Property("thermal expansion", "expansion", "10⁻³ 1/K", MILLI, false, liquid::thermalExpansion),
                new Property(
                        "specific heat capacity",
                        "heat-capacity",
                        "kJ/(kg K)",
                        1 / MILLI,
                        false,
                        liquid::specificHeatCapacity),
                new Property("thermal conductivity", "conductivity", "W/(m K)", 1, false, liquid::thermalConductivity),
                new Property("dynamic viscosity", "viscosity", "mPa s", MILLI, true, liquid::dynamicViscosity),
                new Property("Prandtl number", "prandtl", "1", 1, true, liquid::prandtlNumber));
    }

    private static List<Double> temperatures(Liquid liquid) {
        return Curve.spaced(
                        liquid.temperatureRange().low(),
                        liquid.temperatureRange().high(),
                        POINTS)
                .stream()
                .map(Provenance::celsius)
                .toList();
    }

    private static double kelvin(Liquid liquid, double celsius) {
        return Math.max(
                liquid.temperatureRange().low(),
                Math.min(liquid.temperatureRange().high(), celsius + ICE_POINT_K));
    }

    private static Figure figure(String page, Liquid liquid, Property property, List<Double> celsius) {
        DoubleUnaryOperator value = c -> property.factor() * property.value().applyAsDouble(kelvin(liquid, c));
        List<Curve> curves = new ArrayList<>();
        if (liquid.properties().stream().anyMatch(each -> each.property().equals(property.name()))) {
            DoubleUnaryOperator spread = c -> 2 * property.factor() * standardUncertainty(liquid, property, c);
            curves.add(Curve.of("", celsius, c -> value.applyAsDouble(c) - spread.applyAsDouble(c)));
            curves.add(Curve.of("", celsius, c -> value.applyAsDouble(c) + spread.applyAsDouble(c)));
        }
        curves.add(Curve.of(property.name(), celsius, value));
        String title = property.name().substring(0, 1).toUpperCase(Locale.ROOT)
                + property.name().substring(1);
        String unit = property.unit().equals("1") ? "" : " [" + property.unit() + "]";
        Figure figure = Figure.of(page + "-" + property.key(), title, "Temperature [°C]", title + unit, curves);
        return property.logarithmic() ? figure.onLogarithmicScale() : figure;
    }

    /** Of all the records that hold at a temperature: contributions that add up by their squares. */
    private static double standardUncertainty(Liquid liquid, Property property, double celsius) {
        double temperatureK = kelvin(liquid, celsius);
        double value = property.value().applyAsDouble(temperatureK);
        double sum = 0;
        for (PropertyRecord each : liquid.properties()) {
            boolean holds = each.property().equals(property.name())
                    && each.validity().unit().equals("K")
                    && each.validity().low() <= temperatureK
                    && (temperatureK < each.validity().high()
                            || each.validity().high()
                                    == liquid.temperatureRange().high());
            if (holds) {
                double u = each.uncertainty().standardUncertainty(value);
                sum += u * u;
            }
        }
        return Math.sqrt(sum);
    }

    private static String table(Liquid liquid, List<Property> properties) {
        List<String> heads = new ArrayList<>(List.of("Temperature [°C]"));
        properties.forEach(each -> heads.add(each.name() + (each.unit().equals("1") ? "" : " [" + each.unit() + "]")));
        heads.add("specific enthalpy [kJ/kg]");
        heads.add("thermal diffusivity [mm²/s]");
        List<List<String>> rows = new ArrayList<>();
        double low = Provenance.celsius(liquid.temperatureRange().low());
        double high = Provenance.celsius(liquid.temperatureRange().high());
        for (double c = Math.ceil(low / TABLE_STEP_K) * TABLE_STEP_K; c <= high; c += TABLE_STEP_K) {
            double temperatureK = kelvin(liquid, c);
            List<String> row = new ArrayList<>(List.of(Html.number(c)));
            properties.forEach(
                    each -> row.add(Html.number(each.factor() * each.value().applyAsDouble(temperatureK))));
            row.add(Html.number(liquid.specificEnthalpy(temperatureK) / MILLI));
            row.add(Html.number(liquid.thermalDiffusivity(temperatureK) * MILLION));
            rows.add(row);
        }
        return Html.table(heads, rows);
    }

    private static String freezing(String page, FreezingCurve curve, List<Figure> figures) {
        double onset = Provenance.celsius(curve.onset().temperatureK());
        double low = Provenance.celsius(curve.temperatureRange().low());
        List<Double> celsius = Curve.spaced(low, onset + ABOVE_ONSET_K, POINTS);
        Figure ice = Figure.of(
                page + "-ice",
                "Ice in the drink",
                "Temperature [°C]",
                "Ice [kg per kg of drink]",
                List.of(Curve.of("ice", celsius, c -> curve.iceFraction(c + ICE_POINT_K))));
        Figure capacity = Figure.of(
                        page + "-apparent-heat-capacity",
                        "Apparent heat capacity",
                        "Temperature [°C]",
                        "Apparent heat capacity [kJ/(kg K)]",
                        List.of(Curve.of(
                                "apparent heat capacity",
                                celsius,
                                c -> curve.apparentHeatCapacity(c + ICE_POINT_K) / MILLI)))
                .onLogarithmicScale();
        figures.add(ice);
        figures.add(capacity);
        return Html.heading("Freezing")
                + Html.paragraph("Ice can form from " + Html.number(onset)
                        + " °C downwards; undisturbed, a drink often stays liquid some kelvins further. Basis of the onset: "
                        + curve.onset().source().citation() + ".")
                + Html.figures(List.of(ice, capacity))
                + Provenance.ofRecords(curve.properties());
    }
}
