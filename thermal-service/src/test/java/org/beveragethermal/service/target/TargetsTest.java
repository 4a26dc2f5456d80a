/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvins;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@Isolated
class TargetsTest {
    private static final String PAPER = "Beverages 2020, 6(4), 62, introduction (doi 10.3390/beverages6040062)";
    private static final double TOLERANCE_K = 1e-9;

    /** What one looks a publication up by: a doi, a volume with pages, a resolution, a clause, an annex, a page. */
    private static final Pattern LOOKED_UP = Pattern.compile(
            "doi 10\\.|[0-9]+\\([0-9]+\\) .*-[0-9]+|[0-9]{3}-[0-9]{3}|resolution|3-501|annex|p\\. [0-9]+");

    static List<DrinkStyle> styles() {
        return Targets.styles();
    }

    /** Every policy that can be applied to a style without the caller giving a range. */
    private static List<RangePolicy> policies(DrinkStyle style) {
        List<RangePolicy> policies = new ArrayList<>(List.of(RangePolicy.narrowestCommon(), RangePolicy.envelope()));
        Targets.rangesOf(style)
                .forEach(range -> policies.add(RangePolicy.source(range.source().key())));
        return policies;
    }

    @Test
    void knowsEveryKindOfWine() {
        assertThat(Targets.styles())
                .hasSizeGreaterThanOrEqualTo(14)
                .extracting(DrinkStyle::id)
                .doesNotHaveDuplicates()
                .contains(
                        "sparkling-dry",
                        "white-light",
                        "white-full",
                        "rose-young",
                        "red-light",
                        "red-medium",
                        "red-full",
                        "sweet-white",
                        "fortified-red");
    }

    @ParameterizedTest
    @MethodSource("styles")
    void everyRangeCitesAndIsInOrder(DrinkStyle style) {
        assertThat(Targets.rangesOf(style)).isNotEmpty().allSatisfy(range -> {
            assertThat(range.lowK()).isLessThanOrEqualTo(range.highK());
            assertThat(range.style()).isEqualTo(style);
            assertThat(range.reason()).isNotBlank();
            Source source = range.source();
            assertThat(source.citation()).isNotBlank();
            assertThat(source.kind() == Source.Kind.COMMON_PRACTICE
                            || source.kind() == Source.Kind.FROM_MEMORY
                            || LOOKED_UP.matcher(source.citation()).find())
                    .as(source.citation())
                    .isTrue();
            assertThat(source.kind() == Source.Kind.FROM_MEMORY)
                    .isEqualTo(source.citation().contains("memory")
                            || source.citation().contains("remembered"));
        });
    }

    @ParameterizedTest
    @MethodSource("styles")
    void aimLiesInsideAndTheRangeCanBeHeldWhateverThePolicy(DrinkStyle style) {
        assertThat(policies(style)).allSatisfy(policy -> {
            ServingTarget target = Targets.of(style, policy);
            assertThat(target.contains(target.aimK())).isTrue();
            assertThat(target.marginK(target.lowK() - 2)).isCloseTo(-2, within(TOLERANCE_K));
            assertThat(target.marginK(target.highK() + 3)).isCloseTo(-3, within(TOLERANCE_K));
            assertThat(target.marginK(target.highK() - 0.25)).isCloseTo(0.25, within(TOLERANCE_K));
            assertThat(target.highK() - target.lowK()).isGreaterThanOrEqualTo(1.0 - TOLERANCE_K);
            assertThat(target.considered()).isEqualTo(Targets.rangesOf(style));
            assertThat(target.decidedBy()).isNotEmpty().isSubsetOf(target.considered());
            assertThat(target.basis()).isNotBlank();
            assertThat(target.policy()).isEqualTo(policy);
        });
    }

    @ParameterizedTest
    @MethodSource("styles")
    void envelopeHoldsEveryRangeAndTheCommonRangeLiesWithin(DrinkStyle style) {
        ServingTarget envelope = Targets.of(style, RangePolicy.envelope());
        ServingTarget common = Targets.of(style);
        assertThat(Targets.rangesOf(style)).allSatisfy(range -> {
            assertThat(envelope.contains(range.lowK())).isTrue();
            assertThat(envelope.contains(range.highK())).isTrue();
            assertThat(range.contains(common.aimK()) || common.basis().contains("no range in common"))
                    .isTrue();
        });
        assertThat(envelope.contains(common.aimK())).isTrue();
    }

    @Test
    void tableSaysWhatThePaperSays() {
        checkPaper("red-full", 18, 22);
        checkPaper("white", 8, 12);
        checkPaper("red-light", 15, 15);
        checkPaper("rose", 15, 15);
    }

    private static void checkPaper(String styleId, double lowCelsius, double highCelsius) {
        ServingRange range = Targets.rangesOf(Targets.style(styleId)).stream()
                .filter(stated -> stated.source().citation().equals(PAPER))
                .findFirst()
                .orElseThrow();
        OutsideChecks.published("serving-range-" + styleId + "-low", PAPER)
                .what("lower end of the serving range, " + range.style().name())
                .unit("°C")
                .expected(lowCelsius)
                .within(TOLERANCE_K)
                .check(range.lowK() - 273.15);
        OutsideChecks.published("serving-range-" + styleId + "-high", PAPER)
                .what("upper end of the serving range, " + range.style().name())
                .unit("°C")
                .expected(highCelsius)
                .within(TOLERANCE_K)
                .check(range.highK() - 273.15);
    }

