/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.airing;

/** Answer to "how warm must the drink be when it is decanted, or its bottle opened?". */
public sealed interface DecantingAnswer {

    /**
     * There is such a temperature.
     *
     * @param temperatureK temperature of bottle and drink at the beginning [K]
     */
    record At(double temperatureK) implements DecantingAnswer {}

    /**
     * No beginning leads to the wanted first glass: the drink would have to be frozen, or hotter than it can be.
     *
     * @param wantedK wanted temperature of the first glass [K]
     * @param coldestK first glass of a drink that begins as cold as it is liquid [K]
     * @param warmestK first glass of a drink that begins as warm as it can be in its bottle and is described [K]
     */
    record Never(double wantedK, double coldestK, double warmestK) implements DecantingAnswer {}
}
