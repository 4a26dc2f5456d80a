/* SPDX-License-Identifier: Apache-2.0 */
/**
 * The library inside other programs: behind a till, a logger, a researcher's script and a batch.
 *
 * <p><b>Problem.</b> Who builds the library into something of their own wants to see once where events enter, what comes out, what is refused
 * and what it costs.
 *
 * <p><b>Use.</b> Each example has a {@code main}; {@code thermal-examples/docs/embedding.md} shows commands and what they print.
 *
 * <ul>
 *   <li>{@link org.beveragethermal.examples.embedding.EventServer}: events of a till or of sensors come in over HTTP as JSON,
 *       instructions and alerts go out. {@link org.beveragethermal.examples.embedding.EventDesk} is the same without HTTP. Both messages
 *       have a published JSON schema, which the server hands out too.
 *   <li>{@link org.beveragethermal.examples.embedding.CellarLogger}: a thousand bottles watched from a CSV file of readings.
 *   <li>{@link org.beveragethermal.examples.embedding.RefrigeratorCalibration}: a log is fitted, explained and drawn.
 *   <li>{@link org.beveragethermal.examples.embedding.MillionPredictions}: a million predictions on all cores, with progress and
 *       cancelling.
 * </ul>
 *
 * <pre>{@code
 * EventDesk desk = EventDesk.of(House.tracker(), Locale.ENGLISH);
 * try (EventServer server = EventServer.start(0, desk)) {
 *     post("http://localhost:" + server.port() + "/events", events);
 * }
 * }</pre>
 *
 * <p><b>Method.</b> Nothing here computes temperatures: that is done by {@code service.tracking}, {@code core.calibration} and {@code
 * core.batch}. All logs and readings are our own invention, made with fixed seeds.
 */
@NullMarked
package org.beveragethermal.examples.embedding;

import org.jspecify.annotations.NullMarked;
