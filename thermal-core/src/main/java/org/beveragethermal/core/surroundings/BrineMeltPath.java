/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.store.BrineStore;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.core.store.MeltingBlocks;
import org.beveragethermal.materials.solid.Ice;

/**
 * Ice blocks that melt in the brine around them by the balances of {@link BrineInterface}, or grow where the brine is colder
 * than its liquidus. Ice takes its enthalpy along into the brine.
 *
 * <p>Slopes are differences: they decide the length of steps, never a balance.
 *
 * <p>Theory manual, equation (6.3).
 */
final class BrineMeltPath implements Path {

    private static final int BRINE = 0;
    private static final int ICE = 1;
    private static final int INSIDE = 0;
    private static final int FUSION = 1;
    private static final int MELT = 2;
    private static final int SHRINKING = 3;

    private static final double ZERO_CELSIUS_K = 273.15;
    /** Colder than any ice that a bath begins with; keeps trial steps inside the range of the property. */
    private static final double COLDEST_ICE_K = 223.15;
    /** Laminar free convection: the coefficient grows as side^(−1/4) while a block shrinks, the area falls as side². */
    private static final double AREA_EXPONENT = 1.75;
    /** Below this part of its first side a block fades out. */
    private static final double FADE_PART = 1e-3;

    private static final double STEP_K = 1e-4;
    private static final double STEP_FRACTION = 1e-6;
    private static final double STEP_PART = 1e-6;
    private static final double LEAST_BRINE_KG = 1e-9;
    /** Below this a conductance is read from the slope of its law [K]. */
    private static final double SMALL_DIFFERENCE_K = 1e-6;

    private final String name;
    private final List<End> ends;
    private final List<Account> accounts;
    private final PileGeometry geometry;
    private final SmoothFunction wetPart;
    private final HeatLaw firstFilm;
    private final BrineStore store;
    private final BrineInterface surface = new BrineInterface();
    private final double density = Ice.density(ZERO_CELSIUS_K);
    private final double conductivity = Ice.thermalConductivity(ZERO_CELSIUS_K);
    private final double meltingEnthalpy = Ice.specificEnthalpy(ZERO_CELSIUS_K);

    /** A path; the film is that of all blocks at their first side. */
    BrineMeltPath(String name, Node brine, Node ice, PileGeometry geometry, HeatLaw firstFilm, BrineStore store) {
        this.name = name;
        this.ends = List.of(brine, ice);
        this.accounts = List.of(
                Account.heat("warming of ice", BRINE, ICE),
                Account.heat("melting", BRINE, ICE),
                Account.amount("melting", ICE, IceStore.MASS, BRINE, BrineStore.WATER),
                Account.change("melting", ICE, IceStore.SIDE));
        this.geometry = geometry;
        this.wetPart = geometry.wetPart();
        this.firstFilm = firstFilm;
        this.store = store;
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
        double water = Math.max(LEAST_BRINE_KG, e.amount(BRINE, BrineStore.WATER));
        double salt = e.amount(BRINE, BrineStore.DISSOLVED);
        double w = salt / (water + salt);
        double brineK = e.temperatureK(BRINE);
        double iceK = e.temperatureK(ICE);
        double side = e.amount(ICE, IceStore.SIDE);
        double factor = e.multiplier(0);
        double[] flows = flows(brineK, w, iceK, side, factor);
        for (int account = 0; account < flows.length; account++) {
            e.flow(account, flows[account]);
        }
        if (!e.wantsDerivatives()) {
            return;
        }
        double sideStep = STEP_PART * geometry.sideM();
        double[] byBrine = slope(
                flows(brineK + STEP_K, w, iceK, side, factor), flows(brineK - STEP_K, w, iceK, side, factor), STEP_K);
        double[] byIce = slope(
                flows(brineK, w, iceK + STEP_K, side, factor), flows(brineK, w, iceK - STEP_K, side, factor), STEP_K);
        double[] byFraction = slope(
                flows(brineK, w + STEP_FRACTION, iceK, side, factor),
                flows(brineK, w - STEP_FRACTION, iceK, side, factor),
                STEP_FRACTION);
        double[] bySide = slope(
                flows(brineK, w, iceK, side + sideStep, factor),
                flows(brineK, w, iceK, side - sideStep, factor),
                sideStep);
        double[] byFactor = slope(
                flows(brineK, w, iceK, side, factor + STEP_FRACTION),
                flows(brineK, w, iceK, side, factor - STEP_FRACTION),
                STEP_FRACTION);
        double brine = water + salt;
        for (int account = 0; account < flows.length; account++) {
            e.flowByTemperature(account, BRINE, byBrine[account]);
            e.flowByTemperature(account, ICE, byIce[account]);
            e.flowByAmount(account, BRINE, BrineStore.WATER, -w / brine * byFraction[account]);
            e.flowByAmount(account, BRINE, BrineStore.DISSOLVED, (1 - w) / brine * byFraction[account]);
            e.flowByAmount(account, ICE, IceStore.SIDE, bySide[account]);
            e.flowByMultiplier(account, 0, byFactor[account]);
        }
    }

    private static double[] slope(double[] above, double[] below, double step) {
        double[] slope = new double[above.length];
        for (int i = 0; i < slope.length; i++) {
            slope[i] = (above[i] - below[i]) / (2 * step);
        }
        return slope;
    }

    private double[] flows(double brineK, double fraction, double iceK, double side, double factor) {
        double left = Math.max(0, side / geometry.sideM());
        double fade = SmoothMath.fade(left / FADE_PART);
        double wet = wetPart.at(side) * fade;
        double scale = factor * Math.pow(left, AREA_EXPONENT) * wet;
        double inside = MeltingBlocks.innerConductance(geometry.blocks(), Math.max(0, side), conductivity) * wet;
        double iceEnthalpy =
                iceK < ZERO_CELSIUS_K ? Ice.specificEnthalpy(Math.max(COLDEST_ICE_K, iceK)) : meltingEnthalpy;
        double[] flows = new double[accounts.size()];
        if (!(scale > 0)) {
            return flows;
        }
        HeatFlow law = new HeatFlow();
        BrineInterface.Flows solved = surface.solve(
                brineK,
                fraction,
                store.specificHeatCapacity(Math.max(0, fraction), brineK),
                iceK,
                iceEnthalpy,
                inside,
                (from, to) -> scale * conductance(from, to, law));
        flows[INSIDE] = solved.insideW();
        flows[FUSION] = -solved.melt() * iceEnthalpy;
        flows[MELT] = solved.melt();
        flows[SHRINKING] = -solved.melt() / (3 * geometry.blocks() * density * side * side);
        return flows;
    }

    private double conductance(double fromK, double toK, HeatFlow law) {
        firstFilm.evaluate(fromK, toK, law);
        double difference = fromK - toK;
        return Math.abs(difference) > SMALL_DIFFERENCE_K ? law.watts / difference : law.perFromKelvin;
    }
}
