/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Enthalpy or latent heat per mass; SI unit J/kg. */
public interface SpecificEnthalpy extends Quantity<SpecificEnthalpy> {}
