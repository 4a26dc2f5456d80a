/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.SiValues;

/**
 * A pot of unglazed fired clay, soaked with water, in which one vessel stands with air between: it cools as it dries outside.
 *
 * <p><b>What happens.</b> The outer side of the pot evaporates and takes up dew as a {@link WetWrap} does, in still air or in a breeze, and
 * exchanges heat by convection and radiation. Heat from the vessel crosses the gap by convection, never less than conduction through the
 * ring of air, and by radiation, and then the wall of the pot, which conducts the worse the drier it is. The water is that of the pores;
 * when it has gone the pot insulates. What of the vessel stands above the rim, and its upper end, stand in the air around.
 *
 * <pre>{@code
 * PorousPot pot = PorousPot.soaked(millimetres(110), millimetres(220), millimetres(10), celsius(20), terrace);
 * }</pre>
 *
 * <p><b>What is assumed.</b> {@link #assumptions}: how much water the pores take up, how the bottom of the vessel meets that of the pot. The
 * law of the gap is that of a tall upright layer of air ({@link org.beveragethermal.core.correlation.VerticalLayer}); the ring is open at the top, and what air
 * it exchanges there is left out. The pot stands on something that insulates; wind does not reach into the gap. The inside of the pot is
 * taken not to evaporate: the air of the gap is soon saturated.
 *
 * <p><b>Cautions.</b> Water that stands in pores grows moulds: dry and air the pot between uses. In frost a soaked pot bursts; it is refused in
 * a freezer.
 *
 * <p>Immutable. One vessel at a time; a second one, or one that does not fit or lies, is refused when the run is made.
 *
 * <p>Theory manual, equation (4.7).
 */
public final class PorousPot implements Surroundings {

    private static final Source OWN =
            new Source("porous-pot", "own estimate of a vessel in a pot of fired clay", Source.Kind.OWN_ASSUMPTION);

    /** Water that soaked clay holds, by volume: absorption of bricks, Cabeza-Prieto et al., Materials 15 (2022) 4001. */
    static final Constant SOAKED = new Constant(
            "volume fraction of water in a soaked pot",
            0.22,
            "1",
            Uncertainty.rectangular(0.05),
            new Source(
                    "cabeza-prieto-2022",
                    "A. Cabeza-Prieto et al., Materials 15 (2022) 4001, water absorption of bricks",
                    Source.Kind.PUBLISHED));

    /** Mean width of the air between the base of the vessel and the bottom of the pot. */
    static final Constant UNDER =
            new Constant("air between base and bottom of a pot", 0.5e-3, "m", Uncertainty.rectangular(0.4e-3), OWN);

    /** Part of its soaked water below which the surface of a pot is no longer wet all over. */
    static final Constant DRYING = new Constant(
            "water at which a pot begins to dry, of what it holds", 0.3, "1", Uncertainty.rectangular(0.2), OWN);

    private static final double NARROWEST_M = 0.03;
    private static final double WIDEST_M = 0.5;
    private static final double LOWEST_M = 0.03;
    private static final double HIGHEST_M = 1;
    private static final double THINNEST_M = 0.003;
    private static final double THICKEST_M = 0.05;
    private static final double COLDEST_K = 273.15;
    private static final double WARMEST_K = 333.15;

    private final double innerDiameterM;
    private final double heightM;
    private final double wallM;
    private final double startK;
    private final Surroundings around;
    private final double soakedPart;

    private PorousPot(
            double innerDiameterM,
            double heightM,
            double wallM,
            double startK,
            Surroundings around,
            double soakedPart) {
        this.innerDiameterM = innerDiameterM;
        this.heightM = heightM;
        this.wallM = wallM;
        this.startK = startK;
        this.around = around;
        this.soakedPart = soakedPart;
    }

    /**
     * A round pot whose pores are full of water.
     *
     * @param innerDiameter 30 mm to 500 mm
     * @param height inside, 30 mm to 1 m
     * @param wall thickness of side and bottom, 3 mm to 50 mm
     * @param temperature of the pot when the run begins, 0 °C to 60 °C
     * @param around where it stands: {@link Air} or a {@link Refrigerator}, with a stated humidity
     * @return the pot
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     * @throws IllegalArgumentException if there is something else than air around it, its humidity is not stated, or it is a freezer
     */
    public static PorousPot soaked(
            Quantity<Length> innerDiameter,
            Quantity<Length> height,
            Quantity<Length> wall,
            Quantity<Temperature> temperature,
            Surroundings around) {
        if (around instanceof Freezer) {
            throw new IllegalArgumentException(
                    "a soaked pot in a freezer: expected air above 0 °C, because frost bursts it");
        }
        WetAir.require("a soaked pot", around, true);
        return new PorousPot(
                SiValues.lengthM(innerDiameter, "inner diameter of a pot", NARROWEST_M, WIDEST_M),
                SiValues.lengthM(height, "height of a pot", LOWEST_M, HIGHEST_M),
                SiValues.lengthM(wall, "wall of a pot", THINNEST_M, THICKEST_M),
                SiValues.temperatureK(temperature, "temperature of a pot", COLDEST_K, WARMEST_K),
                around,
                1);
    }

    /**
     * The same pot, its pores filled in part.
     *
     * @param part of the water that they hold, 0 to 100 %; at 0 it is a dry pot
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the part is outside its range
     */
    public PorousPot filledTo(Quantity<Dimensionless> part) {
        return new PorousPot(
                innerDiameterM,
                heightM,
                wallM,
                startK,
                around,
                SiValues.fraction(part, "part of a pot's pores filled with water", 0, 1));
    }

    /**
     * Whether somebody may do something to it in the course of a run.
     *
     * @param tending what is done
     * @return true for water that is poured over the pot; what its pores cannot hold runs off
     */
    @Override
    public boolean allows(Tending tending) {
        return tending instanceof Tending.AddWater;
    }

    @Override
    public Medium open(String id, double originS) {
        return new PorousPotMedium(id, this, WetAir.open(around, id + " around", originS));
    }

    /**
     * Water in the pores of the side at the start; that of the bottom is not counted, because the pot stands on it.
     *
     * @return mass [kg]
     */
    public double waterKg() {
        return soakedPart * mostWaterKg();
    }

    /**
     * What the description of a pot assumes.
     *
     * @return constants with their uncertainty
     */
    public static List<Constant> assumptions() {
        return List.of(SOAKED, UNDER, DRYING);
    }

    double mostWaterKg() {
        return SOAKED.value() * PorousLayer.WATER_DENSITY * wallVolumeM3();
    }

    /** Volume of the side [m³]. */
    double wallVolumeM3() {
        return Math.PI * (innerDiameterM + wallM) * wallM * heightM;
    }

    /** Area of the middle of the side [m²]. */
    double middleAreaM2() {
        return Math.PI * (innerDiameterM + wallM) * heightM;
    }

    double outerAreaM2() {
        return Math.PI * outerDiameterM() * heightM;
    }

    double outerDiameterM() {
        return innerDiameterM + 2 * wallM;
    }

    double innerDiameterM() {
        return innerDiameterM;
    }

    double heightM() {
        return heightM;
    }

    double wallM() {
        return wallM;
    }

    double startK() {
        return startK;
    }

    /** What it is made of, dry. */
    static Solid clay() {
        return Solids.terracotta();
    }
}
