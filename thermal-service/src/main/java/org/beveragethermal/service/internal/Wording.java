/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.internal;

import java.util.Locale;
import java.util.ResourceBundle;

/**
 * Words in a language, with the notation of numbers that belongs to them.
 *
 * @param bundle the words
 * @param locale the notation of numbers
 */
public record Wording(ResourceBundle bundle, Locale locale) {

    /**
     * Looks words up.
     *
     * <p>Where there is no translation they are those of the root bundle, English, and numbers are written as {@link Locale#ROOT} writes
     * them. The default locale, which a look-up falls back to before it takes the root, has no influence.
     *
     * @param base base name of the bundle
     * @param locale the language, and the notation of numbers if there are words in it
     * @return the words
     * @throws java.util.MissingResourceException if there is no such bundle at all
     */
    public static Wording of(String base, Locale locale) {
        ResourceBundle found = ResourceBundle.getBundle(base, locale);
        boolean translated = !found.getLocale().equals(Locale.ROOT)
                && ResourceBundle.Control.getControl(ResourceBundle.Control.FORMAT_DEFAULT)
                        .getCandidateLocales(base, locale)
                        .contains(found.getLocale());
        return translated
                ? new Wording(found, locale)
                : new Wording(ResourceBundle.getBundle(base, Locale.ROOT), Locale.ROOT);
    }
}
