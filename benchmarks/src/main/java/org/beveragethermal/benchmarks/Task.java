/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

/** Work that is timed. */
@FunctionalInterface
interface Task {

    /**
     * Does the work once.
     *
     * @return something that depends on all of it, so that no compiler leaves it out
     */
    double run();
}
