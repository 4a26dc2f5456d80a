/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import java.time.Duration;

/**
 * Ice to add in the course of the service.
 *
 * @param after time since the bath was made
 * @param iceKg mass of ice [kg]
 * @param pourOffKg water to pour off before, so that the level stays [kg]
 * @param blocks number of blocks, rounded up
 */
public record TopUp(Duration after, double iceKg, double pourOffKg, int blocks) {}
