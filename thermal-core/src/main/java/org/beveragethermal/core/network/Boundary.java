/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.Objects;

/**
 * A temperature imposed from outside as a function of time, such as the air of a room.
 *
 * <p>Two boundaries are the same only if they are the same object.
 */
public final class Boundary implements End {

    private final String name;
    private final TimeFunction temperatureK;

    private Boundary(String name, TimeFunction temperatureK) {
        this.name = Node.requireName(name);
        this.temperatureK = Objects.requireNonNull(temperatureK, "temperatureK");
    }

    /**
     * A boundary whose temperature never changes.
     *
     * @param name non-blank name
     * @param temperatureK temperature [K], finite, above 0
     * @return the boundary
     * @throws IllegalArgumentException if the name is blank or the temperature is not above absolute zero
     */
    public static Boundary constant(String name, double temperatureK) {
        Node.requireTemperature(name, temperatureK);
        return new Boundary(name, TimeFunction.constant(temperatureK));
    }

    /**
     * A boundary whose temperature varies.
     *
     * @param name non-blank name
     * @param temperatureK temperature [K] as a function of time
     * @return the boundary
     * @throws IllegalArgumentException if the name is blank
     */
    public static Boundary varying(String name, TimeFunction temperatureK) {
        return new Boundary(name, temperatureK);
    }

    @Override
    public String name() {
        return name;
    }

    /**
     * The imposed temperature.
     *
     * @return temperature [K] as a function of time [s]
     */
    public TimeFunction temperatureK() {
        return temperatureK;
    }

    @Override
    public String toString() {
        return "boundary " + name;
    }
}
