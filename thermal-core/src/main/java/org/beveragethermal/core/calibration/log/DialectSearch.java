/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Tells the dialect of a file by its beginning. */
final class DialectSearch {
    private static final int ROWS = 300;

    /** Lines taken apart at a separator, and which of them look like rows. */
    private static final class Split {
        private final char separator;
        private final List<List<String>> cells = new ArrayList<>();
        private final List<List<CellKind>> kinds = new ArrayList<>();
        private final List<Integer> rows = new ArrayList<>();
        private int count;

        Split(List<String> lines, char separator) {
            this.separator = separator;
            Map<Integer, List<Integer>> byCount = new HashMap<>();
            int found = 0;
            for (int i = 0; i < lines.size() && found < ROWS; i++) {
                List<String> line = Separators.split(lines.get(i), separator);
                List<CellKind> looks = line.size() < 2 || isComment(lines.get(i))
                        ? List.of()
                        : line.stream().map(CellKind::of).toList();
                cells.add(line);
                kinds.add(looks);
                if (CellKind.isRow(looks, line)) {
                    byCount.computeIfAbsent(line.size(), size -> new ArrayList<>())
                            .add(i);
                    found++;
                }
            }
            byCount.forEach((size, which) -> {
                if (which.size() > rows.size() || (which.size() == rows.size() && size > count)) {
                    rows.clear();
                    rows.addAll(which);
                    count = size;
                }
            });
        }
    }

    private final LogFormat format;
    private final List<String> lines;
    private final Split split;

    private DialectSearch(LogFormat format, List<String> lines, Split split) {
        this.format = format;
        this.lines = lines;
        this.split = split;
    }

    static Dialect find(Sample sample, LogFormat format) {
        String candidates = format.separator.map(String::valueOf).orElse(Separators.ALL);
        Split best = new Split(sample.lines(), candidates.charAt(0));
        for (int i = 1; i < candidates.length(); i++) {
            Split other = new Split(sample.lines(), candidates.charAt(i));
            best = other.rows.size() > best.rows.size() ? other : best;
        }
        if (best.rows.isEmpty()) {
            throw new UnclearLogException(
                    UnclearLogException.Question.ROWS,
                    "none of the first " + sample.lines().size()
                            + " lines holds a time and a temperature between separators "
                            + (format.separator.isPresent() ? "'" + candidates + "'" : "; tabulator | ,"));
        }
        return new DialectSearch(format, sample.lines(), best).dialect();
    }

    private Dialect dialect() {
        int first = split.rows.get(0);
        int heads = headLine(first);
        List<String> head = heads >= 0 ? uncommented(heads) : List.of();
        boolean units = heads >= 0 && isUnitRow(head);
        List<Optional<TemperatureUnit>> unitRow =
                units ? head.stream().map(HeadWords::unitAlone).toList() : List.of();
        if (units) {
            heads = headLine(heads);
            head = heads >= 0 ? uncommented(heads) : List.of();
        }
        refuseCommas(first);
        Columns columns = new ColumnSearch(
                        format,
                        head,
                        unitRow,
                        split.rows.stream().map(split.cells::get).toList(),
                        split.rows.stream().map(split.kinds::get).toList())
                .find();
        int start = split.rows.stream()
                .filter(line -> isKind(split.kinds.get(line).get(columns.time()), columns.timeKind()))
                .findFirst()
                .orElse(first);
        List<String> preamble = lines.subList(0, heads >= 0 ? heads : start);
        return new Dialect(
                split.separator,
                format.decimalMark.orElseGet(() -> decimalMark(columns)),
                comment(),
                start,
                split.count,
                columns,
                HeadWords.onlyUnit(preamble),
                zone(columns, preamble));
    }

    private static boolean isKind(CellKind kind, CellKind usual) {
        return kind == usual || (usual == CellKind.STAMP && kind == CellKind.DATE);
    }

    /** The line of heads above a line, or −1. */
    private int headLine(int below) {
        int line = below - 1;
        while (line >= 0 && Separators.trim(lines.get(line)).isEmpty()) {
            line--;
        }
        if (line < 0) {
            return -1;
        }
        List<String> cells = uncommented(line);
        boolean words = cells.stream().anyMatch(cell -> CellKind.of(cell) == CellKind.TEXT);
        boolean numbers = cells.stream().anyMatch(cell -> CellKind.of(cell).isTime());
        boolean fits = cells.size() == split.count || (cells.size() == split.count - 1 && cells.size() > 1);
        return fits && words && !(numbers && CellKind.isRow(split.kinds.get(line), split.cells.get(line))) ? line : -1;
    }

