/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Instant;
import java.util.Optional;

/**
 * The figures of an alert or an instruction.
 *
 * @param temperatureK temperature of the drink as estimated [K]
 * @param sdK its standard uncertainty [K]
 * @param limitK the temperature that it is about [K]
 * @param expectedAt when that temperature is expected, if it lies ahead
 * @param mediumId where the vessel is
 * @param destinationId where it should go, if that is known
 */
public record Facts(
        double temperatureK,
        double sdK,
        double limitK,
        Optional<Instant> expectedAt,
        String mediumId,
        Optional<String> destinationId) {}
