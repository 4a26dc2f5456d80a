/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.modulepath;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Compiles and runs an application outside the build against the packaged jars on the module path. Runs in phase verify,
 * when the jars exist.
 */
class ModulePathPackagedTest {
    /** One class of each jar on the module path; each must lie in a jar, not in a directory of classes. */
    private static final List<String> LANDMARKS = List.of(
            "org.beveragethermal.materials.units.Measures",
            "org.beveragethermal.core.network.Network",
            "org.beveragethermal.service.target.Targets",
            "javax.measure.Quantity",
            "tech.units.indriya.quantity.Quantities",
            "tech.uom.lib.common.function.Nameable",
            "jakarta.inject.Singleton",
            "org.apache.commons.math3.util.FastMath",
            "de.siegmar.fastcsv.reader.CsvReader",
            "org.jspecify.annotations.NullMarked");

    @TempDir
    Path scratch;

    @Test
    @Timeout(120)
    void anApplicationStandsOnTheModules() throws IOException, InterruptedException, URISyntaxException {
        String modulePath = modulePath();
        Path sources = moduleDirectory().resolve("src/test/consumer-modulepath");
        Path classes = scratch.resolve("classes");

        run(
                "javac",
                "-encoding",
                "UTF-8",
                "-d",
                classes.toString(),
                "--module-path",
                modulePath,
                sources.resolve("module-info.java").toString(),
                sources.resolve("consumer/Consumer.java").toString());
        List<String> printed = run(
                "java", "--module-path", modulePath + File.pathSeparator + classes, "-m", "consumer/consumer.Consumer");

        // Water at 20 °C and 0.1 MPa has 998.2 kg/m³ (from memory); a bottle put at 22 °C into a refrigerator
        // at 5 °C falls below 10 °C within six hours (common practice, no source).
        assertThat(printed)
                .hasSize(4)
                .satisfiesExactly(
                        line -> assertThat(line).startsWith("density 998.2"),
                        line -> assertThat(line).isEqualTo("chilled true org.beveragethermal.core"),
                        line -> assertThat(line).isEqualTo("styles true org.beveragethermal.service"),
                        line -> assertThat(line).isEqualTo("read 3 org.beveragethermal.core"));
    }

    private List<String> run(String program, String... arguments) throws IOException, InterruptedException {
        String executable =
                Path.of(System.getProperty("java.home", ""), "bin", program).toString();
        Path output = scratch.resolve(program + ".txt");
        Process process = new ProcessBuilder(Stream.concat(Stream.of(executable), Stream.of(arguments))
                        .toList())
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        boolean ended = process.waitFor(100, TimeUnit.SECONDS);
        if (!ended) {
            process.destroyForcibly().waitFor();
        }
        List<String> printed = Files.readAllLines(output, StandardCharsets.UTF_8);
        assertThat(ended).as("%s ended; it printed %s", program, printed).isTrue();
        assertThat(process.exitValue())
                .as("exit status of %s, which printed %s", program, printed)
                .isZero();
        return printed;
    }

    private static String modulePath() throws URISyntaxException {
        StringBuilder path = new StringBuilder();
        for (String landmark : LANDMARKS) {
            path.append(path.isEmpty() ? "" : File.pathSeparator).append(jarOf(landmark));
        }
        return path.toString();
    }

    private static Path jarOf(String className) throws URISyntaxException {
        URL resource = ModulePathPackagedTest.class.getResource("/" + className.replace('.', '/') + ".class");
        assertThat(resource).as("class %s on the class path", className).isNotNull();
        String location = resource.toString();
        assertThat(location)
                .as("where %s lies: run this test in phase verify", className)
                .startsWith("jar:file:");
        return Path.of(new URI(location.substring("jar:".length(), location.indexOf("!/"))));
    }

    private static Path moduleDirectory() {
        return Path.of(System.getProperty("basedir", System.getProperty("user.dir", ".")));
    }
}