    private static boolean isUnitRow(List<String> cells) {
        return cells.stream().anyMatch(HeadWords::isUnitAlone)
                && cells.stream()
                        .allMatch(cell -> HeadWords.isUnitAlone(cell)
                                || (cell.length() <= 8 && HeadWords.words(cell).size() <= 1 && !HeadWords.isTime(cell))
                                || HeadWords.countedTime(cell).isPresent());
    }

    private List<String> uncommented(int line) {
        String text = Separators.trim(lines.get(line));
        return isComment(text)
                ? Separators.split(text.replaceFirst("^[#%]+", ""), split.separator)
                : split.cells.get(line);
    }

    /** Three cells under two heads: the comma that separates is the one before fractions too. */
    private void refuseCommas(int first) {
        if (split.separator != ',' || format.separator.isPresent()) {
            return;
        }
        for (int line = first - 1; line >= 0; line--) {
            int heads = uncommented(line).size();
            if (heads > 1) {
                if (split.count - 1 == 2 * (heads - 1)
                        && uncommented(line).stream().noneMatch(String::isEmpty)) {
                    throw new UnclearLogException(
                            UnclearLogException.Question.DECIMAL_MARK,
                            "line " + (first + 1) + " has " + split.count + " cells under " + heads
                                    + " heads: a comma seems to stand both between cells and before fractions",
                            "separator(',') if each comma separates",
                            "a file with another separator or with numbers in quotes");
                }
                return;
            }
        }
    }

    private char decimalMark(Columns columns) {
        int points = 0;
        int commas = 0;
        int points3 = 0;
        int commas3 = 0;
        for (int row : split.rows) {
            List<String> cells = split.cells.get(row);
            for (int column = 0; column < cells.size(); column++) {
                if (split.kinds.get(row).get(column) != CellKind.NUMBER) {
                    continue;
                }
                boolean reading = columns.readings().contains(column);
                String cell = cells.get(column);
                int point = cell.lastIndexOf('.');
                int comma = cell.lastIndexOf(',');
                int last = Math.max(point, comma);
                boolean both = point >= 0 && comma >= 0;
                boolean twice = last >= 0 && cell.indexOf(cell.charAt(last)) != last;
                if (last < 0) {
                    continue;
                }
                boolean isPoint = last == point;
                if (twice) {
                    points += isPoint ? 0 : 1;
                    commas += isPoint ? 1 : 0;
                } else if (both || !isThousands(cell, last)) {
                    points += isPoint ? 1 : 0;
                    commas += isPoint ? 0 : 1;
                } else if (reading) {
                    points3 += isPoint ? 1 : 0;
                    commas3 += isPoint ? 0 : 1;
                }
            }
        }
        return points != commas ? (commas > points ? ',' : '.') : commas3 > points3 ? ',' : '.';
    }

    /** Whether one to three digits stand before a mark, the first not zero, and three after it. */
    private static boolean isThousands(String cell, int mark) {
        String plain = cell.replaceFirst("^[-+−]", "");
        int at = mark - (cell.length() - plain.length());
        long after = plain.substring(at + 1)
                .chars()
                .takeWhile(c -> NumberCell.isDigit((char) c))
                .count();
        return at >= 1 && at <= 3 && plain.charAt(0) != '0' && after == 3;
    }

    private char comment() {
        return lines.stream().anyMatch(line -> line.startsWith("%"))
                        && lines.stream().noneMatch(line -> line.startsWith("#"))
                ? '%'
                : '#';
    }

    private static boolean isComment(String line) {
        return (line.startsWith("#") && line.length() > 1 && !line.matches("^#[;,\\t|].*")) || line.startsWith("%");
    }

    private static Optional<ZoneId> zone(Columns columns, List<String> preamble) {
        return IntStream.of(columns.time(), columns.clock())
                .mapToObj(column -> HeadWords.zone(columns.head(column)))
                .flatMap(Optional::stream)
                .findFirst()
                .or(() -> preamble.stream()
                        .filter(line -> line.toLowerCase(Locale.ROOT).contains("zone"))
                        .map(HeadWords::zone)
                        .flatMap(Optional::stream)
                        .findFirst());
    }
}
