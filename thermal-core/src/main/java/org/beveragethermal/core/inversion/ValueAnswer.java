/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.util.List;
import org.beveragethermal.core.prediction.Asymptote;

/** Answer to "which value makes it so?". Values are in SI units. */
public sealed interface ValueAnswer extends Answer {

    /**
     * One value that does.
     *
     * @param value the value [SI]
     * @param valuePerKelvin how far the value moves for a target one kelvin warmer [SI/K], signed
     * @param temperatureK temperature at the instant asked for [K]
     * @param kelvinPerHour rate of change there [K/h]; near 0 the time is worth little, because it levels off
     * @param warnings why the value is worth little, and hazards; possibly nothing
     */
    record Solution(
            double value, double valuePerKelvin, double temperatureK, double kelvinPerHour, List<String> warnings) {

        /**
         * Copies the list.
         *
         * @param value the value
         * @param valuePerKelvin how far it moves for a kelvin
         * @param temperatureK temperature at the instant
         * @param kelvinPerHour rate of change there
         * @param warnings sentences, not modified
         */
        public Solution {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * One value does.
     *
     * @param question what was asked, in words
     * @param asked what the value is
     * @param solution the value
     * @param runs predictions that were run for it
     */
    record Reached(String question, AskedValue asked, Solution solution, int runs) implements ValueAnswer {

        @Override
        public String explain() {
            return Text.sentences(
                    Text.format(
                            "%s, the %s must be %s; a kelvin more or less moves it by %s.",
                            question,
                            asked.name(),
                            asked.text(solution.value()),
                            asked.step(solution.valuePerKelvin())),
                    solution.warnings());
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("reached")
                    .with("value", solution.value())
                    .with("valuePerKelvin", solution.valuePerKelvin())
                    .with("temperatureK", solution.temperatureK())
                    .with("rateKPerS", solution.kelvinPerHour() / 3600)
                    .with("runs", runs)
                    .done();
        }
    }

    /**
     * Several values do.
     *
     * @param question what was asked, in words
     * @param asked what the value is
     * @param solutions the values, ascending, at least two
     * @param runs predictions that were run for it
     */
    record Several(String question, AskedValue asked, List<Solution> solutions, int runs) implements ValueAnswer {

        /**
         * Copies the list.
         *
         * @param question what was asked
         * @param asked what the value is
         * @param solutions the values, at least two, not modified
         * @param runs predictions that were run
         * @throws IllegalArgumentException if there are fewer than two
         */
        public Several {
            if (solutions.size() < 2) {
                throw new IllegalArgumentException(solutions.size() + " solutions: expected at least two");
            }
            solutions = List.copyOf(solutions);
        }

        @Override
        public String explain() {
            List<String> values =
                    solutions.stream().map(s -> asked.text(s.value())).toList();
            List<String> warnings = solutions.stream()
                    .flatMap(s -> s.warnings().stream())
                    .distinct()
                    .toList();
            return Text.sentences(
                    Text.format("%s, the %s may be %s.", question, asked.name(), String.join(" or ", values)),
                    warnings);
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("several")
                    .with("values", solutions.stream().map(Solution::value).toList())
                    .with(
                            "valuesPerKelvin",
                            solutions.stream().map(Solution::valuePerKelvin).toList())
                    .with("runs", runs)
                    .done();
        }
    }

    /**
     * No value in the range does.
     *
     * @param question what was asked, in words
     * @param asked what the value is
     * @param closestValue of all values looked at, the one that comes nearest [SI]
     * @param closestK temperature that it gives at the instant asked for [K]
     * @param asymptote what the temperature tends to with that value, for twice as long as was asked for and at least four days
     * @param runs predictions that were run for it
     * @param help a sentence on what would help
     */
    record NeverReached(
            String question,
            AskedValue asked,
            double closestValue,
            double closestK,
            Asymptote asymptote,
            int runs,
            String help)
            implements ValueAnswer {

        @Override
        public String explain() {
            return Text.format(
                    "%s, no %s in the range will do; nearest comes %s, with %s then. %s",
                    question, asked.name(), asked.text(closestValue), Text.celsius(closestK), help);
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("never")
                    .with("closestValue", closestValue)
                    .with("closestK", closestK)
                    .with(asymptote)
                    .with("runs", runs)
                    .done();
        }
    }

    /**
     * All values in the range do, as far as temperatures are told apart.
     *
     * @param question what was asked, in words
     * @param asked what the value is
     * @param low lower end of the range [SI]
     * @param high upper end [SI]
     * @param spreadK how far temperatures at the instant differ over the range [K]
     * @param runs predictions that were run for it
     */
    record AllDo(String question, AskedValue asked, double low, double high, double spreadK, int runs)
            implements ValueAnswer {

        @Override
        public String explain() {
            return Text.format(
                    "%s, any %s from %s to %s will do; it makes a difference of %.2f K at most.",
                    question, asked.name(), asked.text(low), asked.text(high), spreadK);
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("allDo")
                    .with("range", List.of(low, high))
                    .with("spreadK", spreadK)
                    .with("runs", runs)
                    .done();
        }
    }
}
