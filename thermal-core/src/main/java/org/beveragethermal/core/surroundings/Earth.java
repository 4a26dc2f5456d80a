/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.units.HeatTransferCoefficient;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.ThermalConductivity;

/**
 * A hole in the ground for one vessel that stands upright or on its neck: damp earth in a garden, sand on a beach.
 *
 * <p><b>How it is described.</b> A round hole of a diameter and a depth is dug, a vessel is put on its bottom, and what is left of the hole
 * is filled with the same earth, loosely. Without {@linkplain #coveredBy cover} the hole is open at the top: it is filled up to the
 * surface, and what of the vessel is higher stands in the air above. With a cover the whole vessel is below it.
 *
 * <p><b>What passes heat.</b> From the wall across a {@linkplain #withContact contact} of grains and air, through the {@linkplain
 * #withBackfill backfill} between wall and hole, which has no heat capacity of its own, into the ground. The ground conducts and stores
 * heat; its surface exchanges heat with the air above by the films and the radiation of a level plate of 1 m. It
 * starts at a temperature that may depend on the {@linkplain GroundTemperature depth}. Its outer limits, four diffusion
 * depths of thirty days away, pass no heat, so that runs of up to thirty days do not feel them.
 *
 * <p><b>Models.</b> {@link Model#BLOCK} cuts the ground into rings round the axis; {@link Model#FINE_BLOCK} halves them; {@link
 * Model#RADIAL} knows shells round the vessel only and nothing of the surface above. See there for their errors.
 *
 * <p><b>What is not known.</b> Conductivity, by the factor {@link Multipliers#EARTH_CONDUCTION}; contact and backfill, by {@link
 * Multipliers#EARTH_CONTACT}, which are {@linkplain #assumptions assumptions} of ours: grains of sand touch a wall in points, wet clay
 * sticks to it.
 *
 * <p><b>What is simplified.</b> Properties are those of the {@link Solid} at all depths and times: moisture neither moves, dries, nor freezes.
 * Damp ground that dries in the sun or wind is cooler at its surface than said here, ground in the sun warmer; rough ground in wind
 * passes up to twice the heat of a smooth plate (from memory). The ground under the foot of a vessel in an open hole takes part; the
 * top of the backfill passes no heat to the air. A hole with no vessel in it is empty, and its walls pass no heat.
 *
 * <p><b>Cautions.</b> Only closed vessels belong into earth, and one that was buried is washed before it is opened: soil carries germs. A
 * vessel that is dug for with a spade may break.
 *
 * <p>Immutable.
 */
public final class Earth implements Surroundings {

    /** Length of the level plate whose film the surface of the ground has [m]. */
    static final double SURFACE_M = 1;

    /** Distance of the outer limits, in diffusion depths of the longest run. */
    static final double FAR = 4;

    static final double LONGEST_S = 30 * 86_400.0;

    private static final Source OWN =
            new Source("contact-of-earth", "own estimate of earth filled in round a wall", Source.Kind.OWN_ASSUMPTION);

    /**
     * Conductance where earth lies against a wall: 0.25 mm of still air between grains and wall on average, own assumption; from a fifth of
     * it, dry coarse grains, to nearly twice as much, mud, with the backfill beside it.
     */
    static final Constant CONTACT =
            new Constant("contact of earth and wall", 100, "W/(m² K)", Uncertainty.rectangular(80), OWN);

    /**
     * Conductivity of loose backfill over that of the earth as it lies: sand filled loosely has 0.83 of tight sand, dry and wet alike
     * (A. F. Moene, J. C. van Dam 2014, table 2.2), and clay in clods less.
     */
    static final Constant LOOSE =
            new Constant("conductivity of loose over settled earth", 0.7, "1", Uncertainty.rectangular(0.2), OWN);

    private static final double NARROWEST_M = 0.02;
    private static final double WIDEST_M = 1;
    private static final double SHALLOWEST_M = 0.02;
    private static final double DEEPEST_M = 3;
    private static final double THINNEST_COVER_M = 0.005;
    private static final double LEAST_CONTACT = 1e-4;
    private static final double MOST_CONTACT = 1e6;
    private static final double LEAST_CONDUCTIVITY = 0.02;
    private static final double MOST_CONDUCTIVITY = 1e6;

