/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.util.List;

/**
 * The styles of drink and the serving ranges stated for them. So far the styles are wines.
 *
 * <p>The tables are part of the library and never change while it runs; all methods may be called from any thread.
 */
public final class Targets {
    private Targets() {}

    /**
     * Every style that has a range.
     *
     * @return unmodifiable list in the order of the table: sparkling, white, rosé, red, sweet, fortified
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
        List<ServingRange> ranges =
                policy instanceof RangePolicy.OwnRange ? RangeTable.shipped().knownRangesOf(style) : rangesOf(style);
        return ServingTarget.of(style, policy, ranges);
    }
}
