/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** The report in words says what was done to times. Clock changes of 2024 in Vienna: 31 March and 27 October (tz database). */
class ReportTextTest {

    private static String report(String rows) throws IOException {
        LogFormat format = LogFormat.builder().zone(ZoneId.of("Europe/Vienna")).build();
        return LogReader.read(new StringReader("time,temp C\n" + rows), format)
                .report()
                .toString();
    }

    @Test
    void clockChangesAreSaid() throws IOException {
        String spring = "2024-03-31 01:30,5\n2024-03-31 01:45,6\n2024-03-31 02:15,7\n2024-03-31 03:20,7.2\n";
        assertThat(report(spring)).contains("never was").contains("lines [4]");
        String autumn = "2024-10-27 01:45,5\n2024-10-27 02:30,6\n2024-10-27 02:00,7\n2024-10-27 03:15,7.2\n";
        assertThat(report(autumn)).contains("was twice").contains("lines [3, 4]");
        assertThat(report("2024-06-01 02:00,5\n2024-06-01 02:10,6\n2024-06-01 02:20,6\n"))
                .doesNotContain("never was")
                .doesNotContain("twice")
                .doesNotContain("in order");
    }
}
