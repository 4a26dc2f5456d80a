/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;

/** Answer to "how warm, or how cold, may this bath be at the start so that a drink left in it never passes a limit?". */
public sealed interface HarmlessBath {

    /**
     * Baths up to a temperature are harmless, or down to it when the question is about cooling.
     *
     * @param startK temperature of the bath at the start [K]
     * @param extremeK the temperature furthest towards the limit that the drink reaches in that bath [K], within a few hundredths of a
     *     kelvin of the limit and not beyond it
     * @param extremeAfter when it does
     */
    record UpTo(double startK, double extremeK, Duration extremeAfter) implements HarmlessBath {}

    /**
     * Every bath that can be made is harmless: even the most extreme one does not carry the drink to the limit.
     *
     * @param startK temperature of the most extreme bath [K]
     * @param extremeK the temperature furthest towards the limit that the drink reaches in it [K]
     */
    record Any(double startK, double extremeK) implements HarmlessBath {}

    /**
     * No bath is harmless.
     *
     * @param cause what passes the limit whatever the bath
     * @param atK the temperature that does [K]
     */
    record None(Cause cause, double atK) implements HarmlessBath {}

    /** What passes a limit whatever the temperature of a bath. */
    enum Cause {
        /** The drink, before it is put in. */
        DRINK,
        /** The room, which decides in the end. */
        ROOM,
        /** What runs into the bath or what else the prediction knows: even the mildest bath does not help. */
        BATH
    }
}
