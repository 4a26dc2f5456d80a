/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.AlcoholicStrength;
import org.beveragethermal.materials.units.MassConcentration;
import org.beveragethermal.materials.units.Measures;

/**
 * A drink: what it is, what it is made of, and its thermal properties.
 *
 * <p>Its properties follow from its {@link Composition}: ethanol and water by {@link EthanolWater} (including its
 * continuation above 40 °C, with larger uncertainty, for hot drinks), sugar by {@link SucroseSolution}, everything else
 * by the {@link FoodComponent}s of Choi and Okos, put together by rules of ours that meet ethanol-water without sugar
 * and sugar in water without ethanol exactly: specific volumes and heat capacities add up, conductivity and viscosity
 * take the ratio of sugar solution to water from the sugar, fat and protein thicken as dispersed droplets do. {@link
 * #properties()} lists formulas and uncertainties. Drinks without ethanol and extract are {@link Water} itself, which
 * differs from ethanol-water of vanishing strength by up to 0.6 % in heat capacity and 1.1 % in conductivity. Dissolved
 * carbon dioxide has no effect on these properties; its pressure is told by {@link CarbonDioxide}.
 *
 * <p><b>{@link #wine(Quantity)} and {@link #sparklingWine(Quantity)} without sugar given are plain ethanol-water</b>, for
 * a label that tells the strength alone. They leave out the extract of a dry wine, 20 to 30 g/L, which leaves the density
 * about 1 % too low, the specific heat capacity about 2 % too high, the conductivity about 1.5 % too high, the viscosity up
 * to 10 % too low and the freezing point a few tenths of a kelvin too high (the safe side for a warning); their records
 * carry that as uncertainty. <b>The factories that take a sugar content add the usual extract</b>, even for 0 g/L:
 * {@link #dryWine(Quantity)} is that wine, and the better description of a dry one; its name says dry. The two lie within the stated
 * uncertainty of each other.
 *
 * <p>The typical contents used where a drink is named without an analysis are constants here, most of them from memory.
 * Above the temperatures at which a drink boils (about 78 °C for spirits, 90 °C for wine) the properties are those of a
 * liquid that does not exist in the open. Immutable; equal by kind and composition.
 */
public final class Beverage implements Liquid {

    /** Kinds of drink. */
    public enum Kind {
        /** Drinking water. */
        WATER("water"),
        /** Still wine. */
        WINE("wine"),
        /** Sparkling wine. */
        SPARKLING_WINE("sparkling wine"),
        /** Wine with spirit added. */
        FORTIFIED_WINE("fortified wine"),
        /** Wine with much unfermented sugar. */
        SWEET_WINE("sweet wine"),
        /** Aromatised, sweetened, fortified wine. */
        VERMOUTH("vermouth"),
        /** Fermented apple juice. */
        CIDER("cider"),
        /** Beer. */
        BEER("beer"),
        /** Wine with part or all of its alcohol removed. */
        LOW_ALCOHOL_WINE("low-alcohol wine"),
        /** Beer with little or no alcohol. */
        LOW_ALCOHOL_BEER("low-alcohol beer"),
        /** Brewed rice drink. */
        SAKE("sake"),
        /** Distilled spirit. */
        SPIRIT("spirit"),
        /** Sweetened spirit. */
        LIQUEUR("liqueur"),
        /** Sweetened spirit with cream. */
        CREAM_LIQUEUR("cream liqueur"),
        /** Sweetened water. */
        SOFT_DRINK("soft drink"),
        /** Fruit juice. */
        JUICE("juice"),
        /** Milk. */
        MILK("milk"),
        /** Tea. */
        TEA("tea"),
        /** Coffee. */
        COFFEE("coffee"),
        /** Wine with sugar and spices, served hot. */
        MULLED_WINE("mulled wine");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /**
         * The kind in words.
         *
         * @return for example {@code sparkling wine}
         */
        public String label() {
            return label;
        }
    }

    /** Extract of wine other than sugar (acids, glycerol, minerals), kg/m³ = g/L; 17 to 30 is usual (from memory). */
    public static final double SUGAR_FREE_EXTRACT_OF_WINE = 20;

