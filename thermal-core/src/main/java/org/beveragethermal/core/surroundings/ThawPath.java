/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.store.IceStore;

/**
 * Ice that has taken heat from anywhere and melts by what exceeds that of ice at 0 °C.
 *
 * <p>The surplus turns into melt water with a time constant of a fiftieth of a second, which is a device of ours: it keeps the
 * ice some thousandths of a kelvin above 0 °C and lets every path bring heat to one node. It decides nothing: a second instead
 * changes a bottle in 3 kg of ice by 4 mK in two hours, and the number of steps by 4 %. Melt water leaves at 0 °C, where its
 * enthalpy is zero. Ice below 0 °C does not melt.
 *
 * <p>Theory manual, equation (6.4).
 */
final class ThawPath implements Path {

    private static final int ICE = 0;
    private static final int WATER = 1;
    private static final int MELT = 0;
    private static final int SHRINKING = 1;

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double TIME_CONSTANT_S = 0.02;
    private static final double ICE_HEAT_CAPACITY = 2100;
    /** Width of the rounded corner at 0 °C [K]. */
    private static final double CORNER_K = 1e-3;
    /** Below this part of its first side a block fades out. */
    private static final double FADE_PART = 1e-4;

    private final String name;
    private final List<End> ends;
    private final List<Account> accounts;
    private final PileGeometry geometry;
    private final double density;
    private final double kgPerKelvinSecond;

    ThawPath(
            String name,
            Node ice,
            Node water,
            int waterAmount,
            PileGeometry geometry,
            double density,
            double latentHeatJPerKg) {
        this.name = name;
        this.ends = List.of(ice, water);
        this.accounts = List.of(
                Account.amount("melting", ICE, IceStore.MASS, WATER, waterAmount),
                Account.change("melting", ICE, IceStore.SIDE));
        this.geometry = geometry;
        this.density = density;
        this.kgPerKelvinSecond = geometry.iceKg() * ICE_HEAT_CAPACITY / (TIME_CONSTANT_S * latentHeatJPerKg);
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
        double surplus = e.temperatureK(ICE) - ZERO_CELSIUS_K;
        double side = Math.max(0, e.amount(ICE, IceStore.SIDE));
        double first = geometry.sideM();
        double fade = SmoothMath.fade(side / (FADE_PART * first));
        double fadeBySide = SmoothMath.fadeSlope(side / (FADE_PART * first)) / (FADE_PART * first);
        double drive = SmoothMath.rising(surplus, CORNER_K);
        double driveByIce = SmoothMath.risingSlope(surplus, CORNER_K);
        // Melt over side² stays finite to the end: the side falls by melt / (3 n ρ side²).
        double perSquare = kgPerKelvinSecond / (first * first);
        double rate = perSquare * fade * drive;
        double shrink = -rate / (3 * geometry.blocks() * density);
        e.flow(MELT, rate * side * side);
        e.flow(SHRINKING, shrink);
        if (!e.wantsDerivatives()) {
            return;
        }
        double rateByIce = perSquare * fade * driveByIce;
        double rateBySide = perSquare * fadeBySide * drive;
        e.flowByTemperature(MELT, ICE, rateByIce * side * side);
        e.flowByTemperature(SHRINKING, ICE, -rateByIce / (3 * geometry.blocks() * density));
        e.flowByAmount(MELT, ICE, IceStore.SIDE, rateBySide * side * side + 2 * rate * side);
        e.flowByAmount(SHRINKING, ICE, IceStore.SIDE, -rateBySide / (3 * geometry.blocks() * density));
    }
}
