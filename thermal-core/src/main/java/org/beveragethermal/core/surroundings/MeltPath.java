/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.Account.Entry;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.store.IceStore;

/**
 * Ice blocks melting in the water of their pack.
 *
 * <p>The surface of a block is at 0 °C. Heat arrives from the pack water through a film; the cold inside of the block takes
 * a part; the rest melts ice: ṁ = (q − G (0 °C − T_ice)) / L. Melt water joins the pack water at 0 °C, where its enthalpy is
 * zero. The side of a block shrinks as its mass does, so that the moment the ice is gone is a simple zero.
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
    private static final int SHRINK = 2;
    private static final int FLOW = 3;
    private static final int FLOW_HEAT = 4;

    private static final double ZERO_CELSIUS_K = 273.15;
    /** Below this part of its first side a block fades out. */
    private static final double FADE_PART = 1e-3;
    /** Laminar free convection: the coefficient grows as side^(−1/4) while a block shrinks, the area falls as side². */
    private static final double AREA_EXPONENT = 1.75;
    /** Slowest mode of a cube whose faces are held at one temperature: 3 (π/side)² k side³ = 3 π² k side. */
    private static final double INNER_CONDUCTION = 3 * Math.PI * Math.PI;

    private final String name;
    private final List<End> ends;
    private final List<Account> accounts;
    private final HeatLaw filmPerArea;
    private final SmoothFunction wetPart;
    private final PackWater packWater;
    private final SmoothFunction waterEnthalpy;
    private final double densestK;
    private final double blocks;
    private final double firstSideM;
    private final double wettedFraction;
    private final double iceDensity;
    private final double iceConductivity;
    private final double latentHeat;

    /** What the path needs to know of the ice. */
    record IceProperties(
            double blocks,
            double firstSideM,
            double wettedFraction,
            double density,
            double conductivity,
            double latentHeat) {}

    MeltPath(
            String name,
            Node pack,
            Node ice,
            Node clear,
            HeatLaw filmPerArea,
            SmoothFunction wetPart,
            PackWater packWater,
            SmoothFunction waterEnthalpy,
            double densestK,
            IceProperties properties) {
        this.name = name;
        this.ends = List.of(pack, ice, clear);
        this.accounts = List.of(
                Account.heat("melting", PACK, ICE),
                Account.amount("melting", ICE, IceStore.MASS, PACK, 0),
                Account.change("melting", ICE, IceStore.SIDE),
                new Account("flow", false, List.of(new Entry(PACK, 0, -1), new Entry(CLEAR, 0, 1))),
                Account.heat("flow", PACK, CLEAR));
        this.filmPerArea = filmPerArea;
        this.wetPart = wetPart;
        this.packWater = packWater;
        this.waterEnthalpy = waterEnthalpy;
        this.densestK = densestK;
        this.blocks = properties.blocks();
        this.firstSideM = properties.firstSideM();
        this.wettedFraction = properties.wettedFraction();
        this.iceDensity = properties.density();
        this.iceConductivity = properties.conductivity();
        this.latentHeat = properties.latentHeat();
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
        double mass = e.amount(ICE, IceStore.MASS);
        double side = Math.max(e.amount(ICE, IceStore.SIDE), 0);
        double fadeWidth = FADE_PART * firstSideM;
        double fade = SmoothMath.fade(side / fadeWidth);
        double fadeBySide = SmoothMath.fadeSlope(side / fadeWidth) / fadeWidth;
        double fullArea =
                6 * blocks * wettedFraction * Math.pow(firstSideM, 2 - AREA_EXPONENT) * Math.pow(side, AREA_EXPONENT);
        double area = fullArea * fade;
        double areaBySide = fullArea * fadeBySide + (side > 0 ? AREA_EXPONENT * area / side : 0);
        double wet = wetPart.at(mass);
        HeatFlow film = e.scratch(0);
        filmPerArea.evaluate(packK, ZERO_CELSIUS_K, film);
        double factor = e.multiplier(0);
        double q = factor * film.watts * area * wet;
        double conductance = INNER_CONDUCTION * iceConductivity * blocks * side * fade;
        double conductanceBySide = INNER_CONDUCTION * iceConductivity * blocks * (fade + side * fadeBySide);
        double cold = ZERO_CELSIUS_K - e.temperatureK(ICE);
        double melt = (q - conductance * cold) / latentHeat;
        double shrinkPerMelt = side > 0 ? -1 / (3 * blocks * iceDensity * side * side) : 0;
        double down = 1 + packWater.slope(mass);
        double flow = down * melt;
        double clearK = e.temperatureK(CLEAR);
        double densest = Math.min(Math.max(densestK, Math.min(packK, clearK)), Math.max(packK, clearK));
        double sourceK = flow >= 0 ? densest : clearK;
        double h = waterEnthalpy.at(sourceK);
        e.flow(HEAT, q);
        e.flow(MELT, melt);
        e.flow(SHRINK, shrinkPerMelt * melt);
        e.flow(FLOW, flow);
        e.flow(FLOW_HEAT, flow * h);
        if (!e.wantsDerivatives()) {
            return;
        }
        double qByPack = factor * film.perFromKelvin * area * wet;
        double qByMass = factor * film.watts * area * wetPart.slope(mass);
        double qBySide = factor * film.watts * areaBySide * wet;
        double qByFactor = film.watts * area * wet;
        double meltByIce = conductance / latentHeat;
        double meltBySide = (qBySide - conductanceBySide * cold) / latentHeat;
        state(e, HEAT, qByPack, 0, qByMass, qBySide, qByFactor);
        state(e, MELT, qByPack / latentHeat, meltByIce, qByMass / latentHeat, meltBySide, qByFactor / latentHeat);
        state(
                e,
                SHRINK,
                shrinkPerMelt * qByPack / latentHeat,
                shrinkPerMelt * meltByIce,
                shrinkPerMelt * qByMass / latentHeat,
                shrinkPerMelt * meltBySide - (side > 0 ? 2 * shrinkPerMelt * melt / side : 0),
                shrinkPerMelt * qByFactor / latentHeat);
        double flowByMass = down * qByMass / latentHeat + packWater.curvature(mass) * melt;
        state(
                e,
                FLOW,
                down * qByPack / latentHeat,
                down * meltByIce,
                flowByMass,
                down * meltBySide,
                down * qByFactor / latentHeat);
        state(
                e,
                FLOW_HEAT,
                h * down * qByPack / latentHeat,
                h * down * meltByIce,
                h * flowByMass,
                h * down * meltBySide,
                h * down * qByFactor / latentHeat);
        double byTemperature = flow * waterEnthalpy.slope(sourceK);
        if (sourceK == packK) {
            e.flowByTemperature(FLOW_HEAT, PACK, h * down * qByPack / latentHeat + byTemperature);
        } else if (sourceK == clearK) {
            e.flowByTemperature(FLOW_HEAT, CLEAR, byTemperature);
        }
    }

    private static void state(
            PathEvaluation e, int account, double byPack, double byIce, double byMass, double bySide, double byFactor) {
        e.flowByTemperature(account, PACK, byPack);
        e.flowByTemperature(account, ICE, byIce);
        e.flowByTemperature(account, CLEAR, 0);
        e.flowByAmount(account, ICE, IceStore.MASS, byMass);
        e.flowByAmount(account, ICE, IceStore.SIDE, bySide);
        e.flowByMultiplier(account, 0, byFactor);
    }
}
