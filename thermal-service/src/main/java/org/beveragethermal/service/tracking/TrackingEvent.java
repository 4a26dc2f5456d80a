/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.units.SiValues;

/**
 * What happens to a vessel, or is known of it, at an instant. Every event has an id of its own: one that comes twice counts once.
 *
 * <p>Instants say when it happened, not when it was heard of. They are kept to the microsecond.
 */
public sealed interface TrackingEvent {

    /**
     * Id of the event.
     *
     * @return id, not blank
     */
    String id();

    /**
     * When it happened.
     *
     * @return instant, 1900 to 2200
     */
    Instant at();

    /**
     * Which vessel.
     *
     * @return id, not blank
     */
    String vesselId();

    private static void check(String id, Instant at, String vesselId) {
        Checks.name(id, "event");
        Checks.name(vesselId, "vessel of event " + id);
        Checks.time(at, "event " + id);
    }

    /**
     * A vessel is first put somewhere: tracking begins.
     *
     * @param id id of the event
     * @param at when
     * @param vesselId which vessel
     * @param modelName kind of vessel
     * @param mediumId where, a medium of the model
     * @param temperatureK temperature of the drink [K], 150 to 500
     * @param sdK its standard uncertainty [K], 0 to 50
     */
    record Placed(
            String id, Instant at, String vesselId, String modelName, String mediumId, double temperatureK, double sdK)
            implements TrackingEvent {

        /**
         * Checks the event.
         *
         * @param id id of the event, not blank
         * @param at when, 1900 to 2200
         * @param vesselId which vessel, not blank
         * @param modelName kind of vessel, not blank
         * @param mediumId where, not blank
         * @param temperatureK temperature of the drink [K]
         * @param sdK its standard uncertainty [K]
         * @throws IllegalArgumentException if a part is not as stated
         */
        public Placed {
            check(id, at, vesselId);
            Checks.name(modelName, "model of event " + id);
            Checks.name(mediumId, "medium of event " + id);
            Checks.temperature(temperatureK, "temperature in event " + id);
            Checks.within(sdK, 0, Checks.MOST_SD_K, "standard uncertainty in event " + id, "K");
        }
    }

    /**
     * It is said what is wanted of a vessel; the latest order counts.
     *
     * @param id id of the event
     * @param at when
     * @param vesselId which vessel
     * @param goal what is wanted
     */
    record Ordered(String id, Instant at, String vesselId, Goal goal) implements TrackingEvent {

        /**
         * Checks the event.
         *
         * @param id id of the event, not blank
         * @param at when, 1900 to 2200
         * @param vesselId which vessel, not blank
         * @param goal what is wanted
         * @throws IllegalArgumentException if a part is not as stated
         */
        public Ordered {
            check(id, at, vesselId);
            Objects.requireNonNull(goal, "goal");
        }
    }

    /**
     * A vessel is put into another medium.
     *
     * @param id id of the event
     * @param at when
     * @param vesselId which vessel
     * @param mediumId where to
     */
    record Moved(String id, Instant at, String vesselId, String mediumId) implements TrackingEvent {

        /**
         * Checks the event.
         *
         * @param id id of the event, not blank
         * @param at when, 1900 to 2200
         * @param vesselId which vessel, not blank
         * @param mediumId where to, not blank
         * @throws IllegalArgumentException if a part is not as stated
         */
        public Moved {
            check(id, at, vesselId);
            Checks.name(mediumId, "medium of event " + id);
        }
    }

    /**
     * A vessel is opened; changes no temperature.
     *
     * @param id id of the event
     * @param at when
     * @param vesselId which vessel
     */
    record Opened(String id, Instant at, String vesselId) implements TrackingEvent {

        /**
         * Checks the event.
         *
         * @param id id of the event, not blank
         * @param at when, 1900 to 2200
         * @param vesselId which vessel, not blank
         * @throws IllegalArgumentException if a part is not as stated
         */
        public Opened {
            check(id, at, vesselId);
        }
    }

    /**
     * Something is poured.
     *
     * @param id id of the event
     * @param at when
     * @param vesselId which vessel
     * @param partLeft what is left in it as a part of the full vessel [-], 0.01 to 1; an empty vessel is {@link Finished}
     */
    record Poured(String id, Instant at, String vesselId, double partLeft) implements TrackingEvent {

        /**
         * Checks the event.
         *
         * @param id id of the event, not blank
         * @param at when, 1900 to 2200
         * @param vesselId which vessel, not blank
         * @param partLeft part left [-]
         * @throws IllegalArgumentException if a part is not as stated
         */
        public Poured {
            check(id, at, vesselId);
            Checks.within(partLeft, Checks.LEAST_PART, 1, "part left in event " + id, "1");
        }
    }

    /**
     * The medium that a vessel is in is set to, or found at, another temperature.
     *
     * @param id id of the event
     * @param at when
     * @param vesselId which vessel
     * @param mediumK temperature of the medium from then on [K], 150 to 500
     * @param sdK its standard uncertainty [K], 0 to 50
     */
    record GearChanged(String id, Instant at, String vesselId, double mediumK, double sdK) implements TrackingEvent {

