/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

/** How a patch of a vessel's outer surface lies to gravity. */
public enum Orientation {
    /** A band of the side wall of a vessel that stands or stands on its neck. */
    UPRIGHT_WALL,
    /** A strip of the side wall of a vessel that lies, its axis level. */
    LYING_WALL,
    /** An end of the vessel that looks up. */
    END_FACING_UP,
    /** An end of the vessel that looks down: the end it stands on. */
    END_FACING_DOWN,
    /** An end of a vessel that lies. */
    END_FACING_SIDEWAYS
}
