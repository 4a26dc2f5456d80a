/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import static org.beveragethermal.materials.units.Measures.fraction;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.percent;

import java.util.Locale;
import javax.measure.Quantity;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.AlcoholicStrength;
import org.beveragethermal.materials.units.MassConcentration;
import org.beveragethermal.materials.units.SiValues;

/** What a style is a kind of, as far as contents, cautions and storage ask. Each family makes the drink it stands for. */
public enum DrinkFamily {
    /** Still wine of any colour and sweetness. */
    WINE,
    /** Sparkling wine. */
    SPARKLING_WINE,
    /** Wine with spirit added. */
    FORTIFIED_WINE,
    /** Aromatised, sweetened, fortified wine. */
    VERMOUTH,
    /** Wine with little alcohol or with its alcohol removed, still or sparkling. */
    LOW_ALCOHOL_WINE,
    /** Wine with sugar and spices, served hot. */
    MULLED_WINE,
    /** Cider and perry. */
    CIDER,
    /** Beer. */
    BEER,
    /** Beer with little or no alcohol. */
    LOW_ALCOHOL_BEER,
    /** Brewed rice drink. */
    SAKE,
    /** Distilled spirit. */
    SPIRIT,
    /** Sweetened spirit. */
    LIQUEUR,
    /** Sweetened spirit with cream. */
    CREAM_LIQUEUR,
    /** Drinking water, still or sparkling. */
    WATER,
    /** Sweetened water. */
    SOFT_DRINK,
    /** Fruit juice. */
    JUICE,
    /** Milk and milk drinks. */
    MILK,
    /** Milk with chocolate, served hot. */
    HOT_CHOCOLATE,
    /** Tea. */
    TEA,
    /** Coffee. */
    COFFEE;

    /** From this residual sugar on, kg/m³, a label says sweet (EU 2019/33, annex III, from memory). */
    private static final double SWEET_WINE_SUGAR = 45;

    /** Carbon dioxide of sparkling drinks other than wine and beer, g/L; 5 to 8 is usual (from memory). */
    private static final double CARBON_DIOXIDE = 6;

    /** Fat of whole milk, per cent by mass (from memory). */
    private static final double MILK_FAT = 3.6;

    /** Fat of cream liqueur, per cent by mass (from memory). */
    private static final double CREAM_LIQUEUR_FAT = 15;

    /** Density of sugar solutions at 20 °C less that of water, per sugar [1] (from memory; within 0.5 % to 300 g/L). */
    private static final double DENSITY_PER_SUGAR = 0.386;

    /**
     * The identifier used in tables.
     *
     * @return for example {@code sparkling-wine}
     */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The family in words.
     *
     * @return for example {@code sparkling wine}
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether its drinks usually hold more alcohol than the traces that drinks without it may have. */
    boolean alcoholic() {
        return switch (this) {
            case WATER, SOFT_DRINK, JUICE, MILK, HOT_CHOCOLATE, TEA, COFFEE -> false;
            default -> true;
        };
    }

    /** The drink of this family with a strength and with what is dissolved in it. */
    Beverage drink(Quantity<AlcoholicStrength> strength, double sugarKgPerM3, boolean sparkling) {
        Beverage drink = still(strength, sugarKgPerM3);
        return sparkling && drink.composition().carbonDioxideKgPerM3() == 0
                ? drink.withCarbonDioxide(gramsPerLitre(CARBON_DIOXIDE))
                : drink;
    }

    private Beverage still(Quantity<AlcoholicStrength> strength, double sugarKgPerM3) {
        if (!alcoholic()) {
            SiValues.strengthByVolume(strength, "strength of " + label(), 0, 0);
        }
        Quantity<MassConcentration> sugar = gramsPerLitre(sugarKgPerM3);
        return switch (this) {
            case WINE -> wine(strength, sugarKgPerM3);
            case SPARKLING_WINE ->
                sugarKgPerM3 == 0 ? Beverage.sparklingWine(strength) : Beverage.sparklingWine(strength, sugar);
            case FORTIFIED_WINE -> Beverage.fortifiedWine(strength, sugar);
            case VERMOUTH -> Beverage.vermouth(strength, sugar);
            case LOW_ALCOHOL_WINE -> Beverage.lowAlcoholWine(strength, sugar);
            case MULLED_WINE -> Beverage.mulledWine(strength, sugar);
            case CIDER -> Beverage.cider(strength, sugar);
            case BEER -> Beverage.beer(strength, sugar);
            case LOW_ALCOHOL_BEER -> Beverage.lowAlcoholBeer(strength, sugar);
            case SAKE -> Beverage.sake(strength);
            case SPIRIT -> Beverage.spirit(strength);
            case LIQUEUR -> Beverage.liqueur(strength, sugar);
            case CREAM_LIQUEUR -> Beverage.creamLiqueur(strength, sugar, percent(CREAM_LIQUEUR_FAT));
            case WATER -> Beverage.water();
            case SOFT_DRINK -> Beverage.softDrink(sugar);
            case JUICE -> Beverage.juice(fraction(sugarKgPerM3 / (998.2 + DENSITY_PER_SUGAR * sugarKgPerM3)));
            case MILK, HOT_CHOCOLATE -> Beverage.milk(percent(MILK_FAT));
            case TEA -> Beverage.tea();
            case COFFEE -> Beverage.coffee();
        };
    }

    private static Beverage wine(Quantity<AlcoholicStrength> strength, double sugarKgPerM3) {
        if (sugarKgPerM3 == 0) {
            return Beverage.wine(strength);
        }
        Quantity<MassConcentration> sugar = gramsPerLitre(sugarKgPerM3);
        return sugarKgPerM3 < SWEET_WINE_SUGAR ? Beverage.wine(strength, sugar) : Beverage.sweetWine(strength, sugar);
    }
}
