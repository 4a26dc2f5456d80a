/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.examples.internal.Wcag.contrast;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contrast of the page's colours by W3C, Web Content Accessibility Guidelines (WCAG) 2.2, definitions of relative luminance and contrast
 * ratio: level AA asks 4.5 of text (1.4.3) and 3 of what is drawn and has to be seen (1.4.11).
 */
class PageContrastTest {

    private static final double TEXT = 4.5;
    private static final double DRAWN = 3;

    private final String css = css();

    private static String css() {
        try (var in = Objects.requireNonNull(ServicePage.class.getResourceAsStream("service-page.css"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Colours by name: of the light page first in the file, of the dark one second. */
    private Map<String, String> colours(int block) {
        String body = Pattern.compile(":root \\{[^}]*--page[^}]*\\}")
                .matcher(css)
                .results()
                .toList()
                .get(block)
                .group();
        Map<String, String> colours = new LinkedHashMap<>();
        Pattern.compile("--(\\w+): (#[0-9a-f]{6});")
                .matcher(body)
                .results()
                .forEach(m -> colours.put(m.group(1), m.group(2)));
        return colours;
    }

    /** The ends of the scale by its definition, 21 and 1; and 4.54 of #767676 on white, from memory the darkest grey that is often cited. */
    @Test
    void isComputedAsDefined() {
        assertThat(contrast("#000000", "#ffffff")).isCloseTo(21, within(1e-9));
        assertThat(contrast("#123456", "#123456")).isCloseTo(1, within(1e-9));
        assertThat(contrast("#767676", "#ffffff")).isCloseTo(4.54, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({"0, light", "1, dark"})
    void reachesAa(int block, String scheme) {
        Map<String, String> c = colours(block);
        assertThat(c).as(scheme).hasSize(12);
        for (String ground : List.of("page", "tint", "wanted", "interval")) {
            needs(c, "ink", ground, TEXT);
        }
        for (String ground : List.of("page", "tint")) {
            needs(c, "out", ground, TEXT);
            needs(c, "rule", ground, DRAWN);
        }
        needs(c, "soft", "page", TEXT);
        for (String line : List.of("course", "second", "third")) {
            for (String ground : List.of("page", "wanted", "interval")) {
                needs(c, line, ground, DRAWN);
            }
        }
        for (String ground : List.of("page", "wanted", "interval")) {
            needs(c, "edge", ground, DRAWN);
        }
    }

    private static void needs(Map<String, String> colours, String front, String ground, double ratio) {
        String one = Objects.requireNonNull(colours.get(front), front);
        String other = Objects.requireNonNull(colours.get(ground), ground);
        assertThat(contrast(one, other)).as(front + " on " + ground).isGreaterThanOrEqualTo(ratio);
    }

    @Test
    void hasNoColoursButThese() {
        assertThat(Pattern.compile("#[0-9a-fA-F]{3,8}\\b|rgb|hsl")
                        .matcher(css)
                        .results()
                        .count())
                .isEqualTo(colours(0).size() + colours(1).size());
        assertThat(ShippedEvening.PAGE.replace(css, "")).doesNotContainPattern("(fill|stroke|color)=\"|style=\"");
    }
}
