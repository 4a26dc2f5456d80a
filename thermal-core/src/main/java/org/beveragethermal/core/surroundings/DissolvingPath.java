/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.store.BrineStore;
import org.beveragethermal.materials.liquid.Brine;

/**
 * Salt that dissolves in the brine in which it is stirred: ṁ = m_undissolved (1 − w/w_strongest)/τ, w_strongest being the
 * strongest brine that is described. The form is ours; it never takes more salt than there is. The heat of solution is the
 * brine's own.
 *
 * <p>Theory manual, equation (6.3).
 */
final class DissolvingPath implements Path {

    private static final double LEAST_BRINE_KG = 1e-9;

    private final String name;
    private final List<End> ends;
    private final List<Account> accounts;
    private final double timeS;

    DissolvingPath(String name, Node brine, double timeS) {
        this.name = name;
        this.ends = List.of(brine);
        this.accounts = List.of(Account.amount("dissolving", 0, BrineStore.UNDISSOLVED, 0, BrineStore.DISSOLVED));
        this.timeS = timeS;
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
    public void evaluate(PathEvaluation e) {
        double water = Math.max(LEAST_BRINE_KG, e.amount(0, BrineStore.WATER));
        double salt = e.amount(0, BrineStore.DISSOLVED);
        double crystals = e.amount(0, BrineStore.UNDISSOLVED);
        double brine = water + salt;
        double lack = 1 - salt / brine / Brine.EUTECTIC_MASS_FRACTION;
        e.flow(0, crystals * lack / timeS);
        if (!e.wantsDerivatives()) {
            return;
        }
        double perFraction = -crystals / (Brine.EUTECTIC_MASS_FRACTION * timeS);
        e.flowByTemperature(0, 0, 0);
        e.flowByAmount(0, 0, BrineStore.WATER, -perFraction * salt / (brine * brine));
        e.flowByAmount(0, 0, BrineStore.DISSOLVED, perFraction * water / (brine * brine));
        e.flowByAmount(0, 0, BrineStore.UNDISSOLVED, lack / timeS);
    }
}
