/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.SiValues;

/**
 * A wet cloth, wet paper or a wet sleeve of clay around one vessel in air: in a room, in the wind, in a refrigerator or a freezer.
 *
 * <p><b>What happens.</b> The outer surface evaporates above the dew point of the air around it and takes up dew below, by the law of {@link
 * org.beveragethermal.core.film.EvaporatingFilm}; beside that it exchanges heat by convection and radiation as a bare wall does, over the
 * somewhat larger area of the wrap. Heat from the wall passes the gap between wall and wrap and the wrap itself. The wrap keeps its dry mass and
 * its water, which freezes at 0 °C and goes on evaporating as ice; what evaporates is gone. Below a fifth of its dry mass in water the
 * surface is no longer wet all over, and evaporation ceases with the last water; the dry wrap insulates. What of the side it does not cover,
 * and the ends, stand in the air around.
 *
 * <pre>{@code
 * WetWrap towel = WetWrap.cloth(millimetres(2), grams(60), grams(150), celsius(20), balcony);
 * WetWrap flannel = WetWrap.cloth(millimetres(2), grams(40), grams(100), celsius(18), balcony)
 *         .covering(millimetres(200))
 *         .standingInDish(millimetres(120));
 * }</pre>
 *
 * <p><b>Water that follows.</b> A wrap that {@linkplain #standingInDish stands in a dish} draws water up to a height that is asked for,
 * because the pores of a cloth are not known; {@link #capillaryHeightM} says how high water can stand at most in pores of a
 * radius. Up to there it stays wet for as long as the dish is kept filled; what is above dries by itself. That evaporation outruns what
 * rises is not modelled; a tight, thin cloth in hot wind stays less high.
 *
 * <p><b>Water that is poured over it</b> in the course of a run ({@code Scene.Builder.topUpWater}) is taken up as far as the wrap holds it;
 * a wrap that is dry at the start needs air of a stated humidity too, or nothing evaporates.
 *
 * <p><b>What is not known.</b> How closely the wrap lies against the wall, and how it conducts: {@link #assumptions} and {@link
 * Multipliers#WRAP_CONTACT}. Water that runs down and drips off is left out, as is the film between cloth and glass running dry first.
 *
 * <p><b>What is simplified.</b> The wrap has the temperature of its outer surface, from which all of its thickness conducts to the wall; it
 * freezes all at once; how it conducts does not change as it freezes; it is wet or dry evenly over the height that dries. Layers of the
 * vessel's own are counted in what conducts but not in the area of the wrap. Before a vessel is in it, and while none is, it is kept as it is.
 *
 * <p><b>Cautions.</b> In a freezer a drink that is forgotten freezes, a full closed vessel may burst, and a frozen wrap sticks to skin and
 * glass: let it thaw, do not pull. Water that drips makes floors slippery and must not reach electric appliances.
 *
 * <p>Immutable. One vessel at a time; a second one is refused when the run is made.
 *
 * <p>Theory manual, equation (4.7).
 */
public final class WetWrap implements Surroundings {

    private static final Source OWN =
            new Source("wet-wrap", "own estimate of cloth around a round wall", Source.Kind.OWN_ASSUMPTION);

    /** Mean width of what lies between wall and wrap: air when dry, water when soaked. */
    static final Constant GAP =
            new Constant("gap between wall and wrap", 0.2e-3, "m", Uncertainty.rectangular(0.15e-3), OWN);

    /** Water per dry mass below which the surface is no longer wet all over; textiles dry at a constant rate to about there (from memory). */
    static final Constant DRYING = new Constant(
            "water at which a wrap begins to dry, per dry mass", 0.2, "1", Uncertainty.rectangular(0.15), OWN);

    /** Conductivity of a wrap, relative, beside its geometric mean. */
    static final Constant CONDUCTIVITY =
            new Constant("factor on the conductivity of a wrap", 1, "1", Uncertainty.rectangular(0.4), OWN);

    private static final double THINNEST_M = 1e-5;
    private static final double THICKEST_M = 0.05;
    private static final double LEAST_DRY_KG = 1e-6;
    private static final double MOST_KG = 5;
    private static final double COLDEST_K = 243.15;
    private static final double WARMEST_K = 333.15;
    private static final double NARROWEST_GAP_M = 0;
    private static final double WIDEST_GAP_M = 0.005;
    private static final double LOWEST_M = 0.005;
    private static final double HIGHEST_M = 1;
    private static final double FINEST_PORE_M = 1e-7;
    private static final double COARSEST_PORE_M = 1e-2;
    /** Surface tension of water at 20 °C, IAPWS R1-76(2014) [N/m]. */
    private static final double SURFACE_TENSION = 0.07274;

