/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.testsupport.Csv;
import org.beveragethermal.testsupport.DocumentParts;
import org.junit.jupiter.api.Test;

/**
 * Holds the inventory of data licences to the code: every source that production code of the libraries names and every file of data
 * has a row in {@code data-terms.csv}, and no row stands for nothing. Leaves the tables of the inventory.
 */
class DataLicencesTest {

    private static final Path ROOT = Path.of(System.getProperty("basedir", "."), "..");
    private static final List<String> LIBRARIES = List.of("thermal-materials", "thermal-core", "thermal-service");
    private static final String SOURCES_OF_RANGES =
            "thermal-service/src/main/resources/org/beveragethermal/service/target/sources.csv";
    private static final String TERMS =
            "thermal-examples/src/test/resources/org/beveragethermal/architecture/data-terms.csv";
    private static final Pattern DATA = Pattern.compile(".*\\.(csv|tsv|txt|json)");
    private static final Set<String> TERMS_KNOWN = Set.of(
            "law", "agency", "release", "open", "held", "page", "software", "reports", "memory", "sources", "own");

    /** Whose keys are put together from those of other sources, or are read from a file. */
    private static final Set<String> WITHOUT_KEYS = Set.of("Source", "Spread", "RangeTable");

    private record Terms(String taken, String terms) {}

    private record Named(String key, String kind) {}

    @Test
    void everySourceHasItsTerms() throws IOException {
        Map<Named, Set<String>> sources = sources();
        Map<String, Terms> terms = terms("source");
        Set<String> published = sources.keySet().stream()
                .filter(source -> ofOthers(source.kind()))
                .map(Named::key)
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(published)
                .as("sources of others' that the code names, and rows of kind source in %s", TERMS)
                .isEqualTo(new TreeSet<>(terms.keySet()));
        List<List<String>> rows = new ArrayList<>();
        sources.forEach((source, where) -> {
            Terms of = terms.getOrDefault(source.key(), new Terms("", ""));
            boolean others = ofOthers(source.kind());
            rows.add(List.of(
                    source.key(),
                    source.kind(),
                    String.join(", ", where),
                    others ? of.taken() : "",
                    others ? of.terms() : source.kind().startsWith("own") ? "own" : "memory"));
        });
        DocumentParts.leaveTable(
                "data-sources", List.of("Source", "Kind", "Named by", "What was taken", "Terms"), rows);
    }

    @Test
    void everyFileOfDataHasItsTerms() throws IOException {
        Map<String, Terms> terms = terms("file");
        Set<String> unused = new TreeSet<>(terms.keySet());
        List<List<String>> rows = new ArrayList<>();
        List<String> without = new ArrayList<>();
        for (Path file : files()) {
            String path = "/" + ROOT.relativize(file).toString().replace('\\', '/');
            Optional<Map.Entry<String, Terms>> found = terms.entrySet().stream()
                    .filter(row -> row.getKey().endsWith("/")
                            ? path.contains("/" + row.getKey())
                            : path.endsWith("/" + row.getKey()))
                    .max(Comparator.comparingInt(row -> row.getKey().length()));
            if (found.isEmpty()) {
                without.add(path.substring(1));
                continue;
            }
            String name = found.get().getKey();
            Terms of = found.get().getValue();
            if (unused.remove(name) || !name.endsWith("/")) {
                rows.add(List.of(name, module(path), stated(file, name), of.taken(), of.terms()));
            }
        }
        assertThat(without)
                .as("files of data without a row of kind file in %s", TERMS)
                .isEmpty();
        assertThat(unused)
                .as("rows of kind file in %s that stand for no file", TERMS)
                .isEmpty();
        rows.sort(Comparator.comparing((List<String> row) -> row.get(1)).thenComparing(row -> row.get(0)));
        DocumentParts.leaveTable("data-files", List.of("File", "Module", "From", "What was taken", "Terms"), rows);
    }

    @Test
    void theScanSeesWhatItIsMeantToSee() throws IOException {
        Map<Named, Set<String>> sources = sources();
        assertThat(sources.get(new Named("IAPWS SR6-08", "published"))).containsExactly("Water");
        assertThat(sources.get(new Named("eu-2019-2016", "published"))).containsExactly("sources.csv");
        assertThat(sources).containsKey(new Named("from memory", "from memory"));
    }

    private static boolean ofOthers(String kind) {
        return kind.equals("published") || kind.equals("reference library");
    }

    private static String module(String path) {
        return path.substring(1, path.indexOf('/', 1)) + (path.contains("/src/test/") ? ", tests" : "");
    }

