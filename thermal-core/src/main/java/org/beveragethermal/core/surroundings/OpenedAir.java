/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.beveragethermal.core.network.TimeFunction;

/** Air of an appliance whose door is opened: at each opening it goes a share of the way to the room, then it recovers. */
final class OpenedAir implements TimeFunction {

    private final TimeFunction closed;
    private final double recoveryS;
    private final double[] timesS;
    /** How much warmer than with the door closed the air is just after each opening [K]. */
    private final double[] excessK;

    OpenedAir(TimeFunction closed, DoorOpenings openings) {
        this.closed = closed;
        this.recoveryS = openings.recoveryS();
        List<Double> times = openings.timesS();
        timesS = times.stream().mapToDouble(Double::doubleValue).toArray();
        excessK = new double[timesS.length];
        for (int i = 0; i < timesS.length; i++) {
            double before = i == 0 ? 0 : excessK[i - 1] * faded(timesS[i] - timesS[i - 1]);
            double air = closed.at(timesS[i]) + before;
            excessK[i] = before + openings.share() * (openings.roomK() - air);
        }
    }

    private double faded(double sinceS) {
        return Math.exp(-sinceS / recoveryS);
    }

    private double excessAt(double timeS) {
        int found = Arrays.binarySearch(timesS, timeS);
        int last = found >= 0 ? found : -found - 2;
        return last < 0 ? 0 : excessK[last] * faded(timeS - timesS[last]);
    }

    @Override
    public double at(double timeS) {
        return closed.at(timeS) + excessAt(timeS);
    }

    @Override
    public double rate(double timeS) {
        return closed.rate(timeS) - excessAt(timeS) / recoveryS;
    }

    @Override
    public double[] knots() {
        return DoubleStream.concat(Arrays.stream(closed.knots()), Arrays.stream(timesS))
                .sorted()
                .distinct()
                .toArray();
    }
}
