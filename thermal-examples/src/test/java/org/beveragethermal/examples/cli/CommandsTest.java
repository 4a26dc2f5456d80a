/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.ice.IceAnswer;
import org.beveragethermal.service.ice.IceBudget;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What commands answer, in each form. */
class CommandsTest {
    private static final String COLD = "refrigerator 5C for 2h";

    @TempDir
    Path directory;

    private static Prediction asInCode() {
        return Lumped.of(Vessels.highShouldered750()
                        .filledWith(Beverage.wine(Measures.percentByVolume(12.5)), Measures.celsius(22)))
                .expose(
                        Exposure.in(Refrigerator.at(Measures.celsius(5)), Duration.ofHours(2)),
                        Exposure.in(Air.at(Measures.celsius(24)), Duration.ofMinutes(30)));
    }

    /** The command says what the same question in code says, with an interval about it. */
    @Test
    void predictionIsThatOfTheLibrary() throws IOException {
        CommandLineRun run =
                CommandLineRun.predict("--through", COLD, "--through", "air 24 °C for 30 min", "--as-stated", "--json");
        assertThat(run.status()).isEqualTo(ExitStatus.DONE);
        assertThat(run.err()).isEmpty();
        JsonNode rows = new ObjectMapper().readTree(run.out()).at("/tables/0/rows");
        assertThat(rows.size()).isGreaterThan(10);
        Prediction expected = asInCode();
        double before = -1;
        for (JsonNode row : rows) {
            double minutes = row.get("time").asDouble();
            assertThat(minutes).isGreaterThan(before);
            before = minutes;
            double celsius = row.get("temperature").asDouble();
            assertThat(celsius).isCloseTo(expected.meanTemperatureK(60 * minutes) - 273.15, within(0.06));
            assertThat(celsius)
                    .isBetween(row.get("low").asDouble() - 0.2, row.get("high").asDouble() + 0.2);
        }
        assertThat(before).isEqualTo(150);
    }

    /**
     * What nobody stated makes the interval wider, on both sides of a run without it; each thing that is stated makes it narrower again.
     * The order is that of what is known, no figure of ours.
     */
    @Test
    void whatIsNotStatedIsInTheInterval() throws IOException {
        double[] asStated = atEnd("--through", COLD, "--as-stated");
        double[] drawn = atEnd("--through", COLD);
        assertThat(drawn[1]).isLessThan(asStated[1] - 0.3);
        assertThat(drawn[2]).isGreaterThan(asStated[2] + 0.3);
        assertThat(drawn[0]).isBetween(drawn[1], drawn[2]);
        double[] fan = atEnd("--through", "refrigerator 5C fan 1m/s for 2h");
        assertThat(fan[0]).isLessThan(drawn[0] - 0.5);
        double[] bath = atEnd("--through", "ice-water for 20min");
        double[] still = atEnd("--through", "ice-water stirred 0m/s for 20min");
        assertThat(bath[1]).isLessThan(still[1] - 1);
        assertThat(bath[2] - bath[1]).isGreaterThan(2 * (still[2] - still[1]));
        double[] dry = atEnd("--through", "air 24C moving 0m/s humidity 0% for 1h");
        assertThat(dry).containsExactly(atEnd("--through", "air 24C for 1h", "--as-stated"));
    }

    /** Temperature and both ends of the interval in the last row [°C]. */
    private static double[] atEnd(String... arguments) throws IOException {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.add("--json");
        CommandLineRun run = CommandLineRun.predict(all.toArray(String[]::new));
        assertThat(run.err()).isEmpty();
        JsonNode rows = new ObjectMapper().readTree(run.out()).at("/tables/0/rows");
        JsonNode last = rows.get(rows.size() - 1);
        return Stream.of("temperature", "low", "high")
                .mapToDouble(name -> last.get(name).asDouble())
                .toArray();
    }

    @Test
    void formsSayTheSame() throws IOException {
        CommandLineRun csv = CommandLineRun.predict("--through", COLD, "--csv", "--until", "14C");
        JsonNode json = new ObjectMapper()
                .readTree(CommandLineRun.predict("--through", COLD, "--json", "--until", "14C")
                        .out());
        JsonNode rows = json.at("/tables/0/rows");
        List<NamedCsvRecord> records =
                CsvReader.builder().ofNamedCsvRecord(csv.out()).stream().toList();
        assertThat(records).hasSize(rows.size());
        for (int i = 0; i < records.size(); i++) {
            assertThat(Double.parseDouble(records.get(i).getField("temperature [°C]")))
                    .isEqualTo(rows.get(i).get("temperature").asDouble());
        }
        assertThat(json.at("/status").asText()).isEqualTo("done");
        assertThat(json.at("/tables/1/rows/0/answer").asText()).isEqualTo("reached");
        double after = json.at("/tables/1/rows/0/after").asDouble();
        assertThat(json.at("/tables/1/rows/0/earliest").asDouble()).isLessThan(after);
        assertThat(json.at("/tables/1/rows/0/latest").asDouble()).isGreaterThan(after);
    }

