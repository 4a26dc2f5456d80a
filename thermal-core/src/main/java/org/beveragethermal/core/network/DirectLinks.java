/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The {@link DirectPath}s of a network in flat arrays: link k carries heat from slot {@code from[k]} to slot {@code to[k]}, where slots
 * are the nodes and after them the boundaries.
 *
 * <p>The first {@link #constant} links are those of a constant conductance between ends of constant heat capacity or given temperature:
 * their part of the Jacobian never changes. Paths at nodes with amounts are left to their own {@link Path#evaluate}.
 */
final class DirectLinks {

    final int count;
    final int constant;
    /** Index in {@link Network#paths}. */
    final int[] path;

    final int[] account;
    final int[] from;
    final int[] to;
    /** Row of the state, −1 for a boundary. */
    final int[] fromRow;

    final int[] toRow;
    final HeatLaw[] law;
    private final List<DirectPath> paths;

    /** What a run knows of each link. */
    static final class Values {
        final double[] factor;
        /** Flow without the factor [W]; of constant conductances not kept. */
        final double[] watts;
        /** Slopes of the flow [W/K]; of constant conductances never written again. */
        final double[] perFrom;

        final double[] perTo;
        /** Slopes of the flow in the enthalpies of its ends [W/J], 0 for a boundary, as long as the derivatives hold. */
        final double[] byFrom;

        final double[] byTo;
        final HeatFlow flow = new HeatFlow();

        private Values(int count) {
            factor = new double[count];
            watts = new double[count];
            perFrom = new double[count];
            perTo = new double[count];
            byFrom = new double[count];
            byTo = new double[count];
        }
    }

    private DirectLinks(List<DirectPath> paths, int constant) {
        this.paths = paths;
        this.count = paths.size();
        this.constant = constant;
        path = new int[count];
        account = new int[count];
        from = new int[count];
        to = new int[count];
        fromRow = new int[count];
        toRow = new int[count];
        law = new HeatLaw[count];
    }

    /** Picks out the paths that can be laid out flat, those of constant conductance first. */
    static DirectLinks of(List<Path> all) {
        List<DirectPath> constants = new ArrayList<>();
        List<DirectPath> others = new ArrayList<>();
        for (Path one : all) {
            if (one instanceof DirectPath direct && hasNoAmounts(direct)) {
                boolean constant = direct.law() instanceof ConstantConductance && hasConstantCapacities(direct);
                (constant ? constants : others).add(direct);
            }
        }
        int constant = constants.size();
        constants.addAll(others);
        return new DirectLinks(constants, constant);
    }

    private static boolean hasNoAmounts(DirectPath path) {
        return !(path.from() instanceof Node from && from.store().amountCount() > 0)
                && !(path.to() instanceof Node to && to.store().amountCount() > 0);
    }

    private static boolean hasConstantCapacities(DirectPath path) {
        return !(path.from() instanceof Node from && !(from.store() instanceof SensibleStore))
                && !(path.to() instanceof Node to && !(to.store() instanceof SensibleStore));
    }

    DirectPath path(int link) {
        return paths.get(link);
    }

    /** Says where a link stands. */
    void place(int link, int pathIndex, int accountIndex, int fromSlot, int toSlot, int fromState, int toState) {
        path[link] = pathIndex;
        account[link] = accountIndex;
        from[link] = fromSlot;
        to[link] = toSlot;
        fromRow[link] = fromState;
        toRow[link] = toState;
        law[link] = paths.get(link).law();
    }

    /** For a run with these multipliers and slopes of the temperatures of constant heat capacities [K/J]. */
    Values newValues(Map<String, Double> multipliers, double[] slope) {
        Values values = new Values(count);
        for (int k = 0; k < count; k++) {
            List<String> names = paths.get(k).multipliers();
            values.factor[k] = names.isEmpty() ? 1 : multipliers.getOrDefault(names.get(0), 1.0);
            if (k < constant && law[k] instanceof ConstantConductance conductance) {
                values.perFrom[k] = values.factor[k] * conductance.wattsPerKelvin();
                values.perTo[k] = -values.perFrom[k];
                values.byFrom[k] = values.perFrom[k] * slope[from[k]];
                values.byTo[k] = values.perTo[k] * slope[to[k]];
            }
        }
        return values;
    }

    /** Flows of the constant conductances. */
    void flows(Values values, double[] temperatureK, double[] flows) {
        double[] conductance = values.perFrom;
        for (int k = 0; k < constant; k++) {
            flows[account[k]] = conductance[k] * (temperatureK[from[k]] - temperatureK[to[k]]);
        }
    }

    /** Flow of a link that is not constant; its slopes are kept only if those of the temperatures [K/J] are given. */
    double evaluate(int k, Values values, double[] temperatureK, double @Nullable [] slope) {
        HeatFlow flow = values.flow;
        law[k].evaluate(temperatureK[from[k]], temperatureK[to[k]], flow);
        double factor = values.factor[k];
        values.watts[k] = flow.watts;
        if (slope != null) {
            values.perFrom[k] = factor * flow.perFromKelvin;
            values.perTo[k] = factor * flow.perToKelvin;
            values.byFrom[k] = values.perFrom[k] * slope[from[k]];
            values.byTo[k] = values.perTo[k] * slope[to[k]];
        }
        return factor * flow.watts;
    }

    /** Adds what the links that are not constant do to the rates. */
    void addVaryingRates(double[] flows, double[] rates) {
        for (int k = constant; k < count; k++) {
            double watts = flows[account[k]];
            if (fromRow[k] >= 0) {
                rates[fromRow[k]] -= watts;
            }
            if (toRow[k] >= 0) {
                rates[toRow[k]] += watts;
            }
        }
    }

    /** Flow of a link without its factor [W]. */
    double wattsWithoutFactor(int k, Values values, double[] temperatureK) {
        return law[k] instanceof ConstantConductance conductance && k < constant
                ? conductance.wattsPerKelvin() * (temperatureK[from[k]] - temperatureK[to[k]])
                : values.watts[k];
    }

    /** Whether a link is scaled by a multiplier. */
    boolean isScaledBy(int k, @Nullable String multiplier) {
        List<String> names = paths.get(k).multipliers();
        return !names.isEmpty() && names.get(0).equals(multiplier);
    }
}
