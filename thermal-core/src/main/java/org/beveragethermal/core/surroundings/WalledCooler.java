/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.units.HeatTransferCoefficient;
import org.beveragethermal.materials.units.SiValues;

/**
 * An upright round cooler, open at the top, in which one bottle stands with air around it: double-walled, or of one heavy wall that
 * was chilled before.
 *
 * <p><b>What passes heat.</b> Across the gap between vessel and wall: convection of an upright layer of air between them ({@link
 * org.beveragethermal.core.correlation.VerticalLayer#elSherbiny(double)}, scatter 10 %, on the mean width of the gap beside each part of the
 * vessel, with the curvature of conduction through an annulus; factor {@link Multipliers#GAP_FILM}, because a bottle hardly ever stands in
 * the middle) and radiation between concentric cylinders. Through the wall's layers, which start at a temperature of their own. Outside:
 * the air of the room, on the height and diameter of the cooler. What sticks out of the cooler is in the room.
 *
 * <p><b>The open top.</b> Cold air in the gap is stable under the room's: it takes a little from the room by its own small circulation,
 * {@linkplain #assumptions assumed} 5 W/(m² K) of the opening. If what is inside is warmer than the room, the gap overturns and
 * exchanges air with the room by Q = 0.055 √(D⁵ g Δρ/ρ) per opening of the width D (M. Epstein, J. Heat Transfer 110 (1988) 885, from
 * memory), here on twice the width of the gap. Half of either reaches the vessel, half the wall, and it is spread evenly over the height.
 * The factor {@link Multipliers#OPEN_TOP} is on both.
 *
 * <p><b>What is simplified.</b> The bottle stands in the middle; its base touches the floor across a contact of 20 W/(m² K) ({@linkplain
 * #assumptions assumed}), and the floor goes along with the lowest part of the wall and has no mass of its own; the outside of the floor,
 * and the rim, pass nothing; without a bottle the inside of the wall passes nothing; nothing condenses in the gap. A vessel that lies is
 * refused.
 *
 * <p>Immutable.
 *
 * <p>Theory manual, equation (4.9).
 */
public final class WalledCooler implements Surroundings {

    private static final Source OWN =
            new Source("open-cooler", "own estimate of a gap open at the top", Source.Kind.OWN_ASSUMPTION);

    /** What the room gives to a gap of colder air through its opening; the circulation in a gap of 10 mm carries about as much. */
    static final Constant STABLE_TOP =
            new Constant("coefficient of the opening above cold air", 5, "W/(m² K)", Uncertainty.rectangular(5), OWN);

    /** Between the base of a vessel and the floor of a cooler. */
    static final Constant FLOOR =
            new Constant("contact with the floor of a cooler", 20, "W/(m² K)", Uncertainty.rectangular(15), OWN);

    private static final ValidityRange START = new ValidityRange("temperature of a cooler", 233.15, 353.15, "K");
    private static final double NARROWEST_M = 0.03;
    private static final double WIDEST_M = 0.5;
    private static final double LOWEST_M = 0.02;
    private static final double HIGHEST_M = 1;

    private final double innerDiameterM;
    private final double heightM;
    private final double startK;
    private final Air room;
    private final List<Layer> layers;

    private WalledCooler(double innerDiameterM, double heightM, double startK, Air room, List<Layer> layers) {
        this.innerDiameterM = innerDiameterM;
        this.heightM = heightM;
        this.startK = startK;
        this.room = room;
        this.layers = layers;
    }

    /**
     * A cooler of stated layers; one heavy layer of metal that starts cold is a pre-chilled cooler.
     *
     * @param innerDiameter inner diameter, 30 mm to 500 mm
     * @param height inner height, 20 mm to 1 m
     * @param temperature its temperature at the start, −40 °C to 80 °C
     * @param room where it stands
     * @param layers layers of its wall from the inside outwards, at least one, not modified; the emissivity of the first is also that of
     *     its inner surface, and a contact resistance of the first is refused: air is inside it
     * @return the cooler
     * @throws IllegalArgumentException if there is no layer or the first has a contact resistance
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static WalledCooler of(
            Quantity<Length> innerDiameter,
            Quantity<Length> height,
            Quantity<Temperature> temperature,
            Air room,
            Layer... layers) {
        double diameterM = SiValues.lengthM(innerDiameter, "inner diameter of a cooler", NARROWEST_M, WIDEST_M);
        double heightM = SiValues.lengthM(height, "height of a cooler", LOWEST_M, HIGHEST_M);
        double startK = SiValues.temperatureK(temperature, START.quantity(), START.low(), START.high());
        if (Objects.requireNonNull(layers, "layers").length == 0) {
            throw new IllegalArgumentException("no layers of a cooler: expected at least one");
        }
        for (int i = 0; i < layers.length; i++) {
            Objects.requireNonNull(layers[i], "layer " + (i + 1) + " of a cooler");
        }
        if (layers[0].contactResistance() != 0) {
            throw new IllegalArgumentException("contact resistance of the innermost layer of a cooler "
                    + layers[0].contactResistance() + " m² K/W: expected 0, the air of the gap is inside it");
        }
        return new WalledCooler(diameterM, heightM, startK, Objects.requireNonNull(room, "room"), List.of(layers));
    }

    /**
     * A cooler of two walls of one thickness with something between them that insulates.
     *
     * @param innerDiameter inner diameter, 30 mm to 500 mm
     * @param height inner height, 20 mm to 1 m
     * @param wall what both walls are made of
     * @param thickness thickness of each wall, finite, > 0, as of any {@link Layer}
     * @param between heat per area and kelvin between the walls, 0.01 to 1000 W/(m² K); 10 mm of still air some 7 W/(m² K) with radiation between plastic
     *     walls, a vacuum between polished steel about 0.5 W/(m² K) (k/δ and 4 ε σ T³, own estimates)
     * @param temperature its temperature at the start, −40 °C to 80 °C
     * @param room where it stands
     * @return the cooler
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static WalledCooler doubleWalled(
            Quantity<Length> innerDiameter,
            Quantity<Length> height,
            Solid wall,
            Quantity<Length> thickness,
            Quantity<HeatTransferCoefficient> between,
            Quantity<Temperature> temperature,
            Air room) {
        double coefficient = SiValues.heatTransferCoefficient(between, "coefficient between the walls", 0.01, 1000);
        Layer one = Layer.of(wall, thickness);
        return of(innerDiameter, height, temperature, room, one, one.withContactResistance(1 / coefficient));
    }

    @Override
    public Medium open(String id, double originS) {
        return new WalledCoolerMedium(id, this, originS);
    }

    /**
     * Heat capacity of its wall.
     *
     * @return heat capacity [J/K]
     */
    public double heatCapacityJPerK() {
        double radius = 0.5 * innerDiameterM;
        double sum = 0;
        for (Layer layer : layers) {
            double outer = radius + layer.thicknessM();
            sum += layer.volumetricHeatCapacity() * Math.PI * heightM * (outer * outer - radius * radius);
            radius = outer;
        }
        return sum;
    }

    /**
     * Sources of what the description assumes.
     *
     * @return constants with their uncertainty
     */
    public static List<Constant> assumptions() {
        return List.of(STABLE_TOP, FLOOR);
    }

    double innerDiameterM() {
        return innerDiameterM;
    }

    double outerDiameterM() {
        return innerDiameterM
                + 2 * layers.stream().mapToDouble(Layer::thicknessM).sum();
    }

    double heightM() {
        return heightM;
    }

    double startK() {
        return startK;
    }

    Air room() {
        return room;
    }

    List<Layer> layers() {
        return layers;
    }
}