    /** 22 °C are 71.6 °F and 295.15 K by definition. */
    @Test
    void everyScaleIsReadAndShown() {
        String celsius = CommandLineRun.predict("--through", COLD, "--csv").out();
        assertThat(CommandLineRun.of(
                                "predict",
                                "--vessel",
                                "750mL",
                                "--drink",
                                "wine 12.5%",
                                "--from",
                                "71.6F",
                                "--through",
                                "refrigerator 278.15K for 120min",
                                "--draws",
                                "20",
                                "--csv")
                        .out()
                        .replace("refrigerator 278.15K for 120min", COLD))
                .isEqualTo(celsius);
        assertThat(CommandLineRun.predict("--through", COLD, "--scale", "F").out())
                .contains("71.6", "[°F]");
        assertThat(CommandLineRun.predict("--through", COLD, "--scale", "K").out())
                .contains("295.2", "[K]");
    }

    @Test
    void neverIsAnAnswerWithAStatusOfItsOwn() {
        CommandLineRun run = CommandLineRun.predict("--through", COLD, "--until", "4C");
        assertThat(run.status()).isEqualTo(ExitStatus.NO);
        assertThat(run.out()).startsWith("4.0 °C is never reached in that time.");
        assertThat(run.err()).isEmpty();
    }

    /**
     * Wine of 12.5 % begins to freeze near −5 °C (common practice, no source), so that a freezer of −18 °C freezes it in a night; ice takes
     * a tenth more room than water, which no neck has.
     */
    @Test
    void aDrinkThatFreezesIsANo() throws IOException {
        CommandLineRun run = CommandLineRun.predict("--through", "freezer -18C for 8h", "--until", "0C", "--json");
        assertThat(run.status()).isEqualTo(ExitStatus.NO);
        assertThat(run.err()).isEmpty();
        JsonNode root = new ObjectMapper().readTree(run.out());
        assertThat(root.at("/status").asText()).isEqualTo("no");
        assertThat(root.at("/answer").asText())
                .matches(
                        "NOT as wanted: the closed vessel may burst of ice after .*; the drink begins to freeze after .*"
                                + " 0[.]0 °C is reached after .*");
        JsonNode wrong = root.at("/tables/2");
        assertThat(wrong.at("/name").asText()).isEqualTo("What goes wrong");
        assertThat(wrong.at("/rows/0/after").asDouble())
                .isGreaterThan(wrong.at("/rows/1/after").asDouble());
        for (JsonNode row : wrong.get("rows")) {
            assertThat(row.get("earliest").asDouble())
                    .isBetween(60.0, row.get("after").asDouble());
            assertThat(row.get("in").asDouble()).isEqualTo(100);
        }
        assertThat(run.out()).contains("DANGER: ", "Local codes and licensed practice");
        assertThat(CommandLineRun.predict("--through", "freezer -18C for 20min").status())
                .isEqualTo(ExitStatus.DONE);
    }

    /** Where few of the draws end badly, the earliest of these is no later than the middle one, and how few is said. */
    @Test
    void rareHarmIsSaidWithItsPart() throws IOException {
        CommandLineRun run = CommandLineRun.of(
                "predict",
                "--vessel",
                "750 mL",
                "--drink",
                "wine 12.5 %",
                "--from",
                "22C",
                "--through",
                "freezer -18C for 110min",
                "--draws",
                "100",
                "--json");
        assertThat(run.status()).isEqualTo(ExitStatus.NO);
        JsonNode row = new ObjectMapper().readTree(run.out()).at("/tables/1/rows/0");
        assertThat(row.get("in").asDouble()).isBetween(2.0, 30.0);
        assertThat(row.get("earliest").asDouble())
                .isLessThanOrEqualTo(row.get("after").asDouble())
                .isGreaterThan(60);
        assertThat(run.out()).contains("% of the draws)");
    }

