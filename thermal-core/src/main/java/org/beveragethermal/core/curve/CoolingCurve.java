/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

import java.time.Duration;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;
import org.jspecify.annotations.Nullable;

/**
 * A prepared course of temperature in surroundings that never change, cooling or warming: from any start the time to any
 * target, and the temperature after any time, in nanoseconds.
 *
 * <p>For a body of one temperature times are differences on one curve: from a to c takes as long as from a to b and from b to
 * c. The curve of a {@link VesselCurve} is for starts that are uniform, which adds a lag; {@link #underWay} is without. The curve
 * reaches from a farthest temperature to a nearest one, nearest to the equilibrium.
 *
 * <p>Immutable and thread-safe; a query on doubles allocates nothing.
 *
 * <p>Theory manual, equation (7.7).
 */
public final class CoolingCurve {

    private static final double CLOSEST_PART = 1e-9;

    private final double equilibriumK;
    /** 1 if it cools, −1 if it warms. */
    private final double sign;

    private final double nearK;
    private final double farK;
    private final TimeTable times;
    private final CubicTable timeOf;
    private final DistanceTable distances;
    private final double endS;
    /** Time constant beyond the table's end [s]. */
    private final double tailS;

    /** Of a vessel that starts uniform. */
    private final @Nullable StartLag lag;

    private final double timeErrorS;
    private final double temperatureErrorK;

    private CoolingCurve(
            double equilibriumK, double sign, TimeTable times, @Nullable StartLag lag, double startErrorS) {
        this.equilibriumK = equilibriumK;
        this.sign = sign;
        this.times = times;
        this.lag = lag;
        nearK = times.nearK();
        farK = times.farK();
        timeOf = times.table();
        distances = DistanceTable.of(times);
        endS = times.endS();
        tailS = -nearK * timeOf.slope(nearK);
        timeErrorS = times.errorS() + startErrorS;
        temperatureErrorK = distances.errorK() + timeErrorS * times.fastestKPerS();
    }

    static CoolingCurve of(CoolingRate rate, double nearestK, double farthestK) {
        int sign = side(rate.equilibriumK(), nearestK, farthestK);
        double near = sign * (nearestK - rate.equilibriumK());
        double far = sign * (farthestK - rate.equilibriumK());
        return new CoolingCurve(rate.equilibriumK(), sign, TimeTable.of(rate, sign, near, far), null, 0);
    }

    static CoolingCurve of(double equilibriumK, int sign, TimeTable times, StartLag lag, double startErrorS) {
        return new CoolingCurve(equilibriumK, sign, times, lag, startErrorS);
    }

    /**
     * The same curve for a course that has been under way for some minutes, as one is that a thermometer follows: times are
     * differences, and from a to c takes as long as from a to b and from b to c.
     *
     * @return the curve without what a uniform start adds; this curve if that is nothing
     */
    public CoolingCurve underWay() {
        return lag == null ? this : new CoolingCurve(equilibriumK, sign, times, null, 0);
    }

    /** On which side two temperatures lie, the first the nearer one. */
    static int side(double equilibriumK, double nearestK, double farthestK) {
        CoolingRate.requireTemperature(nearestK, "nearest temperature");
        CoolingRate.requireTemperature(farthestK, "farthest temperature");
        double near = nearestK - equilibriumK;
        double far = farthestK - equilibriumK;
        if (!(near * far > 0 && Math.abs(near) < Math.abs(far) && near / far >= CLOSEST_PART)) {
            throw new IllegalArgumentException(
                    "curve from " + farthestK + " K to " + nearestK + " K with its equilibrium at " + equilibriumK
                            + " K: expected both on one side of it, the second closer, but not by more than 1e9 times");
        }
        return far > 0 ? 1 : -1;
    }

    /**
     * Where the temperature tends to.
     *
     * @return temperature [K]
     */
    public double equilibriumK() {
        return equilibriumK;
    }

    /**
     * Where the curve ends.
     *
     * @return temperature closest to the equilibrium [K]
     */
    public double nearestK() {
        return equilibriumK + sign * nearK;
    }

    /**
     * Where the curve begins.
     *
     * @return temperature farthest from the equilibrium [K]
     */
    public double farthestK() {
        return equilibriumK + sign * farK;
    }

    /**
     * How far a time may be off, computed when the curve was built.
     *
     * @return largest error of {@link #timeS} [s]
     */
    public double timeErrorS() {
        return timeErrorS;
    }

