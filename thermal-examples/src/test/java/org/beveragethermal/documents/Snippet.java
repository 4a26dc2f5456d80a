/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Statements that the documentation of a package shows.
 *
 * @param name name of the class that is made around them
 * @param packageName package whose documentation shows them
 * @param statements the statements
 * @param imports types to import, by qualified name
 */
record Snippet(String name, String packageName, String statements, Set<String> imports) {

    private static final String ROOT = "org.beveragethermal.";
    private static final Pattern BLOCK = Pattern.compile("<pre>\\{@code(.*?)\\n \\* ?\\}</pre>", Pattern.DOTALL);
    private static final Pattern PATH_OF_JDK = Pattern.compile("(?<!\\w)Path\\.of\\(");
    private static final Pattern TYPE = Pattern.compile("(?<![\\w.])[A-Z]\\w*");

    /** What snippets take as given. A snippet's own declaration comes first. */
    private static final String GIVEN = """
            FilledVessel bottle, wine, tumbler, tea;
            Surroundings refrigerator, ice, iceWater, freezer, sideboard, sleeve;
            Air terrace, room, kitchen, shade;
            Bucket bucket, bowl;
            Prediction prediction;
            PredictionEnsemble runs, draws;
            Network network;
            Node drink;
            Trajectory run;
            double[] timesS, readingsK, coldestK, meanK, warmestK;
            Instant now, at, later;
            ZoneId zone;
            java.nio.file.Path file;
            abstract void show(String text);
            """;

    /** What the snippets of one package take as given besides, or in place of the same name of {@link #GIVEN}. */
    private static final Map<String, String> GIVEN_TO_PACKAGE = Map.ofEntries(
            Map.entry("core.batch", "HeatLaw inside, outside; double[] startsK, insideFactors, airFactors;"),
            Map.entry("core.calibration", "abstract FilledVessel bottle(double startK);"),
            Map.entry("core.conduction", "Boundary air;"),
            Map.entry("core.film", "Node wall; Boundary room;"),
            Map.entry("core.inversion", "Surroundings bucket;"),
            Map.entry("core.serving", "Beverage white;"),
            Map.entry("core.storage", "List<Reading> readings;"),
            Map.entry("service.plan", "BottleOrder order;"),
            Map.entry("service.tracking", "List<TrackingEvent> readings;"),
            Map.entry("examples.embedding", "String events; abstract void post(String address, String body);"),
            Map.entry("examples.plot", "Fit fit; Observations observations; Tornado tornado; HeatAccount account;"));

    private static final List<String> ON_DEMAND = List.of(
            "java.nio.file.*",
            "java.time.*",
            "java.util.*",
            "javax.measure.*",
            "javax.measure.quantity.*",
            "static org.beveragethermal.core.scene.Exposure.in",
            "static org.beveragethermal.materials.units.Measures.*");

    /** The snippets of a documentation comment of a package; shell commands are none. */
    static List<Snippet> of(Path packageInfo, Map<String, List<String>> packagesByType) throws IOException {
        String text = Files.readString(packageInfo, StandardCharsets.UTF_8);
        Matcher declared = Pattern.compile("(?m)^package ([\\w.]+);").matcher(text);
        if (!declared.find()) {
            throw new IllegalArgumentException(packageInfo + ": expected a package");
        }
        String packageName = declared.group(1);
        List<Snippet> found = new ArrayList<>();
        Matcher block = BLOCK.matcher(text);
        while (block.find()) {
            String code = block.group(1).replaceAll("(?m)^ \\* ?", "");
            if (code.strip().startsWith("java -jar")) {
                continue;
            }
            String name = "In_" + packageName.replace(ROOT, "").replace('.', '_') + "_" + found.size();
            found.add(new Snippet(name, packageName, code, imports(packageName, code, packagesByType)));
        }
        return found;
    }

    /** A type of the package itself comes before one of the same name elsewhere; {@code Path.of} is that of the JDK. */
    private static Set<String> imports(String packageName, String code, Map<String, List<String>> packagesByType) {
        Set<String> imports = new TreeSet<>();
        Matcher type = TYPE.matcher(GIVEN + givenTo(packageName) + code);
        while (type.find()) {
            String name = type.group();
            List<String> packages = packagesByType.getOrDefault(name, List.of());
            List<String> ofLibrary = packages.stream()
                    .filter(one -> !one.startsWith(ROOT + "examples."))
                    .toList();
            if (name.equals("Path") && PATH_OF_JDK.matcher(code).find()) {
                imports.add("java.nio.file.Path");
            } else if (packages.contains(packageName)) {
                imports.add(packageName + "." + name);
            } else if (ofLibrary.size() == 1) {
                imports.add(ofLibrary.get(0) + "." + name);
            } else if (ofLibrary.isEmpty() && packages.size() == 1) {
                imports.add(packages.get(0) + "." + name);
            }
        }
        return imports;
    }

    /** A class with the statements as a method; what is given are fields, so that a snippet may declare the same name. */
    String asClass() {
        StringBuilder text = new StringBuilder("package snippets;\n");
        ON_DEMAND.forEach(imported -> text.append("import ").append(imported).append(";\n"));
        imports.forEach(imported -> text.append("import ").append(imported).append(";\n"));
        return text.append("abstract class Before" + name + " {\n")
                .append(GIVEN)
                .append("}\nabstract class " + name + " extends Before" + name + " {\n")
                .append(givenTo(packageName))
                .append("\nvoid shown() throws Exception {\n")
                .append(statements)
                .append("\n}\n}\n")
                .toString();
    }

    private static String givenTo(String packageName) {
        return GIVEN_TO_PACKAGE.getOrDefault(packageName.replace(ROOT, ""), "");
    }
}
