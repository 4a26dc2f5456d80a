/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * What has become known while a plan is carried out. All of it holds from the moment of the re-plan on; what was done before
 * stays done.
 */
public sealed interface News {

    /** Longest delay that is news rather than another plan. */
    Duration LONGEST_SHIFT = Duration.ofHours(24);

    /**
     * Guests come later.
     *
     * @param bottleIds the bottles that are poured later; empty for all that are still to be poured
     * @param by by how much, > 0, at most a day
     */
    record LateGuests(List<String> bottleIds, Duration by) implements News {

        /**
         * Copies the ids.
         *
         * @param bottleIds the bottles that are poured later, not modified
         * @param by by how much, > 0, at most a day
         * @throws IllegalArgumentException if the time is out of range
         */
        public LateGuests {
            bottleIds = List.copyOf(bottleIds);
            PlanRequest.requireShift("guests late by", by);
        }
    }

    /**
     * Guests come earlier.
     *
     * @param bottleIds the bottles that are poured earlier; empty for all that are still to be poured
     * @param by by how much, > 0, at most a day; what would be poured before the re-plan is poured at once
     */
    record EarlierGuests(List<String> bottleIds, Duration by) implements News {

        /**
         * Copies the ids.
         *
         * @param bottleIds the bottles that are poured earlier, not modified
         * @param by by how much, > 0, at most a day
         * @throws IllegalArgumentException if the time is out of range
         */
        public EarlierGuests {
            bottleIds = List.copyOf(bottleIds);
            PlanRequest.requireShift("guests early by", by);
        }
    }

    /**
     * Another bottle takes the part of one that is not poured yet, which goes out of the plan.
     *
     * @param bottleId the bottle that is replaced; the other takes its id
     * @param instead the other with its contents at their temperature now
     * @param where id of the place or gear where the other stands now
     */
    record BottleSwapped(String bottleId, FilledVessel instead, String where) implements News {}

    /**
     * One more bottle.
     *
     * @param order the bottle at its temperature now and where it stands now
     */
    record BottleAdded(BottleOrder order) implements News {}

    /**
     * A bottle that is not wanted any more; it is out of the plan and out of all gear.
     *
     * @param bottleId the bottle
     */
    record BottleRemoved(String bottleId) implements News {}

    /**
     * Gear that cannot be used any more.
     *
     * @param gearId the gear
     * @param bottlesTo id of the place where the bottles that are in it are put
     */
    record GearLost(String gearId, String bottlesTo) implements News {}

    /**
     * Ice is less or more than was thought.
     *
     * @param massKg ice in stock now, besides what is in baths [kg], ≥ 0
     */
    record IceLeft(double massKg) implements News {

        private static final double MOST_KG = 10_000;

        /**
         * Checks the mass.
         *
         * @param massKg ice in stock now [kg], 0 to 10 000
         * @throws IllegalArgumentException if it is out of range
         */
        public IceLeft {
            if (!(massKg >= 0 && massKg <= MOST_KG)) {
                throw new IllegalArgumentException("ice left " + massKg + " kg: expected 0 to " + MOST_KG + " kg");
            }
        }
    }

    /**
     * A temperature that was measured in a bottle.
     *
     * @param bottleId the bottle
     * @param temperatureK mean temperature of its contents [K]
     * @param standardErrorK standard error of the reading [K], > 0, at most 10 K
     */
    record Reading(String bottleId, double temperatureK, double standardErrorK) implements News {

        private static final double LARGEST_ERROR_K = 10;
        private static final double COLDEST_K = 233.15;
        private static final double WARMEST_K = 373.15;

        /**
         * Checks the parts.
         *
         * @param bottleId the bottle
         * @param temperatureK mean temperature of its contents [K], 233.15 to 373.15
         * @param standardErrorK standard error of the reading [K], > 0, at most 10 K
         * @throws IllegalArgumentException if a figure is out of range
         */
        public Reading {
            if (!(temperatureK >= COLDEST_K && temperatureK <= WARMEST_K)) {
                throw new IllegalArgumentException("reading of " + bottleId + " " + temperatureK + " K: expected "
                        + COLDEST_K + " K to " + WARMEST_K + " K");
            }
            if (!(standardErrorK > 0 && standardErrorK <= LARGEST_ERROR_K)) {
                throw new IllegalArgumentException("standard error of the reading of " + bottleId + " " + standardErrorK
                        + " K: expected more than 0 and at most " + LARGEST_ERROR_K + " K");
            }
        }
    }

    /**
     * A place is warmer or colder than was forecast.
     *
     * @param place the place under its id, with the air that is expected now; times count from the start of the plan
     */
    record PlaceChanged(Place place) implements News {}
}
