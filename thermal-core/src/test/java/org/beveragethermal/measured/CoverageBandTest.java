/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CoverageBandTest {

    /** Critical values of the two-sided sign test at 5 %, one less than the fewest here: usual statistical tables, from memory. */
    @ParameterizedTest
    @CsvSource({"6, 1, 5", "10, 2, 8", "15, 4, 11", "20, 6, 14", "25, 8, 17"})
    void bandsAreThoseOfTheSignTest(int rows, int fewest, int most) {
        assertThat(Coverage.Expected.of(rows, 0.5)).isEqualTo(new Coverage.Expected(fewest, most));
    }

    /** One row lies inside or not, and both can be chance as long as neither has less than one chance in forty. */
    @ParameterizedTest
    @CsvSource({"1, 0.90, 0, 1", "1, 0.50, 0, 1", "1, 0.98, 1, 1", "2, 0.90, 1, 2"})
    void fewRowsTellLittle(int rows, double probability, int fewest, int most) {
        assertThat(Coverage.Expected.of(rows, probability)).isEqualTo(new Coverage.Expected(fewest, most));
    }
}
