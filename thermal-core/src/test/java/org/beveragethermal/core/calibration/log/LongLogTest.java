/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class LongLogTest {

    /** Writes rows as they are asked for, so that the text is never whole in memory. */
    static final class Rows extends Reader {
        private final int rows;
        private int next = -1;
        private byte[] row = "time;t °C\n".getBytes(StandardCharsets.ISO_8859_1);
        private int used;

        Rows(int rows) {
            this.rows = rows;
        }

        @Override
        public int read(char[] buffer, int from, int most) {
            int given = 0;
            while (given < most) {
                if (used == row.length) {
                    if (++next == rows) {
                        row = new byte[0];
                        used = 0;
                        next = rows - 1;
                        return given == 0 ? -1 : given;
                    }
                    fill();
                }
                buffer[from + given++] = (char) (row[used++] & 0xff);
            }
            return given;
        }

        /** One row a second from 2024-01-01 on; every thousandth is missing. */
        private void fill() {
            int second = next % 60;
            int minute = next / 60 % 60;
            int hour = next / 3600 % 24;
            int days = next / 86_400;
            java.time.LocalDate day = java.time.LocalDate.ofEpochDay(19_723 + days);
            StringBuilder text = new StringBuilder(40).append(day).append('T');
            two(text, hour).append(':');
            two(text, minute).append(':');
            two(text, second).append("Z;");
            if (next % 1000 == 999) {
                text.append("--");
            } else {
                text.append(10 + next % 7).append('.').append(next % 10);
            }
            row = text.append('\n').toString().getBytes(StandardCharsets.ISO_8859_1);
            used = 0;
        }

        private static StringBuilder two(StringBuilder text, int number) {
            return text.append((char) ('0' + number / 10)).append((char) ('0' + number % 10));
        }

        @Override
        public void close() {}
    }

    private static void check(int rows) throws IOException {
        ReadLog read = LogReader.read(new Rows(rows), LogFormat.inferred());
        SensorSeries series = read.log().only();
        assertThat(read.report().rows()).isEqualTo(rows);
        assertThat(series.size()).isEqualTo(rows - rows / 1000);
        assertThat(read.report().rejectedLines(Rejected.Reason.MISSING).toArray())
                .hasSize(rows / 1000);
        int last = (rows - 2) % 1000 == 999 ? rows - 3 : rows - 2;
        assertThat(List.of(series.elapsedS(series.size() - 1))).containsExactly((double) last);
        assertThat(series.temperatureK(0)).isEqualTo(TemperatureUnit.CELSIUS.toKelvin(10.0));
    }

    @Test
    void aDayOfSeconds() throws IOException {
        check(100_000);
    }

    /** Ten million rows: in the heap of the tests, text and rows never whole in it. */
    @Test
    @Tag("ensemble")
    void tenMillionRows() throws IOException {
        check(10_000_000);
    }
}
