/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.beveragethermal.examples.internal.Html;
import org.beveragethermal.examples.internal.WholeFile;

/** Writes the book of worked examples: one page of HTML that needs nothing beside it. */
public final class WorkedBook {

    private static final int WRONG_USE = 2;
    private static final int NOT_WRITTEN = 1;

    private static final String STYLE = """
            :root { color-scheme: light; }
            body { font-family: sans-serif; color: #111; background: #fff; max-width: 50rem; margin: 1.5rem auto; padding: 0 1rem; line-height: 1.45; }
            h1 { font-size: 1.7rem; }
            h2 { font-size: 1.3rem; border-top: 3px solid #111; padding-top: 0.6rem; margin-top: 2.5rem; }
            h3 { font-size: 1.05rem; margin: 1.2rem 0 0.3rem; }
            a { color: #0b3d91; text-decoration: underline; }
            table { border-collapse: collapse; font-size: 0.9rem; }
            th, td { padding: 0.25rem 0.7rem 0.25rem 0; text-align: left; vertical-align: top; border-bottom: 1px solid #767676; }
            th { border-bottom: 2px solid #111; }
            figure { margin: 0.8rem 0; }
            figure svg { max-width: 100%; height: auto; }
            li { margin: 0.35rem 0; }
            .math { overflow-x: auto; padding: 0.2rem 0; }
            .math math { font-size: 1.1rem; margin-right: 0.5rem; }
            .from { font-size: 0.9rem; }
            .answer { border: 2px solid #111; padding: 0.5rem 0.8rem; }
            .caution { border: 2px solid #111; border-left-width: 0.7rem; padding: 0.5rem 0.8rem; }
            .letters { list-style: lower-alpha; }
            @page { size: A4; margin: 16mm; }
            @media print {
              body { max-width: none; margin: 0; padding: 0; font-size: 10pt; }
              section { break-before: page; }
              h2, h3 { break-after: avoid; }
              figure, tr, li, .answer, .caution { break-inside: avoid; }
              a { color: #111; }
              .math { overflow: visible; }
            }
            """;

    private WorkedBook() {}

    /**
     * Writes the book.
     *
     * @param arguments the file to write
     */
    public static void main(String... arguments) {
        if (arguments.length != 1) {
            System.err.println("give one argument: the file to write");
            System.exit(WRONG_USE);
        }
        Path file = Path.of(arguments[0]);
        try {
            write(file);
        } catch (IOException e) {
            System.err.println(file + " cannot be written: " + e);
            System.exit(NOT_WRITTEN);
        }
    }

    /**
     * Writes the book beside its place and moves it there when it is whole.
     *
     * @param file where to; its folder is made if need be, and a file that is there is replaced
     * @throws IOException if it cannot be written
     */
    public static void write(Path file) throws IOException {
        write(file, html());
    }

    static void write(Path file, String html) throws IOException {
        Path target = file.toAbsolutePath();
        Path folder = target.getParent();
        if (folder == null) {
            throw new IOException(file + " is no file");
        }
        Files.createDirectories(folder);
        WholeFile.write(target, html);
    }

    /**
     * The whole book.
     *
     * @return a page of HTML that is XML as well
     */
    public static String html() {
        List<WorkedExample> examples = WorkedExamples.all();
        List<ExamplePage> pages = new ArrayList<>();
        examples.forEach(example -> pages.add(new ExamplePage(pages.size() + 1, example)));
        String body = preface()
                + pages.stream()
                        .map(ExamplePage::contents)
                        .collect(Collectors.joining("", "<nav><h2>Contents</h2>\n<ol>\n", ""))
                + "</ol>\n<p>" + Html.link("#answers", "Answers to the exercises") + ", "
                + Html.link("#teaching", "notes for teachers") + "</p></nav>\n"
                + pages.stream().map(ExamplePage::section).collect(Collectors.joining())
                + answers(pages)
                + TeacherNotes.section(pages);
        return """
                <!DOCTYPE html>
                <html xmlns="http://www.w3.org/1999/xhtml" lang="en">
                <head>
                <meta charset="utf-8"/>
                <meta name="viewport" content="width=device-width, initial-scale=1"/>
                <title>Worked examples: temperatures of drinks</title>
                <style>
                """ + STYLE + """
                </style>
                </head>
                <body>
                <h1>Worked examples: temperatures of drinks</h1>
                """ + body + "</body>\n</html>\n";
    }

    private static String preface() {
        return Html.paragraph(
                        "From a bottle that cools by one formula to a plan in two stages. Each example is worked by hand, with symbols"
                                + " first and numbers after, then found again in another way, most often by the library Beverage Thermal. All"
                                + " figures are computed by the code that writes this page: formula, numbers put in and result come from one"
                                + " place.")
                + Html.paragraph(
                        "Bottles, rooms and logs are our own invention. Numbers are in SI units; °C stands where only differences"
                                + " count, kelvin where the temperature itself does. Results are rounded to four digits for checking; few"
                                + " of them are known to more than two. A figure that is marked “from memory” was not at hand when it was written"
                                + " down.")
                + ExamplePage.caution(
                        "These are exercises on paper. Whoever tries one: hot drinks scald, ice with salt and things from a"
                                + " freezer freeze skin, glass bursts when it freezes, is heated fast or stands under pressure. Rules of"
                                + " the place and of a school's laboratory come first; open-air flames and alcohol do not go together.");
    }

    private static String answers(List<ExamplePage> pages) {
        return "<section id=\"answers\">\n<h2>Answers to the exercises</h2>\n"
                + Html.table(
                        List.of("Exercise", "Answer", "What it is"),
                        pages.stream().flatMap(page -> page.answers().stream()).toList())
                + "</section>\n";
    }
}
