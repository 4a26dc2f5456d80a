/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

/** A scenario was refused. The message is one line: file, line and column, path in the document, what is wrong. */
public final class ScenarioException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** Name of the file. */
    private final String document;

    /** Path in the document, or empty. */
    private final String path;

    /** Line in the file from 1, or 0. */
    private final int line;

    /** Column in the line from 1, or 0. */
    private final int column;

    ScenarioException(String document, String path, int line, int column, String problem) {
        super(message(document, path, line, column, problem));
        this.document = document;
        this.path = path;
        this.line = line;
        this.column = column;
    }

    static ScenarioException ofFile(String document, String problem) {
        return new ScenarioException(document, "", 0, 0, problem);
    }

    private static String message(String document, String path, int line, int column, String problem) {
        String place = line > 0 ? ":" + line + ":" + column : "";
        return OneLine.of(document) + place + ": " + (path.isEmpty() ? "" : OneLine.of(path) + ": ")
                + OneLine.plain(problem);
    }

    /**
     * The file that was read.
     *
     * @return its name as it was given
     */
    public String document() {
        return document;
    }

    /**
     * Where in the document the trouble is.
     *
     * @return a path such as {@code $.drinks[3].style}; empty if the document could not be read at all
     */
    public String path() {
        return path;
    }

    /**
     * Line in the file.
     *
     * @return the line counted from 1; 0 if the file could not be read
     */
    public int line() {
        return line;
    }

    /**
     * Column in the line.
     *
     * @return the column counted from 1; 0 if the file could not be read
     */
    public int column() {
        return column;
    }
}
