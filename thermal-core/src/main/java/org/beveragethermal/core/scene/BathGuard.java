/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Finds how warm or how cold a bath may be at the start so that a drink can be forgotten in it.
 *
 * <p>A small bath gives way: one warmer than the limit may be harmless because the drink cools it and the room does. The search runs the
 * real prediction, two days long, again and again; it says "no such bath" where the room itself passes the limit, at any time in those two
 * days.
 *
 * <pre>{@code
 * WaterBath sink = WaterBath.of(bucket, litres(3), celsius(40), kitchen);
 * HarmlessBath answer = BathGuard.of(sink, coldRedWine).warmest(celsius(19));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class BathGuard {

    private static final Duration LONG = Duration.ofDays(2);
    private static final double COLDEST_K = 273.65;
    private static final double WARMEST_K = 343.15;
    /** How closely the temperature of the bath is found [K]. */
    private static final double ACCURACY_K = 0.01;

    private static final int EVALUATIONS = 60;
    private static final double HOUR_S = 3600;

    private final WaterBath bath;
    private final FilledVessel vessel;
    private final VesselModel model;
    private final Part part;

    private BathGuard(WaterBath bath, FilledVessel vessel, VesselModel model, Part part) {
        this.bath = Objects.requireNonNull(bath, "bath");
        this.vessel = Objects.requireNonNull(vessel, "vessel");
        this.model = Objects.requireNonNull(model, "model");
        this.part = Objects.requireNonNull(part, "part");
    }

    /**
     * A guard of the mean temperature of one vessel with lumped contents in a bath.
     *
     * @param bath the bath: its bucket, volume, room, agitation and inflow; its temperature is what is looked for
     * @param vessel the vessel with its contents at their temperature at the start
     * @return the guard
     */
    public static BathGuard of(WaterBath bath, FilledVessel vessel) {
        return new BathGuard(bath, vessel, VesselModel.lumped(), Part.MEAN);
    }

    /**
     * The same guard with another description of the contents and of a part of them.
     *
     * @param newModel how finely the contents are described
     * @param newPart which temperature must not pass the limit
     * @return a new guard
     */
    public BathGuard watching(VesselModel newModel, Part newPart) {
        return new BathGuard(bath, vessel, newModel, newPart);
    }

    /**
     * The warmest bath in which the drink never gets warmer than a limit, however long it is left.
     *
     * @param limit the limit, from above
     * @return the answer, within 0.01 K in the temperature of the bath, on the harmless side
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public HarmlessBath warmest(Quantity<Temperature> limit) {
        return search(SiValues.temperatureK(limit, "limit"), 1);
    }

    /**
     * The coldest bath in which the drink never gets colder than a limit, however long it is left.
     *
     * @param limit the limit, from below
     * @return the answer, within 0.01 K in the temperature of the bath, on the harmless side
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public HarmlessBath coldest(Quantity<Temperature> limit) {
        return search(SiValues.temperatureK(limit, "limit"), -1);
    }

    /**
     * The start temperature of a bath that would carry the drink exactly to a limit if nothing were lost to the room: from the heat
     * capacities of water, drink and vessel, each taken half-way. In a room that does not itself help it is as far as a harmless bath can go.
     *
     * @param limitK the limit [K]
     * @return temperature [K], which may be outside the range of baths
     */
    public double withoutRoomK(double limitK) {
        double halfway = 0.5 * (vessel.temperatureK() + limitK);
        double taken = (vessel.liquidMassKg() * vessel.liquid().specificHeatCapacity(halfway)
                        + vessel.vessel().emptyMassKg()
                                * vessel.vessel().wall().specificHeatCapacity().value())
                * (limitK - vessel.temperatureK());
        return limitK + taken / (bath.waterKg() * Water.liquid().specificHeatCapacity(limitK));
    }

    private HarmlessBath search(double limitK, int sign) {
        if (sign * (vessel.temperatureK() - limitK) > 0) {
            return new HarmlessBath.None(HarmlessBath.Cause.DRINK, vessel.temperatureK());
        }
        double room = sign * furthestRoomK(sign);
        if (room > sign * limitK) {
            return new HarmlessBath.None(HarmlessBath.Cause.ROOM, sign * room);
        }
        double farK = sign > 0 ? WARMEST_K : COLDEST_K;
        Peak far = peak(farK, sign);
        if (sign * (far.kelvin() - limitK) <= 0) {
            return new HarmlessBath.Any(farK, far.kelvin());
        }
        // In a room short of the limit a bath that only gives way to the drink is harmless; if something runs in, one
        // at the limit may be.
        double nearK = inRange(withoutRoomK(limitK));
        if (sign * (peak(nearK, sign).kelvin() - limitK) > 0) {
            nearK = inRange(limitK);
            Peak near = peak(nearK, sign);
            if (sign * (near.kelvin() - limitK) > 0) {
                return new HarmlessBath.None(HarmlessBath.Cause.BATH, near.kelvin());
            }
        }
        double found = root(t -> sign * (peak(t, sign).kelvin() - limitK), nearK, farK);
        double harmless = found - sign * ACCURACY_K;
        double startK = sign * harmless < sign * nearK ? nearK : harmless;
        Peak there = peak(startK, sign);
        return new HarmlessBath.UpTo(startK, there.kelvin(), there.after());
    }

    private static double inRange(double bathK) {
        return Math.max(COLDEST_K, Math.min(WARMEST_K, bathK));
    }

    private static double root(DoubleUnaryOperator excess, double nearK, double farK) {
        return new BrentSolver(0.5 * ACCURACY_K)
                .solve(EVALUATIONS, excess::applyAsDouble, Math.min(nearK, farK), Math.max(nearK, farK));
    }

    /** How far a drink goes, and when. */
    private record Peak(double kelvin, Duration after) {}

    private Peak peak(double bathK, int sign) {
        Scene scene = Scene.builder()
                .gear("bath", bath.startingAt(SiValues.celsiusOf(bathK)))
                .vessel("vessel", vessel, "bath", model, Placement.upright())
                .build();
        Prediction prediction = scene.predict(LONG).vessel("vessel");
        double timeS = prediction.trajectory().timeOfLargest(0, t -> sign * prediction.temperatureK(part, t));
        return new Peak(prediction.temperatureK(part, timeS), Duration.ofMillis(Math.round(1000 * timeS)));
    }

    private double furthestRoomK(int sign) {
        double furthest = Double.NEGATIVE_INFINITY;
        for (double timeS = 0; timeS <= LONG.toSeconds(); timeS += HOUR_S) {
            double air = bath.room().airK().at(timeS);
            double walls = bath.room().wallsK().at(timeS);
            furthest = Math.max(furthest, Math.max(sign * air, sign * walls));
        }
        return sign * furthest;
    }
}
