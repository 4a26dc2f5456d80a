/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.beveragethermal.examples.internal.Html;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.CarbonDioxide;
import org.beveragethermal.materials.liquid.FreezingCurve;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Salt;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.Closure;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;

/** The page on what has no published source: remembered, or assumed by this project. */
final class UnpublishedPage {

    /** What one figure is, with its source. */
    private record Entry(String what, String value, String uncertainty, Source source) {}

    private UnpublishedPage() {}

    static Page of(List<Liquid> liquids) {
        List<Entry> entries = entries(liquids);
        String body = Html.paragraph(
                        "What a researcher should look at first. Remembered values were published, but not looked up;"
                                + " assumptions are rules of this project for want of anything better. Each carries a larger"
                                + " uncertainty for that.")
                + Html.heading("From memory")
                + table(entries, Source.Kind.FROM_MEMORY)
                + Html.heading("Common practice, no source")
                + table(entries, Source.Kind.COMMON_PRACTICE)
                + Html.heading("Own assumptions and computations")
                + table(entries, Source.Kind.OWN_ASSUMPTION)
                + table(entries, Source.Kind.OWN_COMPUTATION);
        return new Page(
                "unpublished", "Without a published source", "from memory, and rules of our own", body, List.of());
    }

    private static List<Entry> entries(List<Liquid> liquids) {
        Stream<Constant> constants = Stream.of(
                        SolidPages.constants(),
                        VesselPages.constants(),
                        Stream.of(Ice.latentHeatOfFusion(), Salt.density(), Salt.specificHeatCapacity()),
                        Stream.of(CarbonDioxide.ENTHALPY_OF_SOLUTION),
                        Stream.of(CarbonDioxide.inWater(), CarbonDioxide.inBeer())
                                .map(CarbonDioxide::accuracy),
                        Beverage.usualContents().stream())
                .flatMap(each -> each);
        return Stream.of(
                        constants.map(each -> new Entry(
                                each.name(),
                                Html.number(each.value()) + (each.unit().equals("1") ? "" : " " + each.unit()),
                                each.uncertainty().toString(),
                                each.source())),
                        liquids.stream()
                                .flatMap(
                                        liquid -> liquid.properties().stream().map(each -> entry(liquid.name(), each))),
                        liquids.stream()
                                .filter(Beverage.class::isInstance)
                                .map(liquid -> FreezingCurve.of((Beverage) liquid))
                                .flatMap(curve ->
                                        curve.properties().stream().map(each -> entry("freezing drinks", each))),
                        DryAir.properties().stream().map(each -> entry("dry air", each)),
                        MoistAir.properties().stream().map(each -> entry("moist air", each)),
                        Ice.properties().stream().map(each -> entry("ice", each)),
                        CarbonDioxide.inWater().properties().stream().map(each -> entry("carbon dioxide", each)),
                        Salt.properties().stream().map(each -> entry("salt", each)),
                        Vessels.all().stream().map(UnpublishedPage::entry),
                        Stream.of(VesselShape.values())
                                .map(Closure::usual)
                                .distinct()
                                .map(UnpublishedPage::entry))
                .flatMap(each -> each)
                .toList();
    }

    private static Entry entry(String material, PropertyRecord each) {
        return new Entry(
                material + ": " + each.property(), "", each.uncertainty().toString(), each.source());
    }

    private static Entry entry(Vessel vessel) {
        return new Entry(
                vessel.name() + ": dimensions",
                "",
                "diameter " + vessel.diameterUncertainty() + ", mass " + vessel.massUncertainty(),
                vessel.dimensionsSource());
    }

    private static Entry entry(Closure closure) {
        return new Entry(
                closure.name() + ": length through which heat passes",
                Html.number(closure.lengthM()) + " m",
                closure.lengthUncertainty().toString(),
                closure.source());
    }

    /** One row for all that rests on one source with one uncertainty. */
    private static String table(List<Entry> entries, Source.Kind kind) {
        Map<List<String>, TreeSet<String>> rows =
                new TreeMap<>((a, b) -> String.join("\n", a).compareTo(String.join("\n", b)));
        entries.stream()
                .filter(entry -> entry.source().kind() == kind)
                .forEach(entry -> rows.computeIfAbsent(
                                List.of(entry.source().citation(), entry.uncertainty()), key -> new TreeSet<>())
                        .add(entry.value().isEmpty() ? entry.what() : entry.what() + " = " + entry.value()));
        return Html.table(
                List.of("Source", "Uncertainty", "Figures"),
                rows.entrySet().stream()
                        .map(row -> List.of(
                                Html.text(row.getKey().get(0)),
                                Html.text(row.getKey().get(1)),
                                Html.text(String.join("; ", row.getValue()))))
                        .toList());
    }
}
