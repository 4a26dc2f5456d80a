/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

/** Runs one job in a process of its own and prints one line of what it took. */
final class Case {

    private Case() {}

    /**
     * Checks the error of a job, then times it.
     *
     * @param arguments key of the job, and {@code quick} for a look
     */
    public static void main(String[] arguments) {
        Stopwatch.Effort effort =
                arguments.length > 1 && arguments[1].equals("quick") ? Stopwatch.Effort.QUICK : Stopwatch.Effort.FULL;
        String job = arguments[0];
        Measured measured = job.equals(Jobs.TRACKING)
                ? LibraryJobs.tracking(job, effort)
                : Stopwatch.measure(job, Jobs.prepare(job), effort);
        System.out.println(measured.line());
    }
}
