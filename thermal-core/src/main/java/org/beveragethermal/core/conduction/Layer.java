/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.units.SiValues;

/**
 * A layer of conducting material that lies on something: a label, a sleeve, foam.
 *
 * <pre>{@code
 * Layer sleeve = Layer.of(Solids.neopreneFoam(), millimetres(5)).withContactResistance(0.002);
 * }</pre>
 *
 * @param name what it is; not blank
 * @param thicknessM thickness [m], finite, > 0
 * @param conductivity thermal conductivity [W/(m K)], finite, > 0
 * @param volumetricHeatCapacity density times specific heat capacity [J/(m³ K)], finite, > 0
 * @param emissivity emissivity of its outer surface, 0 to 1; counts where no other layer lies on it
 * @param contactResistance resistance between the layer and what is inside it [m² K/W], on the area where they meet, finite,
 *     ≥ 0
 * @param cells number of cells into which its thickness is cut, 1 to 1000
 * @param solarAbsorptance part of sunlight that its outer surface takes up, 0 to 1; counts where no other layer lies on it
 */
public record Layer(
        String name,
        double thicknessM,
        double conductivity,
        double volumetricHeatCapacity,
        double emissivity,
        double contactResistance,
        int cells,
        double solarAbsorptance) {

    /** What a surface of unknown colour takes up of sunlight: white paint about 0.3, black 0.95; own assumption. */
    public static final double USUAL_SOLAR_ABSORPTANCE = 0.7;

    private static final int MOST_CELLS = 1000;
    /** Unless said otherwise a layer answers a step on it within a hundredth of the step from a minute on. */
    private static final double USUAL_SHORTEST_TIME_S = 60;

    private static final double USUAL_RELATIVE_ERROR = 0.01;

    /**
     * Checks the parts.
     *
     * @param name what it is
     * @param thicknessM thickness [m]
     * @param conductivity thermal conductivity [W/(m K)]
     * @param volumetricHeatCapacity density times specific heat capacity [J/(m³ K)]
     * @param emissivity emissivity of its outer surface
     * @param contactResistance resistance to what is inside it [m² K/W]
     * @param cells number of cells
     * @param solarAbsorptance part of sunlight that its outer surface takes up
     * @throws IllegalArgumentException if the name is blank or a number is outside its range
     */
    public Layer {
        if (name.isBlank()) {
            throw new IllegalArgumentException("layer: expected a name, got a blank one");
        }
        requirePositive("thickness of " + name, thicknessM, "m");
        requirePositive("conductivity of " + name, conductivity, "W/(m K)");
        requirePositive("volumetric heat capacity of " + name, volumetricHeatCapacity, "J/(m³ K)");
        if (!(emissivity >= 0 && emissivity <= 1)) {
            throw new IllegalArgumentException("emissivity of " + name + " " + emissivity + ": expected 0 to 1");
        }
        if (!(contactResistance >= 0) || Double.isInfinite(contactResistance)) {
            throw new IllegalArgumentException("contact resistance inside " + name + " " + contactResistance
                    + " m² K/W: expected a finite value ≥ 0");
        }
        if (cells < 1 || cells > MOST_CELLS) {
            throw new IllegalArgumentException("cells of " + name + " " + cells + ": expected 1 to " + MOST_CELLS);
        }
        if (!(solarAbsorptance >= 0 && solarAbsorptance <= 1)) {
            throw new IllegalArgumentException(
                    "solar absorptance of " + name + " " + solarAbsorptance + ": expected 0 to 1");
        }
    }

    /**
     * A layer whose colour is not known: {@link #USUAL_SOLAR_ABSORPTANCE}.
     *
     * @param name what it is
     * @param thicknessM thickness [m]
     * @param conductivity thermal conductivity [W/(m K)]
     * @param volumetricHeatCapacity density times specific heat capacity [J/(m³ K)]
     * @param emissivity emissivity of its outer surface
     * @param contactResistance resistance to what is inside it [m² K/W]
     * @param cells number of cells
     * @throws IllegalArgumentException if the name is blank or a number is outside its range
     */
    public Layer(
            String name,
            double thicknessM,
            double conductivity,
            double volumetricHeatCapacity,
            double emissivity,
            double contactResistance,
            int cells) {
        this(
                name,
                thicknessM,
                conductivity,
                volumetricHeatCapacity,
                emissivity,
                contactResistance,
                cells,
                USUAL_SOLAR_ABSORPTANCE);
    }

    private static void requirePositive(String what, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " " + value + " " + unit + ": expected a finite value above 0");
        }
    }

    /**
     * A layer of a solid in perfect contact with what is inside it, cut so finely that it answers a step of temperature within a
     * hundredth of the step from a minute on.
     *
     * @param solid what it is made of
     * @param thickness its thickness, > 0
     * @return the layer
     * @throws IllegalArgumentException if the thickness is not a finite positive length
     */
    public static Layer of(Solid solid, Quantity<Length> thickness) {
        return of(
                        solid.name(),
                        SiValues.lengthM(thickness, "thickness of " + solid.name()),
                        solid.thermalConductivity().value(),
                        solid.density().value() * solid.specificHeatCapacity().value(),
                        solid.emissivity().value())
                .withSolarAbsorptance(
                        solid.solarAbsorptance().map(Constant::value).orElse(USUAL_SOLAR_ABSORPTANCE));
    }

    /**
     * A layer by its properties, in perfect contact with what is inside it, cut so finely that it answers a step of temperature
     * within a hundredth of the step from a minute on.
     *
     * @param name what it is; not blank
     * @param thicknessM thickness [m], finite, > 0
     * @param conductivity thermal conductivity [W/(m K)], finite, > 0
     * @param volumetricHeatCapacity density times specific heat capacity [J/(m³ K)], finite, > 0
     * @param emissivity emissivity of its outer surface, 0 to 1
     * @return the layer
     * @throws IllegalArgumentException if the name is blank or a number is outside its range
     */
    public static Layer of(
            String name, double thicknessM, double conductivity, double volumetricHeatCapacity, double emissivity) {
        return new Layer(name, thicknessM, conductivity, volumetricHeatCapacity, emissivity, 0, 1)
                .cutFor(USUAL_SHORTEST_TIME_S, USUAL_RELATIVE_ERROR);
    }

    /**
     * The same layer in less perfect contact with what is inside it.
     *
     * @param resistance contact resistance [m² K/W] on the area where they meet, finite, ≥ 0
     * @return a new layer
     * @throws IllegalArgumentException if the resistance is negative or not finite
     */
    public Layer withContactResistance(double resistance) {
        return new Layer(
                name,
                thicknessM,
                conductivity,
                volumetricHeatCapacity,
                emissivity,
                resistance,
                cells,
                solarAbsorptance);
    }

    /**
     * The same layer in another colour.
     *
     * @param absorptance part of sunlight that its outer surface takes up, 0 to 1: white paint about 0.3, black 0.95
     * @return a new layer
     * @throws IllegalArgumentException if the absorptance is outside its range
     */
    public Layer withSolarAbsorptance(double absorptance) {
        return new Layer(
                name,
                thicknessM,
                conductivity,
                volumetricHeatCapacity,
                emissivity,
                contactResistance,
                cells,
                absorptance);
    }

    /**
     * The same layer in another number of cells of equal thickness.
     *
     * @param count number of cells, 1 to 1000
     * @return a new layer
     * @throws IllegalArgumentException if the number is outside its range
     */
    public Layer inCells(int count) {
        return new Layer(
                name,
                thicknessM,
                conductivity,
                volumetricHeatCapacity,
                emissivity,
                contactResistance,
                count,
                solarAbsorptance);
    }

    /**
     * The same layer in as many cells as a wanted error asks for, at most 1000; see {@link LayerStack#cellsFor}.
     *
     * @param shortestTimeS shortest time of interest [s], > 0
     * @param relativeError wanted error as a part of a temperature step, > 0
     * @return a new layer
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public Layer cutFor(double shortestTimeS, double relativeError) {
        double diffusivity = conductivity / volumetricHeatCapacity;
        return inCells(
                Math.min(MOST_CELLS, LayerStack.cellsFor(thicknessM, diffusivity, shortestTimeS, relativeError)));
    }
}
