/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.store.IceStore;

/**
 * Something that may happen in a run: one reading of one node (its temperature, an amount, its ice) comes to a threshold.
 *
 * <p>{@link Trajectory#first(RunEvent, double)} tells when it first holds. Immutable and thread-safe.
 *
 * <p>Theory manual, equation (7.5).
 */
public final class RunEvent {

    /** Ice in blocks counts as gone when a block's side has shrunk to this part of its first side. */
    public static final double ICE_GONE_PART = 1e-3;

    private enum Direction {
        RISING,
        FALLING,
        EITHER
    }

    /** What is read of a node's state. */
    @FunctionalInterface
    private interface Reading {

        double of(double enthalpyJ, double[] amounts);
    }

    private final String description;
    private final Node node;
    private final Reading reading;
    /** The one part of the node's state that decides, 0 for the enthalpy, 1 + k for amount k, or −1 if several do. */
    private final int component;

    private final double threshold;
    private final Direction direction;

    private RunEvent(
            String description, Node node, Reading reading, int component, double threshold, Direction direction) {
        if (!Double.isFinite(threshold)) {
            throw new IllegalArgumentException(description + ": expected a finite threshold");
        }
        this.description = description;
        this.node = node;
        this.reading = reading;
        this.component = component;
        this.threshold = threshold;
        this.direction = direction;
    }

    private static RunEvent temperature(Node node, double thresholdK, Direction direction, String verb) {
        Reading reading = (enthalpy, amounts) -> {
            StoreState out = new StoreState(amounts.length);
            node.store().evaluate(enthalpy, amounts, 0, out);
            return out.temperatureK;
        };
        return new RunEvent(
                node.name() + " " + verb + " " + thresholdK + " K",
                node,
                reading,
                node.store().amountCount() == 0 ? 0 : -1,
                thresholdK,
                direction);
    }

    /**
     * A node is at or above a temperature.
     *
     * @param node the node
     * @param temperatureK temperature [K], finite
     * @return the event
     * @throws IllegalArgumentException if the temperature is not finite
     */
    public static RunEvent temperatureRisesTo(Node node, double temperatureK) {
        return temperature(node, temperatureK, Direction.RISING, "rises to");
    }

    /**
     * A node is at or below a temperature.
     *
     * @param node the node
     * @param temperatureK temperature [K], finite
     * @return the event
     * @throws IllegalArgumentException if the temperature is not finite
     */
    public static RunEvent temperatureFallsTo(Node node, double temperatureK) {
        return temperature(node, temperatureK, Direction.FALLING, "falls to");
    }

    /**
     * A node passes a temperature, from above or from below.
     *
     * @param node the node
     * @param temperatureK temperature [K], finite
     * @return the event
     * @throws IllegalArgumentException if the temperature is not finite
     */
    public static RunEvent temperatureReaches(Node node, double temperatureK) {
        return temperature(node, temperatureK, Direction.EITHER, "reaches");
    }

    /**
     * An amount of a node is at or below a threshold.
     *
     * @param node the node
     * @param amount index of the amount
     * @param threshold the threshold, finite
     * @return the event
     * @throws IllegalArgumentException if the node has no such amount or the threshold is not finite
     */
    public static RunEvent amountFallsTo(Node node, int amount, double threshold) {
        return amount(node, amount, threshold, Direction.FALLING, "falls to");
    }

    /**
     * An amount of a node is at or above a threshold.
     *
     * @param node the node
     * @param amount index of the amount
     * @param threshold the threshold, finite
     * @return the event
     * @throws IllegalArgumentException if the node has no such amount or the threshold is not finite
     */
    public static RunEvent amountRisesTo(Node node, int amount, double threshold) {
        return amount(node, amount, threshold, Direction.RISING, "rises to");
    }

    private static RunEvent amount(Node node, int amount, double threshold, Direction direction, String verb) {
        if (amount < 0 || amount >= node.store().amountCount()) {
            throw new IllegalArgumentException("amount " + amount + " of " + node + ": it has "
                    + node.store().amountCount());
        }
        return new RunEvent(
                "amount " + amount + " of " + node.name() + " " + verb + " " + threshold,
                node,
                (enthalpy, amounts) -> amounts[amount],
                1 + amount,
                threshold,
                direction);
    }

    /**
     * The ice of a node is gone: blocks have melted down to {@value #ICE_GONE_PART} of their side, or a drink holds none.
     *
     * @param node a node with an {@link IceStore} or a {@link FreezingStore}
     * @return the event
     * @throws IllegalArgumentException if the node's store holds no ice
     */
    public static RunEvent iceGone(Node node) {
        if (node.store() instanceof IceStore) {
            return amountFallsTo(node, IceStore.SIDE, ICE_GONE_PART * node.amounts()[IceStore.SIDE]);
        }
        return temperature(node, freezing(node).freezingOnsetK(), Direction.RISING, "has no ice at");
    }

    /**
     * A drink is at or below the temperature at which ice begins to form.
     *
     * @param node a node with a {@link FreezingStore}
     * @return the event
     * @throws IllegalArgumentException if the node has another store
     */
    public static RunEvent freezingStarts(Node node) {
        return temperature(node, freezing(node).freezingOnsetK(), Direction.FALLING, "begins to freeze at");
    }

    /**
     * A part of a drink, or more, is ice.
     *
     * @param node a node with a {@link FreezingStore}
     * @param iceFraction mass of ice per mass of drink, above 0, at most 1
     * @return the event
     * @throws IllegalArgumentException if the node has another store or the fraction is outside its range
     */
    public static RunEvent iceRisesTo(Node node, double iceFraction) {
        if (!(iceFraction > 0 && iceFraction <= 1)) {
            throw new IllegalArgumentException("ice fraction " + iceFraction + ": expected above 0 and at most 1");
        }
        FreezingStore store = freezing(node);
        return new RunEvent(
                node.name() + " is ice by " + iceFraction,
                node,
                (enthalpy, amounts) -> store.iceFractionAtEnthalpy(enthalpy),
                0,
                iceFraction,
                Direction.RISING);
    }

    private static FreezingStore freezing(Node node) {
        if (node.store() instanceof FreezingStore store) {
            return store;
        }
        throw new IllegalArgumentException(
                node + ": expected one whose store holds ice that comes or goes, such as a FreezingStore");
    }

    /**
     * The node that is looked at.
     *
     * @return the node
     */
    public Node node() {
        return node;
    }

    /**
     * Where it happens.
     *
     * @return temperature [K], amount, or ice per mass
     */
    public double threshold() {
        return threshold;
    }

    int component() {
        return component;
    }

    double value(double enthalpyJ, double[] amounts) {
        return reading.of(enthalpyJ, amounts);
    }

    /** Not above 0 where the event holds; one that may come from either side holds on the side where it was not before. */
    double excess(double value) {
        return direction == Direction.RISING ? threshold - value : value - threshold;
    }

    boolean eitherWay() {
        return direction == Direction.EITHER;
    }

    @Override
    public String toString() {
        return description;
    }
}
