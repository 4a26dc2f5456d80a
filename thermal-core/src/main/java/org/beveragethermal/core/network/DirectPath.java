/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.List;

/**
 * One heat law between two ends.
 *
 * <p>Immutable and thread-safe if its law is.
 *
 * <p>Theory manual, equation (1.3).
 */
public final class DirectPath implements Path {

    private final String name;
    private final List<End> ends;
    private final List<Account> accounts;
    private final HeatLaw law;
    private final List<String> multipliers;

    private DirectPath(String name, End from, End to, String mechanism, HeatLaw law, List<String> multipliers) {
        this.name = Node.requireName(name);
        this.ends = List.of(from, to);
        this.accounts = List.of(Account.heat(mechanism, 0, 1));
        this.law = law;
        this.multipliers = multipliers;
    }

    /**
     * Joins two ends by a law.
     *
     * @param name non-blank name
     * @param from end on the law's giving side
     * @param to end on its taking side
     * @param mechanism ledger account
     * @param law heat as a function of the two temperatures
     * @return the path
     */
    public static DirectPath of(String name, End from, End to, String mechanism, HeatLaw law) {
        return new DirectPath(name, from, to, mechanism, law, List.of());
    }

    /**
     * The same path with its law scaled by a named multiplier.
     *
     * @param multiplier name of the factor
     * @return a new path
     */
    public DirectPath scaledBy(String multiplier) {
        return new DirectPath(name, ends.get(0), ends.get(1), accounts.get(0).mechanism(), law, List.of(multiplier));
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

    HeatLaw law() {
        return law;
    }

    End from() {
        return ends.get(0);
    }

    End to() {
        return ends.get(1);
    }

    @Override
    public void evaluate(PathEvaluation e) {
        HeatFlow flow = e.scratch(0);
        law.evaluate(e.temperatureK(0), e.temperatureK(1), flow);
        double factor = multipliers.isEmpty() ? 1 : e.multiplier(0);
        e.flow(0, factor * flow.watts);
        e.flowByTemperature(0, 0, factor * flow.perFromKelvin);
        e.flowByTemperature(0, 1, factor * flow.perToKelvin);
        if (!multipliers.isEmpty()) {
            e.flowByMultiplier(0, 0, flow.watts);
        }
    }
}
