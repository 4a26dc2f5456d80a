/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import javax.measure.Quantity;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.AlcoholicStrength;
import org.beveragethermal.materials.units.MassConcentration;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.service.target.DrinkStyle;
import org.beveragethermal.service.target.Targets;

/** From words to a drink: a kind or a style, its strength where it has one, and its sugar where that is needed. */
final class DrinkWords {
    private static final String ALLOWED =
            "a kind of drink (\"list drinks\") or a style (\"list styles\") with its strength, such as"
                    + " \"wine 12.5 %\", \"fortified wine 19 % sugar 100g/L\", \"sparkling-dry 12 %\" or \"water\"";

    /** What a kind needs beside its name, and how to make it. */
    record Kind(String needs, Function<Parts, Beverage> make) {}

    /** The figures of one drink; each is asked for where it is needed and refused where it is not. */
    private static final class Parts {
        private final Phrase phrase;
        private int bareUsed;
        private boolean sugarUsed;

        Parts(Phrase phrase) {
            this.phrase = phrase;
        }

        double percent() {
            bareUsed = 1;
            if (phrase.bare().isEmpty()) {
                throw Refusal.usage(
                        phrase.where(), phrase.given(), "a percentage behind the name, such as \"wine 12.5 %\"");
            }
            return Quantities.percents(phrase.where(), phrase.bare().get(0).replaceFirst("\\s*vol$", ""));
        }

        Quantity<AlcoholicStrength> strength() {
            return Measures.percentByVolume(percent());
        }

        Optional<Quantity<MassConcentration>> sugarIfAny() {
            sugarUsed = true;
            return phrase.key("sugar").map(text -> Quantities.concentration(phrase.where(), text));
        }

        Quantity<MassConcentration> sugar() {
            return sugarIfAny()
                    .orElseThrow(
                            () -> Refusal.usage(phrase.where(), phrase.given(), "its sugar, such as \"sugar 100g/L\""));
        }

        void requireAllUsed() {
            if (phrase.bare().size() > bareUsed || (phrase.flag("sugar") && !sugarUsed)) {
                throw Refusal.usage(phrase.where(), phrase.given(), ALLOWED + "; there is more than this drink has");
            }
        }
    }

    private static final Map<String, Kind> KINDS = kinds();

    private DrinkWords() {}

    static Map<String, String> needs() {
        Map<String, String> needs = new TreeMap<>();
        KINDS.forEach((name, kind) -> needs.put(name, kind.needs()));
        return needs;
    }

    static Beverage drink(String where, String given) {
        Phrase phrase = Phrase.of(where, given, List.of("sugar"), ALLOWED);
        Kind kind = KINDS.get(phrase.head());
        Parts parts = new Parts(phrase);
        try {
            Beverage drink = kind == null ? styled(phrase, parts) : kind.make().apply(parts);
            parts.requireAllUsed();
            return drink;
        } catch (IllegalArgumentException e) {
            throw Refusal.usage(where, given, ALLOWED + "; " + e.getMessage());
        }
    }

    private static Beverage styled(Phrase phrase, Parts parts) {
        Optional<DrinkStyle> style = Targets.styles().stream()
                .filter(known -> known.id().equals(phrase.head()))
                .findFirst();
        if (style.isEmpty()) {
            throw Refusal.usage(phrase.where(), phrase.given(), ALLOWED);
        }
        boolean stated = !phrase.bare().isEmpty();
        return style.get().drink(stated ? parts.strength() : Measures.percentByVolume(0));
    }

    private static Map<String, Kind> kinds() {
        Map<String, Kind> kinds = new TreeMap<>();
        String strength = "strength";
        String both = "strength, sugar";
        kinds.put("wine", new Kind("strength, sugar if any", p -> {
            Quantity<AlcoholicStrength> s = p.strength();
            return p.sugarIfAny().map(sugar -> Beverage.wine(s, sugar)).orElseGet(() -> Beverage.wine(s));
        }));
        kinds.put("dry wine", new Kind(strength, p -> Beverage.dryWine(p.strength())));
        kinds.put("sparkling wine", new Kind("strength, sugar if any", p -> {
            Quantity<AlcoholicStrength> s = p.strength();
            return p.sugarIfAny()
                    .map(sugar -> Beverage.sparklingWine(s, sugar))
                    .orElseGet(() -> Beverage.sparklingWine(s));
        }));
        kinds.put("fortified wine", new Kind(both, p -> Beverage.fortifiedWine(p.strength(), p.sugar())));
        kinds.put("sweet wine", new Kind(both, p -> Beverage.sweetWine(p.strength(), p.sugar())));
        kinds.put("vermouth", new Kind(both, p -> Beverage.vermouth(p.strength(), p.sugar())));
        kinds.put("mulled wine", new Kind(both, p -> Beverage.mulledWine(p.strength(), p.sugar())));
        kinds.put("low-alcohol wine", new Kind(both, p -> Beverage.lowAlcoholWine(p.strength(), p.sugar())));
        kinds.put("cider", new Kind(both, p -> Beverage.cider(p.strength(), p.sugar())));
        kinds.put("beer", new Kind(strength, p -> Beverage.beer(p.strength())));
        kinds.put("sake", new Kind(strength, p -> Beverage.sake(p.strength())));
        kinds.put("spirit", new Kind(strength, p -> Beverage.spirit(p.strength())));
        kinds.put("liqueur", new Kind(both, p -> Beverage.liqueur(p.strength(), p.sugar())));
        kinds.put("soft drink", new Kind("sugar", p -> Beverage.softDrink(p.sugar())));
        kinds.put(
                "juice", new Kind("sugar as a percentage of mass", p -> Beverage.juice(Measures.percent(p.percent()))));
        kinds.put("milk", new Kind("fat as a percentage of mass", p -> Beverage.milk(Measures.percent(p.percent()))));
        kinds.put("water", new Kind("", p -> Beverage.water()));
        kinds.put("tea", new Kind("", p -> Beverage.tea()));
        kinds.put("coffee", new Kind("", p -> Beverage.coffee()));
        return kinds;
    }
}
