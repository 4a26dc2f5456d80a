/* SPDX-License-Identifier: Apache-2.0 */

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Writes what each library brings along at run time into a document, or checks what stands there, by the bills of materials of a build.
 *
 * <p>Dependencies and their licences must be those that are written; a jar of our own may have grown or shrunk by a tenth.
 */
final class Supply {
    private static final List<String> LIBRARIES = List.of("thermal-materials", "thermal-core", "thermal-service");
    private static final String OWN = "org.beveragethermal";
    private static final String BEGIN = "<!-- supply:begin -->\n";
    private static final String END = "<!-- supply:end -->\n";
    private static final Pattern OWN_SIZE = Pattern.compile("(?m)^(\\| thermal-\\w+ \\|) (\\d+) \\|.*$");
    private static final double ALLOWED = 0.1;

    private record Jar(String group, String name, String version, String licences, long bytes) {}

    private Supply() {}

    /** Arguments: folder of the build, local repository, document, and {@code --write} or nothing. */
    public static void main(String[] arguments) throws Exception {
        Path build = Path.of(arguments[0]);
        Path repository = Path.of(arguments[1]);
        Path document = Path.of(arguments[2]);
        String before = Files.readString(document, StandardCharsets.UTF_8);
        int begin = before.indexOf(BEGIN) + BEGIN.length();
        int end = before.indexOf(END);
        String table = tables(build, repository);
        String now = before.substring(0, begin) + table + before.substring(end);
        if (arguments.length > 3 && arguments[3].equals("--write")) {
            Files.writeString(document, now, StandardCharsets.UTF_8);
        } else if (!sameButForSizes(before.substring(begin, end), table)) {
            System.err.println(document + " is not what this build brings along; write it anew with .ci/supply FOLDER --write");
            System.err.println(table);
            System.exit(1);
        }
        System.out.print(table);
    }

    private static String tables(Path build, Path repository) throws Exception {
        Map<String, Set<String>> users = new TreeMap<>();
        Map<String, Jar> jars = new TreeMap<>();
        StringBuilder text = new StringBuilder("| Library | Its jar, kB | Dependencies at run time | Their jars, kB | All together, kB |\n|---|---|---|---|---|\n");
        for (String library : LIBRARIES) {
            List<Jar> needed = bill(build.resolve(library).resolve("target/bom.xml"), repository);
            long own = Files.size(ownJar(build, library));
            long others = 0;
            long ours = own;
            int count = 0;
            for (Jar jar : needed) {
                if (jar.group().equals(OWN)) {
                    ours += Files.size(ownJar(build, jar.name()));
                } else {
                    others += jar.bytes();
                    count++;
                    String key = jar.group() + ":" + jar.name();
                    jars.put(key, jar);
                    users.computeIfAbsent(key, each -> new TreeSet<>()).add(library.substring("thermal-".length()));
                }
            }
            text.append("| ").append(library).append(" | ").append(kB(own)).append(" | ").append(count).append(" | ").append(kB(others));
            text.append(" | ").append(kB(ours + others)).append(" |\n");
        }
        text.append("\n| Dependency | Version | kB | Licence | Needed by |\n|---|---|---|---|---|\n");
        jars.forEach((key, jar) -> text.append("| ").append(key).append(" | ").append(jar.version()).append(" | ").append(kB(jar.bytes()))
                .append(" | ").append(jar.licences()).append(" | ").append(String.join(", ", users.get(key))).append(" |\n"));
        return text.toString();
    }

    private static Path ownJar(Path build, String library) throws IOException {
        Pattern name = Pattern.compile(Pattern.quote(library) + "-[0-9][0-9.]*(-SNAPSHOT)?\\.jar");
        try (var files = Files.list(build.resolve(library).resolve("target"))) {
            return files.filter(file -> name.matcher(file.getFileName().toString()).matches()).findFirst().orElseThrow();
        }
    }

    private static List<Jar> bill(Path file, Path repository) throws Exception {
        Element root = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile()).getDocumentElement();
        List<Jar> jars = new ArrayList<>();
        for (Element component : children(child(root, "components"))) {
            String group = text(component, "group");
            String name = text(component, "name");
            String version = text(component, "version");
            Set<String> licences = new TreeSet<>();
            for (Element licence : children(child(component, "licenses"))) {
                licences.add(licence.getTagName().equals("expression")
                        ? licence.getTextContent()
                        : text(licence, "id").isEmpty() ? text(licence, "name") : text(licence, "id"));
            }
            Path jar = repository.resolve(group.replace('.', '/')).resolve(name).resolve(version).resolve(name + "-" + version + ".jar");
            jars.add(new Jar(group, name, version, String.join(", ", licences), Files.size(jar)));
        }
        return jars;
    }

    private static boolean sameButForSizes(String written, String found) {
        Map<String, Long> then = ownSizes(written);
        Map<String, Long> now = ownSizes(found);
        return then.keySet().equals(now.keySet())
                && now.entrySet().stream()
                        .allMatch(size -> Math.abs(size.getValue() - then.get(size.getKey())) <= ALLOWED * then.get(size.getKey()))
                && OWN_SIZE.matcher(written).replaceAll("$1").equals(OWN_SIZE.matcher(found).replaceAll("$1"));
    }

    private static Map<String, Long> ownSizes(String table) {
        Map<String, Long> sizes = new LinkedHashMap<>();
        Matcher row = OWN_SIZE.matcher(table);
        while (row.find()) {
            sizes.put(row.group(1), Long.parseLong(row.group(2)));
        }
        return sizes;
    }

    private static long kB(long bytes) {
        return Math.round(bytes / 1000.0);
    }

    private static String text(Element parent, String name) {
        return children(parent).stream()
                .filter(each -> each.getTagName().equals(name))
                .map(Element::getTextContent)
                .collect(Collectors.joining());
    }

    private static Element child(Element parent, String name) {
        return children(parent).stream().filter(each -> each.getTagName().equals(name)).findFirst().orElse(parent.getOwnerDocument().createElement(name));
    }

    private static List<Element> children(Element parent) {
        List<Element> children = new ArrayList<>();
        for (Node each = parent.getFirstChild(); each != null; each = each.getNextSibling()) {
            if (each instanceof Element element) {
                children.add(element);
            }
        }
        return children;
    }
}
