/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.internal.FilmFit;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.materials.liquid.Water;

/** The film on a level disc in water: its slopes, its direction, and that it follows density. */
final class LevelFilmProperties {

    private static final double ZERO = 273.15;
    private static final WallPatch DISC = new WallPatch(0, 0, 4e-3, 0.07, 0.9, Orientation.END_FACING_UP);
    private static final LevelFilm UP = film(true);
    private static final LevelFilm DOWN = film(false);

    private static LevelFilm film(boolean up) {
        return LevelFilm.of(
                DISC, up, Fluid.of(Water.liquid()), FilmFit.of(Water.liquid()).density(), Agitation.STILL);
    }

    private static double watts(LevelFilm film, double bulkK, double surfaceK) {
        HeatFlow out = new HeatFlow();
        film.evaluate(bulkK, surfaceK, out);
        return out.watts;
    }

    @Property(tries = 300, seed = "20261125")
    @Label("Path derivatives = differences: films on level ends in water")
    void slopesAreThoseOfTheFlow(
            @ForAll @DoubleRange(min = 0.5, max = 40) double bulkC,
            @ForAll @DoubleRange(min = 0.5, max = 40) double surfaceC) {
        double step = 1e-4;
        // Away from where nothing drives.
        if (Math.abs(bulkC - surfaceC) < 0.01) {
            return;
        }
        for (LevelFilm film : new LevelFilm[] {UP, DOWN}) {
            HeatFlow out = new HeatFlow();
            double bulk = ZERO + bulkC;
            double surface = ZERO + surfaceC;
            film.evaluate(bulk, surface, out);
            double scale = Math.abs(out.perFromKelvin) + Math.abs(out.perToKelvin);
            assertThat(out.perFromKelvin)
                    .isCloseTo(
                            (watts(film, bulk + step, surface) - watts(film, bulk - step, surface)) / (2 * step),
                            within(1e-3 * scale));
            assertThat(out.perToKelvin)
                    .isCloseTo(
                            (watts(film, bulk, surface + step) - watts(film, bulk, surface - step)) / (2 * step),
                            within(1e-3 * scale));
            assertThat(Math.signum(out.watts)).isEqualTo(Math.signum(bulkC - surfaceC));
        }
    }

    @Property(tries = 100, seed = "20261126")
    @Label("Films on level ends: what overturns above rests below")
    void whatOverturnsAboveRestsBelow(@ForAll @DoubleRange(min = 0.1, max = 1.2) double coldC) {
        // Above 4 °C a warm disc that looks up overturns more than one that looks down; between 0 and 4 °C a colder
        // disc does.
        assertThat(watts(DOWN, ZERO + 10, ZERO + 15) / watts(UP, ZERO + 10, ZERO + 15))
                .isLessThan(0.7);
        double warmer = ZERO + coldC + 0.9;
        double colder = ZERO + coldC;
        assertThat(watts(DOWN, colder, warmer) / watts(UP, colder, warmer)).isGreaterThan(1.4);
    }
}
