/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.util.regex.Pattern;

/**
 * A style of drink: what a serving range is stated for. The known styles are listed by {@link Targets#styles()}.
 *
 * @param id plain identifier such as {@code red-full}: lower-case letters a to z, digits and single hyphens
 * @param name the style in words, such as {@code red, full}
 * @param sparkling whether the drink is sparkling, that is, holds carbon dioxide under pressure
 * @param reason why the style is served in its range, in one or two sentences
 */
public record DrinkStyle(String id, String name, boolean sparkling, String reason) {
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    /**
     * A style from its parts.
     *
     * @param id plain identifier such as {@code red-full}: lower-case letters a to z, digits and single hyphens
     * @param name the style in words, such as {@code red, full}
     * @param sparkling whether the drink is sparkling, that is, holds carbon dioxide under pressure
     * @param reason why the style is served in its range, in one or two sentences
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
    }
}