    /** Lighter and fresher styles are served colder: common practice, no source. */
    @Test
    void fullerStylesAreServedWarmer() {
        assertThat(List.of("sparkling-dry", "white-light", "white-full", "red-light", "red-medium", "red-full"))
                .extracting(id -> Targets.of(id).aimK())
                .isSorted()
                .doesNotHaveDuplicates();
    }

    /** The figures follow by hand from the rows of the table. */
    @ParameterizedTest
    @CsvSource({
        // 14-16, 14-17, 14-16: all share 14-16
        "red-medium, 14, 16, common to 3 stated ranges",
        // lows 4 4 6 7.2, highs 6 6 10 10: nothing shared
        "sparkling-dry, 5, 8, no range in common",
        // lows 15 15 16 16 18 18 18, highs 17.8 18 18 18 20 20 22: nothing shared
        "red-full, 16, 18, no range in common",
        // 10-12 and 6-10 touch at 10
        "sweet-white, 9.5, 10.5, widened to 1 K",
        // one source, one temperature
        "sparkling-sweet, 6.5, 7.5, no range in common",
        "sake-hanahie, 9.5, 10.5, widened to 1 K",
        // 15 and 10-12 share nothing: medians 12.5 and 13.5
        "rose, 12.5, 13.5, no range in common",
        // 51.7-68.3, 57.8, 58-66, 54.4-71.1: lows 51.7 54.4 57.8 58, highs 57.8 66 68.3 71.1
        "coffee-filter, 56.1, 67.15, no range in common",
    })
    void commonRangeFollowsFromTheRows(String id, double lowCelsius, double highCelsius, String basis) {
        ServingTarget target = Targets.of(id);
        assertThat(target.lowK() - 273.15).isCloseTo(lowCelsius, within(TOLERANCE_K));
        assertThat(target.highK() - 273.15).isCloseTo(highCelsius, within(TOLERANCE_K));
        assertThat(target.aimK() - 273.15).isCloseTo((lowCelsius + highCelsius) / 2, within(TOLERANCE_K));
        assertThat(target.basis()).contains(basis);
    }

    @Test
    void envelopeNamesTheSourcesAtItsEnds() {
        ServingTarget target = Targets.of(Targets.style("red-full"), RangePolicy.envelope());
        assertThat(target.lowK()).isCloseTo(288.15, within(TOLERANCE_K));
        assertThat(target.highK()).isCloseTo(295.15, within(TOLERANCE_K));
        assertThat(target.decidedBy())
                .extracting(range -> range.source().key())
                .containsExactly("common-practice", "wine-education-body", "beverages-2020-6-62");
    }

    @Test
    void namedSourceDecidesAlone() {
        DrinkStyle style = Targets.style("red-full");
        ServingTarget target = Targets.of(style, RangePolicy.source("beverages-2020-6-62"));
        assertThat(target).hasToString("red-full 18 to 22 °C, aim 20 °C");
        assertThat(target.basis()).contains("doi 10.3390/beverages6040062");
        ServingTarget several = Targets.of(style, RangePolicy.source("common-practice"));
        assertThat(several).hasToString("red-full 15 to 20 °C, aim 17.5 °C");
        assertThat(several.decidedBy()).hasSize(4);
    }

