/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.Objects;

/** Gear that goes around vessels and does not hold water off. */
final class DryGear {

    private DryGear() {}

    /** Refuses water around it. */
    static Surroundings require(String what, Surroundings outside) {
        boolean tap = Objects.requireNonNull(outside, "outside") instanceof RunningTap;
        if (tap || outside.isBath()) {
            throw new IllegalArgumentException(what + (tap ? " under a running tap" : " in a bath")
                    + ": water gets into it; expected air or other dry surroundings");
        }
        return outside;
    }
}
