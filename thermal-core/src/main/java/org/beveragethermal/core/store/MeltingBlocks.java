/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.SmoothFunction;

/**
 * The law by which equal blocks of ice melt in water.
 *
 * <p>The surface of a block is at 0 °C. Heat arrives from the water through a film; the cold inside of the block takes a part;
 * the rest melts ice: ṁ = (q − G (0 °C − T_ice))/L. All surfaces of a block recede evenly ({@link IceBlock}); the area follows its
 * shortest extent, here called its side, which shrinks as the mass does, so that the moment the ice is gone is a simple zero.
 *
 * <p>Theory manual, equation (6.1).
 *
 * @param blocks number of blocks, > 0, not necessarily whole
 * @param block a block at the start
 * @param wettedFraction part of the surface that is wetted [-], 0 to 1
 * @param areaExponent how the product of area and film coefficient of a cube falls with its side: 2 for a constant coefficient, 1.75
 *     for laminar free convection, whose coefficient grows as length^(−1/4) with the {@linkplain IceBlock#filmLengthM length} of the
 *     film
 * @param density density of ice [kg/m³], > 0
 * @param conductivity conductivity of ice [W/(m K)], ≥ 0; with 0 a block colder than 0 °C stays cold
 * @param latentHeatJPerKg heat of fusion [J/kg], > 0
 * @param filmPerArea heat per area from the water to a surface at 0 °C, for the block at the start
 * @param wetPart part of the ice that lies in water, as a function of the mass of ice left
 */
