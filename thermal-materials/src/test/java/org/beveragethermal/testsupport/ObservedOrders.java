/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Supplier;

/**
 * Asserts the order at which the error of a solver falls, and records it in {@code target/orders.csv}.
 *
 * <p>An order is the logarithm of the ratio of two errors, or of two differences between neighbouring refinements, to the base
 * of the ratio of the refinements. The row is written whether the check passes or not.
 */
public final class ObservedOrders {
    private static final String FILE = "orders.csv";
    private static final List<String> HEADER =
            List.of("family", "quantity", "refined", "theory", "observed", "lowest", "highest", "passed");

    private final Supplier<RowFile> rows;
    private final String family;
    private final String quantity;
    private final String refined;

    private ObservedOrders(Supplier<RowFile> rows, String family, String quantity, String refined) {
        this.rows = rows;
        this.family = requireText(family, "family");
        this.quantity = requireText(quantity, "quantity");
        this.refined = requireText(refined, "refined");
    }

    /**
     * Begins an observation.
     *
     * @param family what is solved and how, in a few words
     * @param quantity whose error is watched, and against what
     * @param refined what is made finer, such as {@code cells} or {@code steps}
     * @return the observation, still to be checked
     * @throws IllegalArgumentException for a blank text
     */
    public static ObservedOrders of(String family, String quantity, String refined) {
        return new ObservedOrders(ModuleRows::rows, family, quantity, refined);
    }

    static ObservedOrders of(Supplier<RowFile> rows, String family, String quantity, String refined) {
        return new ObservedOrders(rows, family, quantity, refined);
    }

    /**
     * The order between two errors.
     *
     * @param coarse error before the refinement, above 0
     * @param fine error after it, above 0
     * @param ratio by how much the refinement is finer, above 1
     * @return the order
     */
    public static double order(double coarse, double fine, double ratio) {
        return Math.log(coarse / fine) / Math.log(ratio);
    }

    /**
     * Compares, records, and fails if the order is not accepted.
     *
     * @param theory the order that the method has
     * @param observed the order seen
     * @param lowest lowest order accepted
     * @param highest highest order accepted
     * @throws AssertionError if the order lies outside what is accepted or is not a number; the row is written before
     */
    public void check(double theory, double observed, double lowest, double highest) {
        boolean passed = observed >= lowest && observed <= highest;
        rows.get()
                .add(List.of(
                        family,
                        quantity,
                        refined,
                        figure(theory),
                        figure(observed),
                        figure(lowest),
                        figure(highest),
                        Boolean.toString(passed)));
        if (!passed) {
            throw new AssertionError(family + ", " + quantity + ": expected an order of " + lowest + " to " + highest
                    + " in the " + refined + ", was " + observed);
        }
    }

    /** Two decimals: more would show the last bits of another JDK's arithmetic where errors are small. */
    private static String figure(double order) {
        return Double.isFinite(order)
                ? new BigDecimal(order)
                        .setScale(2, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros()
                        .toPlainString()
                : Double.toString(order);
    }

    private static String requireText(String text, String name) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(name + " is blank: expected some text");
        }
        return text;
    }

    /** Begins the module's row file when the first order of this JVM is observed. */
    private static final class ModuleRows {
        private static final RowFile ROWS = RowFile.startedIn(RowFile.moduleTarget(), FILE, HEADER);

        static RowFile rows() {
            return ROWS;
        }
    }
}
