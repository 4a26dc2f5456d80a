/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.icemaking;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.HeatTransferCoefficient;
import org.beveragethermal.materials.units.SiValues;

/**
 * How long water in a mould takes to freeze.
 *
 * <p><b>Plank</b> (R. Plank 1913): t = ρ L/ΔT (V₀/(A₀ U) + (1/k) ∫ V/A dx), the latent heat alone led off through film, wall and the
 * ice that has formed. With the front at one depth x everywhere the two terms are his P d/h and R d²/k: 1/2 and 1/8 of a slab, 1/4 and
 * 1/16 of a long cylinder, 1/6 and 1/24 of a sphere and a cube, and for bricks the numbers of his tables.
 *
 * <p><b>Predicted</b>: the same shape in 32 shells, each a freezing store, run as a network from the water's first temperature until the
 * innermost shell is ice. Water that is not yet frozen is taken to conduct as ice does, which stands for its convection (four times water
 * at rest); our choice. It is longer than Plank's time by the heat of cooling the water and the ice.
 *
 * <p>Left out: supercooling, air and salts in the water, edges that freeze faster, and the water's rise in a mould. Immutable.
 *
 * <p>Theory manual, equation (6.6).
 */
public final class IceMaking {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double WARMEST_WATER_K = 373.15;
    private static final double LEAST_COEFFICIENT = 0.1;
    private static final double MOST_COEFFICIENT = 1e6;
    private static final int SHELLS = 32;
    private static final int SURFACE_PASSES = 12;
    private static final int INTERVALS = 200;
    /** Coarse in temperature, since it is asked for a time: a tenth of a kelvin of some twenty. */
    private static final double TOLERANCE_K = 0.05;
    /** A run lasts this many times Plank's time with all heat in it. */
    private static final double LONGEST = 3;

    private final IceMould mould;
    private final double airK;
    private final double waterK;
    private final double coefficient;
    private final double conductivity;

    private IceMaking(IceMould mould, double airK, double waterK, double coefficient, double conductivity) {
        this.mould = mould;
        this.airK = airK;
        this.waterK = waterK;
        this.coefficient = coefficient;
        this.conductivity = conductivity;
    }

    /**
     * Water in a mould in a freezer.
     *
     * @param mould where it freezes
     * @param air the freezer's air; its film is that of the mean temperature of the mould's surface while it freezes
     * @param water temperature of the water at the start, 0 °C to 100 °C
     * @return the question
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public static IceMaking of(IceMould mould, FreezerAir air, Quantity<Temperature> water) {
        double conductivity = meanConductivity(air.temperatureK());
        double surfaceK = air.temperatureK();
        double overall = 0;
        for (int i = 0; i < SURFACE_PASSES; i++) {
            overall = mould.coefficient(air.coefficient(mould.filmLengthM(), surfaceK));
            double outside = outsideM(mould) / overall;
            double part = outside / (outside + insideM2(mould) / conductivity);
            surfaceK = air.temperatureK() + part * (ZERO_CELSIUS_K - air.temperatureK());
        }
        return new IceMaking(mould, air.temperatureK(), waterK(water), overall, conductivity);
    }

    /**
     * Water in a mould under a film that is known, such as brine or a plate.
     *
     * @param mould where it freezes
     * @param medium temperature of what takes the heat, −40 °C to −1 °C
     * @param film heat transfer coefficient outside the mould's wall, 0.1 to 1e6 W/(m² K)
     * @param water temperature of the water at the start, 0 °C to 100 °C
     * @return the question
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static IceMaking under(
            IceMould mould,
            Quantity<Temperature> medium,
            Quantity<HeatTransferCoefficient> film,
            Quantity<Temperature> water) {
        double mediumK = FreezerAir.at(medium).temperatureK();
        double h = SiValues.heatTransferCoefficient(
                film, "coefficient outside a mould", LEAST_COEFFICIENT, MOST_COEFFICIENT);
        return new IceMaking(mould, mediumK, waterK(water), mould.coefficient(h), meanConductivity(mediumK));
    }

    private static double waterK(Quantity<Temperature> water) {
        return SiValues.temperatureK(water, "temperature of water to freeze", ZERO_CELSIUS_K, WARMEST_WATER_K);
    }

    private static double meanConductivity(double airK) {
        return Ice.thermalConductivity(0.5 * (airK + ZERO_CELSIUS_K));
    }

    /** Plank's P d [m]. */
    static double outsideM(IceMould mould) {
        return mould.volumeM3() / mould.frontM2(0);
    }

