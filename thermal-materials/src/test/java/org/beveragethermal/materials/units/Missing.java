/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;
import org.jspecify.annotations.NullUnmarked;

/** What a caller without null checking may hand in. */
@NullUnmarked
final class Missing {
    private Missing() {}

    static Quantity<?> quantity() {
        return null;
    }
}
