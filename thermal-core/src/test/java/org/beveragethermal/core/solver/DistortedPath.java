/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.List;
import java.util.SplittableRandom;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;

/**
 * A path that states the flows of another and derivatives that are wrong on purpose.
 *
 * @param path the path whose flows are right
 * @param scale factor on every derivative
 * @param spread each derivative is further multiplied by 1 ± this, at random but always the same
 * @param seed of the random factors
 */
record DistortedPath(Path path, double scale, double spread, long seed) implements Path {

    @Override
    public String name() {
        return path.name();
    }

    @Override
    public List<End> ends() {
        return path.ends();
    }

    @Override
    public List<Account> accounts() {
        return path.accounts();
    }

    @Override
    public List<String> multipliers() {
        return path.multipliers();
    }

    @Override
    public void evaluate(PathEvaluation e) {
        path.evaluate(e);
        if (!e.wantsDerivatives()) {
            return;
        }
        SplittableRandom random = new SplittableRandom(seed);
        for (int account = 0; account < accounts().size(); account++) {
            int amountInput = ends().size();
            for (int end = 0; end < ends().size(); end++) {
                e.flowByTemperature(account, end, e.derivativeOf(account, end) * factor(random));
                int amounts =
                        ends().get(end) instanceof Node node ? node.store().amountCount() : 0;
                for (int k = 0; k < amounts; k++) {
                    e.flowByAmount(account, end, k, e.derivativeOf(account, amountInput) * factor(random));
                    amountInput++;
                }
            }
        }
    }

    private double factor(SplittableRandom random) {
        return scale * (1 + spread * (2 * random.nextDouble() - 1));
    }
}
