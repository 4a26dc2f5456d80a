/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.LatentSolid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.HeatTransferCoefficient;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;

/**
 * Frozen gel packs laid around a vessel that stands or lies in a room: bags or flat bottles of something that melts below or about
 * 0 °C.
 *
 * <p><b>What passes heat.</b> Packs lie against a part of the side of every vessel among them; there heat passes from the pack's mean
 * temperature through half its thickness, frozen or thawed, through the bag and across a gap of air, which conducts and radiates. The
 * rest of the side, and the ends, stand in the air of the room as without packs. The side of the packs that looks away from the vessel
 * takes heat from the room, through a {@linkplain #withCover cover} if there is one. Packs go on melting when no vessel is among
 * them, and two vessels share them.
 *
 * <p><b>What is not known.</b> How much of the wall the packs touch (estimated from their faces unless it is {@linkplain
 * #touching given}), and how wide the gap is: bags frozen flat meet a round wall along strips, soft ones nearly everywhere. Both are
 * {@linkplain #assumptions assumptions} of ours; times to a temperature are good to a factor of two. The factor {@link
 * Multipliers#PACK_CONTACT} shows what the contact does to a prediction.
 *
 * <p><b>What is simplified.</b> All packs have one temperature and melt evenly, also where they touch nothing; they keep their thickness
 * and their contact while they soften; the touched part is spread evenly along the side of the vessel, neck and body alike; faces that
 * touch no wall face one another and pass nothing; narrow sides are left out; what freezes again does so where it melted.
 *
 * <p><b>Cautions.</b> A bag that leaks must not come into contact with drinks or the mouths of bottles: what is in it is not food; wash
 * what it wetted. Packs straight from a freezer freeze skin that touches them for long. Packs far below 0 °C can freeze a
 * drink at the wall, and a full closed vessel may burst.
 *
 * <p>Immutable.
 *
 * <p>Theory manual, equation (6.5).
 */
public final class GelPacks implements Surroundings {

    private static final Source OWN =
            new Source("contact-of-packs", "own estimate of bags beside a round wall", Source.Kind.OWN_ASSUMPTION);

    /** Part of the faces of the packs on the vessel's side that lies against a wall; the rest folds, overlaps or juts out. */
    static final Constant LYING_AGAINST =
            new Constant("part of the faces of packs against a wall", 0.7, "1", Uncertainty.rectangular(0.2), OWN);

    /** Mean width of the air between bag and wall where a pack lies against it. */
    static final Constant GAP =
            new Constant("gap between pack and wall", 0.5e-3, "m", Uncertainty.rectangular(0.4e-3), OWN);

    /** Resistance of the bag: 0.15 mm of polyethylene with 0.4 W/(m K), figures from memory. */
    static final Constant BAG =
            new Constant("resistance of a pack's bag", 4e-4, "m² K/W", Uncertainty.rectangular(2e-4), OWN);

    private static final int MOST_PACKS = 1000;
    private static final double LEAST_KG = 0.01;
    private static final double MOST_KG = 20;
    private static final double THINNEST_M = 0.003;
    private static final double THICKEST_M = 0.2;
    private static final double NARROWEST_GAP_M = 1e-5;
    private static final double WIDEST_GAP_M = 0.02;
    private static final double LEAST_COVER = 0.05;
    private static final double MOST_COVER = 1000;

    private final int count;
    private final double eachKg;
    private final double thicknessM;
    private final double startK;
    private final Air room;
    private final LatentSolid material;
    /** Part of the side that is touched; NaN if it is estimated. */
    private final double share;

    private final double gapM;
    /** Coefficient of the cover [W/(m² K)]; infinite without one. */
    private final double cover;

    private GelPacks(
            int count,
            double eachKg,
            double thicknessM,
            double startK,
            Air room,
            LatentSolid material,
            double share,
            double gapM,
            double cover) {
        this.count = count;
        this.eachKg = eachKg;
        this.thicknessM = thicknessM;
        this.startK = startK;
        this.room = room;
        this.material = material;
        this.share = share;
        this.gapM = gapM;
        this.cover = cover;
    }

