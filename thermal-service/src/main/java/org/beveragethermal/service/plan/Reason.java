/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.List;

/**
 * Why something is done, or why it is not: a code, and what is to be put into its sentence.
 *
 * @param code which sentence
 * @param arguments what goes into it, in the order and of the kinds that the code states
 */
public record Reason(Code code, List<Argument> arguments) {

    /** Sentences; each states its arguments. */
    public enum Code {
        /** In range without being moved. Temperature when poured. */
        STAYS,
        /** Brought to its temperature. Where, temperature when poured if it stayed, temperature when poured. */
        BROUGHT_BY,
        /** One means does not do, two do. First where, second where, temperature when poured. */
        BROUGHT_BY_TWO,
        /** Kept so that it stays in range while it is drunk. Where, temperature when poured, coldest, warmest. */
        KEPT_IN,
        /** Kept where it is out of range least. Where, share of the pours that are out of range. */
        KEPT_OUT_OF_RANGE,
        /** Into and out of gear while it is drunk. Where, how long in, how long out. */
        KEPT_BY_TURNS,
        /** What would not do. Where, temperature when poured if put there at once. */
        WILL_NOT_DO,
        /** What would do but is full or not there. Where. */
        TAKEN,
        /** What it would do to the drink is a hazard. Where. */
        HAZARD,
        /** Nothing does; this comes closest. Where, temperature when poured. */
        CLOSEST,
        /** Nothing does better than leaving it. Temperature when poured. */
        NOTHING_BETTER,
        /**
         * The run of the whole plan differs from the forecast: bottles share gear, a bath has stood for a while, less is left in the
         * bottle. Temperature when poured as forecast for the bottle by itself, temperature when poured in the run.
         */
        TOGETHER,
        /** The first choice failed when all ran together. Temperature when poured then. */
        REPAIRED,
        /** A bath is filled so that it has settled when the first bottle goes in. How long before. */
        READY_IN_TIME,
        /** A bath is filled later than that, as there is no time. */
        FILLED_LATE,
        /** Ice is added because it would be gone. Moment when it would be gone. */
        ICE_RUNS_OUT,
        /** The gear is there no longer. Where, until when. */
        GEAR_LEAVES,
        /** Decanted to be aired. How long before serving. */
        AIRED,
        /** It is time to serve. */
        SERVED
    }

    /**
     * Copies the arguments.
     *
     * @param code which sentence
     * @param arguments what goes into it, not modified
     */
    public Reason {
        arguments = List.copyOf(arguments);
    }

    static Reason of(Code code, Argument... arguments) {
        return new Reason(code, List.of(arguments));
    }
}
