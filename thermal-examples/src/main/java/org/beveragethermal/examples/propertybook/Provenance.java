/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

import java.util.List;
import java.util.Locale;
import org.beveragethermal.examples.internal.Html;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.ValidityRange;

/** Where figures come from, as tables. */
final class Provenance {

    private static final double ICE_POINT_K = 273.15;

    private Provenance() {}

    static String ofRecords(List<PropertyRecord> records) {
        return Html.table(
                List.of("Property", "Unit", "Valid", "Uncertainty", "Kind of source", "Source"),
                records.stream()
                        .map(each -> List.of(
                                Html.text(each.property()),
                                Html.text(each.unit()),
                                Html.text(range(each.validity())),
                                Html.text(each.uncertainty().toString()),
                                kind(each.source()),
                                Html.text(each.source().citation())))
                        .toList());
    }

    static String ofConstants(List<Constant> constants) {
        return Html.table(
                List.of("Constant", "Value", "Unit", "Uncertainty", "Kind of source", "Source"),
                constants.stream()
                        .map(each -> List.of(
                                Html.text(each.name()),
                                Html.number(each.value()),
                                Html.text(each.unit()),
                                Html.text(each.uncertainty().toString()),
                                kind(each.source()),
                                Html.text(each.source().citation())))
                        .toList());
    }

    static String kind(Source source) {
        return source.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String range(ValidityRange range) {
        if (range.unit().equals("K")) {
            return Html.number(celsius(range.low())) + " to " + Html.number(celsius(range.high())) + " °C";
        }
        return Html.number(range.low()) + " to " + Html.number(range.high())
                + (range.unit().equals("1") ? "" : " " + range.unit()) + " (" + range.quantity() + ")";
    }

    /** Degrees Celsius without what kelvins leave behind the decimals. */
    static double celsius(double temperatureK) {
        return Math.round((temperatureK - ICE_POINT_K) * 1e6) / 1e6;
    }
}
