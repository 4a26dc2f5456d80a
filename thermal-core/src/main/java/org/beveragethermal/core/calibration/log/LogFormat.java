/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.nio.charset.Charset;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * What is known of a log beforehand. Whatever is left out is inferred, and the {@link LogReport} says so; what is given is not
 * questioned. Immutable and thread-safe.
 */
public final class LogFormat {
    /** Coldest temperature taken for a reading unless told otherwise [K]: −90 °C, below dry ice. */
    public static final double COLDEST_K = 183.15;
    /** Hottest temperature taken for a reading unless told otherwise [K]: 150 °C. */
    public static final double HOTTEST_K = 423.15;
    /** Rejections listed one by one unless told otherwise. */
    public static final int LISTED = 1000;

    final Optional<Charset> charset;
    final Optional<Character> separator;
    final Optional<Character> decimalMark;
    final Optional<String> timeColumn;
    final List<String> sensorColumns;
    final Optional<TimeForm> timeForm;
    final Optional<DateOrder> dateOrder;
    final Optional<ZoneId> zone;
    final Optional<LocalDate> startDate;
    final Optional<TemperatureUnit> unit;
    final Duplicates duplicates;
    final double coldestK;
    final double hottestK;
    final int listed;

    private LogFormat(Builder builder) {
        charset = builder.charset;
        separator = builder.separator;
        decimalMark = builder.decimalMark;
        timeColumn = builder.timeColumn;
        sensorColumns = builder.sensorColumns;
        timeForm = builder.timeForm;
        dateOrder = builder.dateOrder;
        zone = builder.zone;
        startDate = builder.startDate;
        unit = builder.unit;
        duplicates = builder.duplicates;
        coldestK = builder.coldestK;
        hottestK = builder.hottestK;
        listed = builder.listed;
    }

    /**
     * Nothing is known.
     *
     * @return the format
     */
    public static LogFormat inferred() {
        return builder().build();
    }

    /**
     * A format that knows nothing yet.
     *
     * @return the builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /** Collects what is known. Not thread-safe. */
    public static final class Builder {
        private Optional<Charset> charset = Optional.empty();
        private Optional<Character> separator = Optional.empty();
        private Optional<Character> decimalMark = Optional.empty();
        private Optional<String> timeColumn = Optional.empty();
        private List<String> sensorColumns = List.of();
        private Optional<TimeForm> timeForm = Optional.empty();
        private Optional<DateOrder> dateOrder = Optional.empty();
        private Optional<ZoneId> zone = Optional.empty();
        private Optional<LocalDate> startDate = Optional.empty();
        private Optional<TemperatureUnit> unit = Optional.empty();
        private Duplicates duplicates = Duplicates.KEEP_FIRST;
        private double coldestK = COLDEST_K;
        private double hottestK = HOTTEST_K;
        private int listed = LISTED;

        private Builder() {}

        /**
         * How bytes become characters. Matters only where bytes are read.
         *
         * @param known the charset; a byte order mark is removed all the same
         * @return this
         */
        public Builder charset(Charset known) {
            charset = Optional.of(known);
            return this;
        }

        /**
         * What stands between cells.
         *
         * @param known a comma, semicolon, tabulator or vertical bar
         * @return this
         * @throws IllegalArgumentException if it is another character
         */
        public Builder separator(char known) {
            if (Separators.ALL.indexOf(known) < 0) {
                throw new IllegalArgumentException(
                        "separator '" + known + "': expected a comma, semicolon, tabulator or vertical bar");
            }
            separator = Optional.of(known);
            return this;
        }

        /**
         * What stands before the fraction.
         *
         * @param known a point or a comma
         * @return this
         * @throws IllegalArgumentException if it is another character
         */
        public Builder decimalMark(char known) {
            if (known != '.' && known != ',') {
                throw new IllegalArgumentException("decimal mark '" + known + "': expected a point or a comma");
            }
            decimalMark = Optional.of(known);
            return this;
        }

        /**
         * Which column tells the time.
         *
         * @param known text of its head, or its number, the first being 1
         * @return this
         */
        public Builder timeColumn(String known) {
            timeColumn = Optional.of(known);
            return this;
        }

        /**
         * Which columns tell temperatures; all others are ignored.
         *
         * @param known text of their heads, or their numbers, the first being 1
         * @return this
         */
        public Builder sensorColumns(String... known) {
            sensorColumns = List.of(known);
            return this;
        }

        /**
         * How times are written.
         *
         * @param known the form
         * @return this
         */
        public Builder timeForm(TimeForm known) {
            timeForm = Optional.of(known);
            return this;
        }

        /**
         * Whether 3/4 is in April or in March. Rows that do not fit are rejected.
         *
         * @param known the order
         * @return this
         */
        public Builder dateOrder(DateOrder known) {
            dateOrder = Optional.of(known);
            return this;
        }

        /**
         * Zone of times that do not tell their offset.
         *
         * @param known the zone
         * @return this
         */
        public Builder zone(ZoneId known) {
            zone = Optional.of(known);
            return this;
        }

        /**
         * Day of the first reading, for times of day without a date. With a zone this makes instants of them.
         *
         * @param known the day
         * @return this
         */
        public Builder startDate(LocalDate known) {
            startDate = Optional.of(known);
            return this;
        }

        /**
         * Unit of all temperatures, whatever the file says.
         *
         * @param known the unit
         * @return this
         */
        public Builder unit(TemperatureUnit known) {
            unit = Optional.of(known);
            return this;
        }

        /**
         * What becomes of several readings of one sensor at one time.
         *
         * @param rule the rule; {@link Duplicates#KEEP_FIRST} unless told otherwise
         * @return this
         */
        public Builder duplicates(Duplicates rule) {
            duplicates = Objects.requireNonNull(rule, "rule for duplicates");
            return this;
        }

        /**
         * What may be a reading; anything outside is rejected.
         *
         * @param lowK coldest [K], at least 0; {@value LogFormat#COLDEST_K} unless told otherwise
         * @param highK hottest [K], above the coldest, at most 2000; {@value LogFormat#HOTTEST_K} unless told otherwise
         * @return this
         * @throws OutOfRangeException if an end is out of range
         * @throws IllegalArgumentException if an end is not finite
         */
        public Builder plausibleK(double lowK, double highK) {
            if (!OutOfRangeException.admits(lowK, 0, 2000)) {
                throw OutOfRangeException.refusal("coldest plausible temperature", lowK, 0, 2000, "K", "");
            }
            if (!OutOfRangeException.admits(highK, lowK, 2000)) {
                throw OutOfRangeException.refusal("hottest plausible temperature", highK, lowK, 2000, "K", "");
            }
            coldestK = lowK;
            hottestK = highK;
            return this;
        }

        /**
         * How many rejections are listed with text and detail. All are counted, and all their lines are kept, whatever this is.
         *
         * @param most the number, 0 or more; {@value LogFormat#LISTED} unless told otherwise
         * @return this
         * @throws IllegalArgumentException if it is negative
         */
        public Builder listed(int most) {
            if (most < 0) {
                throw new IllegalArgumentException("listed rejections " + most + ": expected 0 or more");
            }
            listed = most;
            return this;
        }

        /**
         * The format.
         *
         * @return the format
         */
        public LogFormat build() {
            return new LogFormat(this);
        }
    }
}
