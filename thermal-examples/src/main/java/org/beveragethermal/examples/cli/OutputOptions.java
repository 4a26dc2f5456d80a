/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options that every command has: the form of the answer and where it goes. */
final class OutputOptions {
    private static final int NARROWEST = 40;
    private static final int WIDEST = 400;
    private static final int USUAL_WIDTH = 100;

    @Option(names = "--json", description = "print the answer as JSON")
    boolean json;

    @Option(names = "--csv", description = "print the first table of the answer as CSV")
    boolean csv;

    @Option(names = "--html", paramLabel = "FILE", description = "write the answer as a page into a file, besides")
    @Nullable
    String html;

    @Option(names = "--to", paramLabel = "FILE", description = "write into a file what would be printed")
    @Nullable
    String to;

    @Option(names = "--width", paramLabel = "N", description = "width of text, 40 to 400; else COLUMNS, else 100")
    @Nullable
    String width;

    @Option(
            names = "--scale",
            paramLabel = "C|F|K",
            description = "scale of temperatures in the answer; C if not given")
    String scale = "C";

    @Option(names = "--limit", paramLabel = "TIME", description = "give up after this time, such as 2min")
    @Nullable
    String limit;

    @Option(names = "--help", usageHelp = true, description = "show this help")
    boolean help;

    Scale scale() {
        return Scale.of("--scale", scale);
    }

    Optional<Duration> limit() {
        return Optional.ofNullable(limit).map(text -> Quantities.duration("--limit", text));
    }

    Optional<Path> page() {
        return Optional.ofNullable(html).map(text -> SafeFile.target("--html", text));
    }

    Optional<Path> file() {
        return Optional.ofNullable(to).map(text -> SafeFile.target("--to", text));
    }

    /** Refuses what cannot be before any work is done. */
    void check() {
        if (json && csv) {
            throw new Refusal(ExitStatus.USAGE, "--json and --csv: expected at most one of them");
        }
        scale();
        limit();
        width(Optional.empty());
        Optional<Path> page = page();
        if (page.isPresent() && page.equals(file())) {
            throw Refusal.usage("--to", page.get().toString(), "another file than that of --html");
        }
        page.ifPresent(target -> SafeFile.check("--html", target));
        file().ifPresent(target -> SafeFile.check("--to", target));
    }

    /** The width asked for; a COLUMNS that makes no sense is passed over, as nobody typed it here. */
    int width(Optional<String> columns) {
        if (width != null) {
            if (!width.matches("[0-9]{1,6}")
                    || Integer.parseInt(width) < NARROWEST
                    || Integer.parseInt(width) > WIDEST) {
                throw Refusal.usage("--width", width, "a whole number from " + NARROWEST + " to " + WIDEST);
            }
            return Integer.parseInt(width);
        }
        return columns.filter(text -> text.matches("[0-9]{1,6}"))
                .map(Integer::parseInt)
                .map(value -> Math.max(NARROWEST, Math.min(value, WIDEST)))
                .orElse(USUAL_WIDTH);
    }

    String form(Answer answer, int lineWidth) {
        if (json) {
            return Forms.json(answer);
        }
        return csv ? Forms.csv(answer) : TextForm.of(answer, lineWidth);
    }
}
