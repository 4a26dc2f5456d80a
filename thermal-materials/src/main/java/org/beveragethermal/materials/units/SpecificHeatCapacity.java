/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Heat capacity per mass; SI unit J/(kg K). */
public interface SpecificHeatCapacity extends Quantity<SpecificHeatCapacity> {}
