/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.icemaking;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.SiValues;

/**
 * How far a bag, a mould or a tray may be filled with water so that the ice does not need more room than there is.
 *
 * <p>Ice at 0 °C is what needs most room: colder ice shrinks. The container is taken to keep its volume; plastic that shrinks in the cold
 * by a few parts in a thousand takes that off.
 *
 * @param highestKg most water that may go in [kg]
 * @param highestPart part of the container that this water fills when it is poured [-]
 * @param swellsBy by how much ice at 0 °C has more volume than that water [-]
 */
public record IceFill(double highestKg, double highestPart, double swellsBy) {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double WARMEST_WATER_K = 373.15;

    /**
     * The highest fill.
     *
     * @param container volume inside, 1 mL to 1 m³
     * @param water temperature of the water when it is poured, 0 °C to 100 °C
     * @return mass, part and expansion
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static IceFill of(Quantity<Volume> container, Quantity<Temperature> water) {
        double volume = SiValues.volumeM3(container, "volume of a mould or bag", 1e-6, 1);
        double k = SiValues.temperatureK(water, "temperature of water poured in", ZERO_CELSIUS_K, WARMEST_WATER_K);
        double ratio = Ice.density(ZERO_CELSIUS_K) / Water.liquid().density(k);
        return new IceFill(Ice.density(ZERO_CELSIUS_K) * volume, ratio, 1 / ratio - 1);
    }

    /**
     * What to mind; common practice, no source.
     *
     * @return sentences
     */
    public List<String> cautions() {
        return List.of(
                "Leave a tenth of a bag, bottle or mould free: ice needs a twelfth to a tenth more room than water.",
                "Water freezes from outside inwards; what is shut in last pushes the ice up and cracks it: do not freeze in"
                        + " glass or in anything rigid and closed.",
                "Ice made for a bath of bottles is not for drinks, unless water, mould and hands were clean.",
                "Ice from a freezer sticks to wet skin: handle it with dry gloves or a scoop.");
    }
}
