/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
    @ParameterizedTest
    @CsvSource({
        "293.15, 0, 293.15",
        "998.2071, 0, 998.21",
        "998.2071, 0.001, 998.2071",
        "998.2071, 1e-20, 998.2071",
        "0.333333333333333333, 1e-20, 0.333333333333",
        "0, 0, 0",
        "-0.0, 0, 0",
        "1, 0, 1",
        "-12.5, 0, -12.5",
        "333426.5, 0, 333430",
        "0.0001, 0, 0.0001",
        "5.670374419e-8, 0, 5.6704E-8",
        "1.23e12, 0, 1.23E+12",
        "NaN, 1, NaN",
        "-Infinity, 1, -Infinity",
        "1.5, Infinity, 1.5"
    })
    void figuresAreShortButResolveTheirTolerance(double value, double tolerance, String expected) {
        assertThat(Figures.figure(value, tolerance)).isEqualTo(expected);
    }
}