    /** Extract of cider other than sugar, kg/m³ (from memory). */
    public static final double SUGAR_FREE_EXTRACT_OF_CIDER = 20;

    /** Real extract of a common lager, kg/m³; 30 to 50 is usual (from memory). */
    public static final double REAL_EXTRACT_OF_BEER = 40;

    /** Extract of sake, mostly glucose, kg/m³; 35 to 55 is usual (from memory). */
    public static final double EXTRACT_OF_SAKE = 45;

    /** Carbon dioxide in sparkling wine, kg/m³: 11.4 g/L (J. Agric. Food Chem. 58 (2010) 8768-8775). */
    public static final double CARBON_DIOXIDE_OF_SPARKLING_WINE = 11.4;

    /** Carbon dioxide in beer, kg/m³: 5.5 g/L (PMC8047704, table 1). */
    public static final double CARBON_DIOXIDE_OF_BEER = 5.5;

    /** Share of protein and of minerals in the real extract of beer (from memory). */
    static final double PROTEIN_IN_BEER_EXTRACT = 0.11;

    static final double ASH_IN_BEER_EXTRACT = 0.04;

    /** Protein, milk sugar and minerals per mass of fat-free milk (from memory; whole milk has 3.4, 4.8 and 0.7 %). */
    static final double PROTEIN_IN_SKIM_MILK = 0.0352;

    static final double LACTOSE_IN_SKIM_MILK = 0.0497;
    static final double ASH_IN_SKIM_MILK = 0.0074;

    /** Protein of cream liqueur, kg/m³ (from memory). */
    static final double PROTEIN_OF_CREAM_LIQUEUR = 30;

    /** Part of the sugar of juice that is sucrose; it varies from nearly none to most of it (our middle). */
    static final double SUCROSE_IN_JUICE = 0.5;

    private static final double HIGHEST_WINE_STRENGTH = 0.25;
    private static final double HIGHEST_LOW_ALCOHOL_WINE = 0.085;
    private static final double HIGHEST_LOW_ALCOHOL_BEER = 0.035;
    private static final double HIGHEST_BEER_STRENGTH = 0.2;
    private static final double HIGHEST_LIQUEUR_STRENGTH = 0.55;
    private static final double HIGHEST_WINE_SUGAR = 400;
    private static final double HIGHEST_LIQUEUR_SUGAR = 500;
    private static final double HIGHEST_SOFT_DRINK_SUGAR = 200;
    private static final double HIGHEST_BEER_EXTRACT = 200;
    private static final double HIGHEST_SOLUBLE_SOLIDS = 0.6;
    private static final double HIGHEST_FAT = 0.4;
    private static final double HIGHEST_CARBON_DIOXIDE = 30;

    /** Sugar below this, kg/m³, does not appear in the name. */
    private static final double NAMED_SUGAR = 0.5;

    private static final double REFERENCE_K = 293.15;

    private static final Source EXTRACT_LEFT_OUT = new Source(
            "extract left out",
            "own estimate of what leaving out 20 to 30 g/L of dry extract does to ethanol-water",
            Source.Kind.OWN_ASSUMPTION);
    private static final Source BREW_LEFT_OUT = new Source(
            "brew left out",
            "own estimate of what leaving out the extract of tea (0.3 %) and coffee (1.3 %, from memory) does to water",
            Source.Kind.OWN_ASSUMPTION);
    private static final Source DEPRESSIONS_ADDED = new Source(
            "depressions added",
            "own estimate: freezing point depressions of ethanol, sugar, extract and minerals added up",
            Source.Kind.OWN_ASSUMPTION);

    private final Kind kind;
    private final Composition composition;
    private final double strengthByVolume;
    private final String name;
    private final Liquid liquid;
    private final Liquidus liquidus;
    private final List<PropertyRecord> properties;

    private Beverage(Kind kind, Composition composition, double strengthByVolume) {
        this.kind = kind;
        this.composition = composition;
        this.strengthByVolume = strengthByVolume;
        this.name = describe(kind, composition, strengthByVolume);
        this.liquid = DrinkMixture.of(name, composition);
        this.liquidus = Liquidus.of(composition);
        this.properties = records(kind, composition, liquid);
    }