    /**
     * Packs of {@link Solids#gelPack()}, flat and square.
     *
     * @param count how many, 1 to 1000
     * @param each mass of a pack, 10 g to 20 kg
     * @param thickness how thick a pack is, 3 mm to 200 mm and no more than it is wide; its area follows from mass and density
     * @param temperature temperature of all packs at the start, −30 °C to 60 °C
     * @param room where they lie
     * @return the packs
     * @throws IllegalArgumentException if the count is outside its range
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static GelPacks of(
            int count, Quantity<Mass> each, Quantity<Length> thickness, Quantity<Temperature> temperature, Air room) {
        return of(count, each, thickness, temperature, room, Solids.gelPack());
    }

    /**
     * Packs of something else that melts over a range of temperatures, flat and square.
     *
     * @param count how many, 1 to 1000
     * @param each mass of a pack, 10 g to 20 kg
     * @param thickness how thick a pack is, 3 mm to 200 mm and no more than it is wide; its area follows from mass and density
     * @param temperature temperature of all packs at the start, in the range of the material
     * @param room where they lie
     * @param material what they are filled with
     * @return the packs
     * @throws IllegalArgumentException if the count is outside its range
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static GelPacks of(
            int count,
            Quantity<Mass> each,
            Quantity<Length> thickness,
            Quantity<Temperature> temperature,
            Air room,
            LatentSolid material) {
        if (count < 1 || count > MOST_PACKS) {
            throw new IllegalArgumentException(count + " gel packs: expected 1 to " + MOST_PACKS);
        }
        double kg = SiValues.massKg(each, "mass of a gel pack", LEAST_KG, MOST_KG);
        double thick = SiValues.lengthM(thickness, "thickness of a gel pack", THINNEST_M, THICKEST_M);
        ValidityRange range = material.temperatures();
        double kelvin = SiValues.temperatureK(temperature, "temperature of gel packs", range.low(), range.high());
        GelPacks packs = new GelPacks(
                count,
                kg,
                thick,
                kelvin,
                Objects.requireNonNull(room, "room"),
                material,
                Double.NaN,
                GAP.value(),
                Double.POSITIVE_INFINITY);
        new ValidityRange("thickness of a gel pack", THINNEST_M, packs.sideM(), "m")
                .require(thick, "side of a square pack of that mass");
        return packs;
    }

    /**
     * A gel wrap: one soft pack of {@link Solids#gelPack()} laid around the side of one vessel, all of its face against the wall.
     *
     * @param mass mass of the gel, 10 g to 20 kg
     * @param thickness how thick it is, 3 mm to 200 mm and no more than a square of that mass is wide
     * @param temperature its temperature at the start, −30 °C to 60 °C
     * @param room where it is
     * @return the wrap; a cover and another gap may be stated
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static GelPacks wrap(
            Quantity<Mass> mass, Quantity<Length> thickness, Quantity<Temperature> temperature, Air room) {
        return of(1, mass, thickness, temperature, room).touching(Measures.percent(100));
    }

    /**
     * The same packs with a stated contact.
     *
     * @param part part of the side of every vessel among them that they lie against, 0 to 100 %; never more than their faces reach
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the part is outside its range
     */
    public GelPacks touching(Quantity<Dimensionless> part) {
        double newShare = SiValues.fraction(part, "part of the wall that gel packs touch", 0, 1);
        return new GelPacks(count, eachKg, thicknessM, startK, room, material, newShare, gapM, cover);
    }

    /**
     * The same packs with another gap of air between bag and wall; 0.5 mm unless said otherwise.
     *
     * @param width mean width where they lie against the wall, 0.01 mm to 20 mm
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the width is outside its range
     */
    public GelPacks withGap(Quantity<Length> width) {
        double newGap = SiValues.lengthM(width, "gap between gel packs and wall", NARROWEST_GAP_M, WIDEST_GAP_M);
        return new GelPacks(count, eachKg, thicknessM, startK, room, material, share, newGap, cover);
    }

    /**
     * The same packs under an insulating cover, such as the wall of a box or a bag around them: it lies between the outer faces of the
     * packs and the room. What of a vessel the packs do not touch stands in the room all the same.
     *
     * @param coefficient heat per area and kelvin through the cover alone, 0.05 to 1000 W/(m² K); 20 mm of foam give about 1.7
     *     (k/δ with 0.035 W/(m K), from memory)
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the coefficient is outside its range
     */
    public GelPacks withCover(Quantity<HeatTransferCoefficient> coefficient) {
        double newCover = SiValues.heatTransferCoefficient(
                coefficient, "coefficient of a cover around gel packs", LEAST_COVER, MOST_COVER);
        return new GelPacks(count, eachKg, thicknessM, startK, room, material, share, gapM, newCover);
    }

    @Override
    public Medium open(String id, double originS) {
        return new GelPacksMedium(id, this, originS);
    }

    /**
     * All packs together.
     *
     * @return mass [kg]
     */
    public double massKg() {
        return count * eachKg;
    }

    /**
     * Area of the faces on one side of all packs together.
     *
     * @return area [m²]
     */
    public double faceAreaM2() {
        return massKg() / (material.frozen().density().value() * thicknessM);
    }

    /**
     * What the packs are filled with.
     *
     * @return the material
     */
    public LatentSolid material() {
        return material;
    }

    /**
     * Part of the side of vessels that the packs lie against.
     *
     * @param sideAreaM2 outer area of the sides of all vessels among them [m²], finite, > 0
     * @return the part given, or the estimate; never more than the faces of the packs reach [-]
     * @throws IllegalArgumentException if the area is not finite and positive
     */
    public double touchedShare(double sideAreaM2) {
        if (!(sideAreaM2 > 0) || Double.isInfinite(sideAreaM2)) {
            throw new IllegalArgumentException(
                    "side area of vessels " + sideAreaM2 + " m²: expected a finite value above 0");
        }
        double reach = faceAreaM2() / sideAreaM2;
        return Math.min(1, Double.isNaN(share) ? LYING_AGAINST.value() * reach : Math.min(share, reach));
    }

    double sideM() {
        return Math.sqrt(faceAreaM2() / count);
    }

    /** Girth of all packs side by side [m]. */
    double girthM() {
        return count * sideM();
    }

    double thicknessM() {
        return thicknessM;
    }

    double startK() {
        return startK;
    }

    Air room() {
        return room;
    }

    double gapM() {
        return gapM;
    }

    double cover() {
        return cover;
    }

    /** Whether the contact was given as more than the faces of the packs reach. */
    boolean asksTooMuch(double sideAreaM2) {
        return share * sideAreaM2 > faceAreaM2();
    }

    /**
     * Sources of what the description of gel packs assumes: the part of their faces that lies against a wall, the gap, the bag.
     *
     * @return constants with their uncertainty; those of what is in the packs stand in {@link #material()}
     */
    public static List<Constant> assumptions() {
        return List.of(LYING_AGAINST, GAP, BAG);
    }
}
