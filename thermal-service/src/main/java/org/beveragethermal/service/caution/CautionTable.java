/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;

/**
 * Every rule in words, for documents.
 *
 * @param rows one for each rule, in the order of the rules
 */
public record CautionTable(List<Row> rows) {

    /**
     * Copies the rows.
     *
     * @param rows one for each rule, not modified
     */
    public CautionTable {
        rows = List.copyOf(rows);
    }

    /**
     * A rule in words.
     *
     * @param code its code
     * @param signals its signal words, from the mildest to the gravest
     * @param quantity what its limit is a limit of
     * @param limit its limit, or what it is about
     * @param sources where that comes from: one, or one for each jurisdiction or kind of glass
     */
    public record Row(String code, String signals, String quantity, String limit, List<String> sources) {

        /**
         * Copies the list.
         *
         * @param code its code
         * @param signals its signal words
         * @param quantity what its limit is a limit of
         * @param limit its limit
         * @param sources where that comes from, not modified
         */
        public Row {
            sources = List.copyOf(sources);
        }
    }

    /**
     * The table in a language.
     *
     * @param locale language, and notation of numbers; English where no translation is at hand
     * @return the table; sources stay as they are cited
     */
    public static CautionTable in(Locale locale) {
        CautionTexts texts = CautionTexts.in(locale);
        return new CautionTable(Arrays.stream(CautionRule.values())
                .map(rule -> row(rule, texts))
                .toList());
    }

    private static Row row(CautionRule rule, CautionTexts texts) {
        return new Row(
                rule.code(),
                rule.signals().stream().map(texts::signal).collect(Collectors.joining(", ")),
                texts.quantity(rule.quantity()),
                texts.limit(rule, arguments(rule)),
                sources(rule).map(Source::citation).distinct().toList());
    }

    private static Stream<Source> sources(CautionRule rule) {
        return switch (rule) {
            case HELD_COLD_OR_HOT, OUT_OF_HOLDING, HOLDING_TIME_OVER ->
                Arrays.stream(Jurisdiction.values())
                        .filter(where -> where.rule().isPresent())
                        .map(Jurisdiction::source);
            case THERMAL_SHOCK -> Stream.of(CautionSources.SHOCK, CautionSources.BOROSILICATE);
            case VERY_HOT_DRINK -> Stream.of(CautionSources.VERY_HOT, CautionSources.DRINKABLE);
            default -> Stream.of(rule.source());
        };
    }

    private static List<Argument> arguments(CautionRule rule) {
        return switch (rule) {
            case OPENING_UNDER_PRESSURE -> List.of(celsius(CautionLimits.OPENING));
            case PRESSURE_IN_WARMTH ->
                List.of(
                        shown(CautionLimits.PRESSURE_IN_GLASS, Argument.Shown.BAR),
                        shown(CautionLimits.PRESSURE_IN_OTHERS, Argument.Shown.BAR));
            case THERMAL_SHOCK ->
                List.of(
                        kelvins("warning", GlassKind.SODA_LIME.warningK()),
                        kelvins("stop", GlassKind.SODA_LIME.stopK()),
                        kelvins("warning of borosilicate", GlassKind.BOROSILICATE.warningK()),
                        kelvins("stop of borosilicate", GlassKind.BOROSILICATE.stopK()));
            case SCALD -> List.of(celsius(CautionLimits.SCALDS_IN_MINUTES), celsius(CautionLimits.SCALDS_IN_SECONDS));
            case VERY_HOT_DRINK -> List.of(celsius(CautionLimits.VERY_HOT), celsius(CautionLimits.DRINKABLE));
            case SALTED_ICE_ON_SKIN -> List.of(shown(CautionLimits.SALTED_ICE_CONTACT, Argument.Shown.MINUTES));
            case STOPPERED_HOT -> List.of(celsius(CautionLimits.STOPPERED));
            case ALCOHOL -> List.of(shown(CautionLimits.ALCOHOLIC, Argument.Shown.PERCENT));
            case HELD_COLD_OR_HOT, OUT_OF_HOLDING -> holdingTemperatures();
            case HOLDING_TIME_OVER -> holdingTimes();
            default -> List.of();
        };
    }

    private static List<Argument> holdingTemperatures() {
        return Arrays.stream(Jurisdiction.values())
                .flatMap(where -> where.rule().stream())
                .flatMap(rule -> Stream.of(
                        new Argument("cold", rule.coldK(), Argument.Shown.CELSIUS),
                        new Argument("hot", rule.hotK(), Argument.Shown.CELSIUS)))
                .toList();
    }

    private static List<Argument> holdingTimes() {
        HoldingRule code = Jurisdiction.US_FOOD_CODE.rule().orElseThrow();
        HoldingRule household = Jurisdiction.US_HOUSEHOLD.rule().orElseThrow();
        HoldingRule england = Jurisdiction.ENGLAND.rule().orElseThrow();
        return List.of(
                hours("code, warm", code.warmS()),
                hours("code, cool", code.coolS()),
                new Argument("code, warmer than", code.warmerK(), Argument.Shown.CELSIUS),
                hours("code, from hot", code.fromHotS()),
                hours("household, cool", household.coolS()),
                hours("household, warm", household.warmS()),
                new Argument("household, warmer than", household.warmerK(), Argument.Shown.CELSIUS),
                hours("England", england.coolS()),
                hours("England, from hot", england.fromHotS()));
    }

    private static Argument hours(String name, double seconds) {
        return new Argument(name, seconds, Argument.Shown.HOURS);
    }

    private static Argument celsius(Constant limit) {
        return shown(limit, Argument.Shown.CELSIUS);
    }

    private static Argument kelvins(String name, double value) {
        return new Argument(name, value, Argument.Shown.KELVINS);
    }

    private static Argument shown(Constant limit, Argument.Shown shown) {
        return new Argument(limit.name(), limit.value(), shown);
    }
}