    private static String describe(Kind kind, Composition composition, double strengthByVolume) {
        String text = kind.label();
        if (kind == Kind.WINE || kind == Kind.SPARKLING_WINE || strengthByVolume > 0) {
            text += ", " + Percent.of(strengthByVolume) + " % vol";
        }
        double sugar = composition.sugar() == 0
                ? 0
                : composition.sugar() * DrinkMixture.of("", composition).density(REFERENCE_K);
        if (sugar >= NAMED_SUGAR) {
            return text + ", " + Math.round(sugar) + " g/L sugar";
        }
        // Tells the wine with its extract from the one of the label alone.
        boolean dry = (kind == Kind.WINE || kind == Kind.SPARKLING_WINE) && composition.carbohydrate() > 0;
        return dry ? "dry " + text : text;
    }

    private static List<PropertyRecord> records(Kind kind, Composition composition, Liquid liquid) {
        ValidityRange range = liquid.temperatureRange();
        if (composition.solids() > 0) {
            PropertyRecord freezing = new PropertyRecord(
                    "freezing temperature", "K", range, Uncertainty.rectangular(0.7), DEPRESSIONS_ADDED);
            return Stream.concat(liquid.properties().stream(), Stream.of(freezing))
                    .toList();
        }
        return switch (kind) {
            case TEA, COFFEE -> with(liquid, leftOut(range, BREW_LEFT_OUT, 0.006, 0.01, 0.01, 0.05, 0.2));
            case WATER, SPIRIT -> liquid.properties();
            default -> with(liquid, leftOut(range, EXTRACT_LEFT_OUT, 0.012, 0.02, 0.02, 0.1, 0.5));
        };
    }

    private static List<PropertyRecord> with(Liquid liquid, List<PropertyRecord> own) {
        return Stream.concat(liquid.properties().stream(), own.stream()).toList();
    }

    private static List<PropertyRecord> leftOut(
            ValidityRange range,
            Source source,
            double density,
            double heatCapacity,
            double conductivity,
            double viscosity,
            double freezingK) {
        return List.of(
                new PropertyRecord("density", "kg/m³", range, Uncertainty.rectangularRelative(density), source),
                new PropertyRecord(
                        "specific heat capacity",
                        "J/(kg K)",
                        range,
                        Uncertainty.rectangularRelative(heatCapacity),
                        source),
                new PropertyRecord(
                        "thermal conductivity",
                        "W/(m K)",
                        range,
                        Uncertainty.rectangularRelative(conductivity),
                        source),
                new PropertyRecord(
                        "dynamic viscosity", "Pa s", range, Uncertainty.rectangularRelative(viscosity), source),
                new PropertyRecord("freezing temperature", "K", range, Uncertainty.rectangular(freezingK), source));
    }

    /**
     * A drink of any composition.
     *
     * @param kind what it is
     * @param composition what it is made of
     * @return the beverage
     */
    public static Beverage of(Kind kind, Composition composition) {
        return new Beverage(kind, composition, Recipe.strengthByVolume(composition));
    }

    /**
     * The typical contents and rules of thumb that stand in for an analysis, each with its uncertainty and source.
     *
     * @return the constants, unmodifiable
     */
    public static List<Constant> usualContents() {
        return UsualContents.CONSTANTS;
    }

    private static Beverage of(Kind kind, Recipe recipe) {
        return new Beverage(kind, recipe.composition(), recipe.strength());
    }

    private static Beverage ofWine(
            Kind kind, Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar, double extract) {
        double fraction = Inputs.strength(strength, HIGHEST_WINE_STRENGTH, Inputs.LIMITS);
        double kgPerM3 = Inputs.concentration(sugar, "sugar", HIGHEST_WINE_SUGAR, Inputs.LIMITS);
        return of(kind, Recipe.of(fraction, 0, kgPerM3, extract));
    }

    private static Beverage ofEthanolWater(Kind kind, Quantity<AlcoholicStrength> strength) {
        double fraction = Inputs.strength(strength, HIGHEST_WINE_STRENGTH, Inputs.LIMITS);
        return of(kind, Recipe.of(fraction, 0, 0, 0));
    }

