/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Thermal conductivity; SI unit W/(m K). */
public interface ThermalConductivity extends Quantity<ThermalConductivity> {}