    /** Plank's R d² [m²]. */
    static double insideM2(IceMould mould) {
        return simpson(
                0, mould.depthM(), INTERVALS, x -> x >= mould.depthM() ? 0 : mould.unfrozenM3(x) / mould.frontM2(x));
    }

    private static double simpson(double from, double to, int intervals, DoubleUnaryOperator f) {
        double width = (to - from) / intervals;
        double sum = f.applyAsDouble(from) + f.applyAsDouble(to);
        for (int i = 1; i < intervals; i++) {
            sum += (i % 2 == 1 ? 4 : 2) * f.applyAsDouble(from + i * width);
        }
        return sum * width / 3;
    }

    /** Plank's time for any material [s]. */
    static double plankS(
            IceMould mould, double density, double latentJPerKg, double belowK, double overall, double conductivity) {
        return density * latentJPerKg / belowK * (outsideM(mould) / overall + insideM2(mould) / conductivity);
    }

    /**
     * What is frozen.
     *
     * @return the mould
     */
    public IceMould mould() {
        return mould;
    }

    /**
     * Coefficient of film, radiation and wall together.
     *
     * @return coefficient [W/(m² K)], over all faces that give heat away
     */
    public double coefficient() {
        return coefficient;
    }

    /**
     * Plank's time, for water that is at 0 °C already.
     *
     * @return time
     */
    public Duration plank() {
        return duration(plankS());
    }

    private double plankS() {
        return plankS(
                mould,
                Ice.density(ZERO_CELSIUS_K),
                Ice.latentHeatOfFusion().value(),
                ZERO_CELSIUS_K - airK,
                coefficient,
                conductivity);
    }

    /**
     * Heat that the freezer takes from one filling until its ice is as cold as the air.
     *
     * @return heat [J]
     */
    public double heatJ() {
        return mould.iceKg() * (Water.liquid().specificEnthalpy(waterK) - Ice.specificEnthalpy(airK));
    }

    /**
     * The time until the last of it is ice, by a run.
     *
     * @return time
     */
    public Duration predicted() {
        return duration(predictedS());
    }

    private double predictedS() {
        double kelvin = Math.max(waterK - ZERO_CELSIUS_K, 1);
        double water = Water.liquid().specificEnthalpy(waterK) - Water.liquid().specificEnthalpy(ZERO_CELSIUS_K);
        double waterCapacity = waterK > ZERO_CELSIUS_K + 1 ? water / kelvin : 4200;
        double iceCapacity = Ice.specificHeatCapacity(0.5 * (airK + ZERO_CELSIUS_K));
        double latent = Ice.latentHeatOfFusion().value();
        double horizon = LONGEST * plankS() * (latent + water + iceCapacity * (ZERO_CELSIUS_K - airK)) / latent;
        List<Node> nodes = new ArrayList<>();
        List<Path> paths = new ArrayList<>();
        double width = mould.depthM() / SHELLS;
        for (int i = 0; i < SHELLS; i++) {
            double kg = Ice.density(ZERO_CELSIUS_K)
                    * (mould.unfrozenM3(i * width) - (i + 1 < SHELLS ? mould.unfrozenM3((i + 1) * width) : 0));
            FreezingStore store = FreezingStore.ofConstants(ZERO_CELSIUS_K, latent, waterCapacity, iceCapacity, kg);
            nodes.add(Node.of("shell " + i, store, waterK));
            if (i > 0) {
                double resistance = resistance((i - 0.5) * width, (i + 0.5) * width);
                paths.add(DirectPath.of(
                        "conduction " + i,
                        nodes.get(i - 1),
                        nodes.get(i),
                        "conduction",
                        HeatLaw.conductance(1 / resistance)));
            }
        }
        double outermost = resistance(0, 0.5 * width) + 1 / (coefficient * mould.frontM2(0));
        paths.add(DirectPath.of(
                "film",
                nodes.get(0),
                Boundary.constant("freezer", airK),
                "convection",
                HeatLaw.conductance(1 / outermost)));
        Trajectory run = NetworkSolver.standard().withToleranceK(TOLERANCE_K).solve(Network.of(nodes, paths), horizon);
        Node core = nodes.get(SHELLS - 1);
        // Once the plateau is passed the core cools as ice.
        return run.firstCrossing(0, t -> run.temperatureK(core, t) - (ZERO_CELSIUS_K - 2 * FreezingStore.PLATEAU_K))
                .orElse(horizon);
    }

    /** Of ice between two depths [K/W]. */
    private double resistance(double fromM, double toM) {
        return simpson(fromM, toM, 8, x -> 1 / mould.frontM2(x)) / conductivity;
    }

    private static Duration duration(double seconds) {
        return Duration.ofMillis(Math.round(1000 * seconds));
    }
}
