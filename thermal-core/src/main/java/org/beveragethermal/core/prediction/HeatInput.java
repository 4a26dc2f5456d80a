/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

/**
 * Heat that reaches a wall whatever the temperatures, such as sunlight; it has no resistance.
 *
 * @param name what brings it
 * @param watts heat into the wall [W], negative if it is drawn off
 */
public record HeatInput(String name, double watts) {}