    /**
     * Still wine of which only the strength is known: plain ethanol-water, its extract left out, which its records carry
     * as uncertainty. {@link #dryWine(Quantity)} has the extract in.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the strength is outside 0 to 25 % vol
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Beverage wine(Quantity<AlcoholicStrength> strength) {
        return ofEthanolWater(Kind.WINE, strength);
    }

    /**
     * Still wine without sugar, with {@link #SUGAR_FREE_EXTRACT_OF_WINE}: {@link #wine(Quantity, Quantity)} at 0 g/L. About
     * 1 % denser and 0.2 K later to freeze than {@link #wine(Quantity)}, which leaves the extract out.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the strength is outside 0 to 25 % vol
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Beverage dryWine(Quantity<AlcoholicStrength> strength) {
        return wine(strength, Measures.gramsPerLitre(0));
    }

    /**
     * Still wine with {@link #SUGAR_FREE_EXTRACT_OF_WINE} beside its sugar, which is glucose and fructose; at 0 g/L it is
     * {@link #dryWine(Quantity)}, not {@link #wine(Quantity)}.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @param sugar residual sugar, 0 to 400 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage wine(Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar) {
        return ofWine(Kind.WINE, strength, sugar, SUGAR_FREE_EXTRACT_OF_WINE);
    }

    /**
     * Sparkling wine of which only the strength is known: plain ethanol-water, its extract left out, with {@link #CARBON_DIOXIDE_OF_SPARKLING_WINE}.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the strength is outside 0 to 25 % vol
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Beverage sparklingWine(Quantity<AlcoholicStrength> strength) {
        return ofEthanolWater(Kind.SPARKLING_WINE, strength).withCarbonDioxide(CARBON_DIOXIDE_OF_SPARKLING_WINE);
    }

    /**
     * Sparkling wine with {@link #SUGAR_FREE_EXTRACT_OF_WINE} and {@link #CARBON_DIOXIDE_OF_SPARKLING_WINE}.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @param sugar residual sugar, 0 to 400 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage sparklingWine(Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar) {
        return ofWine(Kind.SPARKLING_WINE, strength, sugar, SUGAR_FREE_EXTRACT_OF_WINE)
                .withCarbonDioxide(CARBON_DIOXIDE_OF_SPARKLING_WINE);
    }

    /**
     * Sparkling wine with a known content of carbon dioxide.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @param sugar residual sugar, 0 to 400 g/L
     * @param carbonDioxide dissolved carbon dioxide, 0 to 30 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage sparklingWine(
            Quantity<AlcoholicStrength> strength,
            Quantity<MassConcentration> sugar,
            Quantity<MassConcentration> carbonDioxide) {
        return sparklingWine(strength, sugar).withCarbonDioxide(carbonDioxide);
    }

    /**
     * Fortified wine with {@link #SUGAR_FREE_EXTRACT_OF_WINE} beside its sugar.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @param sugar residual sugar, 0 to 400 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage fortifiedWine(Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar) {
        return ofWine(Kind.FORTIFIED_WINE, strength, sugar, SUGAR_FREE_EXTRACT_OF_WINE);
    }

    /**
     * Sweet wine with {@link #SUGAR_FREE_EXTRACT_OF_WINE} beside its sugar.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @param sugar residual sugar, 0 to 400 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage sweetWine(Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar) {
        return ofWine(Kind.SWEET_WINE, strength, sugar, SUGAR_FREE_EXTRACT_OF_WINE);
    }

    /**
     * Vermouth with {@link #SUGAR_FREE_EXTRACT_OF_WINE} beside its sugar.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @param sugar sugar, 0 to 400 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage vermouth(Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar) {
        return ofWine(Kind.VERMOUTH, strength, sugar, SUGAR_FREE_EXTRACT_OF_WINE);
    }

    /**
     * Mulled wine with {@link #SUGAR_FREE_EXTRACT_OF_WINE} beside its sugar; up to 80 °C.
     *
     * @param strength alcoholic strength as served, 0 to 25 % vol
     * @param sugar sugar, 0 to 400 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage mulledWine(Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar) {
        return ofWine(Kind.MULLED_WINE, strength, sugar, SUGAR_FREE_EXTRACT_OF_WINE);
    }

    /**
     * Wine with little or no alcohol, with {@link #SUGAR_FREE_EXTRACT_OF_WINE} beside its sugar.
     *
     * @param strength alcoholic strength, 0 to 8.5 % vol
     * @param sugar residual sugar, 0 to 400 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage lowAlcoholWine(Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar) {
        Inputs.strength(strength, HIGHEST_LOW_ALCOHOL_WINE, Inputs.LIMITS);
        return ofWine(Kind.LOW_ALCOHOL_WINE, strength, sugar, SUGAR_FREE_EXTRACT_OF_WINE);
    }

    /**
     * Cider with {@link #SUGAR_FREE_EXTRACT_OF_CIDER} beside its sugar, still unless given carbon dioxide.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @param sugar residual sugar, 0 to 400 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage cider(Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar) {
        return ofWine(Kind.CIDER, strength, sugar, SUGAR_FREE_EXTRACT_OF_CIDER);
    }

    /**
     * Beer with {@link #REAL_EXTRACT_OF_BEER} and {@link #CARBON_DIOXIDE_OF_BEER}.
     *
     * @param strength alcoholic strength, 0 to 20 % vol
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the strength is outside its range
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Beverage beer(Quantity<AlcoholicStrength> strength) {
        return beer(strength, Measures.gramsPerLitre(REAL_EXTRACT_OF_BEER));
    }

    /**
     * Beer with {@link #CARBON_DIOXIDE_OF_BEER}; 85 % of its extract is counted as carbohydrate, 11 % as protein, 4 %
     * as minerals.
     *
     * @param strength alcoholic strength, 0 to 20 % vol
     * @param realExtract everything dissolved but ethanol and gas, 0 to 200 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage beer(Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> realExtract) {
        return ofBeer(Kind.BEER, strength, HIGHEST_BEER_STRENGTH, realExtract);
    }

    /**
     * Beer with little or no alcohol; otherwise as {@link #beer(Quantity, Quantity)}.
     *
     * @param strength alcoholic strength, 0 to 3.5 % vol
     * @param realExtract everything dissolved but ethanol and gas, 0 to 200 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage lowAlcoholBeer(
            Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> realExtract) {
        return ofBeer(Kind.LOW_ALCOHOL_BEER, strength, HIGHEST_LOW_ALCOHOL_BEER, realExtract);
    }

    private static Beverage ofBeer(
            Kind kind,
            Quantity<AlcoholicStrength> strength,
            double highestStrength,
            Quantity<MassConcentration> realExtract) {
        double fraction = Inputs.strength(strength, highestStrength, Inputs.LIMITS);
        double extract = Inputs.concentration(realExtract, "real extract", HIGHEST_BEER_EXTRACT, Inputs.LIMITS);
        double protein = PROTEIN_IN_BEER_EXTRACT * extract;
        double ash = ASH_IN_BEER_EXTRACT * extract;
        return of(kind, new Recipe(fraction, 0, 0, extract - protein - ash, protein, ash, 0))
                .withCarbonDioxide(CARBON_DIOXIDE_OF_BEER);
    }

    /**
     * Sake with {@link #EXTRACT_OF_SAKE}, counted as glucose; up to 80 °C.
     *
     * @param strength alcoholic strength, 0 to 25 % vol
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the strength is outside its range
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Beverage sake(Quantity<AlcoholicStrength> strength) {
        return ofWine(Kind.SAKE, strength, Measures.gramsPerLitre(EXTRACT_OF_SAKE), 0);
    }

    /**
     * Distilled spirit: ethanol and water.
     *
     * @param strength alcoholic strength, 0 to about 67.7 % vol (60 % by mass)
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the strength is outside its range
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Beverage spirit(Quantity<AlcoholicStrength> strength) {
        double highest = EthanolWater.strengthFromMassFraction(EthanolWater.HIGHEST_MASS_FRACTION);
        double fraction = Inputs.strength(strength, highest, EthanolWaterTables.MELINDER);
        return of(Kind.SPIRIT, Recipe.of(fraction, 0, 0, 0));
    }

    /**
     * Liqueur: ethanol, water and sucrose.
     *
     * @param strength alcoholic strength, 0 to 55 % vol
     * @param sugar sucrose, 0 to 500 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range, or the two
     *     together leave too little water
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage liqueur(Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar) {
        double fraction = Inputs.strength(strength, HIGHEST_LIQUEUR_STRENGTH, Inputs.LIMITS);
        double kgPerM3 = Inputs.concentration(sugar, "sugar", HIGHEST_LIQUEUR_SUGAR, Inputs.LIMITS);
        return of(Kind.LIQUEUR, Recipe.of(fraction, kgPerM3, 0, 0));
    }

    /**
     * Cream liqueur with 30 g/L of milk protein: the ethanol, water and sucrose of a liqueur with cream dispersed in
     * it. How thick it is depends on how it is made: its viscosity is uncertain by 40 %.
     *
     * @param strength alcoholic strength, 0 to 55 % vol
     * @param sugar sucrose, 0 to 500 g/L
     * @param fat milk fat by mass, 0 to 40 %
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range, or they
     *     leave too little water
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static Beverage creamLiqueur(
            Quantity<AlcoholicStrength> strength, Quantity<MassConcentration> sugar, Quantity<Dimensionless> fat) {
        double fraction = Inputs.strength(strength, HIGHEST_LIQUEUR_STRENGTH, Inputs.LIMITS);
        double kgPerM3 = Inputs.concentration(sugar, "sugar", HIGHEST_LIQUEUR_SUGAR, Inputs.LIMITS);
        double fatFraction = Inputs.massFraction(fat, "fat", HIGHEST_FAT, Inputs.LIMITS);
        return of(Kind.CREAM_LIQUEUR, new Recipe(fraction, kgPerM3, 0, 0, PROTEIN_OF_CREAM_LIQUEUR, 0, fatFraction));
    }

    /**
     * Soft drink: water and sucrose, still unless given carbon dioxide.
     *
     * @param sugar sucrose, 0 to 200 g/L; 0 for one sweetened without sugar
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the sugar is outside its range
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Beverage softDrink(Quantity<MassConcentration> sugar) {
        double kgPerM3 = Inputs.concentration(sugar, "sugar", HIGHEST_SOFT_DRINK_SUGAR, Inputs.LIMITS);
        return of(Kind.SOFT_DRINK, Recipe.of(0, kgPerM3, 0, 0));
    }

    /**
     * Fruit juice or its concentrate, half of its soluble solids counted as sucrose, half as invert sugar. It freezes
     * as its sugar does, which for usual juices is up to 0.3 K warmer than the correlation of Chang and Tao (1981) has
     * it; that correlation is not used, because it is the colder one and leads astray for concentrates.
     *
     * @param solubleSolids soluble solids by mass (degrees Brix as per cent), 0 to 60 %
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the solids are outside their range
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Beverage juice(Quantity<Dimensionless> solubleSolids) {
        double solids = Inputs.massFraction(solubleSolids, "soluble solids", HIGHEST_SOLUBLE_SOLIDS, Inputs.LIMITS);
        double sucrose = SUCROSE_IN_JUICE * solids;
        return of(Kind.JUICE, new Composition(1 - solids, 0, sucrose, solids - sucrose, 0, 0, 0, 0, 0));
    }

    /**
     * Milk or cream.
     *
     * @param fat fat by mass, 0 to 40 %; whole milk has about 3.6
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the fat is outside its range
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Beverage milk(Quantity<Dimensionless> fat) {
        double fatFraction = Inputs.massFraction(fat, "fat", HIGHEST_FAT, Inputs.LIMITS);
        double skim = 1 - fatFraction;
        double protein = PROTEIN_IN_SKIM_MILK * skim;
        double lactose = LACTOSE_IN_SKIM_MILK * skim;
        double ash = ASH_IN_SKIM_MILK * skim;
        return of(
                Kind.MILK,
                new Composition(skim - protein - lactose - ash, 0, 0, 0, protein, fatFraction, lactose, ash, 0));
    }

    /**
     * Drinking water, with the properties of pure water.
     *
     * @return the beverage
     */
    public static Beverage water() {
        return of(Kind.WATER, Composition.ofWater());
    }