        /**
         * Checks the event.
         *
         * @param id id of the event, not blank
         * @param at when, 1900 to 2200
         * @param vesselId which vessel, not blank
         * @param mediumK temperature of the medium [K]
         * @param sdK its standard uncertainty [K]
         * @throws IllegalArgumentException if a part is not as stated
         */
        public GearChanged {
            check(id, at, vesselId);
            Checks.temperature(mediumK, "temperature in event " + id);
            Checks.within(sdK, 0, Checks.MOST_SD_K, "standard uncertainty in event " + id, "K");
        }
    }

    /**
     * Ice is added to the bath that a vessel is in: it is again as its law says.
     *
     * @param id id of the event
     * @param at when
     * @param vesselId which vessel
     */
    record IceAdded(String id, Instant at, String vesselId) implements TrackingEvent {

        /**
         * Checks the event.
         *
         * @param id id of the event, not blank
         * @param at when, 1900 to 2200
         * @param vesselId which vessel, not blank
         * @throws IllegalArgumentException if a part is not as stated
         */
        public IceAdded {
            check(id, at, vesselId);
        }
    }

    /**
     * A sensor reads. Any number may come, NaN too: what cannot be a reading is refused with a note.
     *
     * @param id id of the event
     * @param at when it was read
     * @param vesselId which vessel
     * @param temperatureK what it read [K]
     */
    record Reading(String id, Instant at, String vesselId, double temperatureK) implements TrackingEvent {

        /**
         * Checks the event.
         *
         * @param id id of the event, not blank
         * @param at when, 1900 to 2200
         * @param vesselId which vessel, not blank
         * @param temperatureK what it read [K], any number
         * @throws IllegalArgumentException if a part is not as stated
         */
        public Reading {
            check(id, at, vesselId);
        }

        /**
         * A reading as a quantity.
         *
         * @param id id of the event, not blank
         * @param at when, 1900 to 2200
         * @param vesselId which vessel, not blank
         * @param temperature what it read
         * @return the event
         * @throws IllegalArgumentException if a part is not as stated
         */
        public static Reading of(String id, Instant at, String vesselId, Quantity<Temperature> temperature) {
            return new Reading(id, at, vesselId, SiValues.temperatureK(temperature, "reading of event " + id));
        }
    }

    /**
     * Nothing happens, but time has passed: alerts are looked at again.
     *
     * @param id id of the event
     * @param at now
     * @param vesselId which vessel
     */
    record TimePassed(String id, Instant at, String vesselId) implements TrackingEvent {

        /**
         * Checks the event.
         *
         * @param id id of the event, not blank
         * @param at now, 1900 to 2200
         * @param vesselId which vessel, not blank
         * @throws IllegalArgumentException if a part is not as stated
         */
        public TimePassed {
            check(id, at, vesselId);
        }
    }

    /**
     * The vessel is empty or given away: tracking ends.
     *
     * @param id id of the event
     * @param at when
     * @param vesselId which vessel
     */
    record Finished(String id, Instant at, String vesselId) implements TrackingEvent {

        /**
         * Checks the event.
         *
         * @param id id of the event, not blank
         * @param at when, 1900 to 2200
         * @param vesselId which vessel, not blank
         * @throws IllegalArgumentException if a part is not as stated
         */
        public Finished {
            check(id, at, vesselId);
        }
    }

    /**
     * What is wanted of a vessel.
     *
     * @param lowK lowest temperature at which it may be poured [K], 150 to 500
     * @param highK highest [K], at least the lowest
     * @param serveAt when it is to be poured, if that is known
     */
    record Goal(double lowK, double highK, Optional<Instant> serveAt) {

        /**
         * Checks the range.
         *
         * @param lowK lowest temperature [K]
         * @param highK highest [K]
         * @param serveAt when it is to be poured, if that is known
         * @throws IllegalArgumentException if the range is empty or outside 150 to 500 K
         */
        public Goal {
            Checks.temperature(lowK, "lowest temperature wanted");
            Checks.within(highK, lowK, Checks.WARMEST_K, "highest temperature wanted", "K");
            serveAt.ifPresent(at -> Checks.time(at, "to be served"));
        }

        /**
         * A range as quantities.
         *
         * @param low lowest temperature at which it may be poured
         * @param high highest
         * @return a goal without a time
         * @throws IllegalArgumentException if the range is empty or outside 150 to 500 K
         */
        public static Goal between(Quantity<Temperature> low, Quantity<Temperature> high) {
            return new Goal(
                    SiValues.temperatureK(low, "lowest temperature wanted"),
                    SiValues.temperatureK(high, "highest temperature wanted"),
                    Optional.empty());
        }

        /**
         * The same to be poured at a time.
         *
         * @param at when
         * @return a new goal
         */
        public Goal at(Instant at) {
            return new Goal(lowK, highK, Optional.of(at));
        }

        boolean contains(double temperatureK, double slackK) {
            return temperatureK >= lowK - slackK && temperatureK <= highK + slackK;
        }
    }
}
