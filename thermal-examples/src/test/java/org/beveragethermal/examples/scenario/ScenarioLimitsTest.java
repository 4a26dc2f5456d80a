/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A scenario may come from anyone: how deep, how long and how large its parts may be is bounded. */
final class ScenarioLimitsTest {

    @TempDir
    Path folder;

    private static String refusal(String json) {
        try {
            ScenarioReader.parse("limits.json", json);
        } catch (ScenarioException e) {
            assertThat(e.getMessage()).hasSizeLessThan(3000).doesNotContain("\n");
            return String.valueOf(e.getMessage());
        }
        throw new AssertionError("accepted");
    }

    /** The deepest that is read is refused for what it says, one level more for being too deep. */
    @ParameterizedTest
    @ValueSource(ints = {17, 1000, 200_000})
    void deepNestingIsRefused(int levels) {
        assertThat(refusal("[".repeat(levels))).contains("too deep or too long").contains("16 levels");
        assertThat(refusal("{\"a\":".repeat(levels))).contains("too deep or too long");
        assertThat(refusal("[".repeat(16) + "]".repeat(16))).doesNotContain("too deep");
    }

    @Test
    void longTextsNamesAndNumbersAreRefused() {
        assertThat(refusal("{\"title\": \"" + "x".repeat(2001) + "\"}")).contains("too deep or too long");
        assertThat(refusal("{\"title\": \"" + "x".repeat(2000) + "\"}")).doesNotContain("too deep");
        assertThat(refusal("{\"" + "x".repeat(300) + "\": 1}")).contains("too deep or too long");
        assertThat(refusal("{\"formatVersion\": " + "9".repeat(41) + "}")).contains("too deep or too long");
        assertThat(refusal("{\"formatVersion\": " + "9".repeat(40) + "}")).doesNotContain("too deep");
    }

    /** Written in a few characters, but with a billion digits if anyone wrote them out. */
    @ParameterizedTest
    @ValueSource(strings = {"1e999999999", "-1E2147483647", "1e2147483648", "1e99999999999999999999"})
    void hugeExponentsAreRefusedWithoutBeingWrittenOut(String number) throws IOException {
        String good = Files.readString(Path.of("scenarios", "two-sittings.json"), StandardCharsets.UTF_8);
        for (String field : new String[] {
            "\"formatVersion\": 1",
            "\"airTemperatureCelsius\": 27",
            "\"minutesAfterStart\": 60",
            "\"capacityBottles\": 6",
            "\"massKilograms\": 12",
            "\"count\": 3"
        }) {
            assertThat(good).contains(field);
            String name = field.substring(0, field.indexOf(':'));
            assertThat(refusal(good.replaceFirst(field, name + ": " + number))).isNotBlank();
        }
    }

    /** Next to nothing is nothing where nothing is allowed. */
    @Test
    void hugeNegativeExponentsAreReadAsNothing() throws IOException {
        String good = Files.readString(Path.of("scenarios", "two-sittings.json"), StandardCharsets.UTF_8);
        assertThat(refusal(good.replaceFirst("\"count\": 3", "\"count\": 1e-999999999")))
                .contains("count");
        assertThat(ScenarioReader.parse(
                                "small.json",
                                good.replaceFirst(
                                        "\"airTemperatureCelsius\": 27", "\"airTemperatureCelsius\": 1e-999999999"))
                        .places()
                        .get(0)
                        .temperatures()
                        .get(0)
                        .airTemperatureK())
                .isEqualTo(273.15);
    }

    @Test
    void moreThanAMebibyteIsNotRead() throws IOException {
        String blank = " ".repeat(ScenarioReader.LONGEST_FILE_BYTES);
        assertThat(refusal(blank)).contains("is empty");
        assertThat(refusal(blank + " ")).contains("is too long");
        Path file = Files.writeString(folder.resolve("long.json"), blank + " ", StandardCharsets.UTF_8);
        assertThatExceptionOfType(ScenarioException.class)
                .isThrownBy(() -> ScenarioReader.read(file))
                .withMessageContaining("1 MiB");
    }

    /** Many small parts: as many as fit into what is read. */
    @Test
    void manyPartsAreRefusedAsQuicklyAsFew() {
        String places = "{\"places\": [" + "{},".repeat(200_000) + "{}]}";
        assertThat(refusal(places)).isNotBlank();
        assertThat(refusal("[" + "1,".repeat(500_000) + "1]")).isNotBlank();
    }

    @Test
    void messagesHoldNothingThatSteersATerminal() {
        assertThat(refusal("{\"a\\u001b[2J\\u0085\\u202e\": 1}")).matches("\\P{Cc}*");
        String style = "{\"style\": \"\\u0085\\u001b\"}";
        assertThat(refusal(style)).matches("\\P{Cc}*");
    }

    @Test
    void nothingOfTheTextIsTakenForATypeOrAFile() {
        String text = "{\"@class\": \"java.io.File\", \"title\": \"file:///x\"}";
        assertThat(refusal(text)).contains("unknown field \"@class\"");
    }
}
