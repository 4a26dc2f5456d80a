/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.Map;

/**
 * What others have printed for a question of the same kind.
 *
 * @param source citation
 * @param read whether the figure was read in the source, or is remembered
 * @param what what was asked there, with symbols in braces for values
 * @param asked symbol of what was asked
 * @param expected the printed figure, in the unit of the quantity
 * @param tolerance half a unit of its last digit or what its author states
 * @param changes the data there, by symbol
 */
record Published(
        String source,
        boolean read,
        String what,
        String asked,
        double expected,
        double tolerance,
        Map<String, Double> changes) {

    /**
     * Copies the data.
     *
     * @param source citation
     * @param read whether the figure was read in the source, or is remembered
     * @param what what was asked there, with symbols in braces for values
     * @param asked symbol of what was asked
     * @param expected the printed figure
     * @param tolerance by how much it may be missed
     * @param changes the data there, by symbol, not modified
     */
    Published {
        changes = Map.copyOf(changes);
    }

    String citation() {
        return read ? source : source + " (from memory)";
    }
}
