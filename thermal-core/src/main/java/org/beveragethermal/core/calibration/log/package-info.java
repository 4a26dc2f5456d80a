/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Reading of time–temperature logs as they are found, with a report of what was inferred and what was dropped.
 *
 * <p><b>Problem.</b> Loggers, spreadsheets and scripts write the same two columns in a hundred ways, and a wrong guess — month for day, °F for
 * °C, an hour of summer time — spoils a fit without a word.
 *
 * <p><b>Use.</b> {@link org.beveragethermal.core.calibration.log.LogReader} reads characters, bytes or a file. What is known beforehand stands
 * in a {@link org.beveragethermal.core.calibration.log.LogFormat}; what is not known is inferred; what cannot be inferred is asked, by an
 * {@link org.beveragethermal.core.calibration.log.UnclearLogException} that names the choices. The {@link
 * org.beveragethermal.core.calibration.log.LogReport} holds what was inferred or assumed, and each row and reading that is not in the log, with
 * its line, its text and the reason.
 *
 * <pre>{@code
 * ReadLog read = LogReader.read(Path.of("cellar.csv"), LogFormat.builder().zone(ZoneId.of("Europe/Vienna")).build());
 * System.out.println(read.report());
 * TemperatureLog log = read.log().withPosition("bottle", SensorPosition.inContents(0.5));
 * SensorSeries bottle = log.series("bottle");
 * TemperatureHistory history = TemperatureHistory.of(bottle.elapsedS(), bottle.temperaturesK());
 * }</pre>
 *
 * <table>
 * <caption>Dialects</caption>
 * <tr><th>Of</th><th>recognised</th><th>asked or told</th></tr>
 * <tr><td>bytes</td><td>UTF-8, UTF-16 with or without a byte order mark; else Latin-1</td><td>any other charset</td></tr>
 * <tr><td>lines</td><td>preamble, heads in one line or two (names, units), comments after #, % or //, blank lines; LF, CRLF, CR</td><td></td></tr>
 * <tr><td>cells</td><td>comma, semicolon, tabulator, vertical bar; quotes</td><td>commas that separate and stand before fractions</td></tr>
 * <tr><td>numbers</td><td>decimal point or comma; marks between thousands; exponents; a unit behind</td><td></td></tr>
 * <tr><td>sensors</td><td>a column each, or a column that names the sensor of each row</td><td>columns by name or number</td></tr>
 * <tr><td>units</td><td>over the column, under its name, behind the number, in a column, in the preamble; K by its size</td><td>numbers that are odd as °C and have
 * no unit</td></tr>
 * <tr><td>dates</td><td>ISO 8601, day or month first, English month names, date and time of day in two columns; am and pm</td><td>the order, where no
 * number is above 12 and days do not follow one another</td></tr>
 * <tr><td>zones</td><td>offset in each stamp, UTC or GMT over the column, a region in a line about the time zone</td><td>all others</td></tr>
 * <tr><td>time of day</td><td>24-hour, am and pm, 12-hour clock; rolls over</td><td>the first day</td></tr>
 * <tr><td>numbers as times</td><td>elapsed ms, s, min, h, d by the head; h:mm:ss; Unix seconds and milliseconds; spreadsheet days of the 1900
 * system</td><td>elapsed times without a unit; m:ss; the 1904 system</td></tr>
 * <tr><td>missing</td><td>empty cells, words such as NaN, OL and --, numbers such as −127 and 999, 85 °C that jumps</td><td></td></tr>
 * </table>
 *
 * <p>An application made of modules that reads logs adds {@code requires de.siegmar.fastcsv} to its own, because thermal-core is an automatic
 * module and can require nothing.
 *
 * <p>{@code thermal-core/docs/logs.md} shows each with a file that the tests read.
 *
 * <p><b>Method.</b> The dialect is told by the first 65,536 characters: the separator that makes most lines look like rows wins. Rows are then
 * parsed in one pass, and of each reading three numbers are held. What the whole column tells — order of dates, form of times, unit — is
 * decided at its end. Where clocks were put back, the first step back in time begins the second pass; a file whose rows are shuffled cannot tell
 * passes apart, and takes the first. Times of day without a date, and such files, are understood by the order of their rows.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  bytes of a file → LogReader (dialect, columns, times, units: found or asked) → ReadLog ┬→ TemperatureLog → calibration, storage
 *                                                                                        └→ LogReport: what was assumed, left out
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.calibration.log;

import org.jspecify.annotations.NullMarked;
