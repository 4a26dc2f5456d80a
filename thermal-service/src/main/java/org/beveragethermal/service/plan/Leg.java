/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

/**
 * A bottle somewhere for a time on the plan's clock [s since its start].
 *
 * @param where id of a place or of gear; before seats are given out that of the first of the gear that is alike
 * @param fromS when it begins [s]
 * @param toS when it ends [s], after its beginning
 */
record Leg(String where, double fromS, double toS) {}
