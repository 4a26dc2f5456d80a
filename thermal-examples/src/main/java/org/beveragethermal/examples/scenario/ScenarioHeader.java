/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.time.Instant;
import java.time.ZoneId;
import org.beveragethermal.service.target.RangePolicy;

/**
 * What a scenario says about itself.
 *
 * @param title what it is called
 * @param note where it comes from
 * @param startsAt its start
 * @param zone in which times are told
 * @param rangePolicy how ranges of several sources become one
 */
record ScenarioHeader(String title, String note, Instant startsAt, ZoneId zone, RangePolicy rangePolicy) {}
