/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;

/** Alcoholic strength by volume: volume of ethanol at 20 °C contained in a volume of the mixture at 20 °C, as a number;
 * usually stated in % vol. */
public interface AlcoholicStrength extends Quantity<AlcoholicStrength> {}
