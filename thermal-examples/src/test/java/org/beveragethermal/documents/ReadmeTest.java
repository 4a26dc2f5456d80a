/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README shows code and commands; what it shows must work. */
class ReadmeTest {

    private static final Pattern JAVA_BLOCK = Pattern.compile("```java\\n(.*?)```", Pattern.DOTALL);
    private static final Pattern CLASS_NAME = Pattern.compile("class (\\w+) \\{");

    @Test
    void applicationInTheReadmeCompilesAndAnswers(@TempDir Path directory) throws Exception {
        Matcher block = JAVA_BLOCK.matcher(readme());
        assertThat(block.find()).isTrue();
        String code = block.group(1);
        Matcher name = CLASS_NAME.matcher(code);
        assertThat(name.find()).isTrue();
        Path source = directory.resolve(name.group(1) + ".java");
        Files.writeString(source, code);
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        ByteArrayOutputStream messages = new ByteArrayOutputStream();
        int status = compiler.run(
                null,
                messages,
                messages,
                "-encoding",
                "UTF-8",
                "-cp",
                System.getProperty("java.class.path"),
                "-d",
                directory.toString(),
                source.toString());
        assertThat(status).as(messages.toString(StandardCharsets.UTF_8)).isZero();
        assertThat(outputOf(name.group(1), directory))
                .containsPattern("10 °C after \\d+ min")
                .contains("resistances in series");
    }

    @Test
    void quickStartBeginsWithExactlyTwoCommands() throws Exception {
        String quickStart = readme().split("## Quick start", 2)[1];
        List<String> lines = quickStart.split("```", 3)[1].strip().lines().toList();
        assertThat(lines).hasSize(2).allMatch(line -> line.startsWith("mvn "));
    }

    private static String outputOf(String className, Path directory) throws Exception {
        PrintStream before = System.out;
        ByteArrayOutputStream captured = new ByteArrayOutputStream();
        try (URLClassLoader loader =
                        new URLClassLoader(new URL[] {directory.toUri().toURL()}, ReadmeTest.class.getClassLoader());
                PrintStream out = new PrintStream(captured, true, StandardCharsets.UTF_8)) {
            System.setOut(out);
            var main = loader.loadClass(className).getDeclaredMethod("main", String[].class);
            main.setAccessible(true);
            main.invoke(null, (Object) new String[0]);
        } finally {
            System.setOut(before);
        }
        return captured.toString(StandardCharsets.UTF_8);
    }

    private static String readme() throws Exception {
        return Files.readString(Path.of("..", "README.md"));
    }
}
