/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.List;

/**
 * Something that is said, as data: which sentence, and what stands in it. {@link PlanTexts} puts it into the words of a
 * language.
 *
 * @param sentence which sentence
 * @param arguments what stands in it, in the order and of the kinds that the sentence states
 */
public record Phrase(Sentence sentence, List<Argument> arguments) {

    /**
     * Copies the arguments.
     *
     * @param sentence which sentence
     * @param arguments what stands in it, as many as the sentence has places; not modified
     * @throws IllegalArgumentException if there are more or fewer
     */
    public Phrase {
        arguments = List.copyOf(arguments);
        if (arguments.size() != sentence.places()) {
            throw new IllegalArgumentException(
                    arguments.size() + " arguments in " + sentence + ": expected " + sentence.places());
        }
    }

    static Phrase of(Sentence sentence, Argument... arguments) {
        return new Phrase(sentence, List.of(arguments));
    }

    /** Phrases one after the other. */
    static Phrase joined(List<Phrase> phrases) {
        Phrase all = phrases.get(0);
        for (Phrase next : phrases.subList(1, phrases.size())) {
            all = of(Sentence.LIST_PHRASES, new Argument.Said(all), new Argument.Said(next));
        }
        return all;
    }
}
