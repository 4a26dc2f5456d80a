/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.List;
import java.util.Optional;

/** What came of a search for the best choice. Every answer that claims something carries the {@link Certificate} of it. */
public sealed interface ChoiceAnswer {
    /**
     * The choice, if there is one.
     *
     * @return the choice of a proven or best answer, else empty
     */
    default Optional<Choice> found() {
        if (this instanceof Proven proven) {
            return Optional.of(proven.choice());
        }
        return this instanceof Best best ? Optional.of(best.choice()) : Optional.empty();
    }

    /**
     * A choice than which none is better.
     *
     * @param choice one route for each item
     * @param certificate why none is better
     */
    record Proven(Choice choice, Certificate certificate) implements ChoiceAnswer {}

    /**
     * The best choice found until a limit was reached, with what is known about better ones.
     *
     * @param choice one route for each item; no gear is overloaded
     * @param lowerBounds for each level a bound on the cost of every choice that costs no more than this one in the levels before. Up to and
     *     including the first level where the bound lies below the cost it comes from the search; after that it is the sum of the least
     *     costs
     * @param gap at the first level where the bound lies below the cost: their difference as a part of the cost, in (0, 1]
     * @param certificate why the bounds hold
     */
    record Best(Choice choice, List<Long> lowerBounds, double gap, Certificate certificate) implements ChoiceAnswer {
        /**
         * Copies the bounds.
         *
         * @param choice one route for each item
         * @param lowerBounds a bound for each level
         * @param gap relative gap of the first level that is not proven
         * @param certificate why the bounds hold
         */
        public Best {
            lowerBounds = List.copyOf(lowerBounds);
        }
    }

    /**
     * There is no choice that overloads no gear.
     *
     * @param reason in words
     * @param items ids of items that cannot all be served, few enough that the others are not to blame
     * @param spans the gear that is too small for them, and in which slots
     * @param certificate why they cannot
     */
    record Infeasible(String reason, List<String> items, List<Span> spans, Certificate certificate)
            implements ChoiceAnswer {
        /**
         * Copies the lists.
         *
         * @param reason in words
         * @param items ids of items that cannot all be served
         * @param spans the gear that is too small for them, and in which slots
         * @param certificate why they cannot
         */
        public Infeasible {
            items = List.copyOf(items);
            spans = List.copyOf(spans);
        }
    }

    /**
     * A limit was reached before any choice was found that overloads no gear; there may be one or none.
     *
     * @param reason in words
     * @param lowerBounds for the first level a bound on the cost of every choice, for the others the sum of the least costs
     */
    record Undecided(String reason, List<Long> lowerBounds) implements ChoiceAnswer {
        /**
         * Copies the bounds.
         *
         * @param reason in words
         * @param lowerBounds a bound for each level
         */
        public Undecided {
            lowerBounds = List.copyOf(lowerBounds);
        }
    }

    /**
     * Some slots of a gear.
     *
     * @param gearId id of the gear
     * @param firstSlot first of the slots
     * @param endSlot first slot after them
     */
    record Span(String gearId, int firstSlot, int endSlot) {}
}
