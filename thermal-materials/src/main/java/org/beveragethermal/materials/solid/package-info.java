/* SPDX-License-Identifier: Apache-2.0 */

/**
 * Solids: what walls are made of, and ice.
 *
 * <p>Problem solved: handbooks disagree about glass and steel by more than a model may ignore, so a
 * {@link org.beveragethermal.materials.solid.Solid} carries each property as a constant with its source and the spread
 * between sources as its uncertainty. Ice, whose enthalpy decides how much of it is needed, follows the reference
 * formulation in {@link org.beveragethermal.materials.solid.Ice}.
 *
 * <p>Use: {@code Solids.sodaLimeGlass().thermalConductivity().value()}, {@code Ice.specificEnthalpy(263.15)}.
 */
@NullMarked
package org.beveragethermal.materials.solid;

import org.jspecify.annotations.NullMarked;
