/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.beveragethermal.examples.internal.WholeFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page in a real browser, Chromium without a window (Debian package chromium). Where none is found this is left out with a message;
 * where {@code CI} is {@code true} it must be there.
 */
class ServicePageBrowserTest {

    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");
    private static final long PATIENCE_S = 90;
    /** Each page of a PDF is an object of this type; the type of the list of pages has one letter more. */
    private static final Pattern PDF_PAGE = Pattern.compile("/Type\\s*/Page\\b");

    /** A4 in points of 1/72 inch, 210 mm by 297 mm (ISO 216), as Chromium rounds it. */
    private static final Pattern A4 = Pattern.compile("/MediaBox\\s*\\[\\s*0 0 59[45][.\\d]* 84[12][.\\d]*\\s*\\]");

    @TempDir
    Path folder;

    private Path page = Path.of("");
    private String browser = "";

    @BeforeEach
    void findBrowser() throws IOException {
        Optional<String> found = browser();
        if (!"true".equals(System.getenv("CI"))) {
            assumeTrue(found.isPresent(), "no browser of " + NAMES + " on the path: the page is not looked at in one");
        }
        assertThat(found).as("a browser of %s on the path", NAMES).isPresent();
        browser = found.orElseThrow();
        page = folder.resolve("page.html");
        WholeFile.write(page, ShippedEvening.PAGE);
    }

    private static Optional<String> browser() {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Stream.of(path.split(Pattern.quote(File.pathSeparator), -1))
                .filter(entry -> !entry.isEmpty())
                .flatMap(entry -> NAMES.stream().map(name -> Path.of(entry, name)))
                .filter(Files::isExecutable)
                .map(Path::toString)
                .findFirst();
    }

    /** Runs the browser on a page; what it prints, and what it logs. */
    private record Run(String out, String log) {}

    private Run run(Path shown, String... options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                browser,
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--enable-logging=stderr",
                "--user-data-dir=" + folder.resolve("profile")));
        command.addAll(List.of(options));
        command.add(shown.toUri().toString());
        File out = folder.resolve("out").toFile();
        File log = folder.resolve("log").toFile();
        Process process = new ProcessBuilder(command)
                .redirectOutput(out)
                .redirectError(log)
                .start();
        boolean ended = process.waitFor(PATIENCE_S, TimeUnit.SECONDS);
        if (!ended) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
        assertThat(ended).as("the browser ends within %d s", PATIENCE_S).isTrue();
        return new Run(
                Files.readString(out.toPath(), StandardCharsets.UTF_8),
                Files.readString(log.toPath(), StandardCharsets.UTF_8));
    }

    private static List<String> console(Run run) {
        return run.log().lines().filter(line -> line.contains("CONSOLE")).toList();
    }

    @Test
    void showsThePageWithoutAMessageOnItsConsole() throws Exception {
        Run run = run(page, "--dump-dom");
        assertThat(console(run)).isEmpty();
        assertThat(run.out())
                .contains("Service sheet: Two sittings on a warm evening")
                .contains("young rosé in the magnum")
                .contains("Ice to prepare")
                .contains("What could go wrong")
                .contains("</html>");
        // What it has read as a document has lost nothing of what was written.
        assertThat(Pattern.compile("<tr |<svg |<section ")
                        .matcher(run.out())
                        .results()
                        .count())
                .isEqualTo(Pattern.compile("<tr |<svg |<section ")
                        .matcher(ShippedEvening.PAGE)
                        .results()
                        .count());
    }

    /** Or the test above would pass whatever happens. */
    @Test
    void aMessageOnTheConsoleWouldBeSeen() throws Exception {
        Path broken = folder.resolve("broken.html");
        WholeFile.write(broken, "<!DOCTYPE html><title>broken</title><script>nothing.there()</script>");
        assertThat(console(run(broken, "--dump-dom"))).isNotEmpty();
    }

    @Test
    void printsOnOneSheetOfA4() throws Exception {
        Path pdf = folder.resolve("page.pdf");
        run(page, "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
        String content = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        assertThat(PDF_PAGE.matcher(content).results().count()).isEqualTo(1);
        assertThat(A4.matcher(content).find()).as("the sheet is A4").isTrue();
    }

    /** Nothing is wider than the window of a phone: the page writes its own width into its title, in a frame as wide as one. */
    @Test
    void fitsAPhone() throws Exception {
        Path framed = folder.resolve("framed.html");
        WholeFile.write(
                framed,
                "<!DOCTYPE html><title>framed</title><iframe style=\"width:390px;height:800px;border:0\" srcdoc=\""
                        + ShippedEvening.PAGE.replace("&", "&amp;").replace("\"", "&quot;")
                        + "\" onload=\"document.title='width '+this.contentDocument.documentElement.scrollWidth\"></iframe>");
        Run run = run(framed, "--hide-scrollbars", "--dump-dom");
        assertThat(Pattern.compile("<title>([^<]*)</title>")
                        .matcher(run.out())
                        .results()
                        .toList()
                        .get(0)
                        .group(1))
                .isEqualTo("width 390");
    }
}
