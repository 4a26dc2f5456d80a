/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;

/**
 * A bottle somewhere for a time; a bottle's stays follow one another from the start of the plan until it is finished.
 *
 * @param where id of the place or gear
 * @param from when it begins
 * @param to when it ends
 */
public record Stay(String where, Instant from, Instant to) {}
