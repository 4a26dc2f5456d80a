/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.questions;

import java.util.List;
import java.util.function.Function;

/**
 * A question and the call that answers it.
 *
 * @param asked the question
 * @param call what is called
 * @param answer from a counted solver to the answer in words
 */
record Question(String asked, String call, Function<Runs, String> answer) {

    /** The cells of its row; the last is the number of forward runs. */
    List<String> row() {
        Runs runs = new Runs();
        String words = answer.apply(runs);
        return List.of(asked, "`" + call + "`", words, Integer.toString(runs.count()));
    }
}