    /** What the file itself says of its origin, if it says so in its first line. */
    private static String stated(Path file, String row) throws IOException {
        if (row.endsWith("/")) {
            return "";
        }
        String mark = "# source: ";
        String first = Files.readString(file, StandardCharsets.UTF_8)
                .lines()
                .findFirst()
                .orElse("");
        return first.startsWith(mark) ? first.substring(mark.length()) : "";
    }

    private static Map<String, Terms> terms(String what) throws IOException {
        Map<String, Terms> terms = new TreeMap<>();
        for (List<String> row : records(ROOT.resolve(TERMS))) {
            assertThat(row).as("row of %s", TERMS).hasSize(4).doesNotContain("");
            if (row.get(0).equals(what)) {
                assertThat(TERMS_KNOWN).as("terms of %s", row.get(1)).contains(row.get(3));
                assertThat(terms.put(row.get(1), new Terms(row.get(2), row.get(3))))
                        .as("second row for %s", row.get(1))
                        .isNull();
            }
        }
        return terms;
    }

    private static List<List<String>> records(Path file) throws IOException {
        String text = Files.readString(file, StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .collect(Collectors.joining("\n"));
        List<List<String>> records = Csv.parse(text);
        return records.subList(1, records.size());
    }

    private static List<Path> files() throws IOException {
        List<Path> all = new ArrayList<>();
        for (String module : List.of("thermal-materials", "thermal-core", "thermal-service", "thermal-examples")) {
            for (String part : List.of("src/main/resources", "src/test/resources", "scenarios")) {
                Path folder = ROOT.resolve(module).resolve(part);
                if (Files.isDirectory(folder)) {
                    try (Stream<Path> tree = Files.walk(folder)) {
                        tree.filter(Files::isRegularFile)
                                .filter(file -> DATA.matcher(file.toString()).matches())
                                .sorted()
                                .forEach(all::add);
                    }
                }
            }
        }
        return all;
    }

    private static Map<Named, Set<String>> sources() throws IOException {
        Map<Named, Set<String>> found =
                new TreeMap<>(Comparator.comparing(Named::key).thenComparing(Named::kind));
        for (List<String> row : records(ROOT.resolve(SOURCES_OF_RANGES))) {
            found.computeIfAbsent(new Named(row.get(0), row.get(2)), key -> new TreeSet<>())
                    .add("sources.csv");
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            List<Path> sources = new ArrayList<>();
            for (String module : LIBRARIES) {
                try (Stream<Path> tree = Files.walk(ROOT.resolve(module).resolve("src/main/java"))) {
                    tree.filter(path -> path.toString().endsWith(".java"))
                            .sorted()
                            .forEach(sources::add);
                }
            }
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, diagnostic -> {}, List.of(), null, files.getJavaFileObjectsFromPaths(sources));
            for (CompilationUnitTree unit : task.parse()) {
                String file =
                        Path.of(unit.getSourceFile().toUri()).getFileName().toString();
                String type = file.substring(0, file.length() - ".java".length());
                new SourceScanner(type, found).scan(unit, null);
            }
        }
        return found;
    }

    /** Finds where sources are made, by their constructor or by {@link Source#published}. */
    private static final class SourceScanner extends TreeScanner<Void, Void> {

        private final String type;
        private final Map<Named, Set<String>> found;

        SourceScanner(String type, Map<Named, Set<String>> found) {
            this.type = type;
            this.found = found;
        }

        @Override
        public Void visitNewClass(NewClassTree tree, Void nothing) {
            if (tree.getIdentifier().toString().equals("Source")) {
                String kind = tree.getArguments().get(2).toString();
                add(tree.getArguments().get(0), kind.substring(kind.lastIndexOf('.') + 1));
            }
            return super.visitNewClass(tree, null);
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree tree, Void nothing) {
            if (tree.getMethodSelect() instanceof MemberSelectTree method
                    && method.toString().equals("Source.published")) {
                add(tree.getArguments().get(0), Source.Kind.PUBLISHED.name());
            }
            return super.visitMethodInvocation(tree, null);
        }

        private void add(ExpressionTree key, String kind) {
            if (WITHOUT_KEYS.contains(type)) {
                return;
            }
            Named named = new Named(
                    text(key),
                    Source.Kind.valueOf(kind).name().toLowerCase(Locale.ROOT).replace('_', ' '));
            found.computeIfAbsent(named, each -> new TreeSet<>()).add(type);
        }

        private String text(Tree tree) {
            if (tree instanceof LiteralTree literal && literal.getValue() instanceof String text) {
                return text;
            }
            if (tree instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
                return text(sum.getLeftOperand()) + text(sum.getRightOperand());
            }
            throw new AssertionError(
                    type + ": the key of a source is " + tree + ": expected a text, so that its terms can be listed");
        }
    }
}
