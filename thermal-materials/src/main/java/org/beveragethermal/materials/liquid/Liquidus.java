/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * The temperature at which a drink is in balance with ice, as a function of the water left in the liquid. What each
 * dissolved part takes off the freezing temperature of water is added up, each with all the liquid water to itself (our
 * rule; exact for thin solutions).
 */
final class Liquidus {
    private static final double CELSIUS_ZERO_K = 273.15;
    /** A drink that begins to freeze so little below water freezes like water: what is dissolved in it is lost in rounding. */
    private static final double LEAST_DEPRESSION_K = 1e-9;

    /**
     * What minerals take off, K times mass of water per mass of ash: milk's solids-not-fat take 2.37 K times their mass
     * per mass of water (Goff and Hartel, Ice Cream, 7th ed., p. 183), and 8 % of them are ash (from memory).
     */
    private static final double ASH_K = 2.37 / 0.08;

    static final Constant ASH_DEPRESSION = new Constant(
            "freezing point depression by minerals, times mass of water per mass of minerals",
            ASH_K,
            "K",
            Uncertainty.rectangularRelative(0.15),
            new Source(
                    "minerals of milk",
                    "own estimate from 2.37 K times solids-not-fat of milk per water (H. D. Goff, R. W. Hartel, Ice Cream, 7th"
                            + " ed. (2013), p. 183), of which 8 % are minerals (from memory)",
                    Source.Kind.OWN_COMPUTATION));

    /**
     * The least liquid water looked at: the ethanol formula ends there, and the sugars and the ash take off more than
     * 40 K.
     */
    private static final double LEAST_WATER_PER_ETHANOL =
            (1 - EthanolWater.HIGHEST_MASS_FRACTION) / EthanolWater.HIGHEST_MASS_FRACTION;

    private static final double LEAST_WATER_PER_SUCROSE = 0.16;
    private static final double LEAST_WATER_PER_ASH = ASH_K / 40;

    private static final Source PURE_WATER =
            Source.published("ice point", "melting point of ice at 101 325 Pa, 273.15 K within 0.003 K");

    private final double water;
    private final double ethanol;
    private final double sucroseEquivalent;
    private final double ash;
    private final FreezingPoint onset;
    private final double offsetK;

    private Liquidus(double water, double ethanol, double sucroseEquivalent, double ash) {
        this.water = water;
        this.ethanol = ethanol;
        this.sucroseEquivalent = sucroseEquivalent;
        this.ash = ash;
        this.onset = sumOfParts();
        this.offsetK = onset.temperatureK() + depressionK(water);
    }

    static Liquidus of(Composition composition) {
        double sucroseEquivalent = composition.sucrose()
                + SucroseSolution.INVERT_OVER_SUCROSE * composition.invertSugar()
                + composition.carbohydrate();
        return new Liquidus(composition.water(), composition.ethanol(), sucroseEquivalent, composition.ash());
    }

    private FreezingPoint sumOfParts() {
        double others = SucroseSolution.depressionK(sucroseEquivalent / water) + ASH_K * ash / water;
        if (ethanol == 0) {
            return new FreezingPoint(CELSIUS_ZERO_K - others, others > 0 ? SucroseSolution.GOFF_HARTEL : PURE_WATER);
        }
        FreezingPoint ofSolvent = EthanolWater.freezingPoint(ethanol / (ethanol + water));
        return others == 0
                ? ofSolvent
                : new FreezingPoint(
                        ofSolvent.temperatureK() - others,
                        new Source(
                                "sum of freezing point depressions",
                                "own rule: " + ofSolvent.source().key()
                                        + " for ethanol, less the depression by sugar and minerals ("
                                        + SucroseSolution.GOFF_HARTEL.key() + ")",
                                Source.Kind.OWN_ASSUMPTION));
    }

    /** The temperature at which the first ice forms, by the warmer of the published curves. */
    FreezingPoint onset() {
        return onset;
    }

    /** Whether anything keeps the drink from freezing like water. */
    boolean hasSolute() {
        return CELSIUS_ZERO_K - onset.temperatureK() > LEAST_DEPRESSION_K;
    }

    /**
     * Balance temperature in K with so much liquid water left per mass of drink; the curve is shifted to start at the
     * onset.
     */
    double temperatureK(double liquidWater) {
        return offsetK - depressionK(liquidWater);
    }

    /** Derivative of {@link #temperatureK} in K, greater than 0. */
    double slopeK(double liquidWater) {
        double perWater = sucroseEquivalent / liquidWater;
        double slope = SucroseSolution.depressionSlopeK(perWater) * perWater / liquidWater
                + ASH_K * ash / (liquidWater * liquidWater);
        if (ethanol > 0) {
            double solvent = ethanol + liquidWater;
            slope -= 100 * EthanolWater.freezingSlope(100 * ethanol / solvent) * ethanol / (solvent * solvent);
        }
        return slope;
    }

    private double depressionK(double liquidWater) {
        double depression = SucroseSolution.depressionK(sucroseEquivalent / liquidWater) + ASH_K * ash / liquidWater;
        return ethanol == 0
                ? depression
                : depression - EthanolWater.freezingCelsius(100 * ethanol / (ethanol + liquidWater));
    }

    /** Liquid water per mass of drink at a temperature below the onset. */
    double liquidWater(double temperatureK) {
        double low = Math.max(
                Math.max(LEAST_WATER_PER_ETHANOL * ethanol, LEAST_WATER_PER_SUCROSE * sucroseEquivalent),
                LEAST_WATER_PER_ASH * ash);
        double high = water;
        double middle = low + (high - low) / 2;
        while (low < middle && middle < high) {
            if (temperatureK(middle) < temperatureK) {
                low = middle;
            } else {
                high = middle;
            }
            middle = low + (high - low) / 2;
        }
        return high;
    }
}
