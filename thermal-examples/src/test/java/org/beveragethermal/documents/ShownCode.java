/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.MemberReferenceTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.lang.model.element.Element;
import javax.lang.model.element.TypeElement;
import javax.lang.model.element.VariableElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.util.Elements;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;

/**
 * Code that is shown to users: what the examples and the tests of thermal-examples contain, and the snippets of documents, compiled in one run.
 *
 * @param errors what does not compile, empty if all does
 * @param usedTypes binary names of the top-level types that the code names, or of which it uses a member
 */
record ShownCode(List<String> errors, Set<String> usedTypes) {

    static ShownCode of(List<Snippet> snippets, Path... sourceRoots) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        DiagnosticCollector<JavaFileObject> messages = new DiagnosticCollector<>();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(messages, null, StandardCharsets.UTF_8)) {
            List<JavaFileObject> units = new ArrayList<>();
            files.getJavaFileObjectsFromPaths(javaFiles(sourceRoots)).forEach(units::add);
            snippets.forEach(snippet -> units.add(new InMemory(snippet)));
            List<String> options = List.of("-proc:none", "-nowarn", "-cp", System.getProperty("java.class.path", ""));
            JavacTask task = (JavacTask) compiler.getTask(new StringWriter(), files, messages, options, null, units);
            List<CompilationUnitTree> trees = new ArrayList<>();
            task.parse().forEach(trees::add);
            task.analyze();
            Uses uses = new Uses(Trees.instance(task), task.getElements());
            trees.forEach(tree -> uses.scan(tree, null));
            return new ShownCode(
                    messages.getDiagnostics().stream()
                            .filter(message -> message.getKind() == Diagnostic.Kind.ERROR)
                            .map(Diagnostic::toString)
                            .toList(),
                    uses.names);
        }
    }

    static List<Path> javaFiles(Path... roots) throws IOException {
        List<Path> found = new ArrayList<>();
        for (Path root : roots) {
            try (Stream<Path> all = Files.walk(root)) {
                all.filter(file -> file.toString().endsWith(".java")).sorted().forEach(found::add);
            }
        }
        return found;
    }

    /** Collects the top-level types behind names and members. What an import alone names counts for nothing. */
    private static final class Uses extends TreePathScanner<@Nullable Void, @Nullable Void> {
        private final Set<String> names = new TreeSet<>();
        private final Trees trees;
        private final Elements elements;

        Uses(Trees trees, Elements elements) {
            this.trees = trees;
            this.elements = elements;
        }

        @Override
        public @Nullable Void visitImport(ImportTree node, @Nullable Void nothing) {
            return null;
        }

        @Override
        public @Nullable Void visitIdentifier(IdentifierTree node, @Nullable Void nothing) {
            note();
            return super.visitIdentifier(node, null);
        }

        @Override
        public @Nullable Void visitMemberSelect(MemberSelectTree node, @Nullable Void nothing) {
            note();
            return super.visitMemberSelect(node, null);
        }

        @Override
        public @Nullable Void visitMemberReference(MemberReferenceTree node, @Nullable Void nothing) {
            note();
            return super.visitMemberReference(node, null);
        }

        private void note() {
            Element element = trees.getElement(getCurrentPath());
            if (element instanceof VariableElement variable && variable.asType() instanceof DeclaredType type) {
                note(type.asElement());
            }
            note(element);
        }

        private void note(@Nullable Element start) {
            Element element = start;
            while (element != null) {
                Element around = element.getEnclosingElement();
                if (element instanceof TypeElement type && !(around instanceof TypeElement)) {
                    names.add(elements.getBinaryName(type).toString());
                }
                element = around;
            }
        }
    }

    /** A class around statements that a document shows. */
    private static final class InMemory extends SimpleJavaFileObject {
        private final String code;

        InMemory(Snippet snippet) {
            super(URI.create("string:///snippets/" + snippet.name() + ".java"), Kind.SOURCE);
            this.code = snippet.asClass();
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return code;
        }
    }
}
