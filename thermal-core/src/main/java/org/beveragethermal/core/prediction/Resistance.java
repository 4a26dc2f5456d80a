/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

/**
 * One resistance between a drink and what cools or warms it, at one moment.
 *
 * @param name what it is: inside film, wall, outside film, …
 * @param kelvinPerWatt resistance [K/W]
 * @param coefficient heat transfer coefficient [W/(m² K)]; 0 for a wall
 * @param nusselt Nusselt number [-]; 0 where it does not apply
 * @param rayleigh Rayleigh number [-]; 0 where it does not apply
 * @param prandtl Prandtl number [-]; 0 where it does not apply
 * @param law name of the law that decides
 */
public record Resistance(
        String name,
        double kelvinPerWatt,
        double coefficient,
        double nusselt,
        double rayleigh,
        double prandtl,
        String law) {}
