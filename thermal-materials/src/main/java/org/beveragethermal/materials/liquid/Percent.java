/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A fraction in per cent as text, to two decimals, independent of the locale. */
final class Percent {
    private static final int DECIMALS = 2;

    private Percent() {}

    static String of(double fraction) {
        BigDecimal percent = BigDecimal.valueOf(fraction).movePointRight(2).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return percent.stripTrailingZeros().toPlainString();
    }
}
