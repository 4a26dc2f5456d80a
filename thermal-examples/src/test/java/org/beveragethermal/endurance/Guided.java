/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

/**
 * The same targets for a fuzzer that is guided by coverage and calls a method of this name, such as Jazzer; which it is, is told by its
 * place in the list. How to run it stands in {@code thermal-examples/docs/endurance.md}.
 */
public final class Guided {
    private static final FuzzTarget TARGET =
            Fuzzing.SHARES.get(Integer.getInteger("fuzz.target", 0)).target();

    private Guided() {}

    /**
     * One input.
     *
     * @param input any bytes
     */
    public static void fuzzerTestOneInput(byte[] input) {
        TARGET.accepts(input);
    }
}