    /** How the ground is described. */
    public enum Model {
        /**
         * Shells round the vessel, each a cylinder with half spheres as its ends: some 30 nodes. They start at the mean temperature of the
         * ground beside the vessel and neither feel the surface above nor have a gradient. Where air and ground have one temperature
         * the drink cools faster than by {@link #BLOCK}, by at most 2 % of its first excess in damp clay and 5 % in dry sand; under air
         * ten kelvins warmer and a cover of 100 mm of clay it is 0.2 K too cold after six hours and 1.4 K after a day.
         */
        RADIAL,
        /**
         * Rings of a block round the axis, some 400 nodes: 0.06 K off its own limit half an hour after a body 12 K warmer is buried, and
         * 0.02 K from two hours on; error of second order in the rings.
         */
        BLOCK,
        /** Rings halved each way, some 1500 nodes, for checks: 0.015 K off half an hour after, 0.006 K from two hours on. */
        FINE_BLOCK
    }

    private final double radiusM;
    private final double topM;
    private final double bottomM;
    private final Solid solid;
    private final GroundTemperature start;
    private final Air above;
    private final double backfill;
    private final double contact;
    private final Model model;

    private Earth(
            double radiusM,
            double topM,
            double bottomM,
            Solid solid,
            GroundTemperature start,
            Air above,
            double backfill,
            double contact,
            Model model) {
        this.radiusM = radiusM;
        this.topM = topM;
        this.bottomM = bottomM;
        this.solid = solid;
        this.start = start;
        this.above = above;
        this.backfill = backfill;
        this.contact = contact;
        this.model = model;
    }

    /**
     * A hole that is open at the top, in ground of one temperature.
     *
     * @param diameter diameter of the hole, 20 mm to 1 m; no less than that of the vessel
     * @param depth depth of its bottom below the surface, 20 mm to 3 m; no more than the vessel is high
     * @param earth what the ground is made of, such as {@code Solids.dampClay()} or {@code Soil.sand().moist(percent(8))}
     * @param temperature temperature of the ground at the start, −20 °C to 70 °C
     * @param above the air above, which also takes the part of the vessel that sticks out
     * @return the hole
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Earth hole(
            Quantity<Length> diameter,
            Quantity<Length> depth,
            Solid earth,
            Quantity<Temperature> temperature,
            Air above) {
        return hole(diameter, depth, earth, GroundTemperature.of(temperature), above);
    }

    /**
     * A hole that is open at the top, in ground whose temperature depends on the depth.
     *
     * @param diameter diameter of the hole, 20 mm to 1 m; no less than that of the vessel
     * @param depth depth of its bottom below the surface, 20 mm to 3 m; no more than the vessel is high
     * @param earth what the ground is made of
     * @param start temperature of the undisturbed ground, taken at the start; afterwards the air above and the depth rule
     * @param above the air above, which also takes the part of the vessel that sticks out
     * @return the hole
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Earth hole(
            Quantity<Length> diameter, Quantity<Length> depth, Solid earth, GroundTemperature start, Air above) {
        double bottom = SiValues.lengthM(depth, "depth of a hole", SHALLOWEST_M, DEEPEST_M);
        double across = SiValues.lengthM(diameter, "diameter of a hole", NARROWEST_M, WIDEST_M);
        return new Earth(
                0.5 * across,
                0,
                bottom,
                Objects.requireNonNull(earth, "earth"),
                Objects.requireNonNull(start, "start"),
                Objects.requireNonNull(above, "above"),
                LOOSE.value() * earth.thermalConductivity().value(),
                CONTACT.value(),
                Model.BLOCK);
    }

    /**
     * The same hole covered with earth: from the bottom up to the cover it holds the vessel, which must not be higher.
     *
     * @param thickness thickness of the cover, from 5 mm to 20 mm less than the depth of the hole; in a hole of less than 25 mm, 5 mm
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the thickness is outside its range
     */
    public Earth coveredBy(Quantity<Length> thickness) {
        double cover = SiValues.lengthM(
                thickness, "cover of earth", THINNEST_COVER_M, Math.max(THINNEST_COVER_M, bottomM - SHALLOWEST_M));
        return new Earth(radiusM, cover, bottomM, solid, start, above, backfill, contact, model);
    }

