/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Checks against something outside the project, and the rows they leave behind.
 *
 * <p>A figure that a test compares with a standard, a table, a reference library or a fact of the trade is worth more
 * than a green light: readers want to see which figure, from where, and how close. {@link
 * org.beveragethermal.testsupport.OutsideChecks} asserts such a comparison and appends a row to {@code
 * target/outside-checks.csv} of the module whose tests run; the accuracy documents are written from those rows.
 *
 * <pre>{@code
 * OutsideChecks.published("water-density-20c", "IAPWS SR6-08, table 3")
 *         .what("density of water at 20 °C, 0.1 MPa")
 *         .unit("kg/m³")
 *         .expected(998.2)
 *         .within(0.1)
 *         .check(Water.liquid().density(293.15));
 * }</pre>
 *
 * <p>{@link org.beveragethermal.testsupport.ObservedOrders} does the same for the order at which the error of a solver falls,
 * and {@link org.beveragethermal.testsupport.PropertyRuns} writes down how many cases each property was tried with.
 */
@NullMarked
package org.beveragethermal.testsupport;

import org.jspecify.annotations.NullMarked;
