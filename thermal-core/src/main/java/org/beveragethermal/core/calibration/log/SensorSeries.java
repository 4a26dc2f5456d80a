/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * Readings of one sensor in strictly ascending order of time. Immutable and thread-safe.
 *
 * <p>Times are kept in whole microseconds; elapsed times count from the start of the whole {@linkplain TemperatureLog log}.
 */
public final class SensorSeries {
    private static final double MICROS_PER_SECOND = 1e6;

    private final String sensor;
    private final SensorPosition position;
    private final Optional<Instant> start;
    private final long[] micros;
    private final double[] temperaturesK;

    /** Takes the arrays as they are. */
    SensorSeries(
            String sensor, SensorPosition position, Optional<Instant> start, long[] micros, double[] temperaturesK) {
        this.sensor = sensor;
        this.position = position;
        this.start = start;
        this.micros = micros;
        this.temperaturesK = temperaturesK;
    }

    /**
     * Name of the sensor.
     *
     * @return its name, from the head of its column or the cells that name it
     */
    public String sensor() {
        return sensor;
    }

    /**
     * Where it sits.
     *
     * @return its position; {@link SensorPosition#UNKNOWN} until {@link TemperatureLog#withPosition} says
     */
    public SensorPosition position() {
        return position;
    }

    /**
     * Number of readings.
     *
     * @return the number, 0 or more
     */
    public int size() {
        return micros.length;
    }

    /**
     * Time of a reading.
     *
     * @param i number of the reading, from 0
     * @return time since the start of the log [s]
     * @throws IndexOutOfBoundsException if there is no such reading
     */
    public double elapsedS(int i) {
        return micros[Objects.checkIndex(i, micros.length)] / MICROS_PER_SECOND;
    }

    /**
     * Temperature of a reading.
     *
     * @param i number of the reading, from 0
     * @return the temperature [K]
     * @throws IndexOutOfBoundsException if there is no such reading
     */
    public double temperatureK(int i) {
        return temperaturesK[Objects.checkIndex(i, temperaturesK.length)];
    }

    /**
     * Instant of a reading.
     *
     * @param i number of the reading, from 0
     * @return the instant; empty if the log knows no dates
     * @throws IndexOutOfBoundsException if there is no such reading
     */
    public Optional<Instant> instant(int i) {
        long after = micros[Objects.checkIndex(i, micros.length)];
        return start.map(first -> first.plus(after, ChronoUnit.MICROS));
    }

    /**
     * All times.
     *
     * @return a new array of times since the start of the log [s]
     */
    public double[] elapsedS() {
        return Arrays.stream(micros)
                .mapToDouble(time -> time / MICROS_PER_SECOND)
                .toArray();
    }

    /**
     * All temperatures.
     *
     * @return a new array of temperatures [K], one for each time
     */
    public double[] temperaturesK() {
        return temperaturesK.clone();
    }

    SensorSeries with(SensorPosition where) {
        return new SensorSeries(sensor, where, start, micros, temperaturesK);
    }

    /** Equal names, positions, starts and readings. */
    @Override
    public boolean equals(Object other) {
        return other instanceof SensorSeries series
                && sensor.equals(series.sensor)
                && position.equals(series.position)
                && start.equals(series.start)
                && Arrays.equals(micros, series.micros)
                && Arrays.equals(temperaturesK, series.temperaturesK);
    }

    @Override
    public int hashCode() {
        return Objects.hash(sensor, position, start, Arrays.hashCode(micros), Arrays.hashCode(temperaturesK));
    }

    @Override
    public String toString() {
        return sensor + ": " + micros.length + " readings";
    }
}
