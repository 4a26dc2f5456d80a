/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a house serves differently from the sources: a policy for a style, for a drink of its list, or for what a guest
 * likes. Immutable.
 *
 * <p>For one drink and one guest the first of these that exists decides:
 *
 * <ol>
 *   <li>the guest's rule for the drink,
 *   <li>the guest's rule for the style,
 *   <li>the house's rule for the drink,
 *   <li>the house's rule for the style,
 *   <li>the policy for all others, {@link RangePolicy#narrowestCommon()} unless the builder is told otherwise.
 * </ol>
 */
public final class HouseRules {
    private static final HouseRules NONE = builder().build();

    private final Map<Key, RangePolicy> rules;
    private final RangePolicy otherwise;

    private HouseRules(Builder builder) {
        this.rules = Map.copyOf(builder.rules);
        this.otherwise = builder.otherwise;
    }

    /**
     * A house without rules of its own: what the sources have in common.
     *
     * @return the rules
     */
    public static HouseRules none() {
        return NONE;
    }

    /**
     * Begins without rules.
     *
     * @return a builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /** The policy that decides, with the words that say by which rule; no words if by none. */
    Ruling ruling(DrinkStyle style, Optional<String> drinkId, Optional<String> guest) {
        Stream<Optional<Key>> keys = Stream.of(
                guest.flatMap(name -> drinkId.map(id -> Key.drink(Optional.of(name), id))),
                guest.map(name -> Key.style(Optional.of(name), style.id())),
                drinkId.map(id -> Key.drink(Optional.empty(), id)),
                Optional.of(Key.style(Optional.empty(), style.id())));
        return keys.flatMap(Optional::stream)
                .filter(rules::containsKey)
                .findFirst()
                .map(key -> new Ruling(rules.getOrDefault(key, otherwise), Optional.of(key.words())))
                .orElseGet(() -> new Ruling(otherwise, Optional.empty()));
    }

    /** Two houses with the same rules are equal. */
    @Override
    public boolean equals(Object other) {
        return other instanceof HouseRules that && rules.equals(that.rules) && otherwise.equals(that.otherwise);
    }

    @Override
    public int hashCode() {
        return Objects.hash(rules, otherwise);
    }

    /**
     * The rules in words.
     *
     * @return one rule after the other in alphabetical order, and the policy for all others
     */
    @Override
    public String toString() {
        List<String> words = rules.entrySet().stream()
                .map(rule -> rule.getKey().words() + ": " + rule.getValue())
                .sorted()
                .toList();
        return String.join("; ", words) + (words.isEmpty() ? "" : "; ") + "otherwise: " + otherwise;
    }

    /**
     * What decided.
     *
     * @param policy the policy
     * @param rule the rule it comes from, if it is not the policy for all others
     */
    record Ruling(RangePolicy policy, Optional<String> rule) {}

    /** Whom and what a rule is about. */
    private record Key(Optional<String> guest, boolean drink, String id) {
        static Key style(Optional<String> guest, String styleId) {
            return new Key(guest, false, styleId);
        }

        static Key drink(Optional<String> guest, String drinkId) {
            return new Key(guest, true, drinkId);
        }

        String words() {
            String subject = (drink ? "drink " : "style ") + id;
            return guest.map(name -> "rule of guest " + name + " for " + subject)
                    .orElseGet(() -> "house rule for " + subject);
        }
    }

    /** Collects rules. Not for use by several threads at once. */
    public static final class Builder {
        private final Map<Key, RangePolicy> rules = new HashMap<>();
        private RangePolicy otherwise = RangePolicy.narrowestCommon();

        private Builder() {}

        /**
         * A rule of the house for a style.
         *
         * @param style the style
         * @param policy how its range comes about
         * @return this builder
         * @throws IllegalArgumentException if the policy cannot be applied to the style, or it has a rule already
         */
        public Builder forStyle(DrinkStyle style, RangePolicy policy) {
            return styleRule(Optional.empty(), style, policy);
        }

        /**
         * A rule of the house for one drink of its list.
         *
         * @param drinkId the drink's identifier; not blank
         * @param policy how its range comes about; whether a source that it names speaks of the drink's style shows when
         *     the target is asked for
         * @return this builder
         * @throws IllegalArgumentException if the identifier is blank or the drink has a rule already
         */
        public Builder forDrink(String drinkId, RangePolicy policy) {
            return add(Key.drink(Optional.empty(), named(drinkId, "drink id")), policy);
        }

        /**
         * What a guest likes of a style.
         *
         * @param guest what the house calls the guest; not blank
         * @param style the style
         * @param policy how the range comes about
         * @return this builder
         * @throws IllegalArgumentException if the name is blank, the policy cannot be applied to the style, or the guest
         *     has a rule for it already
         */
        public Builder forGuest(String guest, DrinkStyle style, RangePolicy policy) {
            return styleRule(Optional.of(named(guest, "guest")), style, policy);
        }

        /**
         * What a guest likes of one drink.
         *
         * @param guest what the house calls the guest; not blank
         * @param drinkId the drink's identifier; not blank
         * @param policy how the range comes about
         * @return this builder
         * @throws IllegalArgumentException if a name is blank or the guest has a rule for the drink already
         */
        public Builder forGuest(String guest, String drinkId, RangePolicy policy) {
            return add(Key.drink(Optional.of(named(guest, "guest")), named(drinkId, "drink id")), policy);
        }

        /**
         * The policy for everything that has no rule.
         *
         * @param policy the policy
         * @return this builder
         */
        public Builder otherwise(RangePolicy policy) {
            this.otherwise = Objects.requireNonNull(policy, "policy");
            return this;
        }

        /**
         * Ends the building.
         *
         * @return the rules
         */
        public HouseRules build() {
            return new HouseRules(this);
        }

        private Builder styleRule(Optional<String> guest, DrinkStyle style, RangePolicy policy) {
            Targets.of(style, policy);
            return add(Key.style(guest, style.id()), policy);
        }

        private Builder add(Key key, RangePolicy policy) {
            Objects.requireNonNull(policy, "policy");
            if (rules.putIfAbsent(key, policy) != null) {
                throw new IllegalArgumentException(key.words() + ": expected once, got it twice");
            }
            return this;
        }

        private static String named(String name, String what) {
            if (name.isBlank()) {
                throw new IllegalArgumentException(what + " of a house rule: expected a name, got a blank");
            }
            return name;
        }
    }
}
