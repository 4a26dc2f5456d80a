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
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MainTest {
    private static final Path SHIPPED = Path.of(System.getProperty("basedir", "."), "scenarios", "two-sittings.json");

    @TempDir
    Path directory;

    /** What a run printed and returned. */
    private record Outcome(int status, String out, String err) {
        void assertRefused(String... parts) {
            assertThat(err).contains(parts);
            assertThat(status).isEqualTo(2);
            assertThat(out).isEmpty();
            assertThat(err.lines()).hasSize(1);
            assertThat(err).hasSizeLessThan(1200).doesNotContain("Exception", "\tat ");
        }
    }

    /** What is read and refused does not hang on advice, which would take minutes for hundreds of files. */
    private static final Duration HARDLY_ANY_ADVICE = Duration.ofMillis(1);

    private static Outcome run(String... args) {
        return run(Duration.ofSeconds(100), args);
    }

    private static Outcome run(Duration forAdvice, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Main.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                forAdvice);
        return new Outcome(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private Outcome runWith(byte[] content) throws IOException {
        Path file = directory.resolve("evening.json");
        Files.write(file, content);
        return run(HARDLY_ANY_ADVICE, file.toString());
    }

    private Outcome runWith(String content) throws IOException {
        return runWith(content.getBytes(StandardCharsets.UTF_8));
    }

    private static String small() throws IOException {
        try (InputStream in = Objects.requireNonNull(MainTest.class.getResourceAsStream("small.json"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void shippedScenarioIsReadAndShown() {
        Outcome outcome = run(SHIPPED.toString());
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.status()).isZero();
        assertThat(outcome.out())
                .startsWith(
                        "Service sheet: Two sittings on a warm evening\n2027-06-18, from 17:00, times in Europe/Vienna")
                .contains("18:15  pour sparkling wine of the house")
                .contains("wanted   4.0 °C to 10.0 °C, aim 7.0 °C");
    }

    @Test
    void smallScenarioIsReadAndItsOwnRangeKept() throws IOException {
        Outcome outcome = runWith(small());
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out())
                .contains("18:00  pour big")
                .contains("wanted   15.0 °C to 17.0 °C, aim 16.0 °C")
                .contains("19:30  pour fizz")
                .contains("wanted   5.0 °C to 8.0 °C, aim 6.5 °C");
    }

    @Test
    void argumentsAreChecked() {
        run().assertRefused("usage");
        run("a", "b").assertRefused("usage");
        run("").assertRefused("");
        run("a\0b").assertRefused("not a path");
        assertThat(run("--help").status()).isZero();
        assertThat(run("--help").out()).contains("usage");
    }

    @Test
    void filesThatAreNoScenarioAreRefused() throws IOException {
        run(directory.resolve("missing.json").toString()).assertRefused("missing.json: does not exist");
        run(directory.resolve("small.json/inside").toString()).assertRefused("does not exist");
        run(directory.toString()).assertRefused("is a directory: expected a JSON file");
        runWith("").assertRefused("evening.json: is empty: expected a scenario");
        runWith(" \n\t ").assertRefused("is empty");
        runWith(new byte[] {'{', (byte) 0xC3, (byte) 0x28, '}'}).assertRefused("is not text in UTF-8");
        runWith(small().getBytes(StandardCharsets.UTF_16)).assertRefused("is not text in UTF-8");
        runWith("null").assertRefused("evening.json:1:1: $: expected an object, got null");
        runWith("[]").assertRefused("$: expected an object, got a list");
        runWith("{} {}").assertRefused("evening.json:1:4: $: expected the end of the file");
        runWith("{\"a\u001b[31m\n").assertRefused("not valid JSON");
    }

    @Test
    void garbageIsBounded() throws IOException {
        byte[] garbage = new byte[10_000_000];
        new Random(20270618).nextBytes(garbage);
        runWith(garbage).assertRefused("is too long: expected at most 1048576 bytes");
        runWith(Arrays.copyOf(garbage, 100_000)).assertRefused("is not text in UTF-8");
        runWith("x".repeat(1_000_000)).assertRefused("not valid JSON");
        runWith("[".repeat(1_000_000)).assertRefused("too deep or too long: expected at most 16 levels");
        runWith("{\"a\":".repeat(100_000)).assertRefused("too deep or too long");
        runWith("{\"title\": \"" + "x".repeat(500_000) + "\"}").assertRefused("too deep or too long");
        runWith("{\"count\": " + "9".repeat(500_000) + "}").assertRefused("too deep or too long");
        runWith("{\"" + "x".repeat(500_000) + "\": 1}").assertRefused("too deep or too long");
    }

    @Test
    void byteOrderMarkIsPassedOver() throws IOException {
        assertThat(runWith("\uFEFF" + small()).status()).isZero();
    }

    /** What is replaced in the small scenario, by what, and two parts of the message. */
    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                // quantities
                "\"airTemperatureCelsius\": 22|\"airTemperatureCelsius\": -300|:8:61: $.places[0].airTemperatureCelsius: -300 °C|expected -30 °C to 50 °C",
                "\"airTemperatureCelsius\": 22|\"airTemperatureCelsius\": NaN|:8:|$.places[0].airTemperatureCelsius: not valid JSON",
                "\"airTemperatureCelsius\": 22|\"airTemperatureCelsius\": 1e999|airTemperatureCelsius: 1e999 °C|expected -30 °C to 50 °C",
                "\"airTemperatureCelsius\": 22|\"airTemperatureCelsius\": \"22\"|airTemperatureCelsius: expected a number|got \"22\"",
                "\"airTemperatureCelsius\": 22|\"airTemperatureCelsius\": null|airTemperatureCelsius: expected a number|got null",
                "\"airTemperatureCelsius\": 22|\"airTemperatureCelsius\": 22,5|:8:|not valid JSON",
                "\"radiantTemperatureCelsius\": 36|\"radiantTemperatureCelsius\": 95|$.places[1].course[0].radiantTemperatureCelsius: 95 °C|expected -30 °C to 80 °C",
                "\"airTemperatureCelsius\": 4|\"airTemperatureCelsius\": 25|$.refrigerators[0].airTemperatureCelsius: 25 °C|expected -30 °C to 20 °C",
                "\"innerDiameterMillimetres\": 200|\"innerDiameterMillimetres\": 20|innerDiameterMillimetres: 20 mm|expected 80 mm to 800 mm",
                "\"heightMillimetres\": 250|\"heightMillimetres\": 0.25|heightMillimetres: 0.25 mm|expected 80 mm to 800 mm",
                "\"wallConductanceWattsPerKelvin\": 1,|\"wallConductanceWattsPerKelvin\": -1,|-1 W/K|expected 0 W/K to 20 W/K",
                "\"massKilograms\": 5|\"massKilograms\": 0|massKilograms: 0 kg|expected 0.1 kg to 500 kg",
                "\"blockSideMillimetres\": 30|\"blockSideMillimetres\": 3000|blockSideMillimetres: 3000 mm|expected 5 mm to 200 mm",
                "\"temperatureCelsius\": -10|\"temperatureCelsius\": 1|$.iceStock.temperatureCelsius: 1 °C|expected -30 °C to 0 °C",
                "\"fillingWaterTemperatureCelsius\": 15|\"fillingWaterTemperatureCelsius\": 99|99 °C|expected 0 °C to 60 °C",
                "\"strengthPercentByVolume\": 14.5|\"strengthPercentByVolume\": 145|145 % vol|expected 0 % vol to 60 % vol",
                "\"strengthPercentByVolume\": 14.5|\"strengthPercentByVolume\": 40|strengthPercentByVolume|red-full is a wine: ",
                "\"style\": \"red-full\"|\"style\": \"tea-black\"|strength of tea|tea-black is a tea: ",
                "\"temperatureCelsius\": 20|\"temperatureCelsius\": 77|$.drinks[0].temperatureCelsius: 77 °C|expected -10 °C to 45 °C",
                "\"temperatureCelsius\": 20|\"temperatureCelsius\": -9.5|$.drinks[0].temperatureCelsius|where it begins to freeze",
                "\"lowCelsius\": 15|\"lowCelsius\": 18|$.drinks[1].servingRange: lowCelsius 18|at most highCelsius, 17",
                // counts
                "\"count\": 2|\"count\": 0|$.drinks[0].count: 0|expected a whole number from 1 to 1000",
                "\"count\": 2|\"count\": 2.5|$.drinks[0].count: 2.5|expected a whole number",
                "\"count\": 2|\"count\": 99999999999999999999|$.drinks[0].count|expected a whole number",
                "\"count\": 2|\"count\": \"two\"|$.drinks[0].count|expected a whole number, got \"two\"",
                "\"count\": 2|\"count\": 1|$.sittings[0].servings[0]: serves 2 of fizz|at most 1",
                "\"count\": 1,|\"count\": 2,|$.drinks[1]: takes the room of 4 bottles in cold|at most 3",
                "\"capacityBottles\": 2|\"capacityBottles\": 40|$.buckets[0].capacityBottles: 40|from 1 to 8",
                "\"formatVersion\": 1|\"formatVersion\": 2|$.formatVersion: 2|from 1 to 1",
                // references and identifiers
                "\"sparkling-dry\"|\"sparkling-dri\"|$.drinks[0].style: style \"sparkling-dri\" is unknown|did you mean \"sparkling-dry\"?",
                "\"sparkling-dry\"|\"cocoa\"|$.drinks[0].style: style \"cocoa\" is unknown|expected one of",
                "\"placedIn\": \"room\"|\"placedIn\": \"attic\"|$.drinks[0].placedIn: unknown place or refrigerator \"attic\"|cold, garden, room",
                "\"place\": \"garden\"|\"place\": \"cold\"|$.sittings[0].servings[0].place: unknown place \"cold\"|expected one of garden, room",
                "\"drink\": \"big\"|\"drink\": \"bog\"|$.sittings[0].servings[1].drink: unknown drink \"bog\"|expected one of big, fizz",
                "\"kind\": \"static\"|\"kind\": \"magic\"|$.refrigerators[0].kind: \"magic\"|expected one of fan-assisted, static",
                "\"kind\": \"ice-and-water\"|\"kind\": \"ice\"|$.buckets[0].kind: \"ice\"|expected one of ice-and-water, water",
                "\"vessel\": \"magnum\"|\"vessel\": \"jug\"|$.drinks[1].vessel: \"jug\"|high-shouldered-750, magnum, sparkling-750",
                "\"id\": \"garden\"|\"id\": \"room\"|$.places[1].id: id \"room\" is already taken|once in the file",
                "\"id\": \"big\"|\"id\": \"bucket\"|$.drinks[1].id: id \"bucket\" is already taken|once in the file",
                "\"id\": \"garden\"|\"id\": \"The Garden\"|$.places[1].id: \"The Garden\"|expected an identifier",
                // fields
                "\"name\": \"fizz\",|\"name\": \"fizz\", \"colour\": \"pale\",|$.drinks[0].colour: unknown field \"colour\"|allowed are count, id, name",
                "\"name\": \"fizz\",||$.drinks[0]: field \"name\" is missing|",
                "\"name\": \"fizz\",|\"name\": \" \",|$.drinks[0].name: \" \"|not blank",
                "\"name\": \"fizz\",|\"name\": \"fi\\u001bzz\",|$.drinks[0].name|without control characters",
                "\"name\": \"fizz\",|\"name\": \"fizz\", \"name\": \"fizz\",|:24:42: $.drinks[0].name: not valid JSON|Duplicate field",
                "\"title\": \"Small\"|\"title\": [\"Small\"]|$.title: expected a text|got a list",
                "\"title\": \"Small\",||$: field \"title\" is missing|",
                "\"iceStock\": {\"massKilograms\": 5, \"blockSideMillimetres\": 30, \"temperatureCelsius\": -10},||$: field \"iceStock\" is missing|",
                "\"fillingWaterTemperatureCelsius\": 15,||field \"fillingWaterTemperatureCelsius\" is missing|",
                "\"course\": [|\"airTemperatureCelsius\": 3, \"course\": [|$.places[1]: expected either a course or one temperature|got both",
                "\"minutesAfterStart\": 120|\"minutesAfterStart\": 0|$.places[1].course[1].minutesAfterStart: 0|from 1 to 2880",
                "\"zone\": \"Europe/Vienna\",|\"zone\": \"Europe/Vienna\", \"rangePolicy\": \"mine\",|$.rangePolicy: \"mine\"|narrowest-common, envelope or a source",
                "\"zone\": \"Europe/Vienna\",|\"zone\": \"Europe/Vienna\", \"rangePolicy\": \"beverages-2020-6-62\",|$.drinks[0].style: source \"beverages-2020-6-62\" states no range|expected one of",
                // times
                "\"zone\": \"Europe/Vienna\"|\"zone\": \"Mars/Olympus\"|$.zone: unknown time zone \"Mars/Olympus\"|Europe/Vienna",
                "17:00:00+02:00|17:00:00+01:00|$.startsAt: \"2027-06-18T17:00:00+01:00\"|expected the offset +02:00",
                "17:00:00+02:00|17:00:00|$.startsAt|with offset such as",
                "2027-06-18T17:00:00+02:00|+99999-06-18T17:00:00+02:00|$.startsAt|expected a year from 1970 to 2199",
                "\"servedAt\": \"19:30\"|\"servedAt\": \"16:59\"|$.sittings[0].servings[0].servedAt: \"16:59\"|expected a time from the start, 2027-06-18T17:00",
                "\"servedAt\": \"19:30\"|\"servedAt\": \"2027-06-17T19:30\"|servedAt: \"2027-06-17T19:30\"|expected a time from the start",
                "\"servedAt\": \"19:30\"|\"servedAt\": \"2028-06-18T19:30\"|servedAt: \"2028-06-18T19:30\"|to 2027-06-20T17:00",
                "\"servedAt\": \"19:30\"|\"servedAt\": \"7.30 pm\"|servedAt: \"7.30 pm\"|expected a local time such as",
                "\"servedAt\": \"19:30\"|\"servedMinutesAfterStart\": -5|servedMinutesAfterStart: -5|expected a whole number from 0 to 2880",
                "\"servedAt\": \"19:30\",||$.sittings[0].servings[0]: expected either servedAt or servedMinutesAfterStart|neither",
                "\"servedAt\": \"19:30\",|\"servedAt\": \"19:30\", \"servedMinutesAfterStart\": 5,|expected either servedAt or servedMinutesAfterStart|both",
                "\"finishedAfterMinutes\": 20|\"finishedAfterMinutes\": 0|finishedAfterMinutes: 0|expected a whole number from 1 to 720",
            })
    void badInputIsRefusedInOneLine(String find, String replacement, String where, String allowed) throws IOException {
        String small = small();
        assertThat(small).containsOnlyOnce(find);
        runWith(small.replace(find, replacement == null ? "" : replacement))
                .assertRefused("evening.json", where, allowed == null ? "" : allowed);
    }

    @Test
    void emptyListsAreRefusedWhereSomethingIsNeeded() throws IOException {
        String small = small();
        String sittings = small.substring(small.indexOf("\"sittings\""), small.lastIndexOf('}'));
        runWith(small.replace(sittings, "\"sittings\": []")).assertRefused("$.sittings: the list is empty");
        runWith(small.replace(sittings, "\"sittings\": {}"))
                .assertRefused("$.sittings: expected a list, got an object");
        runWith(small.replace(sittings, "\"sittings\": [7]")).assertRefused("$.sittings[0]: expected an object, got 7");
    }

    /** Cut short anywhere but in the white space at its end, the file is refused, and in one line. */
    @Test
    void everyTruncationIsRefusedInOneLine() throws IOException {
        String small = small().stripTrailing();
        for (int length = 0; length < small.length(); length += 7) {
            runWith(small.substring(0, length)).assertRefused("evening.json");
        }
    }

    /** Damaged anywhere, the file is read or refused in one line; nothing else happens. */
    @Test
    void everyDamageIsReadOrRefusedInOneLine() throws IOException {
        Random random = new Random(4711);
        byte[] small = small().getBytes(StandardCharsets.UTF_8);
        int refused = 0;
        for (int i = 0; i < 500; i++) {
            byte[] damaged = small.clone();
            damaged[random.nextInt(damaged.length)] =
                    (byte) (i % 3 == 0 ? random.nextInt(256) : 32 + random.nextInt(95));
            Outcome outcome = runWith(damaged);
            if (outcome.status() != 0) {
                outcome.assertRefused("evening.json");
                refused++;
            }
        }
        assertThat(refused).isGreaterThan(150);
    }

    /** Turkish has an I of its own, Arabic digits of its own, German a decimal comma. */
    @ParameterizedTest
    @CsvSource({"tr-TR, Asia/Tokyo", "ar-EG-u-nu-arab, America/New_York", "de-DE, Pacific/Chatham"})
    void localeAndTimeZoneOfTheMachineChangeNothing(String tag, String zone) throws IOException {
        Outcome expected = run(SHIPPED.toString());
        Outcome expectedRefusal = runWith(small().replace("\"count\": 2", "\"count\": 1"));
        Locale locale = Locale.getDefault();
        TimeZone timeZone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            assertThat(run(SHIPPED.toString())).isEqualTo(expected);
            assertThat(runWith(small().replace("\"count\": 2", "\"count\": 1"))).isEqualTo(expectedRefusal);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(timeZone);
        }
    }
}
