/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

import java.time.Duration;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.materials.units.SiValues;

/**
 * One body in surroundings that never change: its rate of change depends on its temperature alone, dT/dt = f(T), and
 * vanishes at an equilibrium T<sub>e</sub>.
 *
 * <p>The time from one temperature to another needs no integration in time: it is the integral of the local time constant
 * −(T − T<sub>e</sub>)/f(T) over u = ln|T − T<sub>e</sub>|. That function of u is all but constant (constant for
 * Newton's law), so that five nodes of Gauss, Lobatto and Legendre do; how fast its Legendre coefficients fall at these
 * nodes tells what they miss, and where that is more than allowed the interval is halved.
 *
 * <p>Immutable; thread-safe if the law is. A query allocates nothing if the law does not.
 *
 * <p>Theory manual, equation (7.7).
 */
public final class CoolingRate {

    /** Estimated error of a time if none is asked for [s]. */
    public static final double DEFAULT_TOLERANCE_S = 0.01;

    private static final double LONGEST_TOLERANCE_S = 1e6;
    private static final int MOST_HALVINGS = 40;
    /** The tolerance is shared out to no more parts than this: a jump concerns one part at each halving. */
    private static final double MOST_PARTS = 4096;

    // Five nodes of Gauss, Lobatto and Legendre: 0, ±√(3/7), ±1 with weights 32/45, 49/90, 1/10; exact up to degree 7.
    private static final double INNER = Math.sqrt(3.0 / 7);
    private static final double MIDDLE_WEIGHT = 32.0 / 45;
    private static final double INNER_WEIGHT = 49.0 / 90;
    private static final double END_WEIGHT = 1.0 / 10;
    // Legendre polynomials at the nodes, times weights and over the sums of their squares: coefficients of the
    // integrand.
    private static final double END_1 = 1.5 * END_WEIGHT;
    private static final double INNER_1 = 1.5 * INNER_WEIGHT * INNER;
    private static final double END_2 = 2.5 * END_WEIGHT;
    private static final double INNER_2 = 2.5 * INNER_WEIGHT * (1.5 * 3 / 7 - 0.5);
    private static final double MIDDLE_2 = 2.5 * MIDDLE_WEIGHT * -0.5;
    private static final double END_3 = 3.5 * END_WEIGHT;
    private static final double INNER_3 = 3.5 * INNER_WEIGHT * INNER * (2.5 * 3 / 7 - 1.5);
    private static final double END_4 = 2 * END_WEIGHT;
    private static final double INNER_4 = 2 * INNER_WEIGHT * (-3.0 / 7);
    private static final double MIDDLE_4 = 2 * MIDDLE_WEIGHT * (3.0 / 8);

    /** Coefficients below this part of the mean are rounding. */
    private static final double ROUNDING = 1e-13;
    /** Slowest fall of the coefficients, over two of them, that counts as convergence. */
    private static final double SLOWEST_FALL = 0.25;

    private final DoubleUnaryOperator kelvinPerSecond;
    private final double equilibriumK;

    private CoolingRate(DoubleUnaryOperator kelvinPerSecond, double equilibriumK) {
        this.kelvinPerSecond = Objects.requireNonNull(kelvinPerSecond, "kelvinPerSecond");
        this.equilibriumK = requireTemperature(equilibriumK, "equilibrium");
    }

    /**
     * A rate given as a function.
     *
     * @param kelvinPerSecond dT/dt [K/s] at a temperature [K]: negative above the equilibrium, positive below it
     * @param equilibriumK temperature at which the rate vanishes [K], finite, > 0
     * @return the rate
     * @throws IllegalArgumentException if the equilibrium is not a temperature
     */
    public static CoolingRate of(DoubleUnaryOperator kelvinPerSecond, double equilibriumK) {
        return new CoolingRate(kelvinPerSecond, equilibriumK);
    }

