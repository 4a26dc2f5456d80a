/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Asserts a figure of the project against something outside it and records the comparison.
 *
 * <p>Begin with the kind of source, describe the figure, give what the source says and how far off is allowed, and end
 * with {@link Check#check(double)}. The row is written whether the check passes or not; the files are begun anew by the
 * first row of a JVM. A figure from the source itself must stand in the test, never one computed by the project.
 */
public final class OutsideChecks {
    private OutsideChecks() {}

    /** What kind of authority a check rests on. */
    public enum Kind {
        /** A paper, standard, handbook table or worked example that can be cited. */
        PUBLISHED("published"),
        /** A general-purpose library run as a reference. */
        REFERENCE_LIBRARY("reference library"),
        /** A fact of the trade without a source. */
        COMMON_PRACTICE("common practice"),
        /** A figure remembered, its source not at hand. */
        FROM_MEMORY("from memory");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /**
         * The word used in the rows.
         *
         * @return for example {@code published}
         */
        public String label() {
            return label;
        }
    }

    /**
     * Begins a check against a published figure.
     *
     * @param id unique name of the check, lower case with hyphens
     * @param source citation: authors or body, title or number, table or equation
     * @return a check still to be described
     */
    public static Check published(String id, String source) {
        return begin(Kind.PUBLISHED, id, source);
    }

    /**
     * Begins a check against a general-purpose library.
     *
     * @param id unique name of the check, lower case with hyphens
     * @param library name and version, and the routine used
     * @return a check still to be described
     */
    public static Check referenceLibrary(String id, String library) {
        return begin(Kind.REFERENCE_LIBRARY, id, library);
    }

    /**
     * Begins a check against what the trade takes for granted; its source reads {@code common practice, no source}.
     *
     * @param id unique name of the check, lower case with hyphens
     * @return a check still to be described
     */
    public static Check commonPractice(String id) {
        return begin(Kind.COMMON_PRACTICE, id, "common practice, no source");
    }

    /**
     * Begins a check against a remembered figure.
     *
     * @param id unique name of the check, lower case with hyphens
     * @param source where it is believed to come from; the words "from memory" are added
     * @return a check still to be described
     */
    public static Check fromMemory(String id, String source) {
        return begin(Kind.FROM_MEMORY, id, requireText(source, "source") + " (from memory)");
    }

    /**
     * Records what a rule of thumb says beside what the model says; asserts nothing.
     *
     * @param id unique name of the row, lower case with hyphens
     * @param what the question both answer
     * @param customSays the figure of the rule
     * @param modelSays the figure of the model
     * @param unit unit of both
     * @param note why they differ, or an empty text
     * @throws IllegalArgumentException for a blank id, question or unit, or a figure that is not finite
     */
    public static void ruleOfThumb(
            String id, String what, double customSays, double modelSays, String unit, String note) {
        ruleOfThumb(ModuleRows::rows, id, what, customSays, modelSays, unit, note);
    }

    static void ruleOfThumb(
            Supplier<CheckRows> rows,
            String id,
            String what,
            double customSays,
            double modelSays,
            String unit,
            String note) {
        List<String> row = List.of(
                requireText(id, "id"),
                requireText(what, "what"),
                Figures.figure(requireFinite(customSays, "customSays")),
                Figures.figure(requireFinite(modelSays, "modelSays")),
                requireText(unit, "unit"),
                note);
        rows.get().addRule(row);
    }

    private static Check begin(Kind kind, String id, String source) {
        return begin(ModuleRows::rows, kind, id, source);
    }

    static Check begin(Supplier<CheckRows> rows, Kind kind, String id, String source) {
        return new Check(rows, kind, requireText(id, "id"), requireText(source, "source"), "", "", null, null);
    }

    /** One comparison; immutable, every step gives a new one. */
    public static final class Check {
        private final Supplier<CheckRows> rows;
        private final Kind kind;
        private final String id;
        private final String source;
        private final String what;
        private final String unit;
        private final @Nullable Double expected;
        private final @Nullable Allowance allowance;

        private Check(
                Supplier<CheckRows> rows,
                Kind kind,
                String id,
                String source,
                String what,
                String unit,
                @Nullable Double expected,
                @Nullable Allowance allowance) {
            this.rows = rows;
            this.kind = kind;
            this.id = id;
            this.source = source;
            this.what = what;
            this.unit = unit;
            this.expected = expected;
            this.allowance = allowance;
        }

        /**
         * Describes the figure.
         *
         * @param description what is compared and under which conditions, in one line
         * @return the check so described
         */
        public Check what(String description) {
            return new Check(rows, kind, id, source, requireText(description, "what"), unit, expected, allowance);
        }

        /**
         * Names the unit of the figures.
         *
         * @param symbol the unit, {@code 1} for a number without one
         * @return the check with that unit
         */
        public Check unit(String symbol) {
            return new Check(rows, kind, id, source, what, requireText(symbol, "unit"), expected, allowance);
        }

        /**
         * Gives the source's figure; how far off is allowed must follow.
         *
         * @param value what the source says, finite
         * @return the check with that expectation
         */
        public Check expected(double value) {
            return new Check(rows, kind, id, source, what, unit, requireFinite(value, "expected"), null);
        }

        /**
         * Allows an absolute deviation from the expected figure.
         *
         * @param tolerance in the unit of the figure, at least 0
         * @return the check with that tolerance
         */
        public Check within(double tolerance) {
            return allowing(Allowance.around(expectedValue(), requireNotNegative(tolerance, "tolerance")));
        }

        /**
         * Allows a deviation as a fraction of the expected figure.
         *
         * @param fraction at least 0; 0.01 is one per cent
         * @return the check with that tolerance
         */
        public Check withinRelative(double fraction) {
            return within(requireNotNegative(fraction, "fraction") * Math.abs(expectedValue()));
        }

        /**
         * Expects a figure inside a range that the source gives, ends included.
         *
         * @param low lower end, finite
         * @param high upper end, finite, not below the lower
         * @return the check with that range
         */
        public Check between(double low, double high) {
            return allowing(Allowance.between(requireFinite(low, "low"), requireFinite(high, "high")));
        }

        /**
         * Compares, records, and fails if the figure is not allowed.
         *
         * @param actual the project's figure, in the unit named
         * @throws AssertionError if it lies outside what is allowed, or is not a number; the row is written before
         * @throws IllegalStateException if the description, the unit or what is allowed is missing
         */
        public void check(double actual) {
            Allowance allowed = allowance;
            if (allowed == null || what.isEmpty() || unit.isEmpty()) {
                throw new IllegalStateException("check " + id + " needs what, unit and what is allowed before check()");
            }
            boolean passed = allowed.allows(actual);
            String actualFigure = allowed.figure(actual);
            rows.get()
                    .addCheck(List.of(
                            id,
                            source,
                            what,
                            allowed.expectedText(),
                            actualFigure,
                            allowed.toleranceText(),
                            unit,
                            kind.label(),
                            Boolean.toString(passed)));
            if (!passed) {
                throw new AssertionError(id + ": " + what + ": expected " + allowed.describe() + " " + unit + " ("
                        + source + "), was " + actual + " " + unit);
            }
        }

        private Check allowing(Allowance allowed) {
            return new Check(rows, kind, id, source, what, unit, expected, allowed);
        }

        private double expectedValue() {
            if (expected == null) {
                throw new IllegalStateException("check " + id + " needs expected(value) before a tolerance");
            }
            return expected;
        }
    }

    /** What is allowed; {@code expected} is NaN-free: a range has its ends, a figure has itself and a tolerance. */
    private record Allowance(double low, double high, double expected, double tolerance, boolean range) {
        static Allowance around(double expected, double tolerance) {
            return new Allowance(expected - tolerance, expected + tolerance, expected, tolerance, false);
        }

        static Allowance between(double low, double high) {
            if (low > high) {
                throw new IllegalArgumentException("low " + low + ": expected at most high, " + high);
            }
            return new Allowance(low, high, low + (high - low) / 2.0, (high - low) / 2.0, true);
        }

        boolean allows(double actual) {
            return range ? actual >= low && actual <= high : Math.abs(actual - expected) <= tolerance;
        }

        String figure(double actual) {
            return Figures.figure(actual, tolerance);
        }

        String expectedText() {
            return range ? Figures.figure(low, tolerance) + ".." + Figures.figure(high, tolerance) : figure(expected);
        }

        String toleranceText() {
            return range ? "" : Figures.figure(tolerance);
        }

        String describe() {
            return range ? expectedText() : expectedText() + " ± " + toleranceText();
        }
    }

    /** Begins the module's row files when the first row of this JVM asks for them. */
    private static final class ModuleRows {
        private static final CheckRows ROWS = CheckRows.startedIn(RowFile.moduleTarget());

        static CheckRows rows() {
            return ROWS;
        }
    }

    private static String requireText(String text, String name) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(name + " is blank: expected some text");
        }
        return text;
    }

    private static double requireFinite(double value, String name) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " " + value + ": expected a finite number");
        }
        return value;
    }

    private static double requireNotNegative(double value, String name) {
        if (requireFinite(value, name) < 0.0) {
            throw new IllegalArgumentException(name + " " + value + ": expected at least 0");
        }
        return value;
    }
}
