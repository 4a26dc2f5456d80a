/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/**
 * What one account of one path carried up to a time.
 *
 * @param path name of the path
 * @param mechanism what carried it, such as {@code convection}
 * @param from name of the end that gave
 * @param to name of the end that took
 * @param heatJ heat [J] from {@code from} to {@code to}
 */
public record LedgerEntry(String path, String mechanism, String from, String to, double heatJ) {}
