/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

import java.util.Arrays;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;

/**
 * A heat law that answers for many pairs of temperatures at once.
 *
 * <p>Written as short plain loops, one per formula, without branches, it is turned into vector instructions by the compiler of
 * the virtual machine. A class that implements {@link HeatLaw} too is used so wherever a heat law is given to a batch.
 *
 * <p>Implementations are immutable and thread-safe, and give for a pair the same answer wherever in the arrays it stands:
 * that is what makes results independent of threads and of the other samples.
 */
@FunctionalInterface
public interface BatchLaw {

    /** Most pairs that a batch hands to a law in one call. */
    int MOST_PAIRS = 128;

    /**
     * Evaluates the law.
     *
     * @param fromK temperatures on the giving side [K], not modified
     * @param toK temperatures on the taking side [K], not modified
     * @param watts receives the heat flows [W]
     * @param perFrom receives their slopes in the first temperature [W/K]
     * @param perTo receives their slopes in the second temperature [W/K]
     * @param n number of pairs, at most {@link #MOST_PAIRS}; what the arrays hold beyond it is not read or written
     */
    void evaluate(double[] fromK, double[] toK, double[] watts, double[] perFrom, double[] perTo, int n);

    /**
     * Evaluates the flows where no slopes are wanted, two times in three; worth overriding where slopes cost something.
     *
     * @param fromK temperatures on the giving side [K], not modified
     * @param toK temperatures on the taking side [K], not modified
     * @param watts receives the heat flows [W]
     * @param spare may be written to
     * @param other may be written to
     * @param n number of pairs, at most {@link #MOST_PAIRS}
     */
    default void flows(double[] fromK, double[] toK, double[] watts, double[] spare, double[] other, int n) {
        evaluate(fromK, toK, watts, spare, other, n);
    }

    /**
     * A heat law in batch form.
     *
     * @param law any heat law
     * @return the law itself if it has a batch form, else a loop over it
     */
    static BatchLaw of(HeatLaw law) {
        if (law instanceof BatchLaw batch) {
            return batch;
        }
        return (fromK, toK, watts, perFrom, perTo, n) -> {
            HeatFlow flow = new HeatFlow();
            for (int i = 0; i < n; i++) {
                law.evaluate(fromK[i], toK[i], flow);
                watts[i] = flow.watts;
                perFrom[i] = flow.perFromKelvin;
                perTo[i] = flow.perToKelvin;
            }
        };
    }

    /**
     * A constant conductance.
     *
     * @param wattsPerKelvin conductance [W/K], finite, ≥ 0
     * @return the law
     * @throws IllegalArgumentException if the conductance is negative or not finite
     */
    static BatchLaw conductance(double wattsPerKelvin) {
        if (!(wattsPerKelvin >= 0) || Double.isInfinite(wattsPerKelvin)) {
            throw new IllegalArgumentException("conductance " + wattsPerKelvin + " W/K: expected a finite value ≥ 0");
        }
        return (fromK, toK, watts, perFrom, perTo, n) -> {
            for (int i = 0; i < n; i++) {
                watts[i] = wattsPerKelvin * (fromK[i] - toK[i]);
            }
            Arrays.fill(perFrom, 0, n, wattsPerKelvin);
            Arrays.fill(perTo, 0, n, -wattsPerKelvin);
        };
    }

    /**
     * The law for one pair at a time, for the scalar engine.
     *
     * @return the law itself if it is a heat law, else one that evaluates arrays of one
     */
    default HeatLaw asHeatLaw() {
        if (this instanceof HeatLaw law) {
            return law;
        }
        return (fromK, toK, out) -> {
            double[] from = {fromK};
            double[] to = {toK};
            double[] watts = new double[1];
            double[] perFrom = new double[1];
            double[] perTo = new double[1];
            evaluate(from, to, watts, perFrom, perTo, 1);
            out.watts = watts[0];
            out.perFromKelvin = perFrom[0];
            out.perToKelvin = perTo[0];
        };
    }
}
