/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import java.util.List;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;

/**
 * Blocks of ice melting in a well-mixed bath, whose mass grows by the melt water.
 *
 * <p>Immutable and thread-safe if its film is.
 *
 * <p>Theory manual, equation (6.1).
 */
public final class MeltingPath implements Path {

    private static final int BATH = 0;
    private static final int ICE = 1;

    private final String name;
    private final List<End> ends;
    private final List<Account> accounts;
    private final MeltingBlocks law;
    private final List<String> multipliers;

    private MeltingPath(String name, Node bath, Node ice, MeltingBlocks law, String multiplier) {
        this.name = name;
        this.ends = List.of(bath, ice);
        this.accounts = List.of(
                Account.heat("melting", BATH, ICE),
                Account.amount("melting", ICE, IceStore.MASS, BATH, 0),
                Account.change("melting", ICE, IceStore.SIDE));
        this.law = law;
        this.multipliers = List.of(multiplier);
    }

    /**
     * Joins a bath and ice.
     *
     * @param name name of the path
     * @param bath a node whose first amount is its mass [kg]
     * @param ice a node with an {@link IceStore}
     * @param law how the blocks melt
     * @param multiplier name of the factor on the film
     * @return the path
     * @throws IllegalArgumentException if a node has not the amounts it needs
     */
    public static MeltingPath of(String name, Node bath, Node ice, MeltingBlocks law, String multiplier) {
        if (bath.store().amountCount() < 1 || !(ice.store() instanceof IceStore)) {
            throw new IllegalArgumentException(
                    "melting " + name + ": expected a bath whose mass is an amount, and a node that stores ice");
        }
        return new MeltingPath(name, bath, ice, law, multiplier);
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
    public void evaluate(PathEvaluation e) {
        MeltingBlocks.Melting m = new MeltingBlocks.Melting();
        law.evaluate(
                e.temperatureK(BATH),
                e.temperatureK(ICE),
                e.amount(ICE, IceStore.MASS),
                e.amount(ICE, IceStore.SIDE),
                e.multiplier(0),
                e.scratch(0),
                m);
        m.tell(e, 0, BATH, ICE);
    }
}
