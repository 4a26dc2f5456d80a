/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Heat that time alone decides, such as sunlight that is taken up inside a body, from one end to another.
 *
 * <p>Immutable and thread-safe if its function of time is.
 */
public final class GivenHeat implements Path {

    private final String name;
    private final List<End> ends;
    private final List<Account> accounts;
    private final TimeFunction watts;
    private final List<String> multipliers;
    private final @Nullable AmountWeight weight;
    /** Index of the end whose amount weighs the heat, −1 without one. */
    private final int weightEnd;

    private GivenHeat(
            String name,
            List<End> ends,
            List<Account> accounts,
            TimeFunction watts,
            List<String> multipliers,
            @Nullable AmountWeight weight) {
        this.name = Node.requireName(name);
        this.accounts = accounts;
        this.watts = Objects.requireNonNull(watts, "watts");
        this.multipliers = multipliers;
        this.weight = weight;
        if (weight == null) {
            this.weightEnd = -1;
            this.ends = List.copyOf(ends);
        } else {
            List<End> all = new ArrayList<>(ends);
            int known = ends.indexOf(weight.node());
            if (known < 0) {
                all.add(weight.node());
            }
            this.weightEnd = known < 0 ? all.size() - 1 : known;
            this.ends = List.copyOf(all);
        }
    }

    /**
     * Heat from one end to another.
     *
     * @param name non-blank name
     * @param from who gives it in the ledger
     * @param to who receives it
     * @param mechanism ledger account
     * @param watts heat as a function of time [W], of either sign
     * @return the path
     * @throws IllegalArgumentException if the name is blank
     */
    public static GivenHeat of(String name, End from, End to, String mechanism, TimeFunction watts) {
        return new GivenHeat(name, List.of(from, to), List.of(Account.heat(mechanism, 0, 1)), watts, List.of(), null);
    }

    /**
     * The same path with its heat scaled by a named multiplier.
     *
     * @param multiplier name of the factor
     * @return a new path
     */
    public GivenHeat scaledBy(String multiplier) {
        return new GivenHeat(name, ends.subList(0, 2), accounts, watts, List.of(multiplier), weight);
    }

    /**
     * The same path with a factor that depends on an amount.
     *
     * @param newWeight the factor
     * @return a new path
     */
    public GivenHeat weightedBy(AmountWeight newWeight) {
        return new GivenHeat(name, ends.subList(0, 2), accounts, watts, multipliers, newWeight);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<End> ends() {
        return ends;
    }

    @Override
    public List<Account> accounts() {
        return accounts;
    }

    @Override
    public List<String> multipliers() {
        return multipliers;
    }

    @Override
    public double[] knots() {
        return watts.knots();
    }

    @Override
    public void evaluate(PathEvaluation e) {
        AmountWeight by = weight;
        double multiplier = multipliers.isEmpty() ? 1 : e.multiplier(0);
        double factor = by == null ? 1 : by.factor().at(e.amount(weightEnd, by.amount()));
        double given = watts.at(e.timeS());
        e.flow(0, multiplier * factor * given);
        e.flowByTime(0, multiplier * factor * watts.rate(e.timeS()));
        if (!multipliers.isEmpty()) {
            e.flowByMultiplier(0, 0, factor * given);
        }
        if (by != null) {
            double slope = by.factor().slope(e.amount(weightEnd, by.amount()));
            e.flowByAmount(0, weightEnd, by.amount(), multiplier * slope * given);
        }
    }
}
