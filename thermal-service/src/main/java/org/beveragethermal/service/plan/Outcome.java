/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What the coupled run shows of one bottle.
 *
 * @param poursK mean temperature at each pour [K]
 * @param coldestK coldest mean temperature while it is drunk [K]
 * @param warmestK warmest mean temperature while it is drunk [K]
 * @param leavesS when it is first out of range while it counts [s]; empty if never
 */
record Outcome(List<Double> poursK, double coldestK, double warmestK, OptionalDouble leavesS) {

    /** A mean temperature this far outside its range still counts as in it [K]: less than a thermometer shows. */
    static final double TOLERANCE_K = 0.05;

    static boolean inRange(BottleOrder order, double kelvins) {
        return order.target().marginK(kelvins) >= -TOLERANCE_K;
    }

    boolean isInRange() {
        return leavesS.isEmpty();
    }

    /** Distance of the pour that is nearest to an end of the range, negative outside [K]. */
    double marginK(BottleOrder order) {
        return poursK.stream().mapToDouble(order.target()::marginK).min().orElseThrow();
    }

    /** How many pours are out of range. */
    long outside(BottleOrder order) {
        return poursK.stream().filter(kelvins -> !inRange(order, kelvins)).count();
    }

    Verdict verdict(BottleOrder order, boolean repaired) {
        if (!inRange(order, poursK.get(0))) {
            return Verdict.NOT_REACHED;
        }
        if (!isInRange()) {
            return Verdict.LEAVES_RANGE;
        }
        return repaired ? Verdict.REPAIRED : Verdict.VERIFIED;
    }
}
