/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.beveragethermal.service.plan.PlanTexts;
import org.junit.jupiter.api.Test;

/** The page of the shipped scenario: complete, by itself, in order, the same everywhere. */
class ServicePageTest {

    private static final String PAGE = ShippedEvening.PAGE;
    private static final String WORDS = PAGE.replaceAll("(?s)<style>.*</style>", "")
            .replaceAll("<[^>]+>", " ")
            .replace('\u00a0', ' ')
            .replaceAll("\\s+", " ");

    private static List<String> all(String pattern) {
        return Pattern.compile(pattern)
                .matcher(PAGE)
                .results()
                .map(MatchResult::group)
                .toList();
    }

    @Test
    void hasARowForEachThingToDoAndADrawingForEachDrink() {
        assertThat(all("<tr role=\"row\" class="))
                .hasSize(ShippedEvening.PLAN.instructions().size());
        assertThat(all("<figure>")).hasSize(ShippedEvening.SCENARIO.drinks().size());
        ShippedEvening.SCENARIO.drinks().forEach(drink -> assertThat(PAGE).contains("<h3>" + drink.name() + "</h3>"));
    }

    @Test
    void saysWhatTheTextSays() {
        SheetWords words = new SheetWords(
                ShippedEvening.SCENARIO,
                ShippedEvening.PLAN,
                PlanTexts.in(Locale.ROOT, ShippedEvening.SCENARIO.zone()).naming(ShippedEvening.PLAN.request()));
        assertThat(WORDS)
                .contains(words.verdict())
                .contains("Invented for this project")
                .contains("17:12 ▼ pour Pour young rosé in the magnum")
                .contains("NOT in range when poured")
                .contains("Help: start 5 min earlier")
                .contains("WARNING: Ice that has cooled bottles")
                .containsOnlyOnce("Local codes and licensed practice");
        words.ice().forEach(fill -> assertThat(WORDS).contains(fill.sentences()));
        words.limits().forEach(limit -> assertThat(WORDS).contains(limit));
    }

    /** A page that asks for anything else is not there in a cellar without a network. */
    @Test
    void needsNothingElse() {
        assertThat(PAGE).doesNotContain("http:", "https:", "<script", "url(", "@import", "src=");
        assertThat(all("href=\"[^\"]*\"")).containsExactly("href=\"data:,\"");
    }

    /** WCAG 2.2: language (3.1.1), headings in order (1.3.1), headers of tables (1.3.1), alternatives of drawings (1.1.1). */
    @Test
    void isReadableWithoutSeeingIt() {
        assertThat(PAGE).startsWith("<!DOCTYPE html>\n<html lang=\"en\">").contains("name=\"viewport\"");
        List<String> headings = all("<h[1-6]");
        assertThat(headings.get(0)).isEqualTo("<h1");
        for (int i = 1; i < headings.size(); i++) {
            assertThat(headings.get(i).charAt(2) - headings.get(i - 1).charAt(2))
                    .isLessThanOrEqualTo(1);
        }
        assertThat(all("<h1")).hasSize(1);
        assertThat(all("<th ")).hasSameSizeAs(all("<th [^>]*scope=\"(row|col)\""));
        List<String> ids = all(" id=\"[^\"]+\"");
        assertThat(ids).doesNotHaveDuplicates();
        assertThat(all("<svg "))
                .hasSameSizeAs(all("<svg role=\"img\" aria-labelledby=\"course\\d+-title course\\d+-desc\""));
        assertThat(all("<title id=")).hasSameSizeAs(all("<svg "));
        assertThat(all("<desc id=")).hasSameSizeAs(all("<svg "));
        for (String labels : all("aria-labelledby=\"[^\"]+\"")) {
            for (String id : labels.replaceAll(".*=\"|\"", "").split(" ", -1)) {
                assertThat(ids).contains(" id=\"" + id + "\"");
            }
        }
    }

    /** A range that begins between two marks, below zero and above it. */
    @Test
    void marksOfTheAxisAreWholeAndZeroHasNoSign() {
        assertThat(CourseDrawing.ticks(-4.9, 11)).hasToString("[0, 5, 10]");
        assertThat(CourseDrawing.ticks(-0.5, 3.5)).hasToString("[0]");
        assertThat(CourseDrawing.ticks(-12, -0.1)).hasToString("[-10, -5]");
        assertThat(CourseDrawing.ticks(0, 5)).hasToString("[0, 5]");
    }

    /** What is said of intervals is what the page of measured runs says. */
    @Test
    void saysThatItsIntervalsAreTooNarrow() throws IOException {
        Path measured = Path.of("..", "thermal-core", "docs", "measured.md");
        assertThat(measured).content(StandardCharsets.UTF_8).startsWith("# Predicted and measured\n");
        Matcher all = Pattern.compile("(?m)^\\| all \\| (\\d+) \\|.*\\| \\**(\\d+)\\** \\([^|]*\\|$")
                .matcher(Files.readString(measured));
        assertThat(all.find()).isTrue();
        assertThat(WORDS)
                .contains("90 % interval (see the end)")
                .contains("of " + all.group(1) + " measured rows " + all.group(2) + " lie inside");
    }

    @Test
    void escapesWhatPeopleWrite() {
        assertThat(Markup.text("<b> & \"c\" 4 °C")).isEqualTo("&lt;b&gt; &amp; &quot;c&quot; 4\u00a0°C");
    }

    @Test
    void isTheSameInAnyLocaleAndZone() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Apia"));
            assertThat(ServicePage.html(ShippedEvening.SCENARIO, ShippedEvening.PLAN, ShippedEvening.ADVICE))
                    .isEqualTo(PAGE);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
