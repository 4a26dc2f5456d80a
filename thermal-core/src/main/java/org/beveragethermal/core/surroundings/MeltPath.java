/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.Account.Entry;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.core.store.MeltingBlocks;
import org.beveragethermal.core.store.MeltingBlocks.Melting;

/**
 * Ice blocks melting in the water of their pack.
 *
 * <p>How the blocks melt says {@link MeltingBlocks}. Melt water joins the pack water at 0 °C, where its enthalpy is zero.
 *
 * <p>The shrinking pack hands the water of its gaps, and the melt water, down to the clear water. Water colder than the
 * density maximum is lighter than the clear water and stays under the ice until it has been warmed; so what goes down goes at
 * the densest temperature between the two. This rule is ours.
 */
final class MeltPath implements Path {

    private static final int PACK = 0;
    private static final int ICE = 1;
    private static final int CLEAR = 2;
    private static final int HEAT = 0;
    private static final int MELT = 1;
    private static final int FLOW = 3;
    private static final int FLOW_HEAT = 4;

    private final String name;
    private final List<End> ends;
    private final List<Account> accounts;
    private final MeltingBlocks law;
    private final PackWater packWater;
    private final SmoothFunction waterEnthalpy;
    private final double densestK;

    MeltPath(
            String name,
            Node pack,
            Node ice,
            Node clear,
            MeltingBlocks law,
            PackWater packWater,
            SmoothFunction waterEnthalpy,
            double densestK) {
        this.name = name;
        this.ends = List.of(pack, ice, clear);
        this.accounts = List.of(
                Account.heat("melting", PACK, ICE),
                Account.amount("melting", ICE, IceStore.MASS, PACK, 0),
                Account.change("melting", ICE, IceStore.SIDE),
                new Account("flow", false, List.of(new Entry(PACK, 0, -1), new Entry(CLEAR, 0, 1))),
                Account.heat("flow", PACK, CLEAR));
        this.law = law;
        this.packWater = packWater;
        this.waterEnthalpy = waterEnthalpy;
        this.densestK = densestK;
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
        return List.of(Multipliers.ICE_FILM);
    }

    @Override
    public void evaluate(PathEvaluation e) {
        double packK = e.temperatureK(PACK);
        double clearK = e.temperatureK(CLEAR);
        double mass = e.amount(ICE, IceStore.MASS);
        Melting m = new Melting();
        double blocks = e.amount(ICE, IceStore.BLOCKS);
        law.evaluate(
                packK,
                e.temperatureK(ICE),
                mass,
                e.amount(ICE, IceStore.SIDE),
                blocks,
                e.multiplier(0),
                e.scratch(0),
                m);
        double down = 1 + packWater.slope(mass);
        double flow = down * m.melt;
        double densest = Math.min(Math.max(densestK, Math.min(packK, clearK)), Math.max(packK, clearK));
        double sourceK = flow >= 0 ? densest : clearK;
        double h = waterEnthalpy.at(sourceK);
        m.tell(e, HEAT, PACK, ICE);
        e.flow(FLOW, flow);
        e.flow(FLOW_HEAT, flow * h);
        if (!e.wantsDerivatives()) {
            return;
        }
        e.flowByAmount(HEAT, ICE, IceStore.BLOCKS, m.heatByBlocks);
        e.flowByAmount(MELT, ICE, IceStore.BLOCKS, m.meltByBlocks);
        double flowByMass = down * m.meltByMass + packWater.curvature(mass) * m.melt;
        state(
                e,
                FLOW,
                down * m.meltByWater,
                down * m.meltByIce,
                flowByMass,
                down * m.meltBySide,
                down * m.meltByBlocks,
                down * m.meltByFactor);
        state(
                e,
                FLOW_HEAT,
                h * down * m.meltByWater,
                h * down * m.meltByIce,
                h * flowByMass,
                h * down * m.meltBySide,
                h * down * m.meltByBlocks,
                h * down * m.meltByFactor);
        double byTemperature = flow * waterEnthalpy.slope(sourceK);
        if (sourceK == packK) {
            e.flowByTemperature(FLOW_HEAT, PACK, h * down * m.meltByWater + byTemperature);
        } else if (sourceK == clearK) {
            e.flowByTemperature(FLOW_HEAT, CLEAR, byTemperature);
        }
    }

    private static void state(
            PathEvaluation e,
            int account,
            double byPack,
            double byIce,
            double byMass,
            double bySide,
            double byBlocks,
            double byFactor) {
        e.flowByTemperature(account, PACK, byPack);
        e.flowByTemperature(account, ICE, byIce);
        e.flowByTemperature(account, CLEAR, 0);
        e.flowByAmount(account, ICE, IceStore.MASS, byMass);
        e.flowByAmount(account, ICE, IceStore.SIDE, bySide);
        e.flowByAmount(account, ICE, IceStore.BLOCKS, byBlocks);
        e.flowByMultiplier(account, 0, byFactor);
    }
}
