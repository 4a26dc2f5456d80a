/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Heat per temperature difference; SI unit J/K. */
public interface HeatCapacity extends Quantity<HeatCapacity> {}
