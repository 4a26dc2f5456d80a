/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Tells columns by their heads and by what the first rows hold. */
final class ColumnSearch {
    private final LogFormat format;
    private final List<String> heads;
    private final List<Optional<TemperatureUnit>> unitRow;
    private final List<List<String>> rows;
    private final List<List<CellKind>> kinds;
    private final int count;

    ColumnSearch(
            LogFormat format,
            List<String> heads,
            List<Optional<TemperatureUnit>> unitRow,
            List<List<String>> rows,
            List<List<CellKind>> kinds) {
        this.format = format;
        this.heads = heads;
        this.unitRow = unitRow;
        this.rows = rows;
        this.kinds = kinds;
        this.count = kinds.get(0).size();
    }

    Columns find() {
        int time = format.timeColumn.map(this::named).orElseGet(this::time);
        int clock = mostly(time, CellKind.DATE) && !mostly(time, CellKind.STAMP)
                ? first(column -> column != time && mostly(column, CellKind.CLOCK))
                : -1;
        boolean stamped = !mostly(time, CellKind.NUMBER);
        List<Integer> readings = new ArrayList<>();
        int sensor = -1;
        if (format.sensorColumns.isEmpty()) {
            IntStream.range(0, count)
                    .filter(column -> column != time && column != clock && isReading(column, stamped))
                    .forEach(readings::add);
            sensor = sensor(time, clock, readings);
            readings.remove((Integer) sensor);
        } else {
            format.sensorColumns.forEach(name -> readings.add(named(name)));
            sensor = first(column -> column != time
                    && column != clock
                    && !readings.contains(column)
                    && HeadWords.namesSensors(head(column)));
        }
        if (readings.isEmpty()) {
            throw new UnclearLogException(
                    UnclearLogException.Question.COLUMNS,
                    "no column of temperatures beside column " + (time + 1) + " among " + shownHeads(),
                    "sensorColumns(…)");
        }
        return new Columns(
                heads, time, clock, kind(time), sensor, List.copyOf(readings), names(readings), units(readings));
    }

    private int time() {
        int stamp = first(column -> mostly(column, CellKind.STAMP));
        if (stamp >= 0) {
            return stamp;
        }
        int date = first(column -> mostly(column, CellKind.DATE));
        if (date >= 0) {
            return date;
        }
        int clock = first(column -> mostly(column, CellKind.CLOCK));
        if (clock >= 0) {
            return clock;
        }
        int headed = first(column -> mostly(column, CellKind.NUMBER)
                && HeadWords.isTime(head(column))
                && !HeadWords.isOtherQuantity(head(column)));
        int number = headed >= 0
                ? headed
                : first(column -> mostly(column, CellKind.NUMBER) && !HeadWords.isOtherQuantity(head(column)));
        if (number < 0) {
            throw new UnclearLogException(
                    UnclearLogException.Question.COLUMNS, "no column of times among " + shownHeads(), "timeColumn(…)");
        }
        return number;
    }

    private boolean isReading(int column, boolean stamped) {
        if (HeadWords.isOtherQuantity(head(column)) && unitOver(column).isEmpty()) {
            return false;
        }
        boolean any = kinds.stream().anyMatch(row -> row.get(column) == CellKind.NUMBER);
        boolean expected = unitOver(column).isPresent();
        long readings =
                kinds.stream().filter(row -> row.get(column).isReading()).count();
        return 2 * readings > kinds.size() && (any || expected) && !(stamped && isCount(column));
    }

    /** Whether a column without a head counts rows. */
    private boolean isCount(int column) {
        if (!head(column).isEmpty() || rows.size() < 3) {
            return false;
        }
        for (int i = 1; i < rows.size(); i++) {
            Optional<Long> before = whole(rows.get(i - 1).get(column));
            Optional<Long> here = whole(rows.get(i).get(column));
            if (before.isEmpty() || here.isEmpty() || here.get() != before.get() + 1) {
                return false;
            }
        }
        return true;
    }

    private static Optional<Long> whole(String cell) {
        return cell.length() <= 9 && cell.matches("\\d+") ? Optional.of(Long.parseLong(cell)) : Optional.empty();
    }

