/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.List;
import java.util.ListResourceBundle;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

/** Words: complete, translatable, and the same wherever they are asked for. */
@Isolated
class CautionTextsTest {

    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));
    /** The code for no language; the test resources have a bundle of it. */
    private static final Locale TEST_LANGUAGE = Locale.forLanguageTag("zxx");

    /** Rules whose limit can be kept. */
    private static final Set<CautionRule> KEPT = Set.of(
            CautionRule.FREEZING_BEGINS,
            CautionRule.BURSTS_BY_ICE,
            CautionRule.FULL_OF_LIQUID,
            CautionRule.PRESSURE_IN_WARMTH,
            CautionRule.THERMAL_SHOCK,
            CautionRule.VERY_HOT_DRINK,
            CautionRule.STOPPERED_HOT,
            CautionRule.OUT_OF_HOLDING,
            CautionRule.HOLDING_TIME_OVER);

    private static Set<String> expectedKeys() {
        Set<String> keys =
                new TreeSet<>(List.of("defer", "when.already", "when.already-until", "when.after", "when.after-until"));
        Arrays.stream(SignalWord.values())
                .forEach(word -> keys.add("signal." + word.name().toLowerCase(Locale.ROOT)));
        Arrays.stream(CautionQuantity.values())
                .forEach(quantity -> keys.add(
                        "quantity." + quantity.name().toLowerCase(Locale.ROOT).replace('_', '-')));
        for (CautionRule rule : CautionRule.values()) {
            rule.signals().forEach(signal -> keys.add(CautionTexts.key(rule, signal)));
            keys.add(rule.code() + ".limit");
            if (KEPT.contains(rule)) {
                keys.add(rule.code() + ".kept");
            }
        }
        return keys;
    }

    private static Set<String> keys(ResourceBundle bundle) {
        return new TreeSet<>(bundle.keySet());
    }

    @Test
    void theBundleHasEveryKeyAndNoOther() {
        assertThat(keys(ResourceBundle.getBundle(CautionTexts.BUNDLE, Locale.ROOT)))
                .isEqualTo(expectedKeys());
    }

    /** One report of each kind of subject, so that each rule, signal word and kind of crossing is worded. */
    private static List<Caution> many() {
        List<CautionReport> reports = new ArrayList<>();
        FilledVessel fizz =
                Vessels.sparkling750().filledWith(Beverage.sparklingWine(percentByVolume(12.5)), celsius(20));
        for (double celsius : new double[] {-12, 4, 7, 30, 52, 62, 78}) {
            for (CautionSubject subject : List.of(
                    CautionSubject.of(BOTTLE),
                    CautionSubject.of(fizz),
                    CautionSubject.of(fizz).with(Circumstance.SHAKEN),
                    CautionSubject.of(BOTTLE).with(Circumstance.values()),
                    CautionSubject.of(Beverage.tea()).drunkFrom(Duration.ofMinutes(5)),
                    CautionSubject.of(Beverage.milk(percent(3.5))),
                    CautionSubject.of(Beverage.milk(percent(3.5))).in(Jurisdiction.US_HOUSEHOLD))) {
                reports.add(Cautions.of(Logs.everyTenMinutes(0, 20, 60, celsius, 600, celsius), subject));
                reports.add(Cautions.of(Logs.everyTenMinutes(0, celsius, 60, celsius, 120, 20), subject));
                reports.add(Cautions.of(Logs.asTheyAre(0, 4, 10, celsius, 600, 4), subject));
                reports.add(Cautions.of(subject.with(Circumstance.MOUTH_UNDER_WATER)));
                reports.add(Cautions.ofPlunge(subject, celsius(celsius), celsius(40)));
            }
        }
        return reports.stream()
                .flatMap(report -> Stream.concat(report.cautions().stream(), report.kept().stream()))
                .toList();
    }

    @Test
    void everyTextIsUsedAndWhole() {
        Set<String> used = new TreeSet<>();
        for (Caution caution : many()) {
            used.add(
                    caution.isCrossed()
                            ? CautionTexts.key(caution.rule(), caution.signal())
                            : caution.code() + ".kept");
            assertThat(caution.explain())
                    .as("%s", caution)
                    .matches(
                            caution.isCrossed()
                                    ? caution.signal().name()
                                            + ": .*[.] Local codes and licensed practice go before this[.]"
                                    : "(The|Ice|It|Of) .*[.]")
                    .doesNotContain("{")
                    .doesNotContain("NaN")
                    .doesNotContain("  ")
                    .doesNotContainPattern("-0(\\.0)? ");
            assertThat(caution.snapshot().answer()).isEqualTo(caution.code());
        }
        Set<String> texts = expectedKeys();
        texts.removeIf(key -> key.matches("(signal|quantity|when)\\..*|defer|.*\\.limit"));
        assertThat(used).isEqualTo(texts);
    }

    /** A list says once to whom its cautions defer; put together again it is the text. */
    @Test
    void aTextIsItsBodyAndToWhomItDefers() {
        CautionTexts texts = CautionTexts.in(Locale.ROOT);
        for (Caution caution : many()) {
            assertThat(texts.body(caution)).doesNotContain("Local codes");
            assertThat(texts.of(caution))
                    .isEqualTo(texts.body(caution) + (caution.isCrossed() ? " " + texts.deference() : ""));
        }
    }

    @Test
    void aTranslationIsFoundByItsLanguage() {
        Caution caution = Cautions.ofPlunge(CautionSubject.of(BOTTLE), celsius(20), celsius(70))
                .find(CautionRule.THERMAL_SHOCK)
                .orElseThrow();
        assertThat(keys(ResourceBundle.getBundle(CautionTexts.BUNDLE, TEST_LANGUAGE)))
                .isEqualTo(expectedKeys());
        assertThat(caution.text(TEST_LANGUAGE)).isEqualTo("ŠTOP: thermal-shock.danger 42 50 „é“ when.already defer");
        assertThat(caution.text(Locale.ROOT)).startsWith("DANGER: A sudden difference of 50 K");
        // The document's table as well.
        assertThat(CautionTable.in(TEST_LANGUAGE).rows().get(0).limit()).isEqualTo("freezing-begins.limit");
    }

    @Test
    void aBundleOfOnesOwnNeedsNoFile() {
        Map<String, String> german = new HashMap<>();
        expectedKeys().forEach(key -> german.put(key, "-"));
        german.put("signal.danger", "GEFAHR");
        german.put("thermal-shock.danger", "{1,number,0.0} K sind zu viel.");
        ResourceBundle own = new ListResourceBundle() {
            @Override
            protected Object[][] getContents() {
                return german.entrySet().stream()
                        .map(entry -> new Object[] {entry.getKey(), entry.getValue()})
                        .toArray(Object[][]::new);
            }
        };
        Caution caution = Cautions.ofPlunge(CautionSubject.of(BOTTLE), celsius(20), celsius(70))
                .find(CautionRule.THERMAL_SHOCK)
                .orElseThrow();
        assertThat(CautionTexts.of(own, Locale.GERMANY).of(caution)).isEqualTo("GEFAHR: 50,0 K sind zu viel. - -");
    }

    @Test
    void aBundleThatLacksATextIsTold() {
        ResourceBundle empty = new ResourceBundle() {
            @Override
            protected Object handleGetObject(String key) {
                throw new MissingResourceException("no text", "empty", key);
            }

            @Override
            public Enumeration<String> getKeys() {
                return Collections.emptyEnumeration();
            }
        };
        Caution caution = Cautions.of(CautionSubject.of(BOTTLE)).cautions().get(0);
        assertThatThrownBy(() -> CautionTexts.of(empty, Locale.ROOT).of(caution))
                .isInstanceOf(MissingResourceException.class);
    }

    @Test
    void neitherDefaultLocaleNorTimeZoneChangesAnything() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        List<String> before =
                many().stream().map(caution -> caution.text(Locale.FRENCH)).toList();
        try {
            Locale.setDefault(TEST_LANGUAGE);
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            assertThat(many().stream().map(caution -> caution.text(Locale.FRENCH)))
                    .isEqualTo(before);
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(many().stream().map(Caution::explain)).isEqualTo(before);
            assertThat(CautionRule.FREEZING_BEGINS.code()).isEqualTo("freezing-begins");
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void crossingsHaveTimes() {
        assertThat(Crossing.at(Duration.ZERO, Optional.empty()).time()).contains(Duration.ZERO);
        assertThat(Crossing.at(Duration.ofMinutes(3), Optional.empty()).time()).contains(Duration.ofMinutes(3));
        assertThat(new Crossing.Always().time()).isEmpty();
        assertThat(new Crossing.Not().time()).isEmpty();
    }
}
