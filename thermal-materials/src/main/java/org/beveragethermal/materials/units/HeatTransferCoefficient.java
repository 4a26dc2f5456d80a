/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Heat flow per area and temperature difference; SI unit W/(m² K). */
public interface HeatTransferCoefficient extends Quantity<HeatTransferCoefficient> {}
