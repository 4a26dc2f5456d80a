/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.util.List;
import java.util.Optional;

/**
 * The styles of drink, the serving ranges and the storage ranges stated for them.
 *
 * <p>The tables are part of the library and never change while it runs; all methods may be called from any thread.
 */
public final class Targets {
    private Targets() {}

    /**
     * Every style that has a range.
     *
     * @return unmodifiable list in the order of the table: wines, ciders, beers, sake, spirits, liqueurs, drinks
     *     without alcohol
     */
    public static List<DrinkStyle> styles() {
        return RangeTable.shipped().styles();
    }

    /**
     * The style with an identifier.
     *
     * @param id identifier such as {@code red-full}
     * @return the style
     * @throws IllegalArgumentException if there is no such style; the message names the nearest
     */
    public static DrinkStyle style(String id) {
        return RangeTable.shipped().style(id);
    }

    /**
     * Every range stated for a style. Sources disagree; all are given.
     *
     * @param style the style
     * @return unmodifiable list in the order of the table, never empty
     * @throws IllegalArgumentException if no range is known for the style; the message names the nearest style
     */
    public static List<ServingRange> rangesOf(DrinkStyle style) {
        return RangeTable.shipped().rangesOf(style);
    }

    /**
     * The target of a style: what its sources have in common, with the middle as aim.
     *
     * @param style the style
     * @return the target
     * @throws IllegalArgumentException if no range is known for the style; the message names the nearest style
     */
    public static ServingTarget of(DrinkStyle style) {
        return of(style, RangePolicy.narrowestCommon());
    }

    /**
     * The target of a style given by its identifier.
     *
     * @param styleId identifier such as {@code red-full}
     * @return the target
     * @throws IllegalArgumentException if there is no such style; the message names the nearest
     */
    public static ServingTarget of(String styleId) {
        return of(style(styleId));
    }

    /**
     * The target of a style by a policy of the caller's choice, with the middle as aim.
     *
     * @param style the style
     * @param policy how the ranges of the sources become one
     * @return the target
     * @throws IllegalArgumentException if no range is known for the style (unless the policy gives one), or the policy
     *     names a source that states none for it
     */
    public static ServingTarget of(DrinkStyle style, RangePolicy policy) {
        return ServingTarget.of(style, policy, considered(style, policy));
    }

    /**
     * The target of a style in a house, with the middle as aim.
     *
     * @param style the style
     * @param rules what the house does differently
     * @return the target
     * @throws IllegalArgumentException if no range is known for the style, or the policy that decides cannot be applied
     */
    public static ServingTarget of(DrinkStyle style, HouseRules rules) {
        return of(style, rules.ruling(style, Optional.empty(), Optional.empty()));
    }

    /**
     * The target of a style in a house for a guest, with the middle as aim.
     *
     * @param style the style
     * @param rules what the house does differently; {@link HouseRules} says which rule comes first
     * @param guest what the house calls the guest; one without rules gets what everybody gets
     * @return the target
     * @throws IllegalArgumentException if no range is known for the style, or the policy that decides cannot be applied
     */
    public static ServingTarget of(DrinkStyle style, HouseRules rules, String guest) {
        return of(style, rules.ruling(style, Optional.empty(), Optional.of(guest)));
    }

    /**
     * The target of a drink of the house's list, with the middle as aim.
     *
     * @param drinkId the drink's identifier in the house
     * @param style its style
     * @param rules what the house does differently; {@link HouseRules} says which rule comes first
     * @return the target
     * @throws IllegalArgumentException if no range is known for the style, or the policy that decides cannot be applied
     */
    public static ServingTarget ofDrink(String drinkId, DrinkStyle style, HouseRules rules) {
        return of(style, rules.ruling(style, Optional.of(drinkId), Optional.empty()));
    }

    /**
     * The target of a drink of the house's list for a guest, with the middle as aim.
     *
     * @param drinkId the drink's identifier in the house
     * @param style its style
     * @param rules what the house does differently; {@link HouseRules} says which rule comes first
     * @param guest what the house calls the guest; one without rules gets what everybody gets
     * @return the target
     * @throws IllegalArgumentException if no range is known for the style, or the policy that decides cannot be applied
     */
    public static ServingTarget ofDrink(String drinkId, DrinkStyle style, HouseRules rules, String guest) {
        return of(style, rules.ruling(style, Optional.of(drinkId), Optional.of(guest)));
    }

    /**
     * Every storage range stated for a style: those of its own, and for terms of which none speaks, those of its family.
     * Local codes and labels come first.
     *
     * @param style the style, known or one of your own
     * @return unmodifiable list in the order of the table; empty for what is drunk as soon as it is made, such as tea
     */
    public static List<StorageRange> storageOf(DrinkStyle style) {
        return RangeTable.shipped().storageOf(style);
    }

    private static ServingTarget of(DrinkStyle style, HouseRules.Ruling ruling) {
        return ServingTarget.of(style, ruling, considered(style, ruling.policy()));
    }

    private static List<ServingRange> considered(DrinkStyle style, RangePolicy policy) {
        return policy instanceof RangePolicy.OwnRange ? RangeTable.shipped().knownRangesOf(style) : rangesOf(style);
    }
}
