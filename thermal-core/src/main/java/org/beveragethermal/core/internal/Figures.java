/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects named figures in the order in which they are told. Confined to one thread. */
public final class Figures {

    private final Map<String, List<Double>> values = new LinkedHashMap<>();

    private Figures() {}

    /**
     * Begins with a figure.
     *
     * @param name its name, ending in its unit
     * @param value its value
     * @return the collection
     */
    public static Figures with(String name, double value) {
        return new Figures().and(name, value);
    }

    /**
     * Adds a figure.
     *
     * @param name its name, ending in its unit
     * @param value its value
     * @return this collection
     */
    public Figures and(String name, double value) {
        values.put(name, List.of(value));
        return this;
    }

    /**
     * The figures.
     *
     * @return values by name in the order in which they were added, a copy
     */
    public Map<String, List<Double>> map() {
        return new LinkedHashMap<>(values);
    }
}
