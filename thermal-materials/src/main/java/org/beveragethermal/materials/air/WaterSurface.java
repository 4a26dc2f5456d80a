/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.air;

/** What water is where air meets it: below 0 °C a wet cloth may be iced, or still liquid (supercooled). */
public enum WaterSurface {
    /** Liquid water; below 0 °C supercooled. */
    LIQUID,
    /** Ice, at most at 0 °C. */
    ICE
}
