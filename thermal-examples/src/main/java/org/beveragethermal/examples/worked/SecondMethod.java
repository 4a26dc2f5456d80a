/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

/**
 * The same quantity found in another way.
 *
 * @param first what the formula found
 * @param how the other way
 * @param value what it found, in the unit of the first
 * @param tolerance by how much the two may differ, in that unit
 * @param why why they differ by that
 */
record SecondMethod(Value first, String how, double value, double tolerance, String why) {

    /** The other way's result as a quantity, to be written like the first. */
    Value second() {
        return new Value(first.symbol(), first.name(), value, first.unit(), false);
    }
}
