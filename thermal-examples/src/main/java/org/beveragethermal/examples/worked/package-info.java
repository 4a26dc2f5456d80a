/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Worked examples for students, from one-node cooling by hand to planning in two stages.
 *
 * <p><b>Problem.</b> A student wants to see a formula, the numbers put in and a result that can be trusted; a textbook cannot be run, and a
 * library does not show its hand.
 *
 * <p><b>Use.</b> {@link org.beveragethermal.examples.worked.WorkedBook} writes the book, {@link
 * org.beveragethermal.examples.worked.WorkedExamples} works an example with other values:
 *
 * <pre>{@code
 * WorkedBook.write(Path.of("worked-examples.html"));
 * System.out.println(WorkedExamples.work("cooling-by-hand", Map.of("h", 12.0)));
 * }</pre>
 *
 * <p><b>Method.</b> An example is a method that fills a sheet ({@code Working}) with given values, steps and checks. A step's formula is a
 * {@code Term}, which knows its value, its symbols and its numbers at once; texts name values by symbol. So no figure is typed twice, and the
 * book, its exercises, the examples of textbooks and the tests all run the same method with other values.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  example + values → Working (given, steps of Terms, checks) ┬→ WorkedBook: HTML
 *                                                             ├→ exercises with answers
 *                                                             └→ JShell, tests
 * </pre>
 */
@NullMarked
package org.beveragethermal.examples.worked;

import org.jspecify.annotations.NullMarked;
