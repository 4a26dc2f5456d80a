/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import java.util.List;

/** A place where input enters. */
public interface FuzzTarget {

    /**
     * What the target is called.
     *
     * @return a short name
     */
    String name();

    /**
     * Input that is right, or nearly, from which the rest is made.
     *
     * @return inputs, at least one
     */
    List<byte[]> corpus();

    /**
     * Words that mean something to the target.
     *
     * @return words
     */
    List<String> words();

    /**
     * What is handed over.
     *
     * @return the corpus, changed
     */
    default Inputs inputs() {
        return new Mutations(this);
    }

    /**
     * How long an input may take.
     *
     * @return processor time [s]
     */
    default double longestS() {
        return 2;
    }

    /**
     * Hands over one input and looks at what comes back.
     *
     * @param input any bytes
     * @return whether it was accepted; false if it was refused as documented
     * @throws AssertionError if something came back that never should
     */
    boolean accepts(byte[] input);
}
