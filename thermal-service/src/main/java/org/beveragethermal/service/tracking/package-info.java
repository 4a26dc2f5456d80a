/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Follows vessels live: from events and readings to the temperature now, the time until it is right, alerts and instructions.
 *
 * <p><b>Problem.</b> A till, a shelf or a sensor tells what happens to bottles, late, twice, in any order, with gaps and with values that
 * are none. How warm is each bottle now, how sure is that, when will it be ready, when no longer, and did something happen that nobody told?
 *
 * <p><b>Use.</b> Describe each kind of vessel once as a {@link org.beveragethermal.service.tracking.TrackedModel}, fitted to the full
 * model in the media that it may be put into; hand events to a {@link org.beveragethermal.service.tracking.Fleet}:
 *
 * <pre>{@code
 * TrackedModel model = TrackedModel.from("bottle", bottle)
 *         .medium("bucket", iceWater, 1.0, 0.4) // its temperature to 1 K, its conductance to a factor e^0.4
 *         .medium("table", Air.at(celsius(22)))
 *         .sensor(Sensor.inDrink(0.3, 0.1))
 *         .build();
 * Fleet fleet = Fleet.of(Tracker.of(List.of(model), TrackingRules.usual()));
 * fleet.apply(List.of(
 *         new TrackingEvent.Placed("e1", at, "bottle 7", "bottle", "bucket", 294.15, 1),
 *         new TrackingEvent.Ordered("e2", at, "bottle 7", TrackingEvent.Goal.between(celsius(8), celsius(10)))));
 * Fleet.Report report = fleet.apply(readings);
 * TrackingWords words = TrackingWords.in(Locale.ENGLISH);
 * report.instructions().forEach(instruction -> show(words.text(instruction)));
 * TrackedVessel seven = fleet.vessel("bottle 7").orElseThrow();
 * Estimate now = seven.estimate();
 * Arrival ready = seven.timeTo(celsius(10)); // earliest, likely, latest; or never
 * }</pre>
 *
 * <p>{@link org.beveragethermal.service.tracking.Tracker} is the pure function underneath: (vessel, event) to (vessel, instructions,
 * alerts, notes). It reads no clock; where time passes without news, {@link
 * org.beveragethermal.service.tracking.TrackingEvent.TimePassed} says so. A fleet is a container for one thread around it, which can also
 * work on a caller's executor with the same results. {@link org.beveragethermal.service.tracking.TrackedSnapshot} is the form for storage.
 *
 * <p><b>Method.</b> The drink has one temperature; in each medium its excess decays by {@link
 * org.beveragethermal.service.tracking.MediumLaw}, a part linear and a part by free convection, solved in closed form. Its two rates are
 * fitted to two courses of the lumped model (far and near), the effect of a part-full vessel to those of a half-full one; what one temperature leaves out
 * remains as the residual of the fit and becomes process noise. Below the freezing point the rate is divided by the mean apparent heat
 * capacity of the first kelvin of freezing: rough, and said so.
 *
 * <p>An extended Kalman filter estimates the temperature, the logarithm of an unknown factor of the conductance, the offset of the
 * medium's temperature and the sensor's bias. Factor and offset wander within their stated uncertainty ({@link
 * org.beveragethermal.service.tracking.ProcessNoise}) and begin anew when the vessel is moved. A reading far off is not used ({@link
 * org.beveragethermal.service.tracking.TrackingRules}); several that agree, or cumulative sums of small deviations, are a change: the
 * medium is doubted, the covariance widened, an alert given. Beside temperature and sensor noise a reading may have a step, a lag, a part
 * of the medium and an unknown bias ({@link org.beveragethermal.service.tracking.Sensor}).
 *
 * <p>The latest events are kept (twelve, unless stated) with the belief from before them; a late one is put in its place and the belief
 * made anew. So within these any order of arrival gives the same belief, and an event that comes twice counts once. What is older is
 * noted and not used. A reading more than 36 h, unless stated otherwise, ahead of all that was heard is held aside until other news show
 * whether its clock was right ({@link org.beveragethermal.service.tracking.Tracker}). What has been said, and how many readings in a row were unusable, do depend on the order of arrival: nobody can
 * take back what has been said.
 *
 * <p><b>Limits.</b> One temperature per vessel: a layered drink is a mean and a residual. A medium keeps its temperature but for a slow
 * wandering: ice that is gone is a change that the readings must show, a cycling refrigerator is its mean. Learned factors are not kept
 * from one stay to the next. Times of events other than readings are trusted, and the clock of a sensor that is the only one telling the
 * time is believed from its second reading on. Where a target may never be reached the
 * earliest time is too early and the latest a little: of 4000 simulated runs 1.4 % of the true times lay before the 90 % interval and 6.7 %
 * after it, instead of 5 % each. Alerts of freezing are judged on the cold side of the 90 % interval; they help whoever watches and replace
 * nobody: bottles that may freeze are taken out in time, frozen ones handled with gloves and eye protection and not opened. What is wanted above 65 °C is poured with a warning.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  events, readings → Fleet → Tracker: (vessel, event) → (vessel, instructions, alerts, notes)
 *                               ↑                           └→ Estimate, Arrival (earliest, likely, latest)
 *  full model → TrackedModel (law of each medium)
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.service.tracking;

import org.jspecify.annotations.NullMarked;
