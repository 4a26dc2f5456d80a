/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Benchmarks whose results are ratios.
 *
 * <p><b>Problem.</b> A time in nanoseconds says more about the machine than about the code. What counts is how many times as long a
 * general-purpose tool, or a reference of general knowledge, takes for the same work to the same error in the same run.
 *
 * <p><b>Use.</b> {@code benchmarks/run} runs {@link org.beveragethermal.benchmarks.Results}: problems P1 to P6, stated in full in the classes
 * that pose them, and the jobs of the library, beside Apache Commons Math, Hipparchus and SUNDIALS. It writes {@code RESULTS.md}. {@link
 * org.beveragethermal.benchmarks.Ratios} runs the benchmarks of single parts: properties, solver, questions, plans, tracking, fits.
 *
 * <p><b>Method.</b> {@code Group} lists jobs and rows, {@code Jobs} makes a job ready, which includes its check of error, {@code Case} runs it
 * in a virtual machine of its own, {@code Stopwatch} times it by the processor time of its thread, {@code ResultsPage} keeps the tables. A
 * new row is a job in {@code Jobs} and a row in {@code Group}.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Group (jobs, rows) → Case: a machine of its own → Jobs (check of error) → Stopwatch → ResultsPage → RESULTS.md
 * </pre>
 */
@NullMarked
package org.beveragethermal.benchmarks;

import org.jspecify.annotations.NullMarked;