    /**
     * The rate of the only node of a network whose boundaries never change. Its temperature at the start does not matter.
     *
     * @param network a network of one node without amounts
     * @param multipliers factors by name, finite, ≥ 0, not modified; names that no path uses are ignored
     * @return the rate
     * @throws IllegalArgumentException if there are several nodes, the node has amounts, a boundary or a path varies in time, or
     *     no equilibrium lies within 200 K of the boundaries
     */
    public static CoolingRate of(Network network, Map<String, Double> multipliers) {
        NodeRate rate = new NodeRate(network, multipliers);
        return new CoolingRate(rate, rate.equilibriumK());
    }

    static double requireTemperature(double temperatureK, String what) {
        if (!(temperatureK > 0) || Double.isInfinite(temperatureK)) {
            throw new IllegalArgumentException(
                    what + " " + temperatureK + " K: expected a finite temperature above 0 K");
        }
        return temperatureK;
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
     * Time from one temperature to another, its error estimated below {@link #DEFAULT_TOLERANCE_S}.
     *
     * @param startK temperature at the start [K], finite, > 0
     * @param targetK temperature to be reached [K], finite, > 0
     * @return time [s]; +∞ if the target is never reached: it is the equilibrium or lies beyond it, or behind the start
     * @throws IllegalArgumentException if a temperature is not finite and positive
     * @throws IllegalStateException if the rate on the way is not finite or does not lead to the equilibrium
     */
    public double timeS(double startK, double targetK) {
        return timeS(startK, targetK, DEFAULT_TOLERANCE_S);
    }

    /**
     * Time from one temperature to another.
     *
     * @param startK temperature at the start [K], finite, > 0
     * @param targetK temperature to be reached [K], finite, > 0
     * @param toleranceS largest estimated error [s], 1e-9 to 1e6; never below some units in the last place of the time
     * @return time [s]; +∞ if the target is never reached: it is the equilibrium or lies beyond it, or behind the start
     * @throws IllegalArgumentException if a number is outside its range
     * @throws IllegalStateException if the rate on the way is not finite or does not lead to the equilibrium, or the tolerance
     *     cannot be met because the rate jumps
     */
    public double timeS(double startK, double targetK, double toleranceS) {
        requireTemperature(startK, "start");
        requireTemperature(targetK, "target");
        if (!(toleranceS >= 1e-9 && toleranceS <= LONGEST_TOLERANCE_S)) {
            throw new IllegalArgumentException("tolerance " + toleranceS + " s: expected 1e-9 s to 1e6 s");
        }
        if (startK == targetK) {
            return 0;
        }
        double from = startK - equilibriumK;
        double to = targetK - equilibriumK;
        boolean onTheWay = from > 0 ? to > 0 && to < from : to < 0 && to > from;
        return onTheWay
                ? integral(from, to, toleranceS, toleranceS / MOST_PARTS, MOST_HALVINGS)
                : Double.POSITIVE_INFINITY;
    }

    /** Time between two distances from the equilibrium of one sign [K], the first the larger. */
    private double integral(double from, double to, double toleranceS, double leastS, int halvings) {
        double length = Math.log(from / to);
        double middle = from * Math.sqrt(to / from);
        double inner = Math.exp(0.5 * length * INNER);
        double g1 = timeConstantS(from);
        double g2 = timeConstantS(middle * inner);
        double g3 = timeConstantS(middle);
        double g4 = timeConstantS(middle / inner);
        double g5 = timeConstantS(to);
        double ends = g1 + g5;
        double inners = g2 + g4;
        double acrossEnds = g1 - g5;
        double acrossInners = g2 - g4;
        double mean = 0.5 * (END_WEIGHT * ends + INNER_WEIGHT * inners + MIDDLE_WEIGHT * g3);
        double c1 = Math.abs(END_1 * acrossEnds + INNER_1 * acrossInners);
        double c2 = Math.abs(END_2 * ends + INNER_2 * inners + MIDDLE_2 * g3);
        double c3 = Math.abs(END_3 * acrossEnds + INNER_3 * acrossInners);
        double c4 = Math.abs(END_4 * ends + INNER_4 * inners + MIDDLE_4 * g3);
        if (missed(c1, c2, c3, c4, mean) * length <= toleranceS) {
            return length * mean;
        }
        if (halvings == 0) {
            throw new IllegalStateException("rate of cooling near " + (equilibriumK + middle)
                    + " K: its time cannot be found to " + toleranceS + " s; let the rate be continuous");
        }
        double half = Math.max(0.5 * toleranceS, leastS);
        return integral(from, middle, half, leastS, halvings - 1) + integral(middle, to, half, leastS, halvings - 1);
    }

    /**
     * What the five nodes miss, over the interval's length: a geometric tail of coefficients that falls, from each to the next but
     * one, as the slower of the first four does; all of them where they do not fall. The nodes are exact up to the seventh
     * coefficient; the tail is counted from the sixth on, which leaves a margin for one that is small by chance. As the ends are
     * nodes, a jump of the rate between them shows.
     */
    private static double missed(double c1, double c2, double c3, double c4, double mean) {
        double rounding = ROUNDING * mean;
        if (c2 <= rounding && c3 <= rounding && c4 <= rounding) {
            return 0;
        }
        double fall = Math.max(c3 / Math.max(c1, rounding), c4 / Math.max(c2, rounding));
        if (!(fall < SLOWEST_FALL)) {
            return Math.max(c2, Math.max(c3, c4));
        }
        return 2 * Math.max(c4, c3 * Math.sqrt(fall)) * fall;
    }

    /** −(T − T<sub>e</sub>)/f(T) at a distance from the equilibrium [s]. */
    private double timeConstantS(double distanceK) {
        double rate = kelvinPerSecond.applyAsDouble(equilibriumK + distanceK);
        double time = -distanceK / rate;
        if (!(time > 0 && time < Double.POSITIVE_INFINITY)) {
            throw new IllegalStateException("rate of cooling " + rate + " K/s at " + (equilibriumK + distanceK)
                    + " K: expected a finite rate towards the equilibrium at " + equilibriumK + " K");
        }
        return time;
    }

    /** Slope of the time in the distance from the equilibrium [s/K]. */
    double secondsPerKelvin(double distanceK) {
        return timeConstantS(distanceK) / distanceK;
    }

    /**
     * Time from one temperature to another.
     *
     * @param start temperature at the start
     * @param target temperature to be reached
     * @return when it is reached, or that it never is
     * @throws IllegalArgumentException if a quantity is not a temperature above absolute zero
     * @throws IllegalStateException if the rate on the way is not finite or does not lead to the equilibrium
     */
    public CurveTime timeTo(Quantity<Temperature> start, Quantity<Temperature> target) {
        double timeS = timeS(SiValues.temperatureK(start, "start"), SiValues.temperatureK(target, "target"));
        return answer(timeS, DEFAULT_TOLERANCE_S, equilibriumK);
    }

    /** The answer for seconds that are infinite where the target is never reached; an error is rounded up to a millisecond. */
    static CurveTime answer(double timeS, double errorS, double equilibriumK) {
        return timeS == Double.POSITIVE_INFINITY
                ? new CurveTime.Never(SiValues.celsiusOf(equilibriumK))
                : new CurveTime.Reached(Duration.ofMillis(Math.round(1000 * timeS)), Duration.ofMillis((long)
                        Math.ceil(1000 * errorS)));
    }

    /**
     * Prepares all times and temperatures between two temperatures on one side of the equilibrium.
     *
     * @param nearestK the temperature closer to the equilibrium [K]; the table grows by its 32 to 512 cells each time the distance is
     *     halved
     * @param farthestK the temperature farther from the equilibrium [K]
     * @return the prepared curve
     * @throws IllegalArgumentException if the temperatures are not on one side of the equilibrium in this order, or closer to it
     *     than a billionth of the farther one
     * @throws IllegalStateException if the rate between them is not finite or does not lead to the equilibrium
     */
    public CoolingCurve prepare(double nearestK, double farthestK) {
        return CoolingCurve.of(this, nearestK, farthestK);
    }
}
