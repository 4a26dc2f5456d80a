/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import org.junit.jupiter.api.Test;

/** The first steps of the JShell session, snippet by snippet. */
class FirstStepsTest {

    private static final Path STEPS = Path.of(System.getProperty("basedir", "."), "jshell", "first-steps.jsh");

    @Test
    void everySnippetRuns() throws IOException {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        List<String> failures = new ArrayList<>();
        try (JShell shell = JShell.builder()
                .remoteVMOptions("-Dfile.encoding=UTF-8")
                .out(new PrintStream(said, true, StandardCharsets.UTF_8))
                .build()) {
            shell.addToClasspath(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
            String rest = Files.readString(STEPS);
            while (!rest.isBlank()) {
                SourceCodeAnalysis.CompletionInfo next =
                        shell.sourceCodeAnalysis().analyzeCompletion(rest);
                for (SnippetEvent event : shell.eval(next.source())) {
                    if (event.status() == Snippet.Status.REJECTED || event.exception() != null) {
                        failures.add(next.source() + " " + event.exception() + " "
                                + shell.diagnostics(event.snippet())
                                        .map(each -> each.getMessage(Locale.ROOT))
                                        .toList());
                    }
                }
                rest = next.remaining();
            }
        }
        assertThat(failures).isEmpty();
        assertThat(said.toString(StandardCharsets.UTF_8))
                .as("by hand and as a network alike, the whole model near it")
                .contains("1. By hand, 22 °C in air of 5 °C, after an hour: 15.2 °C")
                .contains("2. As a network: 15.2 °C")
                .contains("3. The whole model: 15.", "time constant", "at the latest", "In another way");
    }
}
