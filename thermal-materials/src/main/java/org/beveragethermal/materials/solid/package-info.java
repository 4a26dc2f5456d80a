/* SPDX-License-Identifier: Apache-2.0 */

/**
 * Solids: what walls, gear and surroundings are made of, and ice.
 *
 * <p>Problem solved: handbooks disagree about glass, plastic and wood by more than a model may ignore, and often copy
 * each other where they agree. A {@link org.beveragethermal.materials.solid.Solid} therefore carries each property as a
 * constant whose uncertainty reaches all tables that were read and whose source names each with the row and the number
 * found there; it also says at which temperatures the figures hold. {@link org.beveragethermal.materials.solid.Solids}
 * lists them.
 *
 * <p>Four things want more than constants. A porous solid with water in it follows a rule of ours, {@link
 * org.beveragethermal.materials.solid.Solids#wetted}; soil of a known moisture follows a published one, {@link
 * org.beveragethermal.materials.solid.Soil}. A gel pack melts over a range: {@link
 * org.beveragethermal.materials.solid.LatentSolid} turns temperature into enthalpy and back. Ice, whose enthalpy
 * decides how much of it is needed, follows the reference formulation in {@link
 * org.beveragethermal.materials.solid.Ice}.
 *
 * <p>Use:
 *
 * <pre>{@code
 * Solid glass = Solids.sodaLimeGlass();
 * double conductivity = glass.thermalConductivity().value();              // W/(m K)
 * double standard = glass.thermalConductivity().standardUncertainty();    // W/(m K)
 * String read = glass.thermalConductivity().source().citation();          // which tables, which numbers
 * Source.Kind kind = Solids.named("neoprene foam").density().source().kind();   // FROM_MEMORY
 * double heat = -Solids.gelPack().specificEnthalpy(255.15);               // J/kg, from -18 °C until thawed
 * }</pre>
 *
 * <p>Within the package, {@code SolidTable} holds the figures beside their {@code SolidSources}, {@code Spread} makes
 * one constant of several figures, {@code Wetting} is the rule for wet solids.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  tables read (figures with sources) → Solids → Solid: k, c, density, emissivity, each a Constant
 *                                         ├→ wetted(solid, water), Soil(moisture)
 *                                         └→ LatentSolid: enthalpy (T), T (enthalpy)        Ice: IAPWS
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.materials.solid;

import org.jspecify.annotations.NullMarked;
