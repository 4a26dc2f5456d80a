/* SPDX-License-Identifier: Apache-2.0 */
/**
 * The command line: questions to the library in words, answered as text, JSON, CSV or a page.
 *
 * <p><b>Problem.</b> Whoever wants one answer should not have to write a program; a script wants the same answer in a form that it can
 * read, and a status that it can trust.
 *
 * <p><b>Use.</b> {@link org.beveragethermal.examples.cli.Main} with the path of a scenario prints its service sheet; with a command and its
 * options it answers a question. One runnable jar is made by {@code mvn -q -DskipTests -Pjar -pl thermal-examples -am package}:
 *
 * <pre>{@code
 * java -jar thermal-examples/target/beverage-thermal.jar plan thermal-examples/scenarios/two-sittings.json
 * java -jar … predict --vessel "750 mL" --drink "wine 12.5 %" --from 22C \
 *         --through "refrigerator 5C for 2h" --through "air 24C for 30min" --until 12C
 * java -jar … ice --vessel "sparkling 750 mL" --drink "sparkling-dry 12 %" --count 2 --from 16C --high 8C \
 *         --ready 60min --until 150min --air 27C
 * java -jar … fit log.csv --times min --vessel "750 mL" --drink "wine 12.5 %" --in "refrigerator 5C" --json
 * java -jar … list styles --like sparkling --csv
 * }</pre>
 *
 * <p>Every command has {@code --help}, {@code --json} (all tables; numbers with their units beside), {@code --csv} (the first table),
 * {@code --html FILE} and {@code --to FILE} (whole files or none), {@code --width} (else COLUMNS, else 100), {@code --scale C|F|K} and
 * {@code --limit TIME}. Quantities are typed with their units, and have a decimal point. Answers go to the output; progress of long work
 * and refusals, one line each, to the error stream.
 *
 * <p><b>Method.</b> A command finds an answer, which is tables of cells; forms show it. How it ends says {@link
 * org.beveragethermal.examples.cli.ExitStatus}: 1 means no, so that {@code predict} ends with it if the temperature asked for is not
 * reached in half of the draws, but also if the drink begins to freeze in one of twenty or its closed vessel may burst in any, which the first sentence and a table then tell; a scenario without a command ends with 0 or, refused, 2. Output is UTF-8 and depends on
 * neither locale nor time zone of the machine. Temperatures and times of {@code predict} are the middle of draws of the laws' scatter and
 * of what is not stated of the places, with intervals of 90 %; {@code --as-stated} takes the latter as still, dry and undisturbed; ice has the masses that are enough in 90 % and 95 % of the draws; fitted parameters have intervals by linearisation.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  arguments → Main → command → answer (tables of cells) → text, JSON, CSV or HTML → output or whole file
 *                        └→ refusal: one line, ExitStatus
 * </pre>
 */
@NullMarked
package org.beveragethermal.examples.cli;

import org.jspecify.annotations.NullMarked;
