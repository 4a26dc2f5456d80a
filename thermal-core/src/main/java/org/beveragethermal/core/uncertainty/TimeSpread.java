/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.time.Duration;
import java.util.Optional;

/**
 * When a temperature is reached, over all draws; a draw that never reaches it counts as later than all others.
 *
 * @param earliest lower end of the interval; empty if even that draw never reaches it
 * @param median middle of the draws; empty if half of them never reach it
 * @param latest upper end of the interval; empty if that draw never reaches it
 * @param neverPart part of the draws that never reach it
 * @param probability probability inside the interval
 */
public record TimeSpread(
        Optional<Duration> earliest,
        Optional<Duration> median,
        Optional<Duration> latest,
        double neverPart,
        double probability) {}
