/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.AlcoholicStrength;

/**
 * A style of drink: what a serving range is stated for. The known styles are listed by {@link Targets#styles()}.
 *
 * @param id plain identifier such as {@code red-full}: lower-case letters a to z, digits and single hyphens
 * @param name the style in words, such as {@code red, full}
 * @param family what it is a kind of
 * @param sparkling whether the drink is sparkling, that is, holds carbon dioxide under pressure
 * @param sugarKgPerM3 what is usually dissolved in it beside ethanol: its sugar, the real extract of a beer, the soluble
 *     solids of a juice [kg/m³ = g/L]; 0 to 500; 0 for a wine known by its strength alone
 * @param reason why the style is served in its range, in one or two sentences
 */
public record DrinkStyle(
        String id, String name, DrinkFamily family, boolean sparkling, double sugarKgPerM3, String reason) {
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final ValidityRange SUGAR = new ValidityRange("sugar", 0, 500, "kg/m³");

    /**
     * A style from its parts.
     *
     * @param id plain identifier such as {@code red-full}: lower-case letters a to z, digits and single hyphens
     * @param name the style in words, such as {@code red, full}
     * @param family what it is a kind of
     * @param sparkling whether the drink is sparkling, that is, holds carbon dioxide under pressure
     * @param sugarKgPerM3 what is usually dissolved in it beside ethanol [kg/m³]; 0 to 500
     * @param reason why the style is served in its range, in one or two sentences
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the sugar lies outside 0 to 500 kg/m³
     * @throws IllegalArgumentException if the identifier has another form, or the name or the reason is blank
     */
    public DrinkStyle {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException(
                    "style id \"" + id + "\": expected lower-case letters, digits and single hyphens");
        }
        if (name.isBlank() || reason.isBlank()) {
            throw new IllegalArgumentException("style " + id + ": expected a name and a reason, got a blank");
        }
        SUGAR.require(sugarKgPerM3, "style " + id);
    }

    /**
     * The drink of this style: what it is made of follows from its family, its strength, and what is usually dissolved in
     * it (from memory). A drink whose analysis is known is better made by {@link Beverage}. What is poured into it, such as the
     * milk of a coffee, is left out: cautions have to be told of it.
     *
     * @param strength alcoholic strength; 0 for a drink without alcohol
     * @return the drink
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a drink of this family cannot have that strength
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public Beverage drink(Quantity<AlcoholicStrength> strength) {
        return family.drink(strength, sugarKgPerM3, sparkling);
    }
}
