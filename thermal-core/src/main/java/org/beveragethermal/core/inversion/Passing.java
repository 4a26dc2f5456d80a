/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.prediction.Asymptote;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.TemperatureDifference;

/**
 * Answer to "when is it at this temperature?", all times of it: under a thermostat that cycles a temperature is passed again and again,
 * and on a freezing plateau it is kept for a while. A temperature is told from another only to a stated resolution, so that each passage
 * is an interval. Times are counted from the start of the run.
 */
public sealed interface Passing extends Answer {

    /**
     * Asks a prediction.
     *
     * @param prediction the prediction, for as long as the question is of interest
     * @param target the temperature
     * @param resolution how closely temperatures are told apart, 0.001 K to 1 K
     * @return all passages, or that there is none
     * @throws IllegalArgumentException if the target is no temperature
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the resolution is outside its range
     */
    static Passing of(Prediction prediction, Quantity<Temperature> target, Quantity<TemperatureDifference> resolution) {
        double targetK = SiValues.temperatureK(target, "target temperature");
        double nearK = SiValues.temperatureDifferenceK(resolution, "resolution", 1e-3, 1);
        Wanted near = new Wanted(Math.max(Double.MIN_NORMAL, targetK - nearK), targetK + nearK);
        List<Passage> passages = new ArrayList<>();
        for (double[] stretch : Course.within(prediction, near, 0)) {
            passages.add(passage(prediction, targetK, stretch));
        }
        if (passages.isEmpty()) {
            double closestS = Course.closestS(prediction, near, 0);
            return new Never(
                    targetK, prediction.meanTemperatureK(closestS), Times.duration(closestS), prediction.asymptote());
        }
        return new At(targetK, nearK, passages);
    }

    private static Passage passage(Prediction prediction, double targetK, double[] stretch) {
        OptionalDouble crossing = prediction
                .trajectory()
                .firstCrossing(stretch[0], timeS -> prediction.meanTemperatureK(timeS) - targetK);
        double atS = crossing.isPresent() && crossing.getAsDouble() <= stretch[1]
                ? crossing.getAsDouble()
                : Course.closestS(prediction, new Wanted(targetK, targetK), stretch[0], stretch[1]);
        double iceGrown = prediction.iceFraction(stretch[1]) - prediction.iceFraction(stretch[0]);
        boolean plateau = Math.abs(iceGrown) > Course.SOME_ICE;
        return new Passage(Window.ofSeconds(stretch[0], stretch[1]), Times.duration(atS), plateau);
    }

    /**
     * One passage.
     *
     * @param window while the temperature cannot be told from the target
     * @param at when it is exactly there, or nearest
     * @param plateau whether the drink freezes or thaws meanwhile, which holds its temperature
     */
    record Passage(Window window, Duration at, boolean plateau) {}

    /**
     * It is there at least once.
     *
     * @param targetK the temperature [K]
     * @param resolutionK how closely temperatures are told apart [K]
     * @param passages all passages, ascending, at least one
     */
    record At(double targetK, double resolutionK, List<Passage> passages) implements Passing {

        /**
         * Copies the list.
         *
         * @param targetK the temperature [K]
         * @param resolutionK how closely temperatures are told apart [K]
         * @param passages all passages, at least one, not modified
         * @throws IllegalArgumentException if there is none
         */
        public At {
            if (passages.isEmpty()) {
                throw new IllegalArgumentException("no passages: expected at least one");
            }
            passages = List.copyOf(passages);
        }

        /**
         * The first passage.
         *
         * @return the earliest
         */
        public Passage first() {
            return passages.get(0);
        }

        /**
         * The last passage in the run.
         *
         * @return the latest
         */
        public Passage last() {
            return passages.get(passages.size() - 1);
        }

        @Override
        public String explain() {
            String plateau = passages.stream().anyMatch(Passage::plateau)
                    ? " Meanwhile the drink freezes or thaws, which holds its temperature."
                    : "";
            return passages.size() == 1
                    ? Text.format("It is at %s %s.%s", Text.celsius(targetK), Text.window(first().window()), plateau)
                    : Text.format(
                            "It is at %s %d times: first %s, last %s.%s",
                            Text.celsius(targetK),
                            passages.size(),
                            Text.window(first().window()),
                            Text.window(last().window()),
                            plateau);
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("at")
                    .with("targetK", targetK)
                    .with("resolutionK", resolutionK)
                    .withWindows(
                            "windowsS", passages.stream().map(Passage::window).toList())
                    .with(
                            "timesS",
                            passages.stream().map(p -> Times.seconds(p.at())).toList())
                    .done();
        }
    }

    /**
     * It never is there in this run.
     *
     * @param targetK the temperature [K]
     * @param closestK temperature nearest to it that occurs [K]
     * @param closestAfter when it occurs
     * @param asymptote what the temperature tends to, as far as this run shows
     */
    record Never(double targetK, double closestK, Duration closestAfter, Asymptote asymptote) implements Passing {

        @Override
        public String explain() {
            return Text.format(
                    "It never is at %s in the time looked at; the nearest is %s at %s. It %s.",
                    Text.celsius(targetK), Text.celsius(closestK), Text.time(closestAfter), Text.tends(asymptote));
        }

        @Override
        public Snapshot snapshot() {
            return Snapshot.of("never")
                    .with("targetK", targetK)
                    .with("closestK", closestK)
                    .with("closestAfterS", Times.seconds(closestAfter))
                    .with(asymptote)
                    .done();
        }
    }
}