    @Test
    void namedSourceThatIsSilentIsRefused() {
        DrinkStyle style = Targets.style("sparkling-red");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Targets.of(style, RangePolicy.source("beverages-2020-6-62")))
                .withMessageContaining("beverages-2020-6-62")
                .withMessageContaining("expected one of common-practice");
    }

    @Test
    void ownRangeIsTakenAsGivenAndSourcesAreStillReported() {
        ServingTarget target = Targets.of(Targets.style("red-full"), RangePolicy.own(celsius(15), celsius(15.5)));
        assertThat(target).hasToString("red-full 15 to 15.5 °C, aim 15.3 °C");
        assertThat(target.decidedBy()).isEmpty();
        assertThat(target.considered()).hasSize(7);
        assertThat(target.reason()).contains("tannin");
    }

    @Test
    void ownRangeServesAStyleOfOnesOwn() {
        DrinkStyle own = new DrinkStyle(
                "elderflower-spritz", "elderflower spritz", DrinkFamily.WINE, true, 60, "Because we like it.");
        assertThat(Targets.of(own, RangePolicy.own(celsius(4), celsius(8))).considered())
                .isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> Targets.of(own)).withMessageContaining("is unknown");
    }

    @Test
    void ownRangeIsRefusedAtTheDoor() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RangePolicy.own(celsius(9), celsius(8)))
                .withMessageContaining("9 °C: expected at most the high end, 8 °C");
        assertThatThrownBy(() -> RangePolicy.own(celsius(-21), celsius(8)))
                .isInstanceOfSatisfying(
                        OutOfRangeException.class, e -> assertThat(e.low()).isEqualTo(253.15));
        assertThatIllegalArgumentException().isThrownBy(() -> RangePolicy.own(celsius(8), celsius(101)));
        assertThatIllegalArgumentException().isThrownBy(() -> new RangePolicy.OwnRange(Double.NaN, 280));
        assertThatIllegalArgumentException().isThrownBy(() -> new RangePolicy.OwnRange(280, Double.POSITIVE_INFINITY));
    }

    @Test
    void aimCanBeMovedInsideTheRangeOnly() {
        ServingTarget target = Targets.of("red-medium");
        ServingTarget cooler = target.withAim(celsius(14));
        assertThat(cooler.aimK()).isEqualTo(287.15);
        assertThat(cooler.contains(cooler.aimK())).isTrue();
        assertThat(cooler.basis()).isEqualTo(target.basis());
        assertThat(target.aimK()).isCloseTo(288.15, within(TOLERANCE_K));
        assertThatThrownBy(() -> target.withAim(celsius(16.1))).isInstanceOfSatisfying(OutOfRangeException.class, e -> {
            assertThat(e.parameter()).isEqualTo("aim");
            assertThat(e.high()).isEqualTo(target.highK());
        });
        assertThatIllegalArgumentException().isThrownBy(() -> target.withAim(kelvins(-1)));
    }

    @ParameterizedTest
    @CsvSource({
        "red-ful, red-full",
        "Red Full, red-full",
        "full-red, red-full",
        "whit-light, white-light",
        "white_ligth, white-light",
        "SPARKLING-DRY, sparkling-dry",
        "fortifed-red, fortified-red",
        "hot chocolate, hot-chocolate",
        "pale lager, beer-pale-lager",
        "whiskey, spirit-whisky",
        "atsukan, sake-atsukan",
        "dry vermouth, vermouth-dry",
    })
    void unknownStyleIsRefusedWithTheNearest(String given, String meant) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Targets.style(given))
                .withMessage("style \"" + given + "\" is unknown: did you mean \"" + meant + "\"?");
        assertThatIllegalArgumentException().isThrownBy(() -> Targets.of(given));
    }

    @Test
    void wordThatSeveralStylesHoldIsAnsweredWithThem() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Targets.style("lager"))
                .withMessageEndingWith(
                        "did you mean one of beer-pale-lager, beer-lager, beer-strong-lager, beer-dark-lager?");
    }

    @Test
    void unknownStyleFarFromAllIsRefusedWithAll() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Targets.style("engine oil"))
                .withMessageContaining("expected one of those that begin with sparkling, white, ")
                .withMessageEndingWith("tea, coffee, hot");
        assertThatIllegalArgumentException().isThrownBy(() -> Targets.style(""));
        assertThatIllegalArgumentException().isThrownBy(() -> Targets.style("red".repeat(1000)));
    }

    @Test
    void stylesAndRangesAreRefusedAtTheDoor() {
        assertThatIllegalArgumentException().isThrownBy(() -> wine("Red Full", "red", 0, "why"));
        assertThatIllegalArgumentException().isThrownBy(() -> wine("red", " ", 0, "why"));
        assertThatIllegalArgumentException().isThrownBy(() -> wine("red", "red", 0, ""));
        assertThatIllegalArgumentException().isThrownBy(() -> wine("red", "red", -1, "why"));
        assertThatIllegalArgumentException().isThrownBy(() -> wine("red", "red", Double.NaN, "why"));
        DrinkStyle style = Targets.style("red-full");
        Source source = Source.published("key", "citation");
        assertThatIllegalArgumentException().isThrownBy(() -> new ServingRange(style, 290, 289, source));
        assertThatIllegalArgumentException().isThrownBy(() -> new ServingRange(style, Double.NaN, 289, source));
        assertThatThrownBy(() -> new ServingRange(style, 200, 289, source)).isInstanceOf(OutOfRangeException.class);
    }

    private static DrinkStyle wine(String id, String name, double sugar, String reason) {
        return new DrinkStyle(id, name, DrinkFamily.WINE, false, sugar, reason);
    }

    @Test
    void listsCannotBeChanged() {
        assertThatThrownBy(() -> Targets.styles().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> Targets.rangesOf(Targets.style("red-full")).clear())
                .isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> Targets.of("red-full").considered().clear())
                .isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> Targets.of("red-full").decidedBy().clear())
                .isInstanceOf(UnsupportedOperationException.class);
    }

    /** Turkish has an I of its own, Arabic digits of its own, German a decimal comma. */
    @ParameterizedTest
    @CsvSource({"tr-TR", "ar-EG-u-nu-arab", "de-DE"})
    void localeChangesNothing(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Targets.style("WHITE LIGHT"))
                    .withMessageEndingWith("did you mean \"white-light\"?");
            assertThat(Targets.of("white-light")).hasToString("white-light 7.6 to 10 °C, aim 8.8 °C");
        } finally {
            Locale.setDefault(before);
        }
    }
}
