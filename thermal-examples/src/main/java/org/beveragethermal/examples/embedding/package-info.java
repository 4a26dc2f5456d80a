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
 *       have a published JSON Schema (2020-12), version 1, which the server hands out too. What is refused names field, given and allowed,
 *       and changes nothing.
 *   <li>{@link org.beveragethermal.examples.embedding.CellarLogger}: a thousand bottles watched from a CSV file of readings, row by row; rows
 *       that say nothing are named by line, and the others are used.
 *   <li>{@link org.beveragethermal.examples.embedding.RefrigeratorCalibration}: a log is fitted, explained and drawn.
 *   <li>{@link org.beveragethermal.examples.embedding.MillionPredictions}: a million predictions on all cores, with progress and
 *       cancelling, and some of them beside the scene's.
 * </ul>
 *
 * <pre>{@code
 * EventDesk desk = EventDesk.of(House.tracker(), Locale.ENGLISH);
 * try (EventServer server = EventServer.start(0, desk)) {
 *     post("http://localhost:" + server.port() + "/events", events);
 * }
 * }</pre>
 *
 * <p><b>Method.</b> Temperatures are computed by {@code service.tracking}, {@code core.calibration} and {@code core.batch}; here are the
 * forms of messages and files, their limits, and laws in batch form: the paths of a real bottle are followed by polynomials over arrays, as
 * one would do for a vessel of one's own. The server is the JDK's own {@code jdk.httpserver}: four paths on this machine's own address need
 * no framework, it is kept with the JDK, and nothing is added to the class path. JSON is read by Jackson with limits on size, depth, texts
 * and numbers; CSV by FastCSV.
 *
 * <p><b>Limits.</b> No one is asked who they are: the server is for this machine, or for a network behind something that asks. What is tracked
 * is lost when it ends ({@link org.beveragethermal.service.tracking.TrackedSnapshot} is what to keep). Instructions and alerts help whoever
 * watches and replace nobody. All logs and readings are our own invention, made with fixed seeds.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  JSON → EventServer → EventDesk (schema) → Fleet → instructions, alerts, notes → JSON
 *                                    └→ refusal: field, given, allowed
 *  CSV  → CellarLogger, row by row → Fleet → alerts, bottles at the end
 *                                    └→ rows left out, by line
 *  log  → RefrigeratorCalibration → Fit → explanation, time constant, plots
 *  real bottle → laws over arrays → BatchSolver on all cores → times (some beside the scene's)
 * </pre>
 */
@NullMarked
package org.beveragethermal.examples.embedding;

import org.jspecify.annotations.NullMarked;
