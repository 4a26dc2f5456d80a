/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

/**
 * Days as spreadsheets count them, as local times. A whole day is rounded off to milliseconds, which is what the fraction of a double and the
 * digits of an export carry.
 *
 * <p>The 1900 system calls 1900-01-01 day 1 and believes 1900 to be a leap year: day 59 is 28 February, day 61 is 1 March, day 60 never was.
 * The 1904 system calls 1904-01-01 day 0. The same number is 1462 days later in it. Common facts, from memory.
 */
final class SerialDays {
    /** What no day has. */
    static final long NONE = Long.MIN_VALUE;

    private static final long MILLIS_PER_DAY = 86_400_000;
    private static final int FALSE_LEAP_DAY = 60;
    private static final long DAY_ZERO_1900_AFTER_FAULT = -25_569;
    private static final long DAY_ZERO_1904 = -24_107;
    /** 9999-12-31. */
    private static final int LAST = 2_958_465;

    private SerialDays() {}

    /** Microseconds of local time since 1970-01-01T00:00, or {@link #NONE}. */
    static long micros1900(double serial) {
        long millis = Math.round(serial * MILLIS_PER_DAY);
        long day = Math.floorDiv(millis, MILLIS_PER_DAY);
        if (!(serial >= 1 && serial <= LAST + 1) || day == FALSE_LEAP_DAY) {
            return NONE;
        }
        long since1970 = DAY_ZERO_1900_AFTER_FAULT + (day < FALSE_LEAP_DAY ? 1 : 0);
        return (millis + since1970 * MILLIS_PER_DAY) * 1000;
    }

    /** Microseconds of local time since 1970-01-01T00:00, or {@link #NONE}. */
    static long micros1904(double serial) {
        return serial >= 0 && serial <= LAST
                ? (Math.round(serial * MILLIS_PER_DAY) + DAY_ZERO_1904 * MILLIS_PER_DAY) * 1000
                : NONE;
    }
}
