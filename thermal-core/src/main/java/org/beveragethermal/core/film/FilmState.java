/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import java.util.Optional;

/**
 * A film at one pair of temperatures, for explaining it.
 *
 * @param coefficient heat transfer coefficient [W/(m² K)]
 * @param nusselt Nusselt number on the film's length [-]
 * @param rayleigh Rayleigh number on that length [-], 0 where it does not apply
 * @param prandtl Prandtl number [-], 0 where it does not apply
 * @param law name of the law that decides
 * @param outsideRange a sentence if the law is used outside its published range
 */
public record FilmState(
        double coefficient,
        double nusselt,
        double rayleigh,
        double prandtl,
        String law,
        Optional<String> outsideRange) {}
