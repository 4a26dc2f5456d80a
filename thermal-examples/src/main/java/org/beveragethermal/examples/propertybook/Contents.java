/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Brine;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.SucroseSolution;
import org.beveragethermal.materials.liquid.Water;

/** What the book contains. The drinks are examples: any strength and sugar can be had. */
final class Contents {

    private record Chapter(String file, String summary, Liquid liquid) {}

    private static final List<Chapter> LIQUIDS = List.of(
            new Chapter("water", "IAPWS, from supercooled to just above boiling", Water.liquid()),
            new Chapter("brine-10", "what salted ice melts into", Brine.ofMassFraction(0.10)),
            new Chapter("brine-20", "close to the eutectic", Brine.ofMassFraction(0.20)),
            new Chapter("sucrose-10", "sugar and water", SucroseSolution.ofMassFraction(0.10)),
            new Chapter("wine-12", "ethanol and water only", Beverage.wine(percentByVolume(12))),
            new Chapter("wine-12-dry", "with its extract", Beverage.wine(percentByVolume(12), gramsPerLitre(3))),
            new Chapter("wine-14-dry", "with its extract", Beverage.wine(percentByVolume(14), gramsPerLitre(3))),
            new Chapter("sparkling-wine", "brut", Beverage.sparklingWine(percentByVolume(12), gramsPerLitre(8))),
            new Chapter("sweet-wine", "late harvest", Beverage.sweetWine(percentByVolume(13), gramsPerLitre(120))),
            new Chapter(
                    "fortified-wine", "sweet and red", Beverage.fortifiedWine(percentByVolume(20), gramsPerLitre(100))),
            new Chapter("vermouth", "sweet", Beverage.vermouth(percentByVolume(15), gramsPerLitre(150))),
            new Chapter("mulled-wine", "for hot service", Beverage.mulledWine(percentByVolume(10), gramsPerLitre(80))),
            new Chapter(
                    "low-alcohol-wine",
                    "half a per cent",
                    Beverage.lowAlcoholWine(percentByVolume(0.5), gramsPerLitre(40))),
            new Chapter("cider", "medium dry", Beverage.cider(percentByVolume(5), gramsPerLitre(20))),
            new Chapter("beer", "pale", Beverage.beer(percentByVolume(5))),
            new Chapter(
                    "low-alcohol-beer",
                    "half a per cent",
                    Beverage.lowAlcoholBeer(percentByVolume(0.5), gramsPerLitre(60))),
            new Chapter("sake", "cold or hot", Beverage.sake(percentByVolume(15.5))),
            new Chapter("spirit", "freezer-cold or neat", Beverage.spirit(percentByVolume(40))),
            new Chapter("liqueur", "sweet", Beverage.liqueur(percentByVolume(25), gramsPerLitre(250))),
            new Chapter("soft-drink", "sugared", Beverage.softDrink(gramsPerLitre(105))),
            new Chapter("juice", "11 % soluble solids", Beverage.juice(percent(11))),
            new Chapter("milk", "whole", Beverage.milk(percent(3.5))),
            new Chapter("tea", "as water", Beverage.tea()),
            new Chapter("coffee", "as water", Beverage.coffee()));

    private Contents() {}

    static List<Page> pages() {
        List<Page> pages = new ArrayList<>();
        LIQUIDS.forEach(each -> pages.add(LiquidPages.of(each.file(), each.summary(), each.liquid())));
        pages.add(AirAndIcePages.ice());
        pages.add(AirAndIcePages.moistAir());
        pages.add(SolidPages.solids());
        pages.add(VesselPages.vessels());
        pages.add(UnpublishedPage.of(LIQUIDS.stream().map(Chapter::liquid).toList()));
        return pages;
    }
}
