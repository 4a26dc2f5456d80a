/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Answer to "when will it be at that temperature, if it stays where it is?". */
public sealed interface Arrival {

    /**
     * From when the times are counted.
     *
     * @return instant of the question
     */
    Instant asked();

    /**
     * How likely it never gets there.
     *
     * @return probability [-], 0 to 1
     */
    double neverChance();

    /**
     * It gets there.
     *
     * @param asked instant of the question
     * @param earliest lower end of the central interval, after the question
     * @param likely median
     * @param latest upper end; empty if that much of the belief never gets there
     * @param level probability of the interval [-]
     * @param neverChance how likely it never gets there [-]
     */
    record Expected(
            Instant asked,
            Duration earliest,
            Duration likely,
            Optional<Duration> latest,
            double level,
            double neverChance)
            implements Arrival {}

    /**
     * More likely than not it never gets there, because the medium does not go that far or it has passed already.
     *
     * @param asked instant of the question
     * @param settlesAtK where it tends to [K]
     * @param neverChance how likely it never gets there [-]
     */
    record Never(Instant asked, double settlesAtK, double neverChance) implements Arrival {}
}
