/* SPDX-License-Identifier: Apache-2.0 */
/**
 * The command line: reads a scenario, says what is wrong with it, or shows what it asks for.
 *
 * <p>Output is UTF-8 and depends on neither locale nor time zone of the machine. Exit status 0 means done, 2 that the
 * arguments or the scenario were refused; then one line on the error stream says why.
 */
@NullMarked
package org.beveragethermal.examples.cli;

import org.jspecify.annotations.NullMarked;
