/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scenarios at the ends of what the format allows: each is planned, or refused in one line that says why. */
class ValidExtremesTest {

    @TempDir
    Path directory;

    private record Outcome(int status, String out, String err) {}

    private Outcome run(String... replacements) throws IOException {
        String scenario;
        try (InputStream in = Objects.requireNonNull(ValidExtremesTest.class.getResourceAsStream("small.json"))) {
            scenario = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        for (int i = 0; i < replacements.length; i += 2) {
            assertThat(scenario).contains(replacements[i]);
            scenario = scenario.replace(replacements[i], replacements[i + 1]);
        }
        Path file = Files.writeString(directory.resolve("extreme.json"), scenario);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Main.run(
                new String[] {file.toString()},
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Duration.ofMillis(100));
        return new Outcome(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"servedMinutesAfterStart\": 60|\"servedMinutesAfterStart\": 1",
                "\"airTemperatureCelsius\": 4|\"airTemperatureCelsius\": -30",
                "\"airTemperatureCelsius\": 4|\"airTemperatureCelsius\": 20",
                "\"airTemperatureCelsius\": 22|\"airTemperatureCelsius\": -30",
                "\"airTemperatureCelsius\": 22|\"airTemperatureCelsius\": 50, \"radiantTemperatureCelsius\": 80",
                "\"temperatureCelsius\": 20|\"temperatureCelsius\": 45",
                "\"innerDiameterMillimetres\": 200, \"heightMillimetres\": 250|\"innerDiameterMillimetres\": 800, \"heightMillimetres\": 800",
                "\"innerDiameterMillimetres\": 200, \"heightMillimetres\": 250|\"innerDiameterMillimetres\": 800, \"heightMillimetres\": 80",
                "\"wallConductanceWattsPerKelvin\": 1|\"wallConductanceWattsPerKelvin\": 0",
                "\"wallConductanceWattsPerKelvin\": 1|\"wallConductanceWattsPerKelvin\": 20",
                "\"massKilograms\": 5|\"massKilograms\": 0.1",
                "\"massKilograms\": 5|\"massKilograms\": 500",
                "\"blockSideMillimetres\": 30|\"blockSideMillimetres\": 5",
                // The largest cube that passes the mouth of the bucket, by the diagonal of its face.
                "\"blockSideMillimetres\": 30|\"blockSideMillimetres\": 141",
                "\"temperatureCelsius\": -10|\"temperatureCelsius\": -30",
                "\"temperatureCelsius\": -10|\"temperatureCelsius\": 0",
                "\"fillingWaterTemperatureCelsius\": 15|\"fillingWaterTemperatureCelsius\": 0",
                "\"fillingWaterTemperatureCelsius\": 15|\"fillingWaterTemperatureCelsius\": 60",
                "\"strengthPercentByVolume\": 12,|\"strengthPercentByVolume\": 0,",
                "\"strengthPercentByVolume\": 14.5|\"strengthPercentByVolume\": 22",
                "\"servedAt\": \"19:30\"|\"servedMinutesAfterStart\": 2880",
                "\"finishedAfterMinutes\": 45|\"finishedAfterMinutes\": 720",
            })
    void isPlanned(String find, String replacement) throws IOException {
        Outcome outcome = run(find, replacement);
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.status()).isEqualTo(Main.DONE);
        assertThat(outcome.out()).startsWith("Service sheet: Small\n").doesNotContain("NaN", "Infinity");
        assertThat(outcome.out().lines()).allMatch(line -> line.length() <= 100);
    }

