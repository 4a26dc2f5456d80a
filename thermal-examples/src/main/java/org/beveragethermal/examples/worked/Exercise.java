/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.Map;

/**
 * A question of the kind of an example with other values.
 *
 * @param question what is asked, with symbols in braces for values
 * @param asked symbol of what is asked
 * @param changes given values that differ, by symbol
 */
record Exercise(String question, String asked, Map<String, Double> changes) {

    /**
     * Copies the changes.
     *
     * @param question what is asked
     * @param asked symbol of what is asked
     * @param changes given values that differ, by symbol, not modified
     */
    Exercise {
        changes = Map.copyOf(changes);
    }
}
