/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Radiant power that falls on an area; SI unit W/m². */
public interface Irradiance extends Quantity<Irradiance> {}