    private int sensor(int time, int clock, List<Integer> readings) {
        return first(column -> {
            if (column == time || column == clock) {
                return false;
            }
            boolean named = HeadWords.namesSensors(head(column));
            if (readings.contains(column)) {
                return named
                        && readings.size() > 1
                        && rows.stream().allMatch(row -> whole(row.get(column)).isPresent());
            }
            return mostly(column, CellKind.TEXT) && (named || (heads.isEmpty() && repeats(column)));
        });
    }

    private boolean repeats(int column) {
        Set<String> different = new HashSet<>();
        rows.forEach(row -> different.add(row.get(column)));
        return different.size() >= 2 && 2 * different.size() <= rows.size();
    }

    private List<String> names(List<Integer> readings) {
        List<String> names = new ArrayList<>();
        for (int column : readings) {
            String head = HeadWords.name(head(column));
            String name = head.isEmpty() ? "column " + (column + 1) : head;
            String unique = name;
            for (int i = 2; names.contains(unique); i++) {
                unique = name + " (" + i + ")";
            }
            names.add(unique);
        }
        return List.copyOf(names);
    }

    private List<Optional<TemperatureUnit>> units(List<Integer> readings) {
        return readings.stream()
                .map(column -> unitOver(column).or(this::unitBeside))
                .toList();
    }

    private Optional<TemperatureUnit> unitOver(int column) {
        Optional<TemperatureUnit> below = column < unitRow.size() ? unitRow.get(column) : Optional.empty();
        return below.or(() -> HeadWords.unit(head(column)));
    }

    /** Unit of all rows, where a column tells nothing else. */
    private Optional<TemperatureUnit> unitBeside() {
        int column = first(candidate -> !HeadWords.namesSensors(head(candidate))
                && rows.stream().allMatch(row -> HeadWords.isUnitAlone(row.get(candidate))));
        if (column < 0) {
            return Optional.empty();
        }
        Set<Optional<TemperatureUnit>> told = new HashSet<>();
        rows.forEach(row -> told.add(HeadWords.unitAlone(row.get(column))));
        if (told.size() > 1 && format.unit.isEmpty()) {
            throw new UnclearLogException(
                    UnclearLogException.Question.TEMPERATURE_UNIT,
                    "column " + (column + 1) + " names several units",
                    "a file with one unit",
                    "unit(…) if all are the same");
        }
        return told.iterator().next();
    }

    private int named(String name) {
        int head = first(column -> head(column).equals(name)
                || (!head(column).isEmpty() && HeadWords.name(head(column)).equals(name)));
        if (head >= 0) {
            return head;
        }
        int number = whole(name).map(Long::intValue).orElse(0);
        if (number < 1 || number > count) {
            throw new UnclearLogException(
                    UnclearLogException.Question.COLUMNS,
                    "no column \"" + name + "\": expected one of " + shownHeads() + " or a number from 1 to " + count);
        }
        return number - 1;
    }

    private String shownHeads() {
        return heads.isEmpty() ? count + " columns without heads" : heads.toString();
    }

    private CellKind kind(int column) {
        if (mostly(column, CellKind.STAMP)) {
            return CellKind.STAMP;
        }
        for (CellKind kind : List.of(CellKind.DATE, CellKind.CLOCK)) {
            if (mostly(column, kind)) {
                return kind;
            }
        }
        return CellKind.NUMBER;
    }

    /** A stamp at midnight may be written as a date alone. */
    private boolean mostly(int column, CellKind kind) {
        long such = kinds.stream().filter(row -> row.get(column) == kind).count();
        long dates = kind == CellKind.STAMP && such > 0
                ? kinds.stream().filter(row -> row.get(column) == CellKind.DATE).count()
                : 0;
        return 2 * (such + dates) > kinds.size();
    }

    private String head(int column) {
        return column < heads.size() ? heads.get(column) : "";
    }

    private int first(IntPredicate test) {
        return IntStream.range(0, count).filter(test).findFirst().orElse(-1);
    }
}
