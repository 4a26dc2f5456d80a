/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * A sleeve that is slipped over a vessel and taken off again: foam, neoprene, felt, in other surroundings.
 *
 * <p><b>What passes heat.</b> The sleeve covers the side of the vessel from the base up to a stated height; there heat passes through
 * the {@linkplain Layer#contactResistance contact} and its layers, which conduct, store heat and start at a temperature of their own: a
 * sleeve that lay in a freezer is a cold one. Its outer surface is a wall in the surroundings outside, of its own area, diameter and
 * emissivity. The neck that sticks out and the ends of the vessel are in the surroundings as without a sleeve.
 *
 * <p>A sleeve that stands off by a gap of air of 1 mm has a contact resistance of about 0.03 m² K/W (k/δ of air and radiation, own
 * estimate); one of neoprene that is stretched over a bottle hardly any. The factor {@link Multipliers#SLEEVE_CONTACT} is on it.
 *
 * <p><b>Limits.</b> As its thickness and contact resistance vanish, with the emissivity of the vessel, it changes nothing; over the whole
 * height and at the vessel's temperature it is what {@code VesselModel.wrappedIn} describes.
 *
 * <p><b>What is simplified.</b> It has six sections along its height; of a vessel that lies it covers the same part of every band; its rim
 * passes nothing; without a vessel its inner side passes nothing; nothing condenses between it and the vessel.
 *
 * <p><b>Caution.</b> A sleeve from a freezer may freeze skin held against it for long.
 *
 * <pre>{@code
 * Sleeve sleeve = Sleeve.around(
 *         bottle, millimetres(200), celsius(22), terrace, Layer.of(Solids.neopreneFoam(), millimetres(4)));
 * }</pre>
 *
 * <p>Immutable.
 */
public final class Sleeve implements Surroundings {

    private static final ValidityRange START = new ValidityRange("temperature of a sleeve", 233.15, 353.15, "K");
    private static final double LEAST_HEIGHT_M = 0.005;
    /** A sleeve gives by as much. */
    private static final double STRETCH = 0.1;

    private final Vessel around;
    private final double heightM;
    private final double startK;
    private final Surroundings outside;
    private final List<Layer> layers;

    private Sleeve(Vessel around, double heightM, double startK, Surroundings outside, List<Layer> layers) {
        this.around = around;
        this.heightM = heightM;
        this.startK = startK;
        this.outside = outside;
        this.layers = layers;
    }

    /**
     * A sleeve that fits a vessel.
     *
     * @param vessel what it fits: a vessel of another shape is refused if its diameter differs by more than a tenth
     * @param height how far up from the base it reaches, 5 mm to the height of the vessel
     * @param temperature its temperature at the start, −40 °C to 80 °C
     * @param outside what it is in: any surroundings but a bath or a running tap
     * @param layers layers from the inside outwards, at least one, not modified
     * @return the sleeve
     * @throws IllegalArgumentException if there is no layer or the surroundings are a bath or a running tap
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Sleeve around(
            Vessel vessel,
            Quantity<Length> height,
            Quantity<Temperature> temperature,
            Surroundings outside,
            Layer... layers) {
        double heightM = SiValues.lengthM(
                height,
                "height of a sleeve",
                LEAST_HEIGHT_M,
                Objects.requireNonNull(vessel, "vessel").profile().heightM());
        double startK = SiValues.temperatureK(temperature, START.quantity(), START.low(), START.high());
        if (Objects.requireNonNull(layers, "layers").length == 0) {
            throw new IllegalArgumentException("no layers of a sleeve: expected at least one");
        }
        for (int i = 0; i < layers.length; i++) {
            Objects.requireNonNull(layers[i], "layer " + (i + 1) + " of a sleeve");
        }
        return new Sleeve(vessel, heightM, startK, DryGear.require("a sleeve", outside), List.of(layers));
    }

    @Override
    public Medium open(String id, double originS) {
        return new SleeveMedium(id, this, outside.open(id + " room", originS));
    }

    /**
     * How far up from the base it reaches.
     *
     * @return height [m]
     */
    public double heightM() {
        return heightM;
    }

    /**
     * What it is made of.
     *
     * @return layers from the inside outwards
     */
    public List<Layer> layers() {
        return layers;
    }

    double startK() {
        return startK;
    }

    Vessel vessel() {
        return around;
    }

    boolean fits(Vessel vessel) {
        double made = around.profile().maxOuterRadiusM();
        return vessel.profile().heightM() >= heightM
                && Math.abs(vessel.profile().maxOuterRadiusM() - made) <= STRETCH * made;
    }

    double thicknessM() {
        return layers.stream().mapToDouble(Layer::thicknessM).sum();
    }
}
