/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

/** What the vessel and the drink do not tell: how they are handled. */
public enum Circumstance {
    /** The closure has been taken off, though the vessel has one. */
    OPENED,
    /** The bottle was shaken, dropped or carried about. */
    SHAKEN,
    /** The wine has thrown a sediment. */
    SEDIMENT,
    /** It is, or is to be, stood on its mouth. */
    TURNED_OVER,
    /** A decanter or carafe is closed with its stopper. */
    STOPPERED,
    /** Salted ice is within reach of hands. */
    SALTED_ICE,
    /** Ice is put into the drink. */
    ICE_IN_DRINK,
    /** Ice that has cooled the outside of bottles or food is put into the drink. */
    COOLING_ICE_IN_DRINK,
    /** The mouth of the bottle is, or may come, under water or melt water. */
    MOUTH_UNDER_WATER,
    /** Glass stands in ice, or is handled above it. */
    GLASS_IN_ICE,
    /** Milk or cream has been added. */
    WITH_MILK,
    /** It keeps at room temperature, as its label says: not to be held cold. */
    SHELF_STABLE,
    /** The surroundings are warmer than 32 °C (90 °F). */
    HOT_SURROUNDINGS
}
