/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Mass per volume; SI unit kg/m³. */
public interface Density extends Quantity<Density> {}
