/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.Map;

/**
 * Another value of one thing that is given.
 *
 * @param symbol what is changed
 * @param value its other value
 * @param asked symbol of what changes with it
 */
record WhatIf(String symbol, double value, String asked) {

    Map<String, Double> changes() {
        return Map.of(symbol, value);
    }
}
