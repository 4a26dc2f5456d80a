/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.beveragethermal.examples.internal.Figure;
import org.beveragethermal.examples.internal.Html;
import org.beveragethermal.examples.internal.SvgChart;
import org.beveragethermal.examples.internal.WholeFile;

/** Writes the property book of thermal-materials. */
public final class PropertyBook {

    private static final String FIGURES = "figures";

    private PropertyBook() {}

    /**
     * Writes pages and figures into a folder.
     *
     * @param arguments the folder; it is made if need be, and files of the same names in it are replaced
     * @throws IOException if it cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 1) {
            System.err.println("expected one argument: the folder to write the property book into");
            System.exit(2);
        }
        write(Path.of(arguments[0]));
    }

    /**
     * Writes pages and figures into a folder.
     *
     * @param folder where to; it is made if need be, and files of the same names in it are replaced
     * @throws IOException if it cannot be written
     */
    public static void write(Path folder) throws IOException {
        Files.createDirectories(folder.resolve(FIGURES));
        for (Map.Entry<String, String> file : files().entrySet()) {
            WholeFile.write(folder.resolve(file.getKey()), file.getValue());
        }
    }

    /**
     * The whole book.
     *
     * @return content of each file by its name relative to the book's folder
     */
    public static Map<String, String> files() {
        List<Page> pages = Contents.pages();
        Map<String, String> files = new TreeMap<>();
        files.put("index.html", index(pages));
        files.put("book.css", Html.STYLE);
        for (Page page : pages) {
            files.put(page.file() + ".html", page.html());
            for (Figure figure : page.figures()) {
                files.put(FIGURES + "/" + figure.file() + ".svg", SvgChart.draw(figure));
            }
        }
        return files;
    }

    private static String index(List<Page> pages) {
        return Html.page(
                "Property book",
                Html.paragraph(
                                "What thermal-materials knows, written by its own code: values, how far they are valid, how sure"
                                        + " they are and where they come from. Compositions are examples of ours.")
                        + Html.table(
                                List.of("Page", "What"),
                                pages.stream()
                                        .map(page -> List.of(
                                                Html.link(page.file() + ".html", page.title()),
                                                Html.text(page.summary())))
                                        .toList()));
    }
}
