/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.time.ZoneId;
import java.util.Optional;

/**
 * How a file is written.
 *
 * @param separator what stands between cells
 * @param decimalMark what stands before the fraction
 * @param comment what a line of comment begins with
 * @param skipped lines before the first row: preamble and heads
 * @param cells cells of a row
 * @param columns which cell is what
 * @param preambleUnit unit named above the heads
 * @param zone zone named over the time or above the heads
 */
record Dialect(
        char separator,
        char decimalMark,
        char comment,
        int skipped,
        int cells,
        Columns columns,
        Optional<TemperatureUnit> preambleUnit,
        Optional<ZoneId> zone) {}
