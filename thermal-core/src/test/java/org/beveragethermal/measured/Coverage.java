/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.math3.distribution.BinomialDistribution;

/** How many rows lie inside intervals of several probabilities, beside how many would by chance if the intervals were right. */
final class Coverage {

    static final List<String> HEAD =
            List.of("Surroundings", "Rows", "Never or later", "Inside 50 %", "Inside 68 %", "Inside 90 %");

    private static final List<Double> PROBABILITIES = List.of(0.50, 0.68, 0.90);
    private static final double TAIL = 0.025;

    private Coverage() {}

    /** All rows together, those in air, and each kind of surroundings of the rows that are shown. */
    static List<List<String>> table(Summary all, Summary shown) {
        List<List<String>> table = new ArrayList<>();
        table.add(line("all", all, c -> true));
        table.add(line("air of all kinds", all, Summary::isInAir));
        for (Setting.Means means : Setting.Means.values()) {
            Predicate<Comparison> here = c -> c.run().setting().means() == means;
            if (shown.count(here) > 0) {
                table.add(line(means.label(), shown, here));
            }
        }
        return table;
    }

    private static List<String> line(String name, Summary summary, Predicate<Comparison> which) {
        int rows = Math.toIntExact(summary.count(which));
        List<String> line = new ArrayList<>(List.of(
                name,
                Integer.toString(rows),
                Long.toString(summary.count(which.and(c -> c.isTime() && !Summary.saysWhen(c))))));
        for (double probability : PROBABILITIES) {
            int inside = Math.toIntExact(summary.count(which.and(c -> c.isInside(probability))));
            Expected expected = Expected.of(rows, probability);
            line.add((expected.holds(inside) ? "" + inside : "**" + inside + "**") + " (" + expected.fewest() + " to "
                    + expected.most() + ")");
        }
        return line;
    }

    /** The exact binomial band of 95 %: on either side of it lies at most one chance in forty. */
    record Expected(int fewest, int most) {

        static Expected of(int rows, double probability) {
            BinomialDistribution exact = new BinomialDistribution(null, rows, probability);
            return new Expected(exact.inverseCumulativeProbability(TAIL), exact.inverseCumulativeProbability(1 - TAIL));
        }

        boolean holds(int inside) {
            return inside >= fewest && inside <= most;
        }
    }
}
