/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures of the tables against what was read in the sources. */
class SourcesTest {
    private static final double TOLERANCE_K = 1e-9;

    /** Figures that are told in degrees Fahrenheit are rounded to a tenth of a degree Celsius in the table. */
    private static final double ROUNDED_K = 0.05 + TOLERANCE_K;

    private static void check(
            String id, Source source, String what, double expectedCelsius, double gotK, double within) {
        OutsideChecks.published(id, source.citation())
                .what(what)
                .unit("°C")
                .expected(expectedCelsius)
                .within(within)
                .check(gotK - 273.15);
    }

    private static ServingRange stated(String styleId, String sourceKey) {
        return Targets.rangesOf(Targets.style(styleId)).stream()
                .filter(range -> range.source().key().equals(sourceKey))
                .findFirst()
                .orElseThrow();
    }

    /** Article 10 of the standard of 2009: each category of wine by its temperature of tasting. */
    @ParameterizedTest
    @CsvSource({
        "white, 10, 12",
        "rose, 10, 12",
        "red, 15, 18",
        "sparkling, 8, 10",
        "sweet, 10, 14",
        "sweet-ice, 10, 14",
        "fortified, 10, 14",
        "spirit-brandy, 12, 16",
        "spirit-marc, 12, 16"
    })
    void temperaturesOfJurors(String style, double low, double high) {
        range(style, "oiv-concours-332a-2009", low, high, TOLERANCE_K);
    }

    /**
     * Hot drinks: mean 60 °C with a standard deviation of 15 °F each way (as quoted by the paper in Burns), 136 °F, 130 to
     * 160 °F, and 58 to 66 °C.
     */
    @Test
    void hotDrinks() {
        range("coffee-filter", "jfs-2002-67-2774", 60 - 15 / 1.8, 60 + 15 / 1.8, ROUNDED_K);
        range("coffee-filter", "burns-2008-34-648", (136 - 32) / 1.8, (136 - 32) / 1.8, ROUNDED_K);
        range("coffee-filter", "sci-rep-2022-23904", 58, 66, TOLERANCE_K);
        for (String style : List.of("coffee-filter", "tea-black", "hot-chocolate", "mulled-wine")) {
            range(style, "jfs-2019-84-2011", (130 - 32) / 1.8, (160 - 32) / 1.8, ROUNDED_K);
        }
    }

    @Test
    void waterAndMilk() {
        range("water-still", "dri-water-2005", 15, 15, TOLERANCE_K);
        range("milk-cold", "fda-food-code-3-501-16", 0, 5, TOLERANCE_K);
    }

    private static void range(String styleId, String sourceKey, double low, double high, double within) {
        ServingRange range = stated(styleId, sourceKey);
        String id = "serving-range-" + styleId + "-" + sourceKey;
        String what = "end of the serving range, " + range.style().name();
        check(id + "-low", range.source(), "lower " + what, low, range.lowK(), within);
        check(id + "-high", range.source(), "upper " + what, high, range.highK(), within);
    }

    /** Table 3 of annex IV: target temperatures of the compartments, and the range a compartment may have. */
    @ParameterizedTest
    @CsvSource({
        "red-full, LONG_TERM, 12, 12, wine storage",
        "red-full, SHORT_TERM, 5, 20, wine storage",
        "beer-lager, LONG_TERM, 2, 14, cellar",
        "spirit-whisky, LONG_TERM, 14, 20, pantry",
        "milk-cold, SHORT_TERM, 4, 4, fresh food"
    })
    void compartments(String styleId, StorageRange.Term term, double low, double high, String compartment) {
        StorageRange range = storage(styleId, term, "eu-2019-2016");
        String id = "storage-" + styleId + "-" + term.label();
        String what = compartment + " compartment, for " + styleId;
        check(id + "-low", range.source(), "lower end, " + what, low, range.lowK(), TOLERANCE_K);
        check(id + "-high", range.source(), "upper end, " + what, high, range.highK(), TOLERANCE_K);
    }

    @Test
    void milkIsHeldColdByTheCode() {
        StorageRange range = storage("milk-cold", StorageRange.Term.SHORT_TERM, "fda-food-code-3-501-16");
        check(
                "storage-milk-food-code",
                range.source(),
                "milk held cold, upper end",
                (41 - 32) / 1.8,
                range.highK(),
                ROUNDED_K);
        assertThat(range.contains(277.15)).isTrue();
        assertThat(range.contains(Double.NaN)).isFalse();
        assertThat(range.toString())
                .startsWith("short-term 0 to 5 °C, fresh milk")
                .contains("3-501.16");
    }

    private static StorageRange storage(String styleId, StorageRange.Term term, String sourceKey) {
        return Targets.storageOf(Targets.style(styleId)).stream()
                .filter(range -> range.term() == term && range.source().key().equals(sourceKey))
                .findFirst()
                .orElseThrow();
    }

    /** Above 65 °C a drink counts as very hot (IARC Monographs 116): no aim lies there, whoever's ranges are used. */
    @Test
    void nothingIsAimedAtVeryHot() {
        assertThat(Targets.styles()).allSatisfy(style -> {
            assertThat(Targets.of(style).aimK()).as(style.id()).isLessThanOrEqualTo(338.15 + TOLERANCE_K);
            assertThat(Targets.of(style, RangePolicy.envelope()).aimK())
                    .as(style.id())
                    .isLessThanOrEqualTo(338.15 + TOLERANCE_K);
        });
    }
}
