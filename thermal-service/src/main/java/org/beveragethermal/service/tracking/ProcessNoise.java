/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Duration;

/**
 * How what is not known wanders between readings.
 *
 * <p>The temperature takes a random walk: drafts, handling, and what one temperature leaves out of a drink that is layered. The factor
 * of the conductance and the offset of the medium's temperature stay within their stated uncertainties and forget where they were in
 * the time given (Ornstein–Uhlenbeck processes), so that a long silence leads back to what was stated and no further. The usual
 * figures are assumptions (no source): 0.1 K per square root of an hour, and a day; a model that is {@linkplain TrackedModel#from
 * fitted} walks by at least the residual of its fit per square root of an hour.
 *
 * <p>Theory manual, equation (9.5).
 *
 * @param temperatureKPerRootHour standard deviation of the temperature's walk [K/h^½], 0 to 10
 * @param forgetting time in which factor and offset forget to 1/e, 1 min to 10000 days
 */
public record ProcessNoise(double temperatureKPerRootHour, Duration forgetting) {

    private static final Duration LEAST = Duration.ofMinutes(1);
    private static final Duration MOST = Duration.ofDays(10_000);

    /**
     * Checks the figures.
     *
     * @param temperatureKPerRootHour standard deviation of the temperature's walk [K/h^½]
     * @param forgetting time in which factor and offset forget to 1/e
     * @throws IllegalArgumentException if a figure is outside its range
     */
    public ProcessNoise {
        Checks.within(temperatureKPerRootHour, 0, 10, "walk of the temperature", "K/h^0.5");
        if (forgetting.compareTo(LEAST) < 0 || forgetting.compareTo(MOST) > 0) {
            throw new IllegalArgumentException("forgetting in " + forgetting + ": expected 1 min to 10000 days");
        }
    }

    /**
     * The usual one.
     *
     * @return 0.1 K/h^½ and 24 h
     */
    public static ProcessNoise usual() {
        return new ProcessNoise(0.1, Duration.ofHours(24));
    }

    ProcessNoise atLeast(double kelvinPerRootHour) {
        return new ProcessNoise(Math.min(10, Math.max(temperatureKPerRootHour, kelvinPerRootHour)), forgetting);
    }

    double varianceK2PerS() {
        return temperatureKPerRootHour * temperatureKPerRootHour / 3600;
    }

    double forgettingS() {
        return forgetting.toMillis() / 1000.0;
    }
}
