/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import java.util.List;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.Ice;

/**
 * Blocks of ice that melt in a drink and thin it, or grow in one that is colder than its freezing point.
 *
 * <p><b>Interface.</b> At the surface of the ice the drink is thinned by melt water, so that the ice there is neither at 0 °C nor at the
 * freezing point of the bulk. Heat that arrives melts ice, q = ṁ Λ, and what is dissolved must diffuse back against the melt water,
 * ṁ = ρ β ln(c_bulk/c_surface), with ρ β = h/(c_p Le^(2/3)) by the analogy of heat and mass transfer and a freezing point in proportion
 * to the concentration. Together: T − T_s = Γ ln(b/b_s), with b and b_s the depressions of the freezing point in the bulk and at the
 * surface and Γ = Λ/(c_p Le^(2/3)), about 2.5 K. So the surface is almost at 0 °C as long as the drink is some kelvins warm,
 * and comes down to the drink's freezing point as the two approach each other: the drink ends at its freezing point if ice is left, as it
 * must. In water the surface is at 0 °C.
 *
 * <p><b>Melting.</b> ṁ = (q − G (T_s − T_ice))/Λ with the inside conductance G of a cube, as in {@link MeltingBlocks}. Melt water leaves
 * at 0 °C, where its enthalpy is zero, and Λ is what ice at T_s needs to become that: so energy and mass are conserved
 * exactly. Immutable and thread-safe if its film is.
 *
 * <p>Theory manual, equation (6.2).
 */
public final class IceInDrinkPath implements Path {

    /**
     * Lewis number of what is dissolved: α = 1.36e-7 m²/s of water at 5 °C over 6.8e-10 m²/s of ethanol in water, which is 1.24e-9 at
     * 25 °C (E. L. Cussler, Diffusion, from memory) by the rule of Stokes and Einstein. Sugars diffuse half as fast.
     */
    public static final Constant LEWIS = new Constant(
            "Lewis number of a drink",
            200,
            "1",
            Uncertainty.rectangular(100),
            new Source(
                    "lewis-of-drinks",
                    "own estimate; diffusion of ethanol in water after E. L. Cussler, Diffusion, from memory",
                    Source.Kind.OWN_ASSUMPTION));

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double DRINK_HEAT_CAPACITY = 4000;
    private static final double FADE_PART = 1e-4;
    /** Laminar free convection: the coefficient grows as side^(−1/4) while a block shrinks, the area falls as side². */
    private static final double AREA_EXPONENT = 1.75;

    private static final double INNER_CONDUCTION = 3 * Math.PI * Math.PI;
    private static final int MOST_ROUNDS = 60;
    private static final double SAME = 1e-14;
    private static final double LARGEST_EXPONENT = 300;

    private static final int DRINK = 0;
    private static final int ICE = 1;
    private static final int HEAT = 0;
    private static final int MELT = 1;
    private static final int SHRINKING = 2;

    private final String name;
    private final List<End> ends;
    private final List<Account> accounts;
    private final List<String> multipliers;
    private final DilutedStore drink;
    private final double blocks;
    private final double firstSideM;
    private final HeatLaw film;
    private final double density;
    private final double conductivity;
    private final double latentHeat;
    private final double iceHeatCapacity;
    private final double gammaK;

    private IceInDrinkPath(String name, Node drink, Node ice, double blocks, HeatLaw film, String multiplier) {
        this.name = name;
        this.ends = List.of(drink, ice);
        this.accounts = List.of(
                Account.heat("melting", DRINK, ICE),
                Account.amount("melting", ICE, IceStore.MASS, DRINK, DilutedStore.MASS),
                Account.change("melting", ICE, IceStore.SIDE));
        this.multipliers = List.of(multiplier);
        this.drink = (DilutedStore) drink.store();
        this.blocks = blocks;
        this.firstSideM = ice.amounts()[IceStore.SIDE];
        this.film = film;
        this.density = ice.amounts()[IceStore.MASS] / (blocks * firstSideM * firstSideM * firstSideM);
        this.conductivity = Ice.thermalConductivity(ZERO_CELSIUS_K);
        this.latentHeat = Ice.latentHeatOfFusion().value();
        this.iceHeatCapacity = Ice.specificHeatCapacity(ZERO_CELSIUS_K);
        this.gammaK = latentHeat / (DRINK_HEAT_CAPACITY * Math.pow(LEWIS.value(), 2.0 / 3));
    }

