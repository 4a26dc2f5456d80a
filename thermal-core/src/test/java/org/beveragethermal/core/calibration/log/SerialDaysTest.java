/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SerialDaysTest {
    private static final long DAY = 86_400_000_000L;

    @ParameterizedTest
    @CsvSource({
        "1, 1900-01-01",
        "59, 1900-02-28",
        "61, 1900-03-01",
        "25569, 1970-01-01",
        "36526, 2000-01-01",
        "45351, 2024-02-29",
        "2958465, 9999-12-31"
    })
    void daysOf1900System(double serial, LocalDate day) {
        OutsideChecks.fromMemory("log-serial-1900-" + (int) serial, "common fact of spreadsheets")
                .what("1970 days of day " + (int) serial + " of the 1900 system, " + day)
                .unit("d")
                .expected((double) day.toEpochDay())
                .within(0)
                .check((double) SerialDays.micros1900(serial) / DAY);
    }

    @Test
    void dayThatNeverWas() {
        assertThat(SerialDays.micros1900(60)).isEqualTo(SerialDays.NONE);
        assertThat(SerialDays.micros1900(60.75)).isEqualTo(SerialDays.NONE);
        assertThat(SerialDays.micros1900(0.5)).isEqualTo(SerialDays.NONE);
        assertThat(SerialDays.micros1900(-3)).isEqualTo(SerialDays.NONE);
        assertThat(SerialDays.micros1900(1e300)).isEqualTo(SerialDays.NONE);
        assertThat(SerialDays.micros1904(-0.1)).isEqualTo(SerialDays.NONE);
    }

    @Test
    void systemsAre1462DaysApart() {
        OutsideChecks.fromMemory("log-serial-1904", "common fact of spreadsheets")
                .what("days by which the 1904 system is later for the same number")
                .unit("d")
                .expected(1462)
                .within(0)
                .check((double) (SerialDays.micros1904(40_000) - SerialDays.micros1900(40_000)) / DAY);
        assertThat(SerialDays.micros1904(0) / DAY)
                .isEqualTo(LocalDate.of(1904, 1, 1).toEpochDay());
    }

    @Test
    void partsOfDaysAreRoundedToMilliseconds() {
        assertThat(SerialDays.micros1900(45_352.4270833333) % DAY).isEqualTo((10 * 60 + 15) * 60_000_000L);
        assertThat(SerialDays.micros1900(45_352.9999999999)).isEqualTo(SerialDays.micros1900(45_353));
    }
}
