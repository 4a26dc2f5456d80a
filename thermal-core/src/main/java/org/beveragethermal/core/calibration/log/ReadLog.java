/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

/**
 * A log and how it came to be.
 *
 * @param log the readings
 * @param report what was inferred, what was dropped
 */
public record ReadLog(TemperatureLog log, LogReport report) {}
