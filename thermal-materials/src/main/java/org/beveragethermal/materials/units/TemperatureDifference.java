/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Difference of two temperatures; SI unit K. A type of its own, because 1 °C as a temperature is 274.15 K and as a
 * difference 1 K. */
public interface TemperatureDifference extends Quantity<TemperatureDifference> {}