    /**
     * Tea without milk and sugar: water; the 0.3 % it extracts from the leaves is left out.
     *
     * @return the beverage
     */
    public static Beverage tea() {
        return of(Kind.TEA, Composition.ofWater());
    }

    /**
     * Coffee without milk and sugar: water; the 1.3 % it extracts from the beans is left out.
     *
     * @return the beverage
     */
    public static Beverage coffee() {
        return of(Kind.COFFEE, Composition.ofWater());
    }

    /**
     * The same drink with another content of carbon dioxide.
     *
     * @param carbonDioxide dissolved carbon dioxide, 0 to 30 g/L
     * @return the beverage
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the content is outside its range
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public Beverage withCarbonDioxide(Quantity<MassConcentration> carbonDioxide) {
        return withCarbonDioxide(
                Inputs.concentration(carbonDioxide, "dissolved carbon dioxide", HIGHEST_CARBON_DIOXIDE, Inputs.LIMITS));
    }

    private Beverage withCarbonDioxide(double kgPerM3) {
        return new Beverage(kind, composition.withCarbonDioxide(kgPerM3), strengthByVolume);
    }

    /**
     * How carbon dioxide dissolves in this drink: as in beer for beers, as in wine for other drinks with alcohol, as in
     * water (what sugar takes off is left out) for drinks without.
     *
     * @return the solution; empty for drinks above 25 % vol or 300 g/L of sugar, for which no published formula holds
     */
    public Optional<CarbonDioxide> carbonDioxide() {
        if (kind == Kind.BEER || kind == Kind.LOW_ALCOHOL_BEER) {
            return Optional.of(CarbonDioxide.inBeer());
        }
        double sugar = composition.sugar() * density(REFERENCE_K);
        if (strengthByVolume > CarbonDioxide.HIGHEST_STRENGTH || sugar > CarbonDioxide.HIGHEST_SUGAR) {
            return Optional.empty();
        }
        return Optional.of(
                strengthByVolume == 0
                        ? CarbonDioxide.inWater()
                        : CarbonDioxide.inWine(
                                Measures.percentByVolume(100 * strengthByVolume), Measures.gramsPerLitre(sugar)));
    }

