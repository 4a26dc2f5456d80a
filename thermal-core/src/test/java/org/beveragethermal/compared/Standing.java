/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.compared;

import java.util.List;
import org.beveragethermal.core.surroundings.Surroundings;

/**
 * What one surroundings, or one thing it can do, rests on. A test is named as {@code package.Class#method} below the root package; an
 * empty list is what is still missing.
 *
 * @param kind the class
 * @param what what of it
 * @param laws names of the laws that decide outside, as {@link Laws} knows them
 * @param doubts what is drawn for it: names of factors or of constants
 * @param outside checks against something outside the project
 * @param limits limiting cases
 * @param refusals bad input
 * @param rows ids of the rows of the table
 */
record Standing(
        Class<? extends Surroundings> kind,
        String what,
        List<String> laws,
        List<String> doubts,
        List<Check> outside,
        List<String> limits,
        List<String> refusals,
        List<String> rows) {

    /**
     * A check against something outside the project.
     *
     * @param test the test
     * @param source a part of the citation as that test has it
     */
    record Check(String test, String source) {}
}
