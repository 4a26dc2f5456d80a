/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.util.Optional;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.service.target.DrinkStyle;
import org.beveragethermal.service.target.RangePolicy;

/**
 * A drink on the list: some bottles alike, standing together.
 *
 * @param id identifier, unique in the scenario
 * @param name name for people
 * @param style its style, which says in what range it is served
 * @param vessel the bottle it is in
 * @param strengthByVolume alcoholic strength by volume at 20 °C [1]; within 0 to 0.6, as its style allows
 * @param temperatureK its temperature at the start [K]; within -10 °C to 45 °C, and not below where it begins to freeze
 * @param placeId the place or refrigerator in which it is at the start
 * @param count number of bottles; at least 1
 * @param ownRange a serving range of its own instead of the style's, if there is one
 */
public record Drink(
        String id,
        String name,
        DrinkStyle style,
        VesselKind vessel,
        double strengthByVolume,
        double temperatureK,
        String placeId,
        int count,
        Optional<RangePolicy.OwnRange> ownRange) {
    /**
     * A drink from its parts.
     *
     * @param id identifier, unique in the scenario
     * @param name name for people
     * @param style its style, which says in what range it is served
     * @param vessel the bottle it is in
     * @param strengthByVolume alcoholic strength by volume at 20 °C [1]; within 0 to 0.6, as its style allows
     * @param temperatureK its temperature at the start [K]; within -10 °C to 45 °C, and not below where it begins to freeze
     * @param placeId the place or refrigerator in which it is at the start
     * @param count number of bottles; at least 1
     * @param ownRange a serving range of its own instead of the style's, if there is one
     * @throws IllegalArgumentException if the strength, the temperature or the count lies outside its range, or no drink of
     *     the style has such a strength
     */
    public Drink {
        Limit.STRENGTH.requireSi(strengthByVolume);
        Limit.DRINK.requireSi(temperatureK);
        double onsetK = beverage(style, strengthByVolume).freezingOnsetK();
        if (temperatureK < onsetK) {
            throw new IllegalArgumentException("drink temperature " + Decimal.celsius(temperatureK)
                    + ": expected at least " + Decimal.celsius(onsetK) + ", where it begins to freeze");
        }
        if (count < 1) {
            throw new IllegalArgumentException("count " + count + ": expected at least 1");
        }
    }

    /**
     * What is in the bottle.
     *
     * @return a drink of the style and the strength: beer for a style of beer, water for one of water
     */
    public Beverage beverage() {
        return beverage(style, strengthByVolume);
    }

    static Beverage beverage(DrinkStyle style, double strengthByVolume) {
        return style.drink(Measures.percentByVolume(100.0 * strengthByVolume));
    }
}
