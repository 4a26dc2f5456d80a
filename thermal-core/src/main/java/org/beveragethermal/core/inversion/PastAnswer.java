/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.List;

/** Answer to a question about the past. */
public sealed interface PastAnswer extends Answer {

    /**
     * How long ago it was taken out.
     *
     * @param ago how long before now
     * @param least shortest time that agrees with the reading
     * @param most longest time that agrees with the reading
     */
    record TakenOut(Duration ago, Duration least, Duration most) implements PastAnswer {

        @Override
        public String explain() {
            return Text.format(
                    "It was taken out %s ago; with the error of the reading, between %s and %s.",
                    Text.time(ago), Text.time(least), Text.time(most));
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("takenOut")
                    .with("agoS", Times.seconds(ago))
                    .with("leastS", Times.seconds(least))
                    .with("mostS", Times.seconds(most))
                    .done();
        }
    }

    /**
     * It may have been taken out at several times.
     *
     * @param times the times, the most recent last, at least two
     */
    record Several(List<TakenOut> times) implements PastAnswer {

        /**
         * Copies the list.
         *
         * @param times the times, at least two, not modified
         * @throws IllegalArgumentException if there are fewer than two
         */
        public Several {
            if (times.size() < 2) {
                throw new IllegalArgumentException(times.size() + " times: expected at least two");
            }
            times = List.copyOf(times);
        }

        @Override
        public String explain() {
            return "It may have been taken out "
                    + String.join(
                            " or ", times.stream().map(t -> Text.time(t.ago())).toList())
                    + " ago.";
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("several")
                    .with(
                            "agoS",
                            times.stream().map(t -> Times.seconds(t.ago())).toList())
                    .done();
        }
    }

    /**
     * How warm it was.
     *
     * @param temperatureK temperature then [K]
     * @param lowK lowest that agrees with the reading [K]
     * @param highK highest that agrees with the reading [K]
     * @param kelvinPerKelvin kelvins then for a kelvin now [-]
     */
    record Was(double temperatureK, double lowK, double highK, double kelvinPerKelvin) implements PastAnswer {

        @Override
        public String explain() {
            return Text.format(
                    "It was at %s; with the error of the reading, between %s and %s. A kelvin now stands for %.1f K then.",
                    Text.celsius(temperatureK), Text.celsius(lowK), Text.celsius(highK), kelvinPerKelvin);
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("was")
                    .with("temperatureK", temperatureK)
                    .with("rangeK", List.of(lowK, highK))
                    .with("kelvinPerKelvin", kelvinPerKelvin)
                    .done();
        }
    }

    /**
     * The reading does not tell: many pasts lead to it.
     *
     * @param why a sentence
     * @param sensitivity what a kelvin of the reading stands for, in {@code unit}; as large as a double where it stands for anything
     * @param unit {@code s/K} or {@code K/K}
     */
    record IllPosed(String why, double sensitivity, String unit) implements PastAnswer {

        @Override
        public String explain() {
            return why;
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("illPosed").with("sensitivity", sensitivity).done();
        }
    }

    /**
     * No past in the range looked at leads to the reading.
     *
     * @param nowK the reading [K]
     * @param closestK temperature nearest to it that could be now [K]
     */
    record Impossible(double nowK, double closestK) implements PastAnswer {

        @Override
        public String explain() {
            return Text.format(
                    "Nothing in the range looked at leads to %s here; the nearest that it could be now is %s.",
                    Text.celsius(nowK), Text.celsius(closestK));
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("impossible")
                    .with("nowK", nowK)
                    .with("closestK", closestK)
                    .done();
        }
    }
}
