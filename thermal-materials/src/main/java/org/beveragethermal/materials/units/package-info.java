/* SPDX-License-Identifier: Apache-2.0 */

/**
 * Quantities with units at the boundary, SI doubles inside.
 *
 * <p>Problem solved: users hand in what they know (6 °C, 43 °F, 750 mL, 12.5 % vol) and must not be able to mistake a
 * temperature for a temperature difference or a length for a heat transfer coefficient; the models compute in plain
 * doubles. JSR-385 lacks the quantity types of heat transfer, so they are declared here, together with
 * {@link org.beveragethermal.materials.units.ThermalUnits units} for them.
 *
 * <p>Use: build quantities with {@link org.beveragethermal.materials.units.Measures} ({@code celsius(6)},
 * {@code litres(0.75)}, {@code percentByVolume(12.5)}); a method that takes a quantity turns it into SI once, through
 * {@link org.beveragethermal.materials.units.SiValues}, which refuses what is missing, of the wrong dimension, of the
 * wrong temperature scale, not finite, below absolute zero or out of range, naming the parameter.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  6 °C, 43 °F, 750 mL → Measures → Quantity → SiValues (unit, scale, range) → double in SI
 *                                                    └→ OutOfRangeException: what, given, allowed
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.materials.units;

import org.jspecify.annotations.NullMarked;
