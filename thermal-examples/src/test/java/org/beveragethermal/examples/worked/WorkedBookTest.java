/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The book as a page, and the committed book as that of the code. */
class WorkedBookTest {

    private static final Path BOOK = Path.of(System.getProperty("basedir", "."), "docs", "worked-examples.html");
    private static final String HTML = WorkedBook.html();
    /** WCAG 2.2, success criterion 1.4.3, level AA. */
    private static final double LEAST_CONTRAST = 4.5;

    private static Document parsed() throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(HTML)));
    }

    private static Stream<Element> elements(NodeList list) {
        return Stream.iterate(0, i -> i < list.getLength(), i -> i + 1).map(i -> (Element) list.item(i));
    }

    @Test
    void committedBookIsThatOfTheCode() throws IOException {
        if (System.getProperty("documents.write") != null) {
            WorkedBook.write(BOOK, HTML);
        }
        assertThat(BOOK)
                .as("the book of worked examples; write it anew with: mvn verify -Ddocuments.write")
                .usingCharset(StandardCharsets.UTF_8)
                .hasContent(HTML);
    }

    @Test
    void isWellFormedAndItsLinksLeadSomewhere() throws Exception {
        Document page = parsed();
        Set<String> ids = new HashSet<>();
        elements(page.getElementsByTagName("section")).forEach(each -> ids.add(each.getAttribute("id")));
        assertThat(ids).containsAll(WorkedExamples.names()).contains("answers", "teaching");
        assertThat(elements(page.getElementsByTagName("a")).map(each -> each.getAttribute("href")))
                .isNotEmpty()
                .allSatisfy(target -> assertThat(ids).contains(target.substring(1)));
        assertThat(elements(page.getElementsByTagName("svg")))
                .hasSizeGreaterThan(WorkedExamples.names().size());
        assertThat(elements(page.getElementsByTagName("math"))).hasSizeGreaterThan(200);
    }

    @Test
    void needsNothingBesideIt() {
        assertThat(HTML.replaceAll("xmlns=\"[^\"]*\"", ""))
                .doesNotContain("http")
                .doesNotContain("src=")
                .doesNotContain("<script")
                .doesNotContain("<link")
                .doesNotContain("url(");
    }

    @Test
    void holdsNumbersOnlyAndNoPlaceLeftOpen() {
        assertThat(HTML).doesNotContain("NaN").doesNotContain("Infinity");
        assertThat(HTML.substring(HTML.indexOf("</style>"))).doesNotContain("{").doesNotContain("}");
    }

    @Test
    void drawingsHaveWordsForThoseWhoDoNotSeeThem() throws Exception {
        assertThat(elements(parsed().getElementsByTagName("svg")))
                .allSatisfy(svg -> assertThat(svg.getAttribute("aria-label")
                                + ((Element) svg.getParentNode()).getAttribute("aria-label"))
                        .isNotBlank());
    }

    @Test
    void labelsOfSketchesLieInside() throws Exception {
        assertThat(elements(parsed().getElementsByTagName("svg"))
                        .filter(svg -> svg.getAttribute("viewBox").equals("0 0 360 180"))
                        .flatMap(svg -> elements(svg.getElementsByTagName("text"))))
                .hasSizeGreaterThan(50)
                .allSatisfy(text -> {
                    double x = Double.parseDouble(text.getAttribute("x"));
                    // Letters of 12 px are some 6.2 px wide on average.
                    assertThat(x + 6.2 * text.getTextContent().length())
                            .as(text.getTextContent())
                            .isLessThanOrEqualTo(360);
                    assertThat(Double.parseDouble(text.getAttribute("y"))).isBetween(10.0, 178.0);
                });
    }

    @Test
    void everyColourOfTextIsDarkEnough() {
        String style = HTML.substring(HTML.indexOf("<style>"), HTML.indexOf("</style>"));
        Matcher colour = Pattern.compile("(?<![-\\w])color: (#[0-9a-f]+)").matcher(style);
        int seen = 0;
        while (colour.find()) {
            seen++;
            assertThat(contrastToWhite(colour.group(1))).as(colour.group(1)).isGreaterThan(LEAST_CONTRAST);
        }
        assertThat(seen).isGreaterThanOrEqualTo(3);
    }

    private static double contrastToWhite(String colour) {
        String digits = colour.substring(1);
        String six = digits.length() == 6 ? digits : digits.replaceAll("(.)", "$1$1");
        double[] weights = {0.2126, 0.7152, 0.0722};
        double luminance = 0;
        for (int i = 0; i < weights.length; i++) {
            double part = Integer.parseInt(six.substring(2 * i, 2 * i + 2), 16) / 255.0;
            luminance += weights[i] * (part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
        }
        return 1.05 / (luminance + 0.05);
    }

    @Test
    void pagesAreTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            for (String name : List.of("cooling-by-hand", "wet-bulb", "scald-time", "two-stages")) {
                int number = WorkedExamples.number(name);
                assertThat(HTML)
                        .contains(new ExamplePage(number, WorkedExamples.all().get(number - 1)).section());
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void isWrittenWholeOrNotAtAll(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("new").resolve("book.html");
        WorkedBook.write(file, HTML);
        assertThat(file).usingCharset(StandardCharsets.UTF_8).hasContent(HTML);
        try (Stream<Path> beside = Files.list(file.getParent())) {
            assertThat(beside).containsExactly(file);
        }
        assertThatThrownBy(() -> WorkedBook.write(file.resolve("book.html"), HTML))
                .isInstanceOf(IOException.class);
    }
}