    /**
     * Kind of drink.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * What it is made of.
     *
     * @return the composition
     */
    public Composition composition() {
        return composition;
    }

    /**
     * Alcoholic strength by volume at 20 °C.
     *
     * @return strength as a fraction, 0 without ethanol
     */
    public double strengthByVolume() {
        return strengthByVolume;
    }

    /**
     * Temperature at which the first ice forms at equilibrium; the drink may stay liquid some kelvins below it.
     *
     * @return temperature in K, at most 273.15
     */
    public double freezingOnsetK() {
        return liquidus.onset().temperatureK();
    }

    /**
     * Temperature at which the first ice forms at equilibrium, with the curve that set it: the warmer one where
     * published curves differ.
     *
     * @return the freezing point
     */
    public FreezingPoint freezingOnset() {
        return liquidus.onset();
    }

    Liquidus liquidus() {
        return liquidus;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public double density(double temperatureK) {
        return liquid.density(temperatureK);
    }

    @Override
    public double specificHeatCapacity(double temperatureK) {
        return liquid.specificHeatCapacity(temperatureK);
    }

    @Override
    public double thermalConductivity(double temperatureK) {
        return liquid.thermalConductivity(temperatureK);
    }

    @Override
    public double dynamicViscosity(double temperatureK) {
        return liquid.dynamicViscosity(temperatureK);
    }

    @Override
    public double specificEnthalpy(double temperatureK) {
        return liquid.specificEnthalpy(temperatureK);
    }

    @Override
    public double thermalExpansion(double temperatureK) {
        return liquid.thermalExpansion(temperatureK);
    }

    @Override
    public ValidityRange temperatureRange() {
        return liquid.temperatureRange();
    }

    @Override
    public List<PropertyRecord> properties() {
        return properties;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Beverage that && kind == that.kind && composition.equals(that.composition);
    }

    @Override
    public int hashCode() {
        return 31 * kind.hashCode() + composition.hashCode();
    }

    @Override
    public String toString() {
        return name();
    }
}
