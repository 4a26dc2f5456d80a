/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Mass of a solute per volume of solution; SI unit kg/m³. */
public interface MassConcentration extends Quantity<MassConcentration> {}
