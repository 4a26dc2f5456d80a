/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

/** Generic shapes of bottles, by their trade terms. */
public enum VesselShape {
    /** Straight body and a short, steep shoulder. */
    HIGH_SHOULDERED,
    /** Wide body that slopes gently into the neck. */
    SLOPING_SHOULDERED,
    /** Narrow, long body and neck, hardly any punt. */
    TALL_SLIM,
    /** Wide, sloping and thick-walled, with a deep punt, to hold pressure. */
    SPARKLING
}
