/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.util.List;
import java.util.Optional;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * How a run describes a vessel, from which a prediction judges whether another description is warranted.
 *
 * @param vessel the vessel and its contents at the start
 * @param model the description used; empty for contents taken as mixed by hand, of which no other description is advised
 * @param insideFilm the film inside the whole wetted side by the lumped law, for descriptions without one of their own
 * @param stays where the vessel is in the course of the run, in order, at least one
 */
public record Described(FilledVessel vessel, Optional<ModelAdvice.Model> model, Film insideFilm, List<Stay> stays) {

    /**
     * Copies the list.
     *
     * @param vessel the vessel and its contents
     * @param model the description used
     * @param insideFilm the film inside by the lumped law
     * @param stays where the vessel is, not modified
     * @throws IllegalArgumentException if there is no stay
     */
    public Described {
        stays = List.copyOf(stays);
        if (stays.isEmpty()) {
            throw new IllegalArgumentException("no stays: expected at least one");
        }
    }

    /** Inner side area that the contents wet [m²]. */
    double wettedSideM2() {
        return vessel.vessel().profile().innerSideAreaM2(0, vessel.liquidHeightM());
    }
}