    @ParameterizedTest
    @CsvSource({
        "beer-pale-lager, 5",
        "cider-still, 6",
        "sake-atsukan, 15",
        "spirit-whisky, 40",
        "spirit-frozen, 40",
        "cream-liqueur, 17",
        "water-still, 0",
        "milk-cold, 0",
        "tea-black, 0",
        "hot-chocolate, 0",
    })
    void drinkOtherThanWineIsPlanned(String style, String percent) throws IOException {
        Outcome outcome = run(
                "\"sparkling-dry\"",
                "\"" + style + "\"",
                "\"strengthPercentByVolume\": 12,",
                "\"strengthPercentByVolume\": " + percent + ",");
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.status()).isEqualTo(Main.DONE);
        assertThat(outcome.out()).doesNotContain("NaN", "Infinity");
        assertThat(outcome.out().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void aBucketThatItsBottlesFillIsRefused() throws IOException {
        Outcome outcome = run(
                "\"capacityBottles\": 2,\n     \"innerDiameterMillimetres\": 200, \"heightMillimetres\": 250",
                "\"capacityBottles\": 1,\n     \"innerDiameterMillimetres\": 80, \"heightMillimetres\": 80");
        assertThat(outcome.status()).isEqualTo(Main.REFUSED);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err().lines())
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .startsWith("cannot be planned: bucket bucket: ")
                        .contains("no room is left"));
    }

    @Test
    void whatIsServedAtTheVeryStartIsRefused() throws IOException {
        Outcome outcome = run("\"servedMinutesAfterStart\": 60", "\"servedMinutesAfterStart\": 0");
        assertThat(outcome.status()).isEqualTo(Main.REFUSED);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err().lines())
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .startsWith("cannot be planned: bottle big 1 served at 2027-06-18T15:00:00Z")
                        .contains("expected a time after the start"));
    }

    @Test
    void waterTooColdForABathOfWaterIsRefused() throws IOException {
        Outcome outcome = run(
                "\"ice-and-water\"",
                "\"water\"",
                "\"fillingWaterTemperatureCelsius\": 15",
                "\"fillingWaterTemperatureCelsius\": 0");
        assertThat(outcome.status()).isEqualTo(Main.REFUSED);
        assertThat(outcome.err().lines())
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .startsWith("cannot be planned: bucket bucket: bath temperature 273.15 K")
                        .contains("273.65 K"));
    }

    @Test
    void aBathOfWaterIsFilledWithLitres() throws IOException {
        assertThat(run("\"ice-and-water\"", "\"water\"").out())
                .containsPattern("fill the bucket with \\d+\\.\\d L of water");
    }

    /** Five places: the red takes two, so that both sparkling ones fit, but only one of them while the one that nobody drinks stands there. */
    @Test
    void whatNobodyDrinksKeepsItsPlaceInTheRefrigerator() throws IOException {
        String fizz = "{\"id\": \"fizz\", \"name\": \"fizz\"";
        String spare = "{\"id\": \"spare\", \"name\": \"spare\", \"style\": \"sparkling-dry\", \"vessel\": \"magnum\", "
                + "\"strengthPercentByVolume\": 12, \"temperatureCelsius\": 6, \"placedIn\": \"cold\", \"count\": 1}, ";
        String[] longEnough = {
            "\"ice-and-water\"",
            "\"water\"",
            "\"capacityBottles\": 3",
            "\"capacityBottles\": 5",
            "\"servedAt\": \"19:30\"",
            "\"servedMinutesAfterStart\": 400",
            "\"servedMinutesAfterStart\": 60",
            "\"servedMinutesAfterStart\": 900"
        };
        String[] withSpare = Arrays.copyOf(longEnough, longEnough.length + 2);
        withSpare[longEnough.length] = fizz;
        withSpare[longEnough.length + 1] = spare + fizz;
        assertThat(run(longEnough).out())
                .contains("put fizz, bottle 1 and fizz, bottle 2 into the cold")
                .doesNotContain("too full", "is full or not there then");
        Outcome crowded = run(withSpare);
        assertThat(crowded.err()).isEmpty();
        assertThat(crowded.out())
                .contains("1 × spare is not needed by any serving and stays where it is.")
                .contains("the cold would do but is full or not there then")
                .doesNotContain("too full", "put fizz, bottle 1 and fizz, bottle 2 into the cold");
    }
}
