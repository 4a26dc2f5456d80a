/* SPDX-License-Identifier: Apache-2.0 */

/**
 * Liquids as functions of temperature: water, ethanol-water mixtures and beverages made of them; brine, sugar in water
 * and dissolved carbon dioxide.
 *
 * <p>Problem solved: a thermal model asks for density, heat capacity, conductivity, viscosity and enthalpy millions of
 * times; a {@link org.beveragethermal.materials.liquid.Liquid} answers in SI doubles without allocating, from
 * published formulas whose source, range and uncertainty it can list.
 *
 * <p>Use: {@code Liquid wine = Beverage.wine(percentByVolume(12.5)); wine.density(283.15)}. Temperatures outside
 * {@link org.beveragethermal.materials.liquid.Liquid#temperatureRange()} are refused;
 * {@link org.beveragethermal.materials.liquid.Liquid#properties()} tells where each formula comes from and where in
 * that range it is only an extrapolation.
 */
@NullMarked
package org.beveragethermal.materials.liquid;

import org.jspecify.annotations.NullMarked;
