/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.time.Duration;
import java.util.Locale;
import org.beveragethermal.core.internal.Figures;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;

/**
 * How a lumped body of one time constant follows a room that swings as a sine, once its start is forgotten: its amplitude is that of
 * the room over √(1 + ω²τ²) and it is late by arctan(ωτ)/ω, with ω = 2π over the period.
 *
 * <p>Closed form of τ dT/dt = T_room − T. Slow swings are followed late by τ; of fast ones little is left, a quarter of a period late.
 *
 * <p>Theory manual, equation (8.9).
 *
 * @param amplitudeRatio amplitude of the body over that of the room [-], above 0, below 1
 * @param lag by how much the body's extremes come after the room's, below a quarter of the period
 */
public record LumpedSwing(double amplitudeRatio, Duration lag) implements Answer {

    /**
     * The response to a swing.
     *
     * @param timeConstant heat capacity over conductance, above 0
     * @param period time from warmest to warmest, above 0
     * @return amplitude ratio and lag
     * @throws IllegalArgumentException if a duration is not above 0
     */
    public static LumpedSwing of(Duration timeConstant, Duration period) {
        Times.requirePositive("time constant", timeConstant);
        Times.requirePositive("period", period);
        double omega = 2 * Math.PI / Times.seconds(period);
        double angle = omega * Times.seconds(timeConstant);
        return new LumpedSwing(1 / Math.hypot(1, angle), Times.duration(Math.atan(angle) / omega));
    }

    @Override
    public Snapshot snapshot() {
        return new Snapshot(
                Snapshot.FORMAT_VERSION,
                "lumpedSwing",
                Figures.with("amplitudeRatio", amplitudeRatio)
                        .and("lagS", Times.seconds(lag))
                        .map());
    }

    @Override
    public String explain() {
        return String.format(
                Locale.ROOT,
                "Of the room's swing %.1f %% is left, %.1f h late.",
                100 * amplitudeRatio,
                Times.hours(lag));
    }
}
