/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.jspecify.annotations.Nullable;

/**
 * A temperature that a report states, or the distribution that it is drawn from.
 *
 * @param middle the stated value, or the middle of the distribution
 * @param input what it is drawn from, null if it is stated
 */
record Given(double middle, @Nullable UncertainInput input) {

    static Given known(double value) {
        return new Given(value, null);
    }

    static Given drawnFrom(UncertainInput input) {
        return new Given(input.value(), input);
    }

    double in(Draw draw) {
        return input == null ? middle : Conditions.in(draw, input);
    }
}
