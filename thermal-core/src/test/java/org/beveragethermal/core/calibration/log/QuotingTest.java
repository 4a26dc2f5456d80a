/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import org.junit.jupiter.api.Test;

/** The rules of RFC 4180, section 2, with its own cells where they can stand beside a time and a temperature. */
class QuotingTest {
    private static final LogFormat CELSIUS =
            LogFormat.builder().unit(TemperatureUnit.CELSIUS).build();

    private static ReadLog read(String text) throws IOException {
        return LogReader.read(new StringReader(text), CELSIUS);
    }

    private static void assertTwo(ReadLog read) {
        assertThat(read.log().only().elapsedS()).containsExactly(0, 60);
        assertThat(read.report().rejectedCount()).isZero();
        assertThat(read.report().rows()).isEqualTo(2);
    }

    /** Rules 1 and 2: a record ends in CRLF; the last may lack it. Bare LF and CR occur as well. */
    @Test
    void lineBreaks() throws IOException {
        assertTwo(read("time s,aaa\r\n0,20.5\r\n60,20.0\r\n"));
        assertTwo(read("time s,aaa\r\n0,20.5\r\n60,20.0"));
        assertTwo(read("time s,aaa\n0,20.5\n60,20.0\n"));
        assertTwo(read("time s,aaa\r0,20.5\r60,20.0\r"));
    }

    /** Rule 3: the header may be there or not; without it the unit of the time must be told. */
    @Test
    void headOrNot() throws IOException {
        LogFormat seconds =
                LogFormat.builder().timeForm(TimeForm.ELAPSED_SECONDS).build();
        assertTwo(LogReader.read(new StringReader("0,20.5\r\n60,20.0\r\n"), seconds));
    }

    /** Rule 4 counts spaces as part of a field. In a log they carry nothing: departure, they are cut off. */
    @Test
    void spacesAround() throws IOException {
        assertTwo(read("time s , aaa\r\n 0 , 20.5 \r\n 60 ,20.0\r\n"));
    }

    /** Rule 5: each field may be quoted or not. */
    @Test
    void quotes() throws IOException {
        ReadLog read = read("\"time s\",\"aaa\",zzz\r\n\"0\",\"20.5\",bbb\r\n60,20.0,\"bbb\"\r\n");
        assertTwo(read);
        assertThat(read.log().sensors()).containsExactly("aaa");
    }

    /** Rule 6: line breaks, quotes and commas stand in quoted fields. Lines are counted as they are in the file. */
    @Test
    void lineBreakInQuotes() throws IOException {
        ReadLog read = read("remark,time s,aaa\r\n\"b\r\nbb\",0,20.5\r\n\"b,bb\",60,20.0\r\n\"c\",x,20.0\r\n");
        assertThat(read.log().only().elapsedS()).containsExactly(0, 60);
        assertThat(read.report().rejectedLines(Rejected.Reason.TIME_UNREADABLE).toArray())
                .containsExactly(5);
    }

    /** Rule 7: a quote within is doubled. */
    @Test
    void quoteInQuotes() throws IOException {
        ReadLog read = read("time s,\"b\"\"bb\"\r\n0,20.5\r\n60,20.0\r\n");
        assertTwo(read);
        assertThat(read.log().sensors()).containsExactly("b\"bb");
    }
}
