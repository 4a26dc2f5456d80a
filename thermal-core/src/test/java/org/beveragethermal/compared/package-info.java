/* SPDX-License-Identifier: Apache-2.0 */
/**
 * All surroundings side by side: what each does to one bottle of wine, and what each rests on.
 *
 * <p><b>Problem.</b> Whoever chooses between means of cooling or warming wants them on one scale, with what decides in each and how
 * much its laws leave open; whoever doubts one wants to see its law, source, range and checks in one place.
 *
 * <p><b>Use.</b> {@link org.beveragethermal.compared.Cases} lists the settings and {@link org.beveragethermal.compared.Standings} what
 * each surroundings rests on; a new surroundings needs an entry in both, or {@link org.beveragethermal.compared.ComparedTest} fails.
 * That test leaves the tables and the drawing of {@code docs/surroundings.md}.
 */
@NullMarked
package org.beveragethermal.compared;

import org.jspecify.annotations.NullMarked;
