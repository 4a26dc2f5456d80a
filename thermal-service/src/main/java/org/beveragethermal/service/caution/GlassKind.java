/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.Locale;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;

/** Kinds of glass, by how great a sudden difference of temperature they bear. */
public enum GlassKind {
    /** Bottles and most glasses. */
    SODA_LIME(1),
    /** Lead crystal, which expands as much; worked thin and cut, taken alike. */
    LEAD_CRYSTAL(1),
    /** Laboratory and kitchen ware of small expansion. */
    BOROSILICATE(CautionLimits.BOROSILICATE_RATIO.value()),
    /** Glass of which nothing is known: taken as soda-lime. */
    UNKNOWN(1),
    /** Metal, plastic, or stoneware and the like, of which no limit is known here. */
    NOT_GLASS(Double.POSITIVE_INFINITY);

    private final double ratio;

    GlassKind(double ratio) {
        this.ratio = ratio;
    }

    /**
     * The kind of a wall.
     *
     * @param wall what the wall is of
     * @return the kind; {@link #UNKNOWN} for other solids with glass or crystal in their name, {@link #NOT_GLASS} for all the rest
     */
    public static GlassKind of(Solid wall) {
        if (wall.name().equals(Solids.sodaLimeGlass().name())) {
            return SODA_LIME;
        }
        if (wall.name().equals(Solids.leadCrystal().name())) {
            return LEAD_CRYSTAL;
        }
        if (wall.name().equals(Solids.borosilicateGlass().name())) {
            return BOROSILICATE;
        }
        String name = wall.name().toLowerCase(Locale.ROOT);
        return name.contains("glass") || name.contains("crystal") ? UNKNOWN : NOT_GLASS;
    }

    /**
     * Whether it can crack or splinter.
     *
     * @return true for every kind of glass
     */
    public boolean isGlass() {
        return this != NOT_GLASS;
    }

    /** Difference from which it is warned of [K]. */
    double warningK() {
        return CautionLimits.SHOCK_WARNING.value() * ratio;
    }

    /** Difference that is not to be crossed [K]. */
    double stopK() {
        return CautionLimits.SHOCK_STOP.value() * ratio;
    }
}
