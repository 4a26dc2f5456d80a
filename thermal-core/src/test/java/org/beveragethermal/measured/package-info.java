/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Measured cooling and warming runs that others have reported, against predictions that know no more than the report says.
 *
 * <p><b>Problem.</b> Reports of such runs leave out much: how warm the appliance was, how much ice there was, which bottle. A
 * prediction with every missing condition put at a convenient value proves nothing. Here each missing condition, and each law
 * and dimension, is drawn from a {@linkplain org.beveragethermal.measured.Conditions stated distribution}, the same for every
 * row, fixed before any comparison was made; what comes out is an interval, and the measured value lies in it or does not.
 *
 * <p><b>Use.</b> {@link org.beveragethermal.measured.MeasuredRow} reads the reports; {@link org.beveragethermal.measured.Mappings}
 * says how each is run, or why it cannot be run yet. For a new surroundings, take its rows out of the list of those not run and add
 * an entry with a {@link org.beveragethermal.measured.Setting} for it. {@link org.beveragethermal.measured.Comparison} compares and {@link
 * org.beveragethermal.measured.MeasuredRunsTest} writes the tables and the drawing of the documents.
 */
@NullMarked
package org.beveragethermal.measured;

import org.jspecify.annotations.NullMarked;
