/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.Locale;
import org.beveragethermal.core.solver.Method;

/**
 * Work that has passed its check of error and may be timed.
 *
 * @param setting how it was set to pass, such as its tolerance; may be empty
 * @param error error that was found, with its unit; may be empty
 * @param operations how many operations one run of the task holds
 * @param clock whose time counts
 * @param task the work
 */
record Prepared(String setting, String error, int operations, Clock clock, Task task) {

    /** Whose time counts. */
    enum Clock {
        /** Processor time of the measuring thread. */
        THREAD,
        /** Processor time of the whole process, for work that goes on several threads. */
        PROCESS
    }

    /** Work on one thread with a setting and an error. */
    static Prepared of(Tuned tuned, Task task) {
        return new Prepared(tuned.setting(), tuned.errorText(), 1, Clock.THREAD, task);
    }

    /** Work on one thread that has no error to check. */
    static Prepared of(Task task) {
        return new Prepared("", "", 1, Clock.THREAD, task);
    }

    /** The same with the method of the project's solver named. */
    Prepared by(Method method) {
        String name = method.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return new Prepared(name + ", " + setting, error, operations, clock, task);
    }

    /** The same of many operations in one run. */
    Prepared holding(int count) {
        return new Prepared(setting, error, count, clock, task);
    }

    /** The same by the time of the process. */
    Prepared onAllThreads() {
        return new Prepared(setting, error, operations, Clock.PROCESS, task);
    }
}
