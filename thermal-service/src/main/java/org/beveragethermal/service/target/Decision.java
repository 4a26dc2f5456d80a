/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One range made of many by a policy, with the ranges that set its ends and a sentence that says so.
 *
 * @param lowK lower end [K]
 * @param highK upper end [K]
 * @param decidedBy ranges that set the ends
 * @param basis how it came about
 */
record Decision(double lowK, double highK, List<ServingRange> decidedBy, String basis) {
    /** Nobody holds or measures a bottle closer than about half a kelvin either way (own assumption). */
    static final double MINIMUM_WIDTH_K = 1.0;

    static Decision of(DrinkStyle style, RangePolicy policy, List<ServingRange> ranges) {
        if (policy instanceof RangePolicy.OwnRange own) {
            return new Decision(own.lowK(), own.highK(), List.of(), "range given by the caller");
        }
        if (ranges.isEmpty()) {
            throw new IllegalArgumentException("style " + style.id() + ": no source states a range; give an own range");
        }
        if (policy instanceof RangePolicy.NamedSource named) {
            return sourceOnly(style, named.sourceKey(), ranges).widened();
        }
        if (ranges.size() == 1) {
            ServingRange only = ranges.get(0);
            return new Decision(only.lowK(), only.highK(), ranges, "the only range stated").widened();
        }
        return (policy instanceof RangePolicy.Envelope ? envelope(ranges) : narrowestCommon(ranges)).widened();
    }

    /** The same decision, made because of a rule. */
    Decision by(String rule) {
        return new Decision(lowK, highK, decidedBy, rule + ": " + basis);
    }

    private static Decision sourceOnly(DrinkStyle style, String sourceKey, List<ServingRange> ranges) {
        List<ServingRange> own = ranges.stream()
                .filter(range -> range.source().key().equals(sourceKey))
                .toList();
        if (own.isEmpty()) {
            throw new IllegalArgumentException("source \"" + sourceKey + "\" states no range for " + style.id()
                    + ": expected one of " + sourceKeys(ranges));
        }
        return new Decision(
                lowest(own),
                highest(own),
                own,
                "as stated by " + own.get(0).source().citation());
    }

    private static Decision envelope(List<ServingRange> ranges) {
        double low = lowest(ranges);
        double high = highest(ranges);
        return new Decision(
                low, high, reaching(ranges, low, high), "everything that any of " + count(ranges) + " allows");
    }

    private static Decision narrowestCommon(List<ServingRange> ranges) {
        double low = ranges.stream().mapToDouble(ServingRange::lowK).max().orElseThrow();
        double high = ranges.stream().mapToDouble(ServingRange::highK).min().orElseThrow();
        return low <= high
                ? new Decision(low, high, reaching(ranges, low, high), "common to " + count(ranges))
                : medians(ranges, low, high);
    }

    private static Decision medians(List<ServingRange> ranges, double highestLowK, double lowestHighK) {
        return new Decision(
                median(ranges.stream().mapToDouble(ServingRange::lowK).toArray()),
                median(ranges.stream().mapToDouble(ServingRange::highK).toArray()),
                ranges,
                count(ranges) + " have no range in common (one begins at " + Celsius.text(highestLowK)
                        + ", another ends at " + Celsius.text(lowestHighK) + "); median of their ends");
    }

    private static List<ServingRange> reaching(List<ServingRange> ranges, double lowK, double highK) {
        return ranges.stream()
                .filter(range -> range.lowK() == lowK || range.highK() == highK)
                .toList();
    }

    private Decision widened() {
        if (highK - lowK >= MINIMUM_WIDTH_K) {
            return this;
        }
        double middleK = lowK + (highK - lowK) / 2.0;
        return new Decision(
                middleK - MINIMUM_WIDTH_K / 2.0,
                middleK + MINIMUM_WIDTH_K / 2.0,
                decidedBy,
                basis + ", " + Celsius.text(lowK, highK) + ", widened to 1 K as no bottle is held closer");
    }

    private static double lowest(List<ServingRange> ranges) {
        return ranges.stream().mapToDouble(ServingRange::lowK).min().orElseThrow();
    }

    private static double highest(List<ServingRange> ranges) {
        return ranges.stream().mapToDouble(ServingRange::highK).max().orElseThrow();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int upper = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[upper] : sorted[upper - 1] + (sorted[upper] - sorted[upper - 1]) / 2.0;
    }

    private static String count(List<ServingRange> ranges) {
        return ranges.size() + " stated ranges";
    }

    private static String sourceKeys(List<ServingRange> ranges) {
        return ranges.stream().map(range -> range.source().key()).distinct().collect(Collectors.joining(", "));
    }
}
