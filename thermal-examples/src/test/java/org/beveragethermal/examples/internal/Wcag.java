/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.internal;

/** Contrast by W3C, Web Content Accessibility Guidelines (WCAG) 2.2, definitions of relative luminance and contrast ratio. */
public final class Wcag {

    private static final double[] WEIGHTS = {0.2126, 0.7152, 0.0722};

    private Wcag() {}

    /** Contrast of two colours, each # and three or six hexadecimal digits: 1 to 21. */
    public static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        String digits = colour.substring(1);
        String six = digits.length() == 6 ? digits : digits.replaceAll("(.)", "$1$1");
        double sum = 0;
        for (int i = 0; i < WEIGHTS.length; i++) {
            double part = Integer.parseInt(six.substring(2 * i, 2 * i + 2), 16) / 255.0;
            sum += WEIGHTS[i] * (part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
