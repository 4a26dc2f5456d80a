/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.airing;

import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;

/**
 * How a drink is given air before it is served: for how long, in what, and where it stands meanwhile. Its time is cut to milliseconds.
 * Immutable.
 *
 * @param before from the moment it is decanted or opened to the first glass; 0 to 24 hours
 * @param placeId id of the place where it stands, not blank
 * @param decanted whether it is poured into another vessel; otherwise it stands in its opened bottle
 * @param carafe the vessel it is decanted into; empty for one of the table of vessels that holds it, and for an opened bottle
 */
public record Airing(Duration before, String placeId, boolean decanted, Optional<Vessel> carafe) {

    private static final Duration LONGEST = Duration.ofHours(24);

    /** At this temperature volumes are measured [K]. */
    private static final double REFERENCE_K = 293.15;

    static final double COLDEST_VESSEL_K = 233.15;
    static final double HOTTEST_VESSEL_K = 373.15;

    private static final double MILLILITRES_PER_CUBIC_METRE = 1e6;

    /**
     * Checks the parts and cuts the time to milliseconds.
     *
     * @param before from the moment it is decanted or opened to the first glass; 0 to 24 hours
     * @param placeId id of the place where it stands, not blank
     * @param decanted whether it is poured into another vessel
     * @param carafe the vessel it is decanted into, if it is a certain one
     * @throws IllegalArgumentException if the duration is negative or longer than a day, the id is blank, there is a carafe
     *     for what is not decanted, or the carafe does not stand open
     */
    public Airing {
        if (before.isNegative() || before.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException("airing of " + before + ": expected 0 to 24 hours");
        }
        before = before.truncatedTo(ChronoUnit.MILLIS);
        if (placeId.isBlank()) {
            throw new IllegalArgumentException("place of an airing: expected an id, got a blank");
        }
        if (!decanted && carafe.isPresent()) {
            throw new IllegalArgumentException("airing in the opened bottle: expected no carafe, got a "
                    + carafe.get().name());
        }
        carafe.ifPresent(vessel -> {
            if (!vessel.isOpen()) {
                throw new IllegalArgumentException(
                        "decanting into a " + vessel.name() + ": expected a vessel that stands open");
            }
        });
    }

    /**
     * Decanted into a vessel of the table: the smallest decanter that holds all of it, or else the smallest carafe.
     *
     * @param before from decanting to the first glass; 0 to 24 hours
     * @param placeId id of the place where it stands, not blank
     * @return the airing
     * @throws IllegalArgumentException if the duration is outside its range or the id is blank
     */
    public static Airing carafe(Duration before, String placeId) {
        return new Airing(before, placeId, true, Optional.empty());
    }

    /**
     * Decanted into a certain vessel.
     *
     * @param before from decanting to the first glass; 0 to 24 hours
     * @param placeId id of the place where it stands, not blank
     * @param carafe the vessel, which stands open
     * @return the airing
     * @throws IllegalArgumentException if the duration is outside its range, the id is blank or the vessel is closed
     */
    public static Airing carafe(Duration before, String placeId, Vessel carafe) {
        return new Airing(before, placeId, true, Optional.of(carafe));
    }

    /**
     * Left standing in its opened bottle.
     *
     * @param before from opening to the first glass; 0 to 24 hours
     * @param placeId id of the place where it stands, not blank
     * @return the airing
     * @throws IllegalArgumentException if the duration is outside its range or the id is blank
     */
    public static Airing opened(Duration before, String placeId) {
        return new Airing(before, placeId, false, Optional.empty());
    }

    /**
     * What stands there: all of the bottle's contents in the open vessel, both at one temperature. Of the dry wall above the drink the
     * vessel has as much as takes part: lumped contents give their whole wall one temperature, and a decanter is dry on most of it.
     *
     * @param bottle the bottle before
     * @param start temperature of drink and vessel, within the range of the drink
     * @return the open vessel with the drink in it
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range of the drink, or the drink
     *     does not fit the vessel
     * @throws IllegalArgumentException if no vessel of the table holds it
     */
    public FilledVessel vesselFor(FilledVessel bottle, Quantity<Temperature> start) {
        return vesselFor(bottle).filledWith(bottle.liquid(), Measures.cubicMetres(volumeM3(bottle)), start);
    }

    /**
     * What stands there once the wall that takes part has shared its heat with it, before the air has done anything: what a scene
     * or a plan that gives drink and vessel one temperature can begin with. {@link AiringForecast} lets the wall have a temperature of
     * its own.
     *
     * @param bottle the bottle before
     * @param start temperature of the drink when it is decanted or opened, within its range
     * @param empty temperature of the empty vessel, −40 °C to 100 °C; of no effect for an opened bottle
     * @return the open vessel with the drink in it
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside its range, or the drink does not fit
     *     the vessel
     * @throws IllegalArgumentException if no vessel of the table holds it
     */
    public FilledVessel vesselFor(FilledVessel bottle, Quantity<Temperature> start, Quantity<Temperature> empty) {
        double emptyK =
                SiValues.temperatureK(empty, "temperature of the empty vessel", COLDEST_VESSEL_K, HOTTEST_VESSEL_K);
        FilledVessel filled = vesselFor(bottle, start);
        if (!decanted) {
            return filled;
        }
        double startK = filled.temperatureK();
        Vessel vessel = filled.vessel();
        double wall =
                vessel.emptyMassKg() * vessel.wall().specificHeatCapacity().value();
        double drink = filled.liquidMassKg() * filled.liquid().specificHeatCapacity(startK);
        double shareK = (emptyK - startK) * wall / (wall + drink);
        return filled.atTemperature(SiValues.celsiusOf(startK + shareK));
    }

    /** The empty vessel in which the drink stands, as far as it takes part. */
    Vessel vesselFor(FilledVessel bottle) {
        double volume = volumeM3(bottle);
        Vessel vessel = decanted ? carafe.orElseGet(() -> usualCarafe(volume)) : bottle.vessel();
        FilledVessel filled = vessel.filledWith(
                bottle.liquid(), Measures.cubicMetres(volume), SiValues.celsiusOf(bottle.temperatureK()));
        return Standing.of(filled);
    }

    /** Volume of the contents at 20 °C [m³]. */
    static double volumeM3(FilledVessel bottle) {
        return bottle.liquidMassKg() / bottle.liquid().density(REFERENCE_K);
    }

    private static Vessel usualCarafe(double volumeM3) {
        return Stream.of(VesselShape.DECANTER, VesselShape.CARAFE)
                .flatMap(shape -> Vessels.all(shape).stream())
                .filter(vessel -> vessel.nominalVolumeM3() >= volumeM3 * (1 - 1e-9))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("decanting "
                        + Math.round(volumeM3 * MILLILITRES_PER_CUBIC_METRE)
                        + " mL: expected a vessel that holds it, the table has only " + table()
                        + "; name a vessel of your own"));
    }

    private static String table() {
        return Stream.of(VesselShape.DECANTER, VesselShape.CARAFE)
                .flatMap(shape -> Vessels.all(shape).stream())
                .map(Vessel::name)
                .collect(Collectors.joining(", "));
    }
}
