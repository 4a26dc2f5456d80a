/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.uncertainty.Interval;

/** Answer to "how warm must it be when it is poured?". */
public sealed interface AimAnswer extends Answer {

    /**
     * What becomes of one glass.
     *
     * @param pouringK temperature at which it is poured [K]
     * @param lastK temperature of the last mouthful [K]
     * @param meanK mean over the time from pouring to the last mouthful [K]; with even drinking that is the mean of what is drunk as well
     * @param tooCold how long it is below the range
     * @param inRange how long it is in the range, ends included
     * @param tooWarm how long it is above the range
     */
    record Glass(double pouringK, double lastK, double meanK, Duration tooCold, Duration inRange, Duration tooWarm) {

        static Glass of(Wanted wanted, double pouringK, GlassCourse course) {
            double belowS = course.belowS(wanted.lowK());
            double aboveS = course.aboveS(wanted.highK());
            return new Glass(
                    pouringK,
                    course.lastK(),
                    course.meanK(),
                    Words.duration(belowS),
                    Words.duration(Math.max(0, course.lengthS() - belowS - aboveS)),
                    Words.duration(aboveS));
        }

        /**
         * From pouring to the last mouthful.
         *
         * @return all three times together
         */
        public Duration length() {
            return tooCold.plus(inRange).plus(tooWarm);
        }

        private Map<String, List<Double>> figures(Wanted wanted) {
            Map<String, List<Double>> figures = new LinkedHashMap<>();
            figures.put("wantedK", List.of(wanted.lowK(), wanted.highK()));
            figures.put("pouringK", List.of(pouringK));
            figures.put("lastK", List.of(lastK));
            figures.put("meanK", List.of(meanK));
            figures.put("tooColdS", List.of(Words.seconds(tooCold)));
            figures.put("inRangeS", List.of(Words.seconds(inRange)));
            figures.put("tooWarmS", List.of(Words.seconds(tooWarm)));
            return figures;
        }
    }

    /**
     * What the scatter of the laws makes of it, over draws.
     *
     * @param pouringK pouring temperature that would be found; empty if fewer than two draws have one [K]
     * @param meanK mean with the pouring temperature of the answer [K]
     * @param inRangeS time in the range with it [s]
     * @param holds part of the draws with a pouring temperature whose mean lies in the range, 0 to 1
     */
    record Scatter(Optional<Interval> pouringK, Interval meanK, Interval inRangeS, double holds) {}

    /**
     * There is a pouring temperature whose mean lies in the range; this is the best.
     *
     * @param wanted the range
     * @param cured which fault waiting cures
     * @param glass what becomes of the glass
     * @param scatter what the scatter of the laws makes of it
     * @param runs predictions that were run for it, draws included
     */
    record Aim(Wanted wanted, CuredByWaiting cured, Glass glass, Scatter scatter, int runs) implements AimAnswer {

        /**
         * The pouring temperature.
         *
         * @return temperature of the drink as it arrives in the glass [K]
         */
        public double pouringK() {
            return glass.pouringK();
        }

        @Override
        public String explain() {
            return Words.format(
                    "Poured at %s%s it is within %s to %s for %s of %s (%s to %s), %s on average (%s to %s), %s in the last"
                            + " mouthful%s.",
                    Words.celsius(glass.pouringK()),
                    scatter.pouringK()
                            .map(p -> Words.format(" (%s to %s)", Words.celsius(p.low()), Words.celsius(p.high())))
                            .orElse(""),
                    Words.celsius(wanted.lowK()),
                    Words.celsius(wanted.highK()),
                    Words.time(Words.seconds(glass.inRange())),
                    Words.time(Words.seconds(glass.length())),
                    Words.time(scatter.inRangeS().low()),
                    Words.time(scatter.inRangeS().high()),
                    Words.celsius(glass.meanK()),
                    Words.celsius(scatter.meanK().low()),
                    Words.celsius(scatter.meanK().high()),
                    Words.celsius(glass.lastK()),
                    outside());
        }

        private String outside() {
            String cold = glass.tooCold().isZero()
                    ? ""
                    : Words.format("; too cold for %s", Words.time(Words.seconds(glass.tooCold())))
                            + (cured == CuredByWaiting.TOO_COLD ? ", which waiting cures" : "");
            String warm = glass.tooWarm().isZero()
                    ? ""
                    : Words.format("; too warm for %s", Words.time(Words.seconds(glass.tooWarm())))
                            + (cured == CuredByWaiting.TOO_WARM ? ", which waiting cures" : "");
            return cold + warm;
        }

        @Override
        public Snapshot snapshot() {
            Map<String, List<Double>> figures = glass.figures(wanted);
            scatter.pouringK().ifPresent(p -> figures.put("pouringIntervalK", List.of(p.low(), p.high())));
            figures.put(
                    "meanIntervalK",
                    List.of(scatter.meanK().low(), scatter.meanK().high()));
            figures.put(
                    "inRangeIntervalS",
                    List.of(scatter.inRangeS().low(), scatter.inRangeS().high()));
            figures.put("holdsInPartOfDraws", List.of(scatter.holds()));
            figures.put("runs", List.of((double) runs));
            return new Snapshot(Snapshot.FORMAT_VERSION, "aim", figures);
        }
    }

    /**
     * No pouring temperature that is allowed has its mean in the range.
     *
     * @param wanted the range
     * @param cured which fault waiting cures
     * @param longest the glass with the longest time in the range
     * @param remedies what changes would do; those that cannot be made are absent
     * @param runs predictions that were run for it
     */
    record CannotHold(Wanted wanted, CuredByWaiting cured, Glass longest, List<Remedy> remedies, int runs)
            implements AimAnswer {

        /**
         * Copies the list.
         *
         * @param wanted the range
         * @param cured which fault waiting cures
         * @param longest the glass with the longest time in the range
         * @param remedies what changes would do, not modified
         * @param runs predictions that were run
         */
        public CannotHold {
            remedies = List.copyOf(remedies);
        }

        @Override
        public String explain() {
            return Words.format(
                    "No pouring temperature that is allowed keeps its mean within %s to %s. Poured at %s it is there longest, for %s of"
                            + " %s, %s on average and %s in the last mouthful. What would help: %s.",
                    Words.celsius(wanted.lowK()),
                    Words.celsius(wanted.highK()),
                    Words.celsius(longest.pouringK()),
                    Words.time(Words.seconds(longest.inRange())),
                    Words.time(Words.seconds(longest.length())),
                    Words.celsius(longest.meanK()),
                    Words.celsius(longest.lastK()),
                    remedies.isEmpty()
                            ? "nothing that was tried"
                            : remedies.stream().map(Remedy::text).collect(Collectors.joining("; ")));
        }

        @Override
        public Snapshot snapshot() {
            Map<String, List<Double>> figures = longest.figures(wanted);
            for (Remedy remedy : remedies) {
                figures.put(remedy.change().key() + "PouringK", List.of(remedy.pouringK()));
                figures.put(remedy.change().key() + "PartInRange", List.of(remedy.partInRange()));
            }
            figures.put("runs", List.of((double) runs));
            return new Snapshot(Snapshot.FORMAT_VERSION, "cannotHold", figures);
        }
    }
}