    /**
     * The same hole filled up with something else round the vessel; 0.7 times the conductivity of the earth unless said otherwise.
     *
     * @param conductivity thermal conductivity of what lies between vessel and hole, 0.02 to 1e6 W/(m K)
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the conductivity is outside its range
     */
    public Earth withBackfill(Quantity<ThermalConductivity> conductivity) {
        double fill = SiValues.thermalConductivity(
                conductivity, "conductivity of the backfill", LEAST_CONDUCTIVITY, MOST_CONDUCTIVITY);
        return new Earth(radiusM, topM, bottomM, solid, start, above, fill, contact, model);
    }

    /**
     * The same hole with another contact of backfill and vessel; 100 W/(m² K) unless said otherwise.
     *
     * @param coefficient conductance per area where earth lies against the wall, 1e-4 to 1e6 W/(m² K)
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the coefficient is outside its range
     */
    public Earth withContact(Quantity<HeatTransferCoefficient> coefficient) {
        double touching = SiValues.heatTransferCoefficient(
                coefficient, "contact of earth and vessel", LEAST_CONTACT, MOST_CONTACT);
        return new Earth(radiusM, topM, bottomM, solid, start, above, backfill, touching, model);
    }

    /**
     * The same hole with the ground described otherwise.
     *
     * @param newModel the description; {@link Model#BLOCK} unless said otherwise
     * @return a new value
     */
    public Earth withModel(Model newModel) {
        return new Earth(
                radiusM,
                topM,
                bottomM,
                solid,
                start,
                above,
                backfill,
                contact,
                Objects.requireNonNull(newModel, "model"));
    }

    @Override
    public Medium open(String id, double originS) {
        return new EarthMedium(id, this, originS);
    }

    /**
     * How the ground is described.
     *
     * @return the model
     */
    public Model model() {
        return model;
    }

    /**
     * Thermal diffusivity of the ground.
     *
     * @return conductivity over volumetric heat capacity [m²/s]
     */
    public double diffusivity() {
        return conductivity() / volumetricHeatCapacity();
    }

    double conductivity() {
        return solid.thermalConductivity().value();
    }

    double volumetricHeatCapacity() {
        return solid.density().value() * solid.specificHeatCapacity().value();
    }

    /** Temperature of the undisturbed ground at a depth when the run starts [K]. */
    double startK(double depthM, double originS) {
        return start.temperatureK(depthM, originS, diffusivity());
    }

    GroundTemperature start() {
        return start;
    }

    Solid solid() {
        return solid;
    }

    double radiusM() {
        return radiusM;
    }

    /** Depth at which the hole begins: 0 if it is open [m]. */
    double topM() {
        return topM;
    }

    double bottomM() {
        return bottomM;
    }

    Air above() {
        return above;
    }

    double backfill() {
        return backfill;
    }

    double contact() {
        return contact;
    }

    /** How far away the outer limits lie [m]. */
    double farM() {
        return FAR * Math.sqrt(diffusivity() * LONGEST_S);
    }

    /** Refuses a vessel that does not fit into the hole. */
    void requireFits(String id, Occupant vessel, double diameterM) {
        if (vessel.posture() == Posture.LYING) {
            throw new IllegalArgumentException("vessel " + vessel.id() + " in hole " + id
                    + ": it lies; expected one that stands upright or on its neck");
        }
        if (vessel.vessel().isOpen()) {
            throw new IllegalArgumentException("vessel " + vessel.id() + " in hole " + id
                    + ": it is open and earth would fall into it; expected a closed one");
        }
        new ValidityRange("diameter of vessel " + vessel.id() + " in hole " + id, 0, 2 * radiusM, "m")
                .require(diameterM, "diameter of the hole");
        String height = "height of vessel " + vessel.id() + " in hole " + id;
        if (topM > 0) {
            new ValidityRange(height, 0, bottomM - topM, "m").require(vessel.heightM(), "room below the cover");
        } else {
            new ValidityRange(height, bottomM, Double.MAX_VALUE, "m")
                    .require(vessel.heightM(), "depth of an open hole; one that is deeper takes a cover");
        }
    }

    /**
     * What the description of the hole assumes: contact and looseness of what is filled in.
     *
     * @return constants with their uncertainty
     */
    public static List<Constant> assumptions() {
        return List.of(CONTACT, LOOSE);
    }
}
