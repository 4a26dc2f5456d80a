/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.time.Duration;
import java.time.Instant;
import java.util.SplittableRandom;

/**
 * Invented readings of an invented cellar as CSV.
 *
 * <p>The air swings about 12 °C by half a kelvin each day; each bottle follows it with a time constant of its own, 3.5 to 5 h; its sensor has
 * an error of its own (standard deviation 0.1 K), some noise (0.1 K), and a step of 0.1 K. What goes wrong: {@link #DOOR the door of a rack}
 * stands open for three hours, one bottle {@link #TAKEN is taken} to a room of 22 °C, one {@link #CHILLED is put} where it is −9 °C, one
 * sensor {@link #SILENT falls silent}, one {@link #FAULTY gives a number that means "no reading"}, and one {@link #WANDERING wanders} by 0.1 K
 * an hour.
 */
final class CellarReadings {

    static final Instant START = Instant.parse("2027-01-11T00:00:00Z");

    /** One bottle in 25 stands in the rack whose door is left open. */
    static final int DOOR = 25;

    static final int SILENT = 12;
    static final int TAKEN = 37;
    static final int WANDERING = 44;
    static final int FAULTY = 61;
    static final int CHILLED = 88;

    private static final double HOURS_PER_DAY = 24;
    private static final double MINUTES_PER_HOUR = 60;
    private static final double SHORTEST_H = 3.5;
    private static final double LONGEST_H = 5;
    private static final double MIDDLE_C = 12;
    private static final double SWING_K = 0.5;
    private static final double DOOR_OPENS_H = 20;
    private static final double DOOR_SHUTS_H = 23;
    private static final double DOOR_WARMER_K = 10;
    private static final double TAKEN_H = 30;
    private static final double ROOM_C = 22;
    private static final double CHILLED_H = 16;
    private static final double FROST_C = -9;
    private static final double SILENT_H = 10;
    private static final double FAULTY_H = 12;
    private static final double WANDERING_H = 6;
    private static final double WANDERING_K_PER_H = 0.1;
    private static final double NOISE_K = 0.1;
    private static final double SENSOR_ERROR_K = 0.1;
    private static final String NO_READING = "-127.0";

    private CellarReadings() {}

    static String bottle(int number) {
        return "b" + (10_000 + number);
    }

    /** Rows of so many bottles, numbered from 1, in the order of time, with a head. */
    static String csv(int bottles, Duration lasts, Duration step, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] hours = new double[bottles];
        double[] error = new double[bottles];
        double[] celsius = new double[bottles];
        for (int b = 0; b < bottles; b++) {
            hours[b] = random.nextDouble(SHORTEST_H, LONGEST_H);
            error[b] = SENSOR_ERROR_K * random.nextGaussian();
            celsius[b] = MIDDLE_C;
        }
        double stepH = step.toMinutes() / MINUTES_PER_HOUR;
        StringBuilder rows = new StringBuilder(String.join(",", CellarRow.COLUMNS)).append('\n');
        for (long round = 0; round <= lasts.dividedBy(step); round++) {
            double hour = round * stepH;
            String at = START.plus(step.multipliedBy(round)).toString();
            for (int b = 0; b < bottles; b++) {
                int number = b + 1;
                celsius[b] += (air(number, hour) - celsius[b]) * -Math.expm1(-stepH / hours[b]);
                double reads = celsius[b] + error[b] + wandered(number, hour) + NOISE_K * random.nextGaussian();
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

    private static double wandered(int number, double hour) {
        return number == WANDERING && hour > WANDERING_H ? WANDERING_K_PER_H * (hour - WANDERING_H) : 0;
    }

    private static double air(int number, double hour) {
        if (number == TAKEN && hour > TAKEN_H) {
            return ROOM_C;
        }
        if (number == CHILLED && hour > CHILLED_H) {
            return FROST_C;
        }
        boolean open = number % DOOR == 0 && hour > DOOR_OPENS_H && hour <= DOOR_SHUTS_H;
        return MIDDLE_C + SWING_K * Math.sin(2 * Math.PI * hour / HOURS_PER_DAY) + (open ? DOOR_WARMER_K : 0);
    }
}
