/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.time.Duration;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.HeadspacePressure;
import org.beveragethermal.core.internal.Figures;
import org.beveragethermal.core.internal.Shown;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;

/** Answer to "what does this history of temperatures do under the closure?". */
public sealed interface StoragePressure extends Answer {

    /** Gauge pressure at which closures of still drinks are said to begin to leak; those of carbonated drinks hold several bar. */
    Constant LEAK_GAUGE = new Constant(
            "gauge pressure at which closures of still drinks begin to leak",
            1e5,
            "Pa",
            Uncertainty.rectangularRelative(0.5),
            new Source("leaking closures", "common practice, no source", Source.Kind.COMMON_PRACTICE));

    /** The range of temperatures is looked at in so many parts: in water the pressure may turn where it is densest. */
    int LOOKS = 64;

    /**
     * The gas under the closure is pressed and let go.
     *
     * @param lowestGaugePa lowest gauge pressure [Pa], negative where air is drawn in
     * @param lowestAtK contents' temperature then [K]
     * @param highestGaugePa highest gauge pressure [Pa]
     * @param highestAtK contents' temperature then [K]
     * @param leastHeadspaceM3 volume under the closure at the highest temperature [m³]
     * @param still whether nothing in the drink makes gas, so that a closure for still drinks is meant
     */
    record Breathes(
            double lowestGaugePa,
            double lowestAtK,
            double highestGaugePa,
            double highestAtK,
            double leastHeadspaceM3,
            boolean still)
            implements StoragePressure {

        /**
         * Half the difference between highest and lowest pressure.
         *
         * @return amplitude [Pa], at least 0
         */
        public double amplitudePa() {
            return 0.5 * (highestGaugePa - lowestGaugePa);
        }

        @Override
        public String explain() {
            String pressures = String.format(
                    Locale.ROOT,
                    "Gauge pressure between %.2f bar at %.1f °C and %.2f bar at %.1f °C, %.2f bar either way; %.1f mL of headspace are left.",
                    Shown.number(lowestGaugePa / Scale.BAR_PA, 2),
                    Shown.celsius(lowestAtK, 1),
                    Shown.number(highestGaugePa / Scale.BAR_PA, 2),
                    Shown.celsius(highestAtK, 1),
                    amplitudePa() / Scale.BAR_PA,
                    leastHeadspaceM3 * Scale.ML_PER_M3);
            return pressures + " " + note();
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "breathes",
                    Figures.with("lowestGaugePa", lowestGaugePa)
                            .and("lowestAtK", lowestAtK)
                            .and("highestGaugePa", highestGaugePa)
                            .and("highestAtK", highestAtK)
                            .and("leastHeadspaceM3", leastHeadspaceM3)
                            .map());
        }

        private String note() {
            if (!still) {
                return "A closure for carbonated drinks is made for such pressures.";
            }
            String leak = highestGaugePa < LEAK_GAUGE.value()
                    ? "That is less than the bar or so"
                    : "That is as much as or more than the bar or so";
            return leak
                    + " at which closures of still drinks are said to begin to leak; each warming presses wine or gas past a closure that no"
                    + " longer seals, each cooling draws air in (common practice, no source).";
        }
    }

    /**
     * The liquid fills the vessel at some time and forces the closure.
     *
     * @param after when it is full, time since the first reading
     * @param fullAtK temperature at which it is full [K]
     */
    record Forced(Duration after, double fullAtK) implements StoragePressure {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "After %.1f h, at %.1f °C, the liquid has taken all the room under the closure: it pushes the closure out, leaks or"
                            + " breaks the vessel.",
                    Times.hours(after),
                    Shown.celsius(fullAtK, 1));
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "forced",
                    Figures.with("afterS", Times.seconds(after))
                            .and("fullAtK", fullAtK)
                            .map());
        }
    }

    /**
     * No figure can be given.
     *
     * @param why at which temperature and why, as a sentence
     */
    record NotKnown(String why) implements StoragePressure {

        @Override
        public String explain() {
            return why;
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(Snapshot.FORMAT_VERSION, "notKnown", Map.of());
        }
    }

    /**
     * What a history does under a closure.
     *
     * @param vessel the closed vessel
     * @param contents history of its contents, within the range of the liquid
     * @return how the pressure goes, that the liquid forces the closure, or why it is not known: ice, or a temperature at which the
     *     solubility of its carbon dioxide is not
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside the liquid's range
     */
    static StoragePressure of(ClosedVessel vessel, TemperatureHistory contents) {
        double lowK = contents.lowest().temperatureK();
        double highK = contents.highest().temperatureK();
        if (vessel.fullAtK().isPresent() && highK >= vessel.fullAtK().getAsDouble()) {
            double full = vessel.fullAtK().getAsDouble();
            return new Forced(Times.duration(Beyond.firstAtLeastS(contents.lines(), full)), full);
        }
        List<HeadspacePressure> looks = IntStream.rangeClosed(0, LOOKS)
                .mapToObj(i -> vessel.pressureAtK(lowK + (highK - lowK) * i / LOOKS))
                .toList();
        Optional<HeadspacePressure> odd = looks.stream()
                .filter(answer -> !(answer instanceof HeadspacePressure.Gas))
                .findFirst();
        if (odd.isPresent()) {
            return new NotKnown(odd.get().explain());
        }
        List<HeadspacePressure.Gas> gases =
                looks.stream().map(HeadspacePressure.Gas.class::cast).toList();
        Comparator<HeadspacePressure.Gas> byPressure = Comparator.comparingDouble(HeadspacePressure.Gas::gaugePa);
        HeadspacePressure.Gas lowest = Collections.min(gases, byPressure);
        HeadspacePressure.Gas highest = Collections.max(gases, byPressure);
        return new Breathes(
                lowest.gaugePa(),
                lowest.temperatureK(),
                highest.gaugePa(),
                highest.temperatureK(),
                gases.get(LOOKS).headspaceM3(),
                highest.carbonDioxidePa() == 0);
    }
}
