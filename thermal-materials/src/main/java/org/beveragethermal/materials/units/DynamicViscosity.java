/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Dynamic viscosity; SI unit Pa s. */
public interface DynamicViscosity extends Quantity<DynamicViscosity> {}
