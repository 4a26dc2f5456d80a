/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;

/** The figures {@link Beverage} and its mixing rules take where a label says nothing, with where they come from. */
final class UsualContents {
    private static final Source HANDBOOKS = new Source(
            "usual composition", "handbooks of wine, beer, food and dairy, from memory", Source.Kind.FROM_MEMORY);
    private static final Source OWN = new Source(
            "own middle", "own middle of what occurs, from nearly none to most of it", Source.Kind.OWN_ASSUMPTION);
    private static final Source DISSOLVED_IN_SPARKLING_WINE = Source.published(
            "J. Agric. Food Chem. 58 (2010) 8768",
            "J. Agric. Food Chem. 58 (2010) 8768-8775: dissolved carbon dioxide of a sparkling wine, 11.4 ± 0.1 g/L; others hold"
                    + " less");
    private static final Source DISSOLVED_IN_BEER = Source.published(
            "PMC8047704", "PMC8047704, table 1: dissolved carbon dioxide of a lager, 5.5 g/L; others differ");

    static final List<Constant> CONSTANTS = List.of(
            perLitre("sugar-free extract of wine", Beverage.SUGAR_FREE_EXTRACT_OF_WINE, 8, HANDBOOKS),
            perLitre("sugar-free extract of cider", Beverage.SUGAR_FREE_EXTRACT_OF_CIDER, 8, HANDBOOKS),
            perLitre("real extract of beer", Beverage.REAL_EXTRACT_OF_BEER, 10, HANDBOOKS),
            perLitre("extract of sake", Beverage.EXTRACT_OF_SAKE, 10, HANDBOOKS),
            perLitre(
                    "carbon dioxide of sparkling wine",
                    Beverage.CARBON_DIOXIDE_OF_SPARKLING_WINE,
                    1.5,
                    DISSOLVED_IN_SPARKLING_WINE),
            perLitre("carbon dioxide of beer", Beverage.CARBON_DIOXIDE_OF_BEER, 1, DISSOLVED_IN_BEER),
            perLitre("protein of cream liqueur", Beverage.PROTEIN_OF_CREAM_LIQUEUR, 10, HANDBOOKS),
            share("protein in the real extract of beer", Beverage.PROTEIN_IN_BEER_EXTRACT, 0.03, HANDBOOKS),
            share("minerals in the real extract of beer", Beverage.ASH_IN_BEER_EXTRACT, 0.015, HANDBOOKS),
            share("protein in fat-free milk", Beverage.PROTEIN_IN_SKIM_MILK, 0.003, HANDBOOKS),
            share("milk sugar in fat-free milk", Beverage.LACTOSE_IN_SKIM_MILK, 0.003, HANDBOOKS),
            share("minerals in fat-free milk", Beverage.ASH_IN_SKIM_MILK, 0.0005, HANDBOOKS),
            share("sucrose in the sugar of juice", Beverage.SUCROSE_IN_JUICE, 0.5, OWN),
            Liquidus.ASH_DEPRESSION,
            new Constant(
                    "swollen volume of protein in a drink",
                    DrinkMixture.SWOLLEN_PROTEIN_M3_PER_KG,
                    "m³/kg",
                    Uncertainty.rectangularRelative(0.2),
                    HANDBOOKS),
            share("closest packing of droplets in a drink", DrinkMixture.HIGHEST_PACKING, 0.1, HANDBOOKS));

    private UsualContents() {}

    private static Constant perLitre(String name, double kgPerM3, double halfWidth, Source source) {
        return new Constant(name, kgPerM3, "kg/m³", Uncertainty.rectangular(halfWidth), source);
    }

    private static Constant share(String name, double fraction, double halfWidth, Source source) {
        return new Constant(name, fraction, "1", Uncertainty.rectangular(halfWidth), source);
    }
}
