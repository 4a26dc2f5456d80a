/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.beveragethermal.core.prediction.Asymptote;

/**
 * The figures of an answer without behaviour.
 *
 * @param formatVersion version of this form, {@value #FORMAT_VERSION}
 * @param answer which kind of answer it is, such as {@code starts} or {@code never}
 * @param valuesSi figures by name; the name ends in the SI unit ({@code latestS}, {@code closestK}); lists of windows hold the ends in
 *     pairs; what has no value is absent
 */
public record Snapshot(int formatVersion, String answer, Map<String, List<Double>> valuesSi) {

    /** Version of the form that this library writes. */
    public static final int FORMAT_VERSION = 1;

    /**
     * Copies the figures.
     *
     * @param formatVersion version of the form, 1
     * @param answer kind of answer, not blank
     * @param valuesSi finite figures by name, not modified
     * @throws IllegalArgumentException if the version is another, the kind is blank or a figure is not finite
     */
    public Snapshot {
        if (formatVersion != FORMAT_VERSION || answer.isBlank()) {
            throw new IllegalArgumentException("snapshot of '" + answer + "' in format " + formatVersion
                    + ": expected an answer that is not blank in format " + FORMAT_VERSION);
        }
        Map<String, List<Double>> copy = new LinkedHashMap<>();
        valuesSi.forEach((name, values) -> {
            for (double value : values) {
                if (!Double.isFinite(value)) {
                    throw new IllegalArgumentException(name + " " + value + ": expected a finite figure");
                }
            }
            copy.put(name, List.copyOf(values));
        });
        valuesSi = Collections.unmodifiableMap(copy);
    }

    /** Begins a snapshot of this format. */
    static Figures of(String answer) {
        return new Figures(answer);
    }

    /** Collects figures. */
    static final class Figures {

        private final String answer;
        private final Map<String, List<Double>> values = new LinkedHashMap<>();

        private Figures(String answer) {
            this.answer = answer;
        }

        Figures with(String name, double value) {
            values.put(name, List.of(value));
            return this;
        }

        Figures with(String name, List<Double> all) {
            values.put(name, all);
            return this;
        }

        Figures withWindows(String name, List<Window> windows) {
            return with(name, windows.stream().flatMap(w -> w.endsS().stream()).toList());
        }

        /** What a temperature tends to: one figure, or two of a swing; other names where it is still moving. */
        Figures with(Asymptote asymptote) {
            if (asymptote instanceof Asymptote.LevelsOff level) {
                return with("asymptoteK", level.temperatureK());
            }
            if (asymptote instanceof Asymptote.Swings swings) {
                return with("asymptoteK", List.of(swings.lowK(), swings.highK()));
            }
            Asymptote.StillMoving moving = (Asymptote.StillMoving) asymptote;
            return with("lastK", moving.temperatureK()).with("lastRateKPerS", moving.kelvinPerHour() / 3600);
        }

        Snapshot done() {
            return new Snapshot(FORMAT_VERSION, answer, values);
        }
    }
}
