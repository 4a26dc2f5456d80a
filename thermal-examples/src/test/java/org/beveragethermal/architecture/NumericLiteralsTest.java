/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.UnaryTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * Lists the numbers in the code of thermal-materials that are neither named constants nor entries of a table, and holds them to a list
 * in which each is justified: a figure of nature must not hide in a formula without its source.
 */
class NumericLiteralsTest {

    private static final Path SOURCES =
            Path.of(System.getProperty("basedir", "."), "..", "thermal-materials", "src", "main", "java");
    /** Numbers of arithmetic and geometry. */
    private static final Set<Double> PLAIN = Set.of(0.0, 1.0, 2.0, 3.0, 4.0, 0.5);

    private static final Set<String> LEFT_OUT = Set.of("hashCode", "toString");

    @Test
    void everyNumberOutsideTablesIsJustified() throws IOException {
        Map<String, String> found = found();
        Map<String, String> justified = new TreeMap<>();
        for (String row : rows()) {
            String[] cells = row.split(",", 4);
            assertThat(cells).as(row).hasSize(4);
            assertThat(cells[3]).as("reason in: " + row).isNotBlank();
            justified.put(cells[0] + "," + cells[1], cells[2]);
        }
        assertThat(found)
                .as("numbers outside tables; a figure with a source belongs into a named constant, any other into"
                        + " numeric-literals.csv with its reason")
                .isEqualTo(justified);
    }

    @Test
    void theScanSeesWhatItIsMeantToSee() throws IOException {
        Map<String, String> found = found();
        // A unit in a formula is seen; coefficients in tables are not.
        assertThat(found).containsEntry("Water,dynamicViscosity", "1.0E-6");
        assertThat(found.keySet()).noneMatch(key -> key.startsWith("EthanolWaterTables"));
    }

    private static List<String> rows() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(NumericLiteralsTest.class.getResourceAsStream("numeric-literals.csv"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .toList();
        }
    }

    private static Map<String, String> found() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        Map<String, String> found = new TreeMap<>();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8);
                Stream<Path> tree = Files.walk(SOURCES)) {
            List<Path> sources = tree.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, diagnostic -> {}, List.of(), null, files.getJavaFileObjectsFromPaths(sources));
            for (CompilationUnitTree unit : task.parse()) {
                new Scanner(found).scan(unit, null);
            }
        }
        return found;
    }

    private static final class Scanner extends TreePathScanner<Void, Void> {

        private final Map<String, String> found;

        Scanner(Map<String, String> found) {
            this.found = found;
        }

        @Override
        public Void visitLiteral(LiteralTree literal, Void nothing) {
            if (literal.getValue() instanceof Number number && !PLAIN.contains(number.doubleValue())) {
                String member = member();
                if (!member.isEmpty() && !LEFT_OUT.contains(member)) {
                    boolean negative = getCurrentPath().getParentPath().getLeaf() instanceof UnaryTree unary
                            && unary.getKind() == Tree.Kind.UNARY_MINUS;
                    found.merge(
                            outermostClass() + "," + member,
                            (negative ? "-" : "") + number,
                            (before, more) -> before + " " + more);
                }
            }
            return null;
        }

        /** The method around the literal; empty for constants, entries of enumerations and other initialisers of tables. */
        private String member() {
            String method = "";
            for (TreePath path = getCurrentPath(); path != null; path = path.getParentPath()) {
                if (path.getLeaf() instanceof VariableTree variable
                        && path.getParentPath().getLeaf() instanceof ClassTree
                        && (variable.getModifiers().getFlags().contains(Modifier.STATIC)
                                || isConstantOfInterface(path))) {
                    return "";
                }
                if (path.getLeaf() instanceof MethodTree tree) {
                    method = tree.getName().toString();
                }
            }
            return method;
        }

        private static boolean isConstantOfInterface(TreePath path) {
            return path.getParentPath().getLeaf().getKind() == Tree.Kind.INTERFACE;
        }

        private String outermostClass() {
            String name = "";
            for (TreePath path = getCurrentPath(); path != null; path = path.getParentPath()) {
                if (path.getLeaf() instanceof ClassTree tree) {
                    name = tree.getSimpleName().toString();
                }
            }
            return name;
        }
    }
}
