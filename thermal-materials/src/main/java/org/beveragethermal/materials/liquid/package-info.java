/* SPDX-License-Identifier: Apache-2.0 */

/**
 * Liquids as functions of temperature: water, ethanol-water mixtures, brine, sugar in water, dissolved carbon dioxide,
 * and the drinks made of them, liquid or partly frozen.
 *
 * <p>Problem solved: a thermal model asks for density, heat capacity, conductivity, viscosity and enthalpy millions of
 * times; a {@link org.beveragethermal.materials.liquid.Liquid} answers in SI doubles without allocating, from
 * published formulas whose source, range and uncertainty it can list.
 *
 * <p>Use: {@code Liquid wine = Beverage.wine(percentByVolume(12.5)); wine.density(283.15)} where only the strength is known,
 * {@code Beverage.dryWine(percentByVolume(12.5))} with the usual extract; with sugar,
 * {@code Beverage.sweetWine(percentByVolume(11), gramsPerLitre(120))}; any other drink from its
 * {@link org.beveragethermal.materials.liquid.Composition}. How much of it is ice and how far it has grown is told by
 * {@code FreezingCurve.of(wine).iceFraction(263.15)} and {@code expansion}. Temperatures outside
 * {@link org.beveragethermal.materials.liquid.Liquid#temperatureRange()} are refused;
 * {@link org.beveragethermal.materials.liquid.Liquid#properties()} tells where each formula comes from and where in
 * that range it is only an extrapolation.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  strength, sugar, extract, gas → Composition → Beverage ┬→ Liquid: density, c, k, viscosity, enthalpy (T)
 *                                                         ├→ FreezingCurve: onset, ice fraction, expansion
 *                                                         └→ CarbonDioxide: pressure over the drink
 *  salt and water                → Brine: the same, with heat of solution
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.materials.liquid;

import org.jspecify.annotations.NullMarked;