    /** The same words twice are two freezers; neither has a name that nobody typed. */
    @Test
    void placesAreCalledAsTheyWereTyped() {
        String out = CommandLineRun.predict(
                        "--through",
                        "freezer -18C for 20min",
                        "--through",
                        "air 20C for 1h",
                        "--through",
                        "freezer -18C for 20min",
                        "--width",
                        "400")
                .out();
        assertThat(out)
                .contains("in freezer -18C a drink", "in freezer -18C (2) a drink")
                .doesNotContain("gear");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "air 24C moving 2m/s humidity 50% for 1h",
                "air 24C lying for 1h",
                "refrigerator 5C fan 1 m/s for 90min",
                "freezer -18C for 20 min",
                "freezer −18 °C for 20 min",
                "water 12C volume 8L stirred 0.1m/s room 25C for 20min",
                "ice-water for 15min",
                "ice-water ice 2kg water 3kg block 30mm stirred 10cm/s for 15min",
                "ice-water ice 2kg water 3000g room 77F for 15min",
                "tap 12C flow 6L/min for 10min",
            })
    void everyPlaceIsUnderstoodOrRefused(String place) {
        CommandLineRun run = CommandLineRun.predict("--through", place, "--json");
        if (place.contains("cm/s")) {
            run.assertRefused(ExitStatus.USAGE, "expected a speed with its unit");
        } else {
            assertThat(run.err()).isEmpty();
            assertThat(run.status()).isEqualTo(ExitStatus.DONE);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 60, 98, 200})
    void textKeepsToItsWidth(int width) {
        CommandLineRun predicted =
                CommandLineRun.predict("--through", COLD, "--until", "14C", "--width", String.valueOf(width));
        CommandLineRun listed = CommandLineRun.of(Optional.of(String.valueOf(width)), "list", "drinks");
        for (CommandLineRun run : List.of(predicted, listed)) {
            assertThat(run.status()).isEqualTo(ExitStatus.DONE);
            assertThat(run.out()
                            .lines()
                            .filter(line -> line.contains(" ") && line.strip().contains(" ")))
                    .allMatch(line -> line.length() <= width);
        }
        assertThat(predicted.out()).doesNotContain("\u001b");
    }

    @Test
    void iceIsAnsweredWithItsMargin() throws IOException {
        String[] question = {
            "ice", "--vessel", "sparkling 750 mL", "--drink", "sparkling-dry 12 %", "--from", "16C", "--high", "8C",
            "--ready", "60min", "--until", "90min", "--air", "27C", "--draws", "10", "--json"
        };
        CommandLineRun run = CommandLineRun.of(question);
        assertThat(run.status()).as(run.err()).isEqualTo(ExitStatus.DONE);
        JsonNode start = new ObjectMapper().readTree(run.out()).at("/tables/0/rows/0");
        assertThat(start.get("mass").asDouble()).isCloseTo(iceInCode(), within(0.01));
        assertMeltsAsLatentHeatAsks(new ObjectMapper().readTree(run.out()).at("/tables/0/rows"));
        assertThat(start.get("enough in 95 %").asDouble())
                .isGreaterThanOrEqualTo(start.get("enough in 90 %").asDouble());
        question[10] = "1min";
        CommandLineRun never = CommandLineRun.of(question);
        assertThat(never.status()).isEqualTo(ExitStatus.NO);
        assertThat(new ObjectMapper().readTree(never.out()).at("/status").asText())
                .isEqualTo("no");
    }

    /**
     * Ice that melts takes up what drink, glass and water give off: at least down to 8 °C, at most down to 0 °C and what the room sends in
     * meanwhile. Ice: 333.5 kJ/kg and 2.1 kJ/(kg K); water 4.19, wine 4.2 and glass 0.8 kJ/(kg K) (CRC Handbook of Chemistry and Physics,
     * from memory); a bottle of sparkling wine has 0.9 kg of glass (common practice, no source).
     */
    private static void assertMeltsAsLatentHeatAsks(JsonNode rows) {
        double melted =
                rows.get(0).get("mass").asDouble() - rows.get(3).get("mass").asDouble();
        double water = 4.19 * rows.get(2).get("mass").asDouble();
        double bottle = 4.2 * 0.74 + 0.8 * 0.9;
        double room = 0.1 * 5400 / 1000 * 27;
        assertThat(rows.get(3).get("what").asText()).isEqualTo("ice left at the end");
        assertThat(melted)
                .isGreaterThan((water * (15 - 8) + bottle * (16 - 8)) / (2.1 * 10 + 333.5 + 4.19 * 8))
                .isLessThan((water * 15 + bottle * 16 + 10 * room) / 333.5);
    }

    /** The same question in code; sizes and temperatures are those that the help names as usual. */
    private static double iceInCode() {
        IceAnswer answer = IceBudget.of(
                        Bucket.of(Measures.millimetres(240), Measures.millimetres(260)), Air.at(Measures.celsius(27)))
                .vessels(
                        Vessels.sparkling750()
                                .filledWith(
                                        Targets.style("sparkling-dry").drink(Measures.percentByVolume(12)),
                                        Measures.celsius(16)),
                        1,
                        Wanted.between(Measures.celsius(0), Measures.celsius(8)))
                .from(Duration.ofMinutes(60), Duration.ofMinutes(90))
                .blocks(IceBlock.cube(Measures.millimetres(30)), Measures.celsius(-10))
                .waterAt(Measures.celsius(15))
                .build()
                .answer();
        return ((IceAnswer.Enough) answer).iceKg();
    }

    /** A log made by the library with its own law has a factor of 1, and the start it was made with. */
    @Test
    void fitFindsWhatTheLogWasMadeWith() throws IOException {
        StringBuilder log = new StringBuilder("elapsed min,bottle °C\n");
        Prediction made = asInCode();
        java.util.SplittableRandom noise = new java.util.SplittableRandom(11);
        for (int minute = 0; minute <= 118; minute += 4) {
            double reading = made.meanTemperatureK(60.0 * minute) - 273.15 + 0.05 * noise.nextGaussian();
            log.append(String.format(Locale.ROOT, "%d,%.3f%n", minute, reading).replace("\r", ""));
        }
        Path file = Files.writeString(directory.resolve("log.csv"), log);
        CommandLineRun run = CommandLineRun.of(
                "fit",
                file.toString(),
                "--vessel",
                "750 mL",
                "--drink",
                "wine 12.5 %",
                "--in",
                "refrigerator 5C",
                "--json");
        assertThat(run.err().lines()).allMatch(line -> line.matches("fit: [0-9]+ s"));
        JsonNode rows = new ObjectMapper().readTree(run.out()).at("/tables/0/rows");
        assertThat(rows.get(0).get("value").asDouble()).isCloseTo(1, within(0.05));
        assertThat(rows.get(0).get("low").asDouble()).isLessThan(1.01);
        assertThat(rows.get(0).get("high").asDouble()).isGreaterThan(0.99);
        assertThat(rows.get(1).get("value").asDouble()).isCloseTo(22, within(0.1));
        assertThat(run.status()).isEqualTo(ExitStatus.DONE);
    }

    /** What bare numbers count is asked for, and a log that tells it is not told otherwise. */
    @ParameterizedTest
    @CsvSource({"time, 60, min", "time, 3600, s", "time, 1, h", "elapsed min, 60, min"})
    void timesOfALogAreTold(String head, double perHour, String unit) throws IOException {
        StringBuilder rows = new StringBuilder(head + ",bottle °C\n");
        Prediction made = asInCode();
        for (double hour = 0; hour < 1.95; hour += 0.1) {
            rows.append(String.format(
                    Locale.ROOT,
                    "%.2f,%.3f\n",
                    hour * perHour,
                    made.meanTemperatureK(3600 * hour) - 273.15 + 0.01 * Math.cos(41 * hour)));
        }
        Path file = Files.writeString(directory.resolve("bare.csv"), rows);
        List<String> fit = List.of(
                "fit",
                file.toString(),
                "--vessel",
                "750 mL",
                "--drink",
                "wine 12.5 %",
                "--in",
                "refrigerator 5C",
                "--json");
        Function<String, CommandLineRun> told = given -> CommandLineRun.of(
                Stream.concat(fit.stream(), Stream.of("--times", given)).toArray(String[]::new));
        CommandLineRun fitted = told.apply(unit);
        assertThat(fitted.out()).as(fitted.err()).isNotEmpty();
        JsonNode factor = new ObjectMapper().readTree(fitted.out()).at("/tables/0/rows/0/value");
        assertThat(factor.asDouble()).isCloseTo(1, within(0.05));
        told.apply("d").assertRefused(ExitStatus.USAGE, "--times \"d\": expected s, min or h");
        if (head.equals("time")) {
            CommandLineRun.of(fit.toArray(String[]::new))
                    .assertRefused(
                            ExitStatus.BAD_INPUT, "bare.csv", "without a unit: expected --times with s, min or h");
            told.apply("m:ss").assertRefused(ExitStatus.USAGE, "--times \"m:ss\"", "without a unit");
        } else {
            told.apply("h").assertRefused(ExitStatus.USAGE, "the log tells its times, elapsed min");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"vessels", "drinks", "styles", "materials"})
    void listsHaveSourcesInEveryRow(String what) throws IOException {
        JsonNode tables = new ObjectMapper()
                .readTree(CommandLineRun.of("list", what, "--json").out())
                .at("/tables");
        JsonNode sourced = tables.get(tables.size() - 1);
        assertThat(sourced.at("/rows").size()).isGreaterThan(5);
        for (JsonNode row : sourced.at("/rows")) {
            JsonNode source = row.has("source") ? row.get("source") : row.get("source of dimensions");
            assertThat(source.asText()).isNotBlank();
        }
    }

    @Test
    void filterThatMatchesNothingIsANo() {
        assertThat(CommandLineRun.of("list", "vessels", "--like", "amphora").status())
                .isEqualTo(ExitStatus.NO);
    }

    @Test
    void planIsPrintedAsSheetAndAsTables() throws IOException {
        String small = small();
        Path file = Files.writeString(directory.resolve("small.json"), small);
        Path page = directory.resolve("plan.html");
        CommandLineRun text = CommandLineRun.of(
                "plan", file.toString(), "--advice", "0.1s", "--width", "60", "--html", page.toString());
        assertThat(text.err()).isEmpty();
        assertThat(text.out()).startsWith("Service sheet: Small\n");
        assertThat(text.out().lines())
                .allMatch(line -> line.length() <= 60 || !line.strip().contains(" "));
        assertThat(Files.readString(page)).contains("<!DOCTYPE html>", "<svg", "</html>");
        CommandLineRun json = CommandLineRun.of("plan", file.toString(), "--advice", "0.1s", "--json");
        JsonNode root = new ObjectMapper().readTree(json.out());
        assertThat(json.status()).isEqualTo(text.status());
        assertThat(root.at("/tables/0/rows/0/at").asText())
                .startsWith("2027-06-18T")
                .endsWith("+02:00");
        assertThat(root.at("/tables/1/rows").size()).isEqualTo(3);
    }

    /** The sheet is in °C; where another scale is asked for the tables are printed. 22 °C are 71.6 °F by definition. */
    @Test
    void planIsPrintedInTheScaleAskedFor() throws IOException {
        Path file = Files.writeString(directory.resolve("small.json"), small());
        Path page = directory.resolve("plan.html");
        CommandLineRun.of("plan", file.toString(), "--scale", "F", "--html", page.toString())
                .assertRefused(ExitStatus.USAGE, "--scale \"F\": expected C beside --html");
        assertThat(page).doesNotExist();
        CommandLineRun text = CommandLineRun.of("plan", file.toString(), "--advice", "0.1s", "--scale", "F");
        assertThat(text.err()).isEmpty();
        assertThat(text.out()).startsWith("Small: ").contains("wanted from: 59.0 °F", "wanted to: 62.6 °F");
        CommandLineRun json = CommandLineRun.of("plan", file.toString(), "--advice", "0.1s", "--scale", "F", "--json");
        JsonNode big = new ObjectMapper().readTree(json.out()).at("/tables/1");
        assertThat(big.at("/units/wanted from").asText()).isEqualTo("°F");
        assertThat(big.at("/rows"))
                .anySatisfy(row -> assertThat(row.get("wanted from").asDouble()).isEqualTo(59.0));
    }

    static String small() throws IOException {
        try (java.io.InputStream in =
                java.util.Objects.requireNonNull(CommandsTest.class.getResourceAsStream("small.json"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void pagesShowWhatWasTypedAsTextOnly() throws IOException {
        Path page = directory.resolve("list.html");
        CommandLineRun.of("list", "drinks", "--like", "<script>\"&", "--html", page.toString());
        assertThat(Files.readString(page)).contains("&lt;script&gt;").doesNotContain("<script");
    }

    @Test
    void helpTellsEveryCommandAndItsStatuses() {
        for (String command : Commands.names()) {
            CommandLineRun run = CommandLineRun.of(command, "--help");
            assertThat(run.status()).isEqualTo(ExitStatus.DONE);
            assertThat(run.err()).isEmpty();
            assertThat(run.out())
                    .contains("--json", "--html", "4  an output could not be written")
                    .doesNotContain("%%", "\u001b");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "de-DE"})
    void localeChangesNothing(String tag) {
        String[] args = {"--through", COLD, "--until", "14C"};
        CommandLineRun expected = CommandLineRun.predict(args);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(CommandLineRun.predict(args)).isEqualTo(expected);
            assertThat(CommandLineRun.predict("--through", "REFRIGERATOR 5C FOR 2H")
                            .status())
                    .isEqualTo(ExitStatus.DONE);
        } finally {
            Locale.setDefault(before);
        }
    }
}