    /**
     * Joins a drink and the ice in it.
     *
     * @param name name of the path
     * @param drink a node with a {@link DilutedStore}
     * @param ice a node with an {@link IceStore}
     * @param blocks number of blocks, > 0, finite, not necessarily whole
     * @param film heat from the drink to the surfaces of all blocks as large as they are at the start
     * @param multiplier name of the factor on the film
     * @return the path
     * @throws IllegalArgumentException if a node has another store or the number is outside its range
     */
    public static IceInDrinkPath of(String name, Node drink, Node ice, double blocks, HeatLaw film, String multiplier) {
        if (!(drink.store() instanceof DilutedStore) || !(ice.store() instanceof IceStore)) {
            throw new IllegalArgumentException(
                    "ice " + name + ": expected a drink that takes up water, and a node that stores ice");
        }
        if (!(blocks > 0) || Double.isInfinite(blocks)) {
            throw new IllegalArgumentException(blocks + " blocks of ice: expected a finite number above 0");
        }
        return new IceInDrinkPath(name, drink, ice, blocks, film, multiplier);
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

    /** Depression at the surface, x of d + x = Γ ln(b/x), by Newton's rule in y = ln(x/b): d + b e^y + Γ y = 0. */
    double surfaceDepressionK(double aboveZeroK, double depressionK) {
        if (depressionK <= 0) {
            return 0;
        }
        double y = Math.min(LARGEST_EXPONENT, -aboveZeroK / gammaK);
        // Where the exponential decides, begin where it alone balances: the rule then comes down from above.
        if (y > 0) {
            y = Math.min(y, Math.log1p(Math.max(0, -aboveZeroK) / depressionK));
        }
        for (int i = 0; i < MOST_ROUNDS; i++) {
            double e = depressionK * Math.exp(y);
            double step = (aboveZeroK + e + gammaK * y) / (e + gammaK);
            y -= step;
            if (Math.abs(step) <= SAME * (1 + Math.abs(y))) {
                break;
            }
        }
        return depressionK * Math.exp(y);
    }

    @Override
    public void evaluate(PathEvaluation e) {
        double drinkK = e.temperatureK(DRINK);
        double added = drink.addedKg(e.amount(DRINK, DilutedStore.MASS));
        double iceK = e.temperatureK(ICE);
        double side = Math.max(e.amount(ICE, IceStore.SIDE), 0);
        double bulk = drink.freezingDepressionK(added);
        double x = surfaceDepressionK(drinkK - ZERO_CELSIUS_K, bulk);
        double surfaceK = ZERO_CELSIUS_K - x;
        double surfaceByDrink = x / (x + gammaK);
        double surfaceByAdded =
                bulk > 0 ? -gammaK * x / (bulk * (x + gammaK)) * drink.freezingDepressionSlope(added) : 0;
        double fadeWidth = FADE_PART * firstSideM;
        double fade = SmoothMath.fade(side / fadeWidth);
        double fadeBySide = SmoothMath.fadeSlope(side / fadeWidth) / fadeWidth;
        double power = Math.pow(side / firstSideM, AREA_EXPONENT);
        double area = power * fade;
        double areaBySide = power * fadeBySide + (side > 0 ? AREA_EXPONENT * area / side : 0);
        HeatFlow flow = e.scratch(0);
        film.evaluate(drinkK, surfaceK, flow);
        double factor = e.multiplier(0);
        double heat = factor * flow.watts * area;
        double inner = INNER_CONDUCTION * conductivity * blocks * side * fade;
        double innerBySide = INNER_CONDUCTION * conductivity * blocks * (fade + side * fadeBySide);
        double fusion = latentHeat + iceHeatCapacity * x;
        double melt = (heat - inner * (surfaceK - iceK)) / fusion;
        double sidePerMelt = side > 0 ? -1 / (3 * blocks * density * side * side) : 0;
        e.flow(HEAT, heat);
        e.flow(MELT, melt);
        e.flow(SHRINKING, sidePerMelt * melt);
        if (!e.wantsDerivatives()) {
            return;
        }
        double heatBySurface = factor * flow.perToKelvin * area;
        double meltBySurface = (heatBySurface - inner + melt * iceHeatCapacity) / fusion;
        double heatByDrink = factor * flow.perFromKelvin * area + heatBySurface * surfaceByDrink;
        double meltByDrink = factor * flow.perFromKelvin * area / fusion + meltBySurface * surfaceByDrink;
        double heatBySide = factor * flow.watts * areaBySide;
        double meltBySide = (heatBySide - innerBySide * (surfaceK - iceK)) / fusion;
        double byFactor = flow.watts * area;
        tell(e, HEAT, heatByDrink, heatBySurface * surfaceByAdded, 0, heatBySide, byFactor);
        tell(e, MELT, meltByDrink, meltBySurface * surfaceByAdded, inner / fusion, meltBySide, byFactor / fusion);
        tell(
                e,
                SHRINKING,
                sidePerMelt * meltByDrink,
                sidePerMelt * meltBySurface * surfaceByAdded,
                sidePerMelt * inner / fusion,
                sidePerMelt * meltBySide + (side > 0 ? -2 * sidePerMelt / side * melt : 0),
                sidePerMelt * byFactor / fusion);
    }

    private static void tell(
            PathEvaluation e,
            int account,
            double byDrink,
            double byAdded,
            double byIce,
            double bySide,
            double byFactor) {
        e.flowByTemperature(account, DRINK, byDrink);
        e.flowByAmount(account, DRINK, DilutedStore.MASS, byAdded);
        e.flowByTemperature(account, ICE, byIce);
        e.flowByAmount(account, ICE, IceStore.SIDE, bySide);
        e.flowByMultiplier(account, 0, byFactor);
    }
}
