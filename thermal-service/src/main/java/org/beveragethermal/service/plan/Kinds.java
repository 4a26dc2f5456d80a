/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Kinds of bottles: those that differ in temperature only, and those whose drinks are so much alike that one goes the way of the other a
 * little faster or slower. Which of them stands for the others does not depend on their order.
 */
final class Kinds {

    /** Temperature at which bottles are compared. */
    private static final double COMPARED_K = 293.15;
    /** Drinks whose heat capacities differ by no more than this part go the same way at another pace. */
    private static final double SAME_CAPACITY = 0.1;
    /** Films inside go with the fourth root of viscosity, so that this part comes to less than 4 %. */
    private static final double SAME_VISCOSITY = 0.15;
    /** Drinks that freeze further apart than this are not compared, as one is ice where the other is not [K]. */
    private static final double SAME_FREEZING_K = 1.5;

    private final Map<FilledVessel, Kind> kinds = new HashMap<>();

    /**
     * A kind of bottle.
     *
     * @param number number of the model
     * @param model the bottle that is predicted
     * @param pace how much faster than the model it goes, near 1
     */
    record Kind(int number, FilledVessel model, double pace) {}

    Kinds(List<BottleOrder> orders) {
        List<FilledVessel> models = new ArrayList<>();
        orders.stream()
                .flatMap(order -> Stream.concat(Stream.of(order.bottle()), order.carafe().stream()))
                .map(Kinds::compared)
                .distinct()
                .sorted(Comparator.comparingDouble(Kinds::capacity).thenComparing(FilledVessel::toString))
                .forEach(bottle -> {
                    int number = 0;
                    while (number < models.size() && !goTheSameWay(models.get(number), bottle)) {
                        number++;
                    }
                    if (number == models.size()) {
                        models.add(bottle);
                    }
                    FilledVessel model = models.get(number);
                    kinds.put(bottle, new Kind(number, model, capacity(model) / capacity(bottle)));
                });
    }

    /** The kind of a bottle of the request, or of what it is decanted into. */
    Kind of(FilledVessel bottle) {
        return Objects.requireNonNull(kinds.get(compared(bottle)));
    }

    private static FilledVessel compared(FilledVessel bottle) {
        return Strand.at(bottle, COMPARED_K).orElse(bottle);
    }

    private static boolean goTheSameWay(FilledVessel one, FilledVessel other) {
        return one.vessel().equals(other.vessel())
                && differ(capacity(one), capacity(other)) < SAME_CAPACITY
                && differ(viscosity(one), viscosity(other)) < SAME_VISCOSITY
                && Math.abs(Danger.freezingK(one) - Danger.freezingK(other)) < SAME_FREEZING_K;
    }

    private static double differ(double one, double other) {
        return Math.abs(one - other) / Math.min(one, other);
    }

    private static double capacity(FilledVessel bottle) {
        return bottle.liquidMassKg() * bottle.liquid().specificHeatCapacity(bottle.temperatureK());
    }

    private static double viscosity(FilledVessel bottle) {
        return bottle.liquid().dynamicViscosity(bottle.temperatureK());
    }
}
