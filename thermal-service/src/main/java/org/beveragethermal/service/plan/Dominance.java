/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Leaves out candidates that another outdoes: it costs no more, is in no gear when the other is
 * not, and where hands are few moves at no other times. No best choice is lost by that. */
final class Dominance {

    private Dominance() {}

    /** Those that are left, the cheapest first. */
    static List<Candidate> best(List<Candidate> all, GearPools pools, boolean fewHands) {
        List<Candidate> ordered = new ArrayList<>(all);
        ordered.sort(Dominance::compare);
        List<Candidate> left = new ArrayList<>();
        for (Candidate candidate : ordered) {
            Route route = candidate.route();
            if (left.stream()
                    .map(Candidate::route)
                    .noneMatch(
                            cheaper -> isWithin(cheaper, route, pools) && (!fewHands || movesWith(cheaper, route)))) {
                left.add(candidate);
            }
        }
        return left;
    }

    private static int compare(Candidate one, Candidate other) {
        if (one.isCheaperThan(other)) {
            return -1;
        }
        return other.isCheaperThan(one)
                ? 1
                : ORDER.compare(one.route().legs(), other.route().legs());
    }

    /** Any order that does not depend on the order of what is at hand. */
    private static final Comparator<List<Leg>> ORDER = Comparator.comparing(List::toString);

    private static boolean movesWith(Route one, Route other) {
        return moments(other).containsAll(moments(one));
    }

    private static List<Double> moments(Route route) {
        return route.legs().stream().map(Leg::fromS).toList();
    }

    private static boolean isWithin(Route inner, Route outer, GearPools pools) {
        return inner.legs().stream()
                .filter(leg -> pools.isGear(leg.where()))
                .allMatch(leg -> outer.legs().stream()
                        .anyMatch(other -> pools.poolId(other.where()).equals(pools.poolId(leg.where()))
                                && other.fromS() <= leg.fromS()
                                && leg.toS() <= other.toS()));
    }
}
