/* SPDX-License-Identifier: Apache-2.0 */

/**
 * Air around the vessels.
 *
 * <p>Problem solved: convection correlations need density, viscosity, conductivity and Prandtl number of air at the
 * film temperature and the pressure of the place. Tables disagree by up to 3 % about the conductivity; the formulas
 * here are the reference correlations.
 *
 * Its moisture decides whether a cold bottle sweats ({@link org.beveragethermal.materials.air.MoistAir#dewPointK dew
 * point}) and how far a wet cloth cools it ({@link org.beveragethermal.materials.air.MoistAir#wetBulbK wet bulb}).
 *
 * <p>Use: {@code MoistAir.dewPointK(298.15, 0.6)}, or {@code DryAir.kinematicViscosity(293.15, DryAir.STANDARD_PRESSURE_PA)}.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  T, pressure                    → DryAir   → density, viscosity, k, c, Prandtl number ┐
 *  T, pressure, relative humidity → MoistAir → dew point, wet bulb, vapour pressure     ┴→ films of core.film
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.materials.air;

import org.jspecify.annotations.NullMarked;
