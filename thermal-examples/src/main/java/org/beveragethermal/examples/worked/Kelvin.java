/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

/** Between the degrees of the examples and the kelvins of the library. */
final class Kelvin {

    private static final double ZERO_CELSIUS = 273.15;

    private Kelvin() {}

    static double of(double celsius) {
        return celsius + ZERO_CELSIUS;
    }

    static double of(Term celsius) {
        return of(celsius.value());
    }

    static double celsius(double kelvin) {
        return kelvin - ZERO_CELSIUS;
    }

    /** Kelvins in a formula. */
    static Term in(Term celsius) {
        return celsius.plus(Term.number(ZERO_CELSIUS));
    }
}
