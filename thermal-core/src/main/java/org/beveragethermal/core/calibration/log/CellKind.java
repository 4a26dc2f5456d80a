/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.List;

/** What a cell looks like before anything is known of its column. */
enum CellKind {
    STAMP,
    DATE,
    CLOCK,
    NUMBER,
    MISSING,
    TEXT;

    private static final int LONGEST = 60;

    boolean isTime() {
        return this != MISSING && this != TEXT;
    }

    boolean isReading() {
        return this == NUMBER || this == MISSING;
    }

    static CellKind of(String cell) {
        if (MissingMarks.isMissing(cell)) {
            return MISSING;
        }
        if (cell.length() > LONGEST) {
            return TEXT;
        }
        return switch (new TimeCell().read(cell)) {
            case STAMP -> STAMP;
            case DATE -> DATE;
            case CLOCK -> CLOCK;
            case NONE -> isNumber(cell, '.') || isNumber(cell, ',') ? NUMBER : TEXT;
        };
    }

    private static boolean isNumber(String cell, char mark) {
        NumberCell number = new NumberCell(mark);
        if (!number.read(cell.toCharArray(), 0, cell.length())) {
            return false;
        }
        String rest = Separators.trim(cell.substring(number.end()));
        return rest.isEmpty() || HeadWords.isUnitAlone(rest);
    }

    /** Whether cells look like a row of a log: a time, and a reading beside it. */
    static boolean isRow(List<CellKind> kinds, List<String> cells) {
        for (int time = 0; time < kinds.size(); time++) {
            if (kinds.get(time).isTime()) {
                for (int reading = 0; reading < kinds.size(); reading++) {
                    boolean written = !cells.get(reading).isEmpty();
                    if (reading != time && written && kinds.get(reading).isReading()) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
