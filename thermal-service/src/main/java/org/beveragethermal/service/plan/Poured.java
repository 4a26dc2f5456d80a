/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;

/**
 * A glass as the coupled run of the plan predicts it.
 *
 * @param at when it is poured
 * @param expected its temperature
 * @param inRange whether its mean temperature is in range
 */
public record Poured(Instant at, Expected expected, boolean inRange) {}
