/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.List;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Brine;
import org.beveragethermal.materials.liquid.SucroseSolution;
import org.beveragethermal.materials.liquid.Water;

/** What the book contains. The drinks are examples: any strength and sugar can be had. */
final class Contents {

    private Contents() {}

    static List<Page> pages() {
        return List.of(
                LiquidPages.of("water", "IAPWS, from supercooled to just above boiling", Water.liquid()),
                LiquidPages.of("brine-10", "what salted ice melts into", Brine.ofMassFraction(0.10)),
                LiquidPages.of("brine-20", "close to the eutectic", Brine.ofMassFraction(0.20)),
                LiquidPages.of("sucrose-10", "sugar and water", SucroseSolution.ofMassFraction(0.10)),
                LiquidPages.of("wine-12", "ethanol and water only", Beverage.wine(percentByVolume(12))),
                LiquidPages.of("wine-12-dry", "with its extract", Beverage.wine(percentByVolume(12), gramsPerLitre(3))),
                LiquidPages.of("wine-14-dry", "with its extract", Beverage.wine(percentByVolume(14), gramsPerLitre(3))),
                LiquidPages.of("sparkling-wine", "brut", Beverage.sparklingWine(percentByVolume(12), gramsPerLitre(8))),
                LiquidPages.of(
                        "sweet-wine", "late harvest", Beverage.sweetWine(percentByVolume(13), gramsPerLitre(120))),
                LiquidPages.of(
                        "fortified-wine",
                        "sweet and red",
                        Beverage.fortifiedWine(percentByVolume(20), gramsPerLitre(100))),
                LiquidPages.of("vermouth", "sweet", Beverage.vermouth(percentByVolume(15), gramsPerLitre(150))),
                LiquidPages.of(
                        "mulled-wine", "for hot service", Beverage.mulledWine(percentByVolume(10), gramsPerLitre(80))),
                LiquidPages.of(
                        "low-alcohol-wine",
                        "half a per cent",
                        Beverage.lowAlcoholWine(percentByVolume(0.5), gramsPerLitre(40))),
                LiquidPages.of("cider", "medium dry", Beverage.cider(percentByVolume(5), gramsPerLitre(20))),
                LiquidPages.of("beer", "pale", Beverage.beer(percentByVolume(5))),
                LiquidPages.of(
                        "low-alcohol-beer",
                        "half a per cent",
                        Beverage.lowAlcoholBeer(percentByVolume(0.5), gramsPerLitre(60))),
                LiquidPages.of("sake", "cold or hot", Beverage.sake(percentByVolume(15.5))),
                LiquidPages.of("spirit", "freezer-cold or neat", Beverage.spirit(percentByVolume(40))),
                LiquidPages.of("liqueur", "sweet", Beverage.liqueur(percentByVolume(25), gramsPerLitre(250))),
                LiquidPages.of("soft-drink", "sugared", Beverage.softDrink(gramsPerLitre(105))),
                LiquidPages.of("juice", "11 % soluble solids", Beverage.juice(percent(11))),
                LiquidPages.of("milk", "whole", Beverage.milk(percent(3.5))),
                LiquidPages.of("tea", "as water", Beverage.tea()),
                LiquidPages.of("coffee", "as water", Beverage.coffee()),
                AirAndIcePages.ice(),
                AirAndIcePages.moistAir());
    }
}
