/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.time.Duration;
import java.util.Collection;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;

/**
 * When the door of an appliance is opened, and what that does to the air inside: it goes a share of the way to the room's temperature
 * at once and recovers with a time constant. Where the appliance {@linkplain Refrigerator#withLoad feels its load} it is the temperature
 * to which it is cooled that does so, and the air, with the shelves that go along, follows: less high, and later.
 *
 * <p>How much air is exchanged depends on how long and how wide the door stands open; a share of a half is what a textbook takes for
 * an opening (Y. A. Cengel and M. A. Boles, Thermodynamics, 8th ed., problem 6-27: half of the air is replaced); that it stands for some
 * ten seconds, and a recovery within some minutes, are own estimates, no source. The
 * air keeps its relative humidity, so that there is more vapour in it while it is warm, as if the room's air had brought it.
 *
 * @param timesS times of the openings on the clock of the weather [s], ascending, each ≥ 0
 * @param roomK temperature of the room [K], 233.15 to 353.15
 * @param share part of the way to the room that the air goes at each opening [-], 0 to 1
 * @param recoveryS time constant with which the empty appliance recovers [s], 1 s to a day
 */
public record DoorOpenings(List<Double> timesS, double roomK, double share, double recoveryS) {

    private static final ValidityRange TIME = new ValidityRange("time of a door opening", 0, 366 * 86_400.0, "s");
    private static final ValidityRange ROOM = new ValidityRange("temperature of the room", 233.15, 353.15, "K");
    private static final ValidityRange SHARE = new ValidityRange("share of a door opening", 0, 1, "1");
    private static final ValidityRange RECOVERY = new ValidityRange("recovery after a door opening", 1, 86_400, "s");

    /**
     * Checks the numbers.
     *
     * @param timesS times of the openings [s], ascending, each ≥ 0, not modified
     * @param roomK temperature of the room [K]
     * @param share part of the way to the room that the air goes [-]
     * @param recoveryS time constant of the recovery [s]
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a number is outside its range
     * @throws IllegalArgumentException if the times do not ascend
     */
    public DoorOpenings {
        timesS = List.copyOf(timesS);
        for (int i = 0; i < timesS.size(); i++) {
            TIME.require(timesS.get(i), "door");
            if (i > 0 && timesS.get(i) <= timesS.get(i - 1)) {
                throw new IllegalArgumentException("door opening at " + timesS.get(i) + " s after one at "
                        + timesS.get(i - 1) + " s: expected ascending times");
            }
        }
        ROOM.require(roomK, "door");
        SHARE.require(share, "door");
        RECOVERY.require(recoveryS, "door");
    }

    /**
     * A door that is opened at some times.
     *
     * @param room temperature of the air outside, −40 °C to 80 °C
     * @param share part of the way to it that the air inside goes at each opening, 0 to 1
     * @param recovery time constant with which the empty appliance recovers, 1 s to 1 day
     * @param times times since the start of the run, in any order, each once; none for a door that stays closed; not modified
     * @return the openings
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     * @throws IllegalArgumentException if a time is given twice
     */
    public static DoorOpenings of(
            Quantity<Temperature> room, Quantity<Dimensionless> share, Duration recovery, Collection<Duration> times) {
        return new DoorOpenings(
                times.stream().sorted().map(AirTemperatures::seconds).toList(),
                SiValues.temperatureK(room, "temperature of the room", ROOM.low(), ROOM.high()),
                SiValues.fraction(share, "share of a door opening", 0, 1),
                AirTemperatures.seconds(recovery));
    }
}
