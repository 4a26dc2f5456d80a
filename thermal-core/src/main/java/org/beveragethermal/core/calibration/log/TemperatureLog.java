/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What sensors read in the course of time. Immutable and thread-safe.
 *
 * <p>Where the file tells dates, {@link #start()} is the instant of the earliest reading, and elapsed times count from it. Where it tells
 * elapsed times, they are as it tells them. Where it tells times of day without a date, they count from the earliest reading.
 */
public final class TemperatureLog {
    private final Optional<Instant> start;
    private final Map<String, SensorSeries> series;

    private TemperatureLog(Optional<Instant> start, Map<String, SensorSeries> series) {
        this.start = start;
        this.series = series;
    }

    static TemperatureLog of(Optional<Instant> start, List<SensorSeries> series) {
        Map<String, SensorSeries> byName = new LinkedHashMap<>();
        series.forEach(one -> byName.put(one.sensor(), one));
        return new TemperatureLog(start, byName);
    }

    /**
     * Instant of the earliest reading.
     *
     * @return the instant; empty if the log knows no dates
     */
    public Optional<Instant> start() {
        return start;
    }

    /**
     * Names of the sensors.
     *
     * @return names in the order of the file, no name twice
     */
    public List<String> sensors() {
        return List.copyOf(series.keySet());
    }

    /**
     * Readings of a sensor.
     *
     * @param sensor its name
     * @return its readings
     * @throws IllegalArgumentException if there is no such sensor
     */
    public SensorSeries series(String sensor) {
        return Optional.ofNullable(series.get(Objects.requireNonNull(sensor, "sensor")))
                .orElseThrow(() ->
                        new IllegalArgumentException("sensor \"" + sensor + "\": expected one of " + series.keySet()));
    }

    /**
     * Readings of the only sensor.
     *
     * @return its readings
     * @throws IllegalArgumentException if there are several
     */
    public SensorSeries only() {
        if (series.size() != 1) {
            throw new IllegalArgumentException("log of sensors " + series.keySet() + ": expected a single one");
        }
        return series.values().iterator().next();
    }

    /**
     * The log with a note of where a sensor sits.
     *
     * @param sensor its name
     * @param position where it sits
     * @return a new log
     * @throws IllegalArgumentException if there is no such sensor
     */
    public TemperatureLog withPosition(String sensor, SensorPosition position) {
        SensorSeries placed = series(sensor).with(Objects.requireNonNull(position, "position"));
        Map<String, SensorSeries> changed = new LinkedHashMap<>(series);
        changed.put(sensor, placed);
        return new TemperatureLog(start, changed);
    }

    /** Equal starts and equal series, in whatever order. */
    @Override
    public boolean equals(Object other) {
        return other instanceof TemperatureLog log && start.equals(log.start) && series.equals(log.series);
    }

    @Override
    public int hashCode() {
        return Objects.hash(start, series);
    }

    @Override
    public String toString() {
        return "log" + start.map(at -> " from " + at).orElse("") + " " + series.values();
    }
}
