/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import org.beveragethermal.core.network.HeatLaw;

/** A heat law at a surface that can say which law decides and how strongly. */
public interface Film extends HeatLaw {

    /**
     * Describes the film at two temperatures.
     *
     * @param bulkK temperature of the fluid or of the surroundings [K]
     * @param wallK temperature of the surface [K]
     * @return coefficient, numbers and law
     */
    FilmState describe(double bulkK, double wallK);
}