    /**
     * How far a temperature may be off, computed when the curve was built.
     *
     * @return largest error of {@link #temperatureK} up to the curve's end [K]; beyond it the error is less than the distance of the
     *     nearest temperature from the equilibrium
     */
    public double temperatureErrorK() {
        return temperatureErrorK;
    }

    /**
     * Number of cells in which times are kept.
     *
     * @return cubic cells
     */
    public int cells() {
        return timeOf.cells();
    }

    /**
     * Time from one temperature to another.
     *
     * @param startK temperature at the start [K], on the curve
     * @param targetK temperature to be reached [K]
     * @return time [s]; +∞ if the target is never reached: it is the equilibrium or lies beyond it, or behind the start
     * @throws OutOfRangeException if the start is not on the curve, or the target lies between the curve's end and the equilibrium
     * @throws IllegalArgumentException if a temperature is not a number
     */
    public double timeS(double startK, double targetK) {
        double start = sign * (startK - equilibriumK);
        double target = sign * (targetK - equilibriumK);
        if (start <= farK && target >= nearK && target <= start) {
            double underWay = Math.max(0, timeOf.at(target) - timeOf.at(start));
            return lag == null ? underWay : underWay + lag.laterS(start, underWay);
        }
        return unusualTimeS(startK, targetK);
    }

    private double unusualTimeS(double startK, double targetK) {
        CoolingRate.requireTemperature(targetK, "target");
        requireOnCurve("start", startK);
        double start = sign * (startK - equilibriumK);
        double target = sign * (targetK - equilibriumK);
        if (target > start || target <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        throw refusal("target", targetK);
    }

    private void requireOnCurve(String what, double temperatureK) {
        double distance = sign * (temperatureK - equilibriumK);
        if (!(distance >= nearK && distance <= farK)) {
            throw refusal(what, temperatureK);
        }
    }

    private IllegalArgumentException refusal(String what, double temperatureK) {
        double low = Math.min(nearestK(), farthestK());
        double high = Math.max(nearestK(), farthestK());
        return OutOfRangeException.refusal(
                what, temperatureK, low, high, "K", "the prepared curve ends there; prepare a longer one");
    }

    /**
     * Temperature after a time.
     *
     * @param startK temperature at the start [K], on the curve
     * @param afterS time from the start [s], ≥ 0; may be infinite
     * @return temperature [K]; beyond the curve's end it goes on falling towards the equilibrium with the curve's last time constant
     * @throws OutOfRangeException if the start is not on the curve
     * @throws IllegalArgumentException if the time is negative or not a number
     */
    public double temperatureK(double startK, double afterS) {
        double start = sign * (startK - equilibriumK);
        if (!(start <= farK && start >= nearK && afterS > 0)) {
            requireOnCurve("start", startK);
            if (afterS != 0) {
                throw new IllegalArgumentException("time " + afterS + " s: expected ≥ 0");
            }
            return startK;
        }
        if (afterS == Double.POSITIVE_INFINITY) {
            return equilibriumK;
        }
        double time = timeOf.at(start) + (lag == null ? afterS : lag.underWayS(start, afterS));
        return equilibriumK + sign * (time < endS ? distances.at(time) : nearK * Math.exp((endS - time) / tailS));
    }

    /**
     * Time from one temperature to another.
     *
     * @param start temperature at the start, on the curve
     * @param target temperature to be reached
     * @return when it is reached, or that it never is
     * @throws OutOfRangeException if the start is not on the curve, or the target lies between the curve's end and the equilibrium
     * @throws IllegalArgumentException if a quantity is not a temperature
     */
    public CurveTime timeTo(Quantity<Temperature> start, Quantity<Temperature> target) {
        double timeS = timeS(SiValues.temperatureK(start, "start"), SiValues.temperatureK(target, "target"));
        return CoolingRate.answer(timeS, timeErrorS(), equilibriumK);
    }

    /**
     * Temperature after a time.
     *
     * @param start temperature at the start, on the curve
     * @param after time from the start, not negative
     * @return the temperature
     * @throws OutOfRangeException if the start is not on the curve
     * @throws IllegalArgumentException if the quantity is not a temperature or the time is negative
     */
    public Quantity<Temperature> temperatureAfter(Quantity<Temperature> start, Duration after) {
        return SiValues.celsiusOf(temperatureK(SiValues.temperatureK(start, "start"), after.toNanos() / 1e9));
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "curve from %.2f K to %.2f K, tending to %.2f K", farthestK(), nearestK(), equilibriumK);
    }
}