public record MeltingBlocks(
        double blocks,
        IceBlock block,
        double wettedFraction,
        double areaExponent,
        double density,
        double conductivity,
        double latentHeatJPerKg,
        HeatLaw filmPerArea,
        SmoothFunction wetPart) {

    private static final double ZERO_CELSIUS_K = 273.15;
    /** Below this part of its first side a block fades out. */
    private static final double FADE_PART = 1e-4;
    /** Slowest mode of a cube whose faces are held at one temperature: 3 (π/side)² k side³ = 3 π² k side. */
    private static final double INNER_CONDUCTION = 3 * Math.PI * Math.PI;

    /**
     * Conductance from the surface of blocks to their mean temperature, in the slowest mode of a cube: 3 π² k side each.
     *
     * @param blocks number of blocks, ≥ 0
     * @param sideM side of a block [m], ≥ 0
     * @param conductivity conductivity of the blocks [W/(m K)], ≥ 0
     * @return conductance of all blocks together [W/K]
     */
    public static double innerConductance(double blocks, double sideM, double conductivity) {
        return INNER_CONDUCTION * conductivity * blocks * sideM;
    }

    /** All of the ice lies in water. */
    public static final SmoothFunction ALL_WET = new SmoothFunction() {
        @Override
        public double at(double x) {
            return 1;
        }

        @Override
        public double slope(double x) {
            return 0;
        }
    };

    /**
     * Checks the numbers.
     *
     * @param blocks number of blocks
     * @param block a block at the start
     * @param wettedFraction part of the surface that is wetted [-]
     * @param areaExponent 1 to 2
     * @param density density of ice [kg/m³]
     * @param conductivity conductivity of ice [W/(m K)]
     * @param latentHeatJPerKg heat of fusion [J/kg]
     * @param filmPerArea heat per area from the water to a surface at 0 °C
     * @param wetPart part of the ice that lies in water
     * @throws IllegalArgumentException if a number is outside its range
     */
    public MeltingBlocks {
        if (!(blocks > 0
                        && wettedFraction > 0
                        && wettedFraction <= 1
                        && areaExponent >= 1
                        && areaExponent <= 2
                        && density > 0
                        && conductivity >= 0
                        && latentHeatJPerKg > 0)
                || Double.isInfinite(blocks + density + conductivity + latentHeatJPerKg)) {
            throw new IllegalArgumentException(blocks + " blocks, each a " + block + ", wetted part " + wettedFraction
                    + ", exponent " + areaExponent + ", density " + density + " kg/m³, conductivity " + conductivity
                    + " W/(m K), heat of fusion " + latentHeatJPerKg + " J/kg: expected finite values above 0");
        }
    }

    /**
     * Cubes.
     *
     * @param blocks number of blocks, > 0, not necessarily whole
     * @param firstSideM side of a block at the start [m], finite, > 0
     * @param wettedFraction part of the surface that is wetted [-], 0 to 1
     * @param areaExponent how the product of area and film coefficient falls with the side, 1 to 2
     * @param density density of ice [kg/m³], > 0
     * @param conductivity conductivity of ice [W/(m K)], ≥ 0
     * @param latentHeatJPerKg heat of fusion [J/kg], > 0
     * @param filmPerArea heat per area from the water to a surface at 0 °C, for the side at the start
     * @param wetPart part of the ice that lies in water, as a function of the mass of ice left
     * @throws IllegalArgumentException if a number is outside its range
     */
    public MeltingBlocks(
            double blocks,
            double firstSideM,
            double wettedFraction,
            double areaExponent,
            double density,
            double conductivity,
            double latentHeatJPerKg,
            HeatLaw filmPerArea,
            SmoothFunction wetPart) {
        this(
                blocks,
                IceBlock.cubeOf(firstSideM),
                wettedFraction,
                areaExponent,
                density,
                conductivity,
                latentHeatJPerKg,
                filmPerArea,
                wetPart);
    }

    /**
     * The shortest extent of a block at the start.
     *
     * @return side [m]
     */
    public double firstSideM() {
        return block.shortestM();
    }

    /**
     * What melts at one moment, with slopes in water temperature, ice temperature, mass, side and the factor on the film.
     *
     * <p>A mutable holder.
     */
    public static final class Melting {

        /** Heat from the water into the ice [W]. */
        public double heat;

        /** Its slope in the water's temperature [W/K]. */
        public double heatByWater;

        /** Its slope in the mass of ice [W/kg]. */
        public double heatByMass;

        /** Its slope in the side [W/m]. */
        public double heatBySide;

        /** Its slope in the number of blocks [W]. */
        public double heatByBlocks;

        /** Its slope in the factor on the film [W]. */
        public double heatByFactor;

        /** Ice that melts [kg/s]; negative while a cold block freezes water onto itself. */
        public double melt;

        /** Its slope in the water's temperature [kg/(s K)]. */
        public double meltByWater;

        /** Its slope in the ice's temperature [kg/(s K)]. */
        public double meltByIce;

        /** Its slope in the mass of ice [1/s]. */
        public double meltByMass;

        /** Its slope in the side [kg/(s m)]. */
        public double meltBySide;

        /** Its slope in the number of blocks [kg/s]. */
        public double meltByBlocks;

        /** Its slope in the factor on the film [kg/s]. */
        public double meltByFactor;

        /** Change of the side per ice melted [m/kg], ≤ 0. */
        public double sidePerMelt;

        /** Its slope in the side [1/kg]. */
        public double sidePerMeltBySide;

        /** An empty holder. */
        public Melting() {}

        /**
         * Tells a path's evaluation the three flows of melting, with their slopes: heat from the water into the ice, ice that
         * becomes water, and the side that shrinks. The three accounts follow one another; slopes in anything but the
         * water's temperature, the ice's temperature, mass and side, and the factor are the caller's.
         *
         * @param e receives the flows
         * @param firstAccount index of the heat's account; the amount's and the side's follow
         * @param water index of the end that is the water
         * @param ice index of the end that is the ice, with an {@link IceStore}
         */
        public void tell(PathEvaluation e, int firstAccount, int water, int ice) {
            int meltAccount = firstAccount + 1;
            int sideAccount = firstAccount + 2;
            e.flow(firstAccount, heat);
            e.flow(meltAccount, melt);
            e.flow(sideAccount, sidePerMelt * melt);
            if (!e.wantsDerivatives()) {
                return;
            }
            slopes(e, firstAccount, water, heatByWater, heatByFactor);
            slopes(e, meltAccount, water, meltByWater, meltByFactor);
            slopes(e, sideAccount, water, sidePerMelt * meltByWater, sidePerMelt * meltByFactor);
            iceSlopes(e, firstAccount, ice, 0, heatByMass, heatBySide);
            iceSlopes(e, meltAccount, ice, meltByIce, meltByMass, meltBySide);
            iceSlopes(
                    e,
                    sideAccount,
                    ice,
                    sidePerMelt * meltByIce,
                    sidePerMelt * meltByMass,
                    sidePerMelt * meltBySide + sidePerMeltBySide * melt);
        }

        private static void slopes(PathEvaluation e, int account, int water, double byWater, double byFactor) {
            e.flowByTemperature(account, water, byWater);
            e.flowByMultiplier(account, 0, byFactor);
        }

        private static void iceSlopes(
                PathEvaluation e, int account, int ice, double byIce, double byMass, double bySide) {
            e.flowByTemperature(account, ice, byIce);
            e.flowByAmount(account, ice, IceStore.MASS, byMass);
            e.flowByAmount(account, ice, IceStore.SIDE, bySide);
        }
    }

    /**
     * Evaluates the law for the number of blocks that it was made for.
     *
     * @param waterK temperature of the water [K]
     * @param iceK mean temperature of the ice [K]
     * @param massKg mass of ice [kg]; may be slightly negative
     * @param sideM side of a block [m]; may be slightly negative
     * @param factor factor on the film
     * @param film a holder to work with
     * @param out receives the result
     */
    public void evaluate(
            double waterK, double iceK, double massKg, double sideM, double factor, HeatFlow film, Melting out) {
        evaluate(waterK, iceK, massKg, sideM, blocks, factor, film, out);
    }

    /**
     * Evaluates the law.
     *
     * @param waterK temperature of the water [K]
     * @param iceK mean temperature of the ice [K]
     * @param massKg mass of ice [kg]; may be slightly negative
     * @param sideM side of a block [m]; may be slightly negative
     * @param count number of blocks, > 0
     * @param factor factor on the film
     * @param film a holder to work with
     * @param out receives the result
     */
    public void evaluate(
            double waterK,
            double iceK,
            double massKg,
            double sideM,
            double count,
            double factor,
            HeatFlow film,
            Melting out) {
        double side = Math.max(sideM, 0);
        double fadeWidth = FADE_PART * block.shortestM();
        double fade = SmoothMath.fade(side / fadeWidth);
        double fadeBySide = SmoothMath.fadeSlope(side / fadeWidth) / fadeWidth;
        double surface = count * block.surfaceM2(side);
        double surfaceBySide = count * block.surfaceSlope(side);
        double length = block.filmLengthM(side);
        double thinner = side > 0
                ? wettedFraction * Math.pow(length / block.filmLengthM(block.shortestM()), areaExponent - 2)
                : 0;
        double fullArea = surface * thinner;
        double area = fullArea * fade;
        double areaBySide = fullArea * fadeBySide
                + (side > 0 ? thinner * fade * (surfaceBySide + (areaExponent - 2) * surface / length) : 0);
        double wet = wetPart.at(massKg);
        filmPerArea.evaluate(waterK, ZERO_CELSIUS_K, film);
        out.heat = factor * film.watts * area * wet;
        out.heatByWater = factor * film.perFromKelvin * area * wet;
        out.heatByMass = factor * film.watts * area * wetPart.slope(massKg);
        out.heatBySide = factor * film.watts * areaBySide * wet;
        out.heatByBlocks = out.heat / count;
        out.heatByFactor = film.watts * area * wet;
        double inside = conductivity * count * block.innerConductanceM(side);
        double conductance = inside * fade;
        double conductanceBySide =
                inside * fadeBySide + conductivity * count * block.innerConductanceSlope(side) * fade;
        double cold = ZERO_CELSIUS_K - iceK;
        out.melt = (out.heat - conductance * cold) / latentHeatJPerKg;
        out.meltByWater = out.heatByWater / latentHeatJPerKg;
        out.meltByIce = conductance / latentHeatJPerKg;
        out.meltByMass = out.heatByMass / latentHeatJPerKg;
        out.meltBySide = (out.heatBySide - conductanceBySide * cold) / latentHeatJPerKg;
        out.meltByBlocks = out.melt / count;
        out.meltByFactor = out.heatByFactor / latentHeatJPerKg;
        out.sidePerMelt = side > 0 ? -2 / (density * surface) : 0;
        out.sidePerMeltBySide = side > 0 ? -out.sidePerMelt * surfaceBySide / surface : 0;
    }
}
