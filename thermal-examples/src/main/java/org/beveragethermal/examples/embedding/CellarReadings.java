/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.time.Duration;
import java.time.Instant;
import java.util.SplittableRandom;

/**
 * Invented readings of an invented cellar as CSV: two days, a reading of every bottle each quarter of an hour.
 *
 * <p>The air swings about 12 °C by half a kelvin each day; each bottle follows it with a time constant of its own; its sensor has an error of
 * its own, some noise, and a step of 0.1 K. What goes wrong: {@link #DOOR the door of a rack} stands open for three hours, one bottle {@link
 * #TAKEN is taken} to a warm room, one sensor {@link #SILENT falls silent}, and one {@link #FAULTY gives numbers that mean "no reading"}.
 */
final class CellarReadings {

    static final Instant START = Instant.parse("2027-01-11T00:00:00Z");
    static final Duration STEP = Duration.ofMinutes(15);
    static final int ROUNDS = 192;
    static final String HEAD = "at,bottle,temperature_celsius";

    /** One bottle in 25 stands in the rack whose door is left open. */
    static final int DOOR = 25;

    static final int TAKEN = 37;
    static final int SILENT = 12;
    static final int FAULTY = 61;

    private static final double DOOR_OPENS_H = 20;
    private static final double DOOR_SHUTS_H = 23;
    private static final double DOOR_WARMER_K = 8;
    private static final double TAKEN_H = 30;
    private static final double ROOM_C = 22;
    private static final double SILENT_H = 10;
    private static final double FAULTY_H = 12;
    private static final double MIDDLE_C = 12;
    private static final double SWING_K = 0.5;
    private static final double NOISE_K = 0.1;
    private static final double SENSOR_ERROR_K = 0.1;
    private static final String NO_READING = "-127.0";

    private CellarReadings() {}

    static String bottle(int number) {
        return "b" + (10_000 + number);
    }

    /** Rows of so many bottles, numbered from 1, in the order of time. */
    static String csv(int bottles, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] hours = new double[bottles];
        double[] error = new double[bottles];
        double[] celsius = new double[bottles];
        for (int b = 0; b < bottles; b++) {
            hours[b] = random.nextDouble(3.5, 5);
            error[b] = SENSOR_ERROR_K * random.nextGaussian();
            celsius[b] = MIDDLE_C;
        }
        double step = STEP.toMinutes() / 60.0;
        StringBuilder rows = new StringBuilder(HEAD).append('\n');
        for (int round = 0; round < ROUNDS; round++) {
            double hour = round * step;
            String at = START.plus(STEP.multipliedBy(round)).toString();
            for (int b = 0; b < bottles; b++) {
                int number = b + 1;
                celsius[b] += (air(number, hour) - celsius[b]) * -Math.expm1(-step / hours[b]);
                double reads = celsius[b] + error[b] + NOISE_K * random.nextGaussian();
                if (number == SILENT && hour > SILENT_H) {
                    continue;
                }
                rows.append(at).append(',').append(bottle(number)).append(',');
                rows.append(number == FAULTY && hour > FAULTY_H ? NO_READING : "" + Math.round(10 * reads) / 10.0);
                rows.append('\n');
            }
        }
        return rows.toString();
    }

    private static double air(int number, double hour) {
        if (number == TAKEN && hour > TAKEN_H) {
            return ROOM_C;
        }
        boolean open = number % DOOR == 0 && hour > DOOR_OPENS_H && hour <= DOOR_SHUTS_H;
        return MIDDLE_C + SWING_K * Math.sin(2 * Math.PI * hour / 24) + (open ? DOOR_WARMER_K : 0);
    }
}
