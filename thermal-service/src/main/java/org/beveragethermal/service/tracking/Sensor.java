/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Duration;
import java.util.List;

/**
 * What a reading has to do with the temperature of the drink: reading = T + w (T_medium − T) − L dT/dt (1 − e^(−t/L)) + b + noise.
 *
 * <p>A sensor on the outside sees a part w of the medium. One that is slow by a first-order lag L shows, while the temperature changes
 * steadily, that of L before; the bracket is the beginning of that, t after the vessel was moved. The bias b is unknown but for its
 * standard uncertainty and is estimated with the temperature. A step of the display adds a variance of step²/12.
 *
 * <p>Theory manual, equation (9.6).
 *
 * @param sdK standard deviation of the noise of one reading [K], 0.001 to 20
 * @param stepK step in which it reads [K], 0 to 10
 * @param biasSdK standard uncertainty of a constant error [K], 0 to 20
 * @param lag time constant, 0 to 2 h
 * @param mediumPart part w of the medium in the reading [-], 0 to 0.9
 * @param coldestK readings below are refused [K]
 * @param warmestK readings above are refused [K]
 * @param sentinelsC readings that mean "no reading" [°C]
 */
public record Sensor(
        double sdK,
        double stepK,
        double biasSdK,
        Duration lag,
        double mediumPart,
        double coldestK,
        double warmestK,
        List<Double> sentinelsC) {

    private static final double SAME_C = 1e-6;

    /**
     * Checks the figures.
     *
     * @param sdK standard deviation of the noise [K]
     * @param stepK step [K]
     * @param biasSdK standard uncertainty of a constant error [K]
     * @param lag time constant
     * @param mediumPart part of the medium in the reading [-]
     * @param coldestK lowest reading accepted [K], at least 150
     * @param warmestK highest reading accepted [K], at most 500 and above the lowest
     * @param sentinelsC readings that mean "no reading" [°C], not modified
     * @throws IllegalArgumentException if a figure is outside its range
     */
    public Sensor {
        Checks.within(sdK, 1e-3, 20, "standard deviation of a reading", "K");
        Checks.within(stepK, 0, 10, "step of readings", "K");
        Checks.within(biasSdK, 0, 20, "standard uncertainty of the bias", "K");
        Checks.within(mediumPart, 0, 0.9, "part of the medium in a reading", "1");
        Checks.within(coldestK, Checks.COLDEST_K, Checks.WARMEST_K, "lowest reading accepted", "K");
        Checks.within(warmestK, coldestK, Checks.WARMEST_K, "highest reading accepted", "K");
        if (lag.isNegative() || lag.compareTo(Duration.ofHours(2)) > 0) {
            throw new IllegalArgumentException("lag of the sensor " + lag + ": expected 0 to 2 h");
        }
        sentinelsC = List.copyOf(sentinelsC);
    }

    /**
     * A sensor in the drink without lag and bias, accepting −40 to 105 °C; −127, −999, 999 and 85 °C mean "no reading": values that
     * digital sensors and loggers give when they have none (common practice, no source).
     *
     * @param sdK standard deviation of the noise [K], 0.001 to 20
     * @param stepK step in which it reads [K], 0 to 10
     * @return the sensor
     * @throws IllegalArgumentException if a figure is outside its range
     */
    public static Sensor inDrink(double sdK, double stepK) {
        return new Sensor(
                sdK,
                stepK,
                0,
                Duration.ZERO,
                0,
                Checks.ZERO_C_IN_K - 40,
                Checks.ZERO_C_IN_K + 105,
                List.of(-127.0, -999.0, 999.0, 85.0));
    }

    /**
     * The same sensor with a bias that is not known.
     *
     * @param newBiasSdK standard uncertainty of a constant error [K], 0 to 20
     * @return a new sensor
     * @throws IllegalArgumentException if it is outside its range
     */
    public Sensor withBias(double newBiasSdK) {
        return new Sensor(sdK, stepK, newBiasSdK, lag, mediumPart, coldestK, warmestK, sentinelsC);
    }

    /**
     * The same sensor on the outside of the vessel.
     *
     * @param newLag time constant, 0 to 2 h
     * @param newMediumPart part of the medium in a reading [-], 0 to 0.9
     * @return a new sensor
     * @throws IllegalArgumentException if a figure is outside its range
     */
    public Sensor onSurface(Duration newLag, double newMediumPart) {
        return new Sensor(sdK, stepK, biasSdK, newLag, newMediumPart, coldestK, warmestK, sentinelsC);
    }

    /**
     * The same sensor with other values that mean "no reading".
     *
     * @param newSentinelsC readings [°C], not modified
     * @return a new sensor
     */
    public Sensor withSentinels(List<Double> newSentinelsC) {
        return new Sensor(sdK, stepK, biasSdK, lag, mediumPart, coldestK, warmestK, newSentinelsC);
    }

    /**
     * Variance of one reading, noise and step.
     *
     * @return variance [K²]
     */
    public double varianceK2() {
        return sdK * sdK + stepK * stepK / 12;
    }

    /** Whether a value can be a reading. */
    boolean accepts(double temperatureK) {
        if (!(temperatureK >= coldestK && temperatureK <= warmestK)) {
            return false;
        }
        for (double sentinel : sentinelsC) {
            if (Math.abs(temperatureK - Checks.ZERO_C_IN_K - sentinel) < SAME_C) {
                return false;
            }
        }
        return true;
    }

    double lagS() {
        return lag.toMillis() / 1000.0;
    }
}