    private final Solid material;
    private final double thicknessM;
    private final double dryKg;
    private final double waterKg;
    private final double startK;
    private final Surroundings around;
    private final double gapM;
    private final OptionalDouble coveredM;
    private final OptionalDouble wickedM;

    private WetWrap(
            Solid material,
            double thicknessM,
            double dryKg,
            double waterKg,
            double startK,
            Surroundings around,
            double gapM,
            OptionalDouble coveredM,
            OptionalDouble wickedM) {
        this.material = material;
        this.thicknessM = thicknessM;
        this.dryKg = dryKg;
        this.waterKg = waterKg;
        this.startK = startK;
        this.around = around;
        this.gapM = gapM;
        this.coveredM = coveredM;
        this.wickedM = wickedM;
    }

    /**
     * A wrap of anything that soaks up water.
     *
     * @param material what it is when dry; its conductivity and heat capacity count
     * @param thickness of all layers of the wrap, 0.01 mm to 50 mm
     * @param dryMass mass without water, 1 mg to 5 kg
     * @param water mass of the water in it, 0 to 5 kg; what drips off at once is not in it
     * @param temperature of the wrap when the run begins, −30 °C to 60 °C; at 0 °C its water is liquid
     * @param around where it is: {@link Air}, a {@link Refrigerator} or a {@link Freezer}, with a stated humidity if there is water
     * @return the wrap, around the whole side
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     * @throws IllegalArgumentException if there is something else than air around it, or its humidity is not stated
     */
    public static WetWrap of(
            Solid material,
            Quantity<Length> thickness,
            Quantity<Mass> dryMass,
            Quantity<Mass> water,
            Quantity<Temperature> temperature,
            Surroundings around) {
        double waterKg = SiValues.massKg(water, "water in a wrap", 0, MOST_KG);
        WetAir.require("a wet wrap", around, waterKg > 0);
        return new WetWrap(
                Objects.requireNonNull(material, "material"),
                SiValues.lengthM(thickness, "thickness of a wrap", THINNEST_M, THICKEST_M),
                SiValues.massKg(dryMass, "dry mass of a wrap", LEAST_DRY_KG, MOST_KG),
                waterKg,
                SiValues.temperatureK(temperature, "temperature of a wrap", COLDEST_K, WARMEST_K),
                around,
                GAP.value(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /**
     * A wrap of cotton cloth, such as a towel.
     *
     * @param thickness of all layers, 0.01 mm to 50 mm
     * @param dryMass mass without water, 1 mg to 5 kg
     * @param water mass of the water in it, 0 to 5 kg
     * @param temperature of the wrap when the run begins, −30 °C to 60 °C
     * @param around where it is, as in {@link #of}
     * @return the wrap, around the whole side
     * @throws IllegalArgumentException as {@link #of}
     */
    public static WetWrap cloth(
            Quantity<Length> thickness,
            Quantity<Mass> dryMass,
            Quantity<Mass> water,
            Quantity<Temperature> temperature,
            Surroundings around) {
        return of(Solids.cotton(), thickness, dryMass, water, temperature, around);
    }

    /**
     * A wrap of paper, such as kitchen paper.
     *
     * @param thickness of all layers, 0.01 mm to 50 mm
     * @param dryMass mass without water, 1 mg to 5 kg
     * @param water mass of the water in it, 0 to 5 kg
     * @param temperature of the wrap when the run begins, −30 °C to 60 °C
     * @param around where it is, as in {@link #of}
     * @return the wrap, around the whole side
     * @throws IllegalArgumentException as {@link #of}
     */
    public static WetWrap paper(
            Quantity<Length> thickness,
            Quantity<Mass> dryMass,
            Quantity<Mass> water,
            Quantity<Temperature> temperature,
            Surroundings around) {
        return of(Solids.paper(), thickness, dryMass, water, temperature, around);
    }

    /**
     * A close sleeve of unglazed fired clay.
     *
     * @param thickness of its wall, 0.01 mm to 50 mm
     * @param dryMass mass without water, 1 mg to 5 kg
     * @param water mass of the water in it, 0 to 5 kg
     * @param temperature of the sleeve when the run begins, −30 °C to 60 °C
     * @param around where it is, as in {@link #of}
     * @return the sleeve, around the whole side
     * @throws IllegalArgumentException as {@link #of}
     */
    public static WetWrap clay(
            Quantity<Length> thickness,
            Quantity<Mass> dryMass,
            Quantity<Mass> water,
            Quantity<Temperature> temperature,
            Surroundings around) {
        return of(Solids.terracotta(), thickness, dryMass, water, temperature, around);
    }

    /**
     * The same wrap over a part of the side only, from the end on which the vessel stands.
     *
     * @param height 5 mm to 1 m; more than the vessel has is all of it. Of a vessel that lies it counts along the axis
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the height is outside its range
     */
    public WetWrap covering(Quantity<Length> height) {
        return new WetWrap(
                material,
                thicknessM,
                dryKg,
                waterKg,
                startK,
                around,
                gapM,
                OptionalDouble.of(SiValues.lengthM(height, "height that a wrap covers", LOWEST_M, HIGHEST_M)),
                wickedM);
    }

    /**
     * The same wrap with its lower edge in a dish of water that is kept filled. The height that it covers must not be above the vessel's: a
     * run refuses that, for mass and water are shared out by it.
     *
     * @param wickingHeight height up to which the cloth stays wet, 5 mm to 1 m; some 100 mm to 200 mm in cotton cloth (from memory)
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the height is outside its range
     * @throws IllegalArgumentException if there is no water in it, the height that it covers was not stated, or it is in a freezer, where the
     *     dish would freeze
     */
    public WetWrap standingInDish(Quantity<Length> wickingHeight) {
        double height = SiValues.lengthM(wickingHeight, "height to which water rises in a wrap", LOWEST_M, HIGHEST_M);
        if (coveredM.isEmpty()) {
            throw new IllegalArgumentException(
                    "wrap in a dish without a height that it covers: expected that to be stated first, by covering(…)");
        }
        if (waterKg == 0 || around instanceof Freezer) {
            throw new IllegalArgumentException("wrap in a dish with " + waterKg + " kg of water in it, in "
                    + around.getClass().getSimpleName()
                    + ": expected water in it, and no freezer, where the dish would freeze");
        }
        return new WetWrap(
                material, thicknessM, dryKg, waterKg, startK, around, gapM, coveredM, OptionalDouble.of(height));
    }

    /**
     * The same wrap with another gap between wall and wrap; 0.2 mm unless said otherwise.
     *
     * @param width mean width, 0 to 5 mm
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the width is outside its range
     */
    public WetWrap withGap(Quantity<Length> width) {
        return new WetWrap(
                material,
                thicknessM,
                dryKg,
                waterKg,
                startK,
                around,
                SiValues.lengthM(width, "gap between wall and wrap", NARROWEST_GAP_M, WIDEST_GAP_M),
                coveredM,
                wickedM);
    }

    /**
     * How high water stands in a wetted pore (J. Jurin, Phil. Trans. 30 (1718) 739): 2 σ/(ρ g r), at 20 °C, fully wetting. In a cloth
     * it is less, because its pores are of many sizes and evaporation draws water off on the way.
     *
     * @param poreRadius 0.1 µm to 10 mm
     * @return height [m]
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the radius is outside its range
     */
    public static double capillaryHeightM(Quantity<Length> poreRadius) {
        double radius = SiValues.lengthM(poreRadius, "radius of a pore", FINEST_PORE_M, COARSEST_PORE_M);
        return 2 * SURFACE_TENSION / (PorousLayer.WATER_DENSITY * ConvectiveFilm.GRAVITY * radius);
    }

    /**
     * Whether somebody may do something to it in the course of a run.
     *
     * @param tending what is done
     * @return true for water that is poured over a wrap that does not stand in a dish; what it cannot hold runs off
     */
    @Override
    public boolean allows(Tending tending) {
        return tending instanceof Tending.AddWater && fedM() == 0;
    }

    @Override
    public Medium open(String id, double originS) {
        return new WetWrapMedium(id, this, WetAir.open(around, id + " around", originS));
    }

    /**
     * What the description of a wrap assumes.
     *
     * @return constants with their uncertainty
     */
    public static List<Constant> assumptions() {
        return List.of(GAP, DRYING, CONDUCTIVITY);
    }

    Solid material() {
        return material;
    }

    double thicknessM() {
        return thicknessM;
    }

    double dryKg() {
        return dryKg;
    }

    double waterKg() {
        return waterKg;
    }

    double startK() {
        return startK;
    }

    double gapM() {
        return gapM;
    }

    /** Height that it covers [m]; infinite if it covers all. */
    double coveredM() {
        return coveredM.orElse(Double.POSITIVE_INFINITY);
    }

    /** Height that a dish keeps wet [m], at most what is covered; 0 without a dish. */
    double fedM() {
        return Math.min(coveredM(), wickedM.orElse(0));
    }

    /** Emissivity of its outer surface. */
    double emissivity() {
        return (waterKg > 0 ? Solids.wetCotton() : material).emissivity().value();
    }
}
