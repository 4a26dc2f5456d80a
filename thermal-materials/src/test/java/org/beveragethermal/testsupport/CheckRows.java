/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.nio.file.Path;
import java.util.List;

/** The two row files of one module's test run; safe for test classes that run at the same time in one JVM. */
final class CheckRows {
    static final String CHECKS_FILE = "outside-checks.csv";
    static final String RULES_FILE = "rules-of-thumb.csv";
    static final List<String> CHECKS_HEADER =
            List.of("id", "source", "what", "expected", "actual", "tolerance", "unit", "kind", "passed");
    static final List<String> RULES_HEADER = List.of("id", "what", "custom_says", "model_says", "unit", "note");

    private final RowFile checks;
    private final RowFile rules;

    private CheckRows(RowFile checks, RowFile rules) {
        this.checks = checks;
        this.rules = rules;
    }

    /**
     * Starts both files anew with their headers, so that rows of an earlier run cannot survive.
     *
     * @param directory where they lie; made when it does not exist
     */
    static CheckRows startedIn(Path directory) {
        return new CheckRows(
                RowFile.startedIn(directory, CHECKS_FILE, CHECKS_HEADER),
                RowFile.startedIn(directory, RULES_FILE, RULES_HEADER));
    }

    void addCheck(List<String> fields) {
        checks.add(fields);
    }

    void addRule(List<String> fields) {
        rules.add(fields);
    }
}
