/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Heat flow per temperature difference; SI unit W/K. */
public interface ThermalConductance extends Quantity<ThermalConductance> {}
