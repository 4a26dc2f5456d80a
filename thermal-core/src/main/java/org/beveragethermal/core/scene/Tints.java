/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.Optional;
import org.beveragethermal.core.surroundings.DrinkTint;
import org.beveragethermal.core.surroundings.GlassTint;
import org.beveragethermal.core.surroundings.SunOptics;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.solid.Solid;

/**
 * Colours of a vessel's glass and of the drink in it, as far as they were stated.
 *
 * @param glass colour of the glass; colourless if nothing was said
 * @param drink colour of the drink; what is usual for its kind if nothing was said
 */
record Tints(Optional<GlassTint> glass, Optional<DrinkTint> drink) {

    static final Tints UNSTATED = new Tints(Optional.empty(), Optional.empty());

    /** A bare wall with drink behind it over a way of light [m], or with none behind it; what the wall is made of decides whether light passes. */
    SunOptics wall(Solid wall, Liquid liquid, double pathM) {
        return SunOptics.isTransparent(wall)
                ? SunOptics.filled(glass.orElse(GlassTint.COLOURLESS), drinkOr(liquid), pathM)
                : SunOptics.of(wall);
    }

    /** The open surface of a drink. */
    SunOptics surface(Liquid liquid, double depthM) {
        return SunOptics.surface(drinkOr(liquid), depthM);
    }

    private DrinkTint drinkOr(Liquid liquid) {
        return drink.orElseGet(() -> DrinkTint.usual(liquid));
    }
}
