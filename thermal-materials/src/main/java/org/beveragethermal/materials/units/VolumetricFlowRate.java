/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Volume per time, such as what a tap gives; SI unit m³/s. */
public interface VolumetricFlowRate extends Quantity<VolumetricFlowRate> {}
