/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.function.BiFunction;
import javax.measure.Quantity;
import org.beveragethermal.endurance.Corpus;
import org.beveragethermal.endurance.Documented;
import org.beveragethermal.endurance.FuzzTarget;

/** Quantities as words on the command line; each input is read as every kind of quantity. */
public final class QuantitiesTarget implements FuzzTarget {
    private static final List<BiFunction<String, String, Object>> KINDS = List.of(
            Quantities::temperature,
            Quantities::mass,
            Quantities::length,
            Quantities::volume,
            Quantities::speed,
            Quantities::flow,
            Quantities::percent,
            Quantities::percents,
            Quantities::concentration,
            Quantities::duration);

    @Override
    public String toString() {
        return name();
    }

    @Override
    public String name() {
        return "command-line quantities";
    }

    @Override
    public List<byte[]> corpus() {
        return Corpus.lines("quantities.txt");
    }

    @Override
    public List<String> words() {
        return List.of(
                "C",
                "°C",
                "F",
                "K",
                "kg",
                "g",
                "mm",
                "cm",
                "m",
                "mL",
                "cL",
                "L",
                "m/s",
                "km/h",
                "L/min",
                "%",
                "g/L",
                "s",
                "min",
                "h",
                "hours",
                "d",
                "days",
                "999999999",
                "999999999.999999999",
                "\u0130",
                "\u212a",
                " ",
                "+");
    }

    @Override
    public boolean accepts(byte[] input) {
        String text = new String(input, StandardCharsets.UTF_8);
        boolean accepted = false;
        for (BiFunction<String, String, Object> kind : KINDS) {
            accepted |= accepts(kind, text);
        }
        return accepted;
    }

    private static boolean accepts(BiFunction<String, String, Object> kind, String text) {
        try {
            Object read = kind.apply("--option", text);
            if (read instanceof Quantity<?> quantity) {
                Documented.finite("quantity", quantity.getValue().doubleValue());
            } else if (read instanceof Double number) {
                Documented.finite("number", number);
            } else if (!(read instanceof Duration duration) || duration.isZero() || duration.isNegative()) {
                throw new AssertionError("read as " + read);
            }
            return true;
        } catch (Refusal | IllegalArgumentException e) {
            if (String.valueOf(e.getMessage()).chars().anyMatch(Character::isISOControl)) {
                throw new AssertionError("message of more than one line", e);
            }
            return Documented.refusal(e, Refusal.class);
        }
    }
}
