/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.beveragethermal.materials.provenance.Source;

/** Puts a caution together. Confined to one method. */
final class Draft {

    private final CautionRule rule;
    private final SignalWord signal;
    private final List<Argument> arguments = new ArrayList<>();
    private OptionalDouble limit = OptionalDouble.empty();
    private OptionalDouble value = OptionalDouble.empty();
    private Source source;

    private Draft(CautionRule rule, SignalWord signal) {
        this.rule = rule;
        this.signal = signal;
        this.source = rule.source();
    }

    static Draft of(CautionRule rule, SignalWord signal) {
        return new Draft(rule, signal);
    }

    /** The limit, which is also the next argument of the text. */
    Draft limit(double figure, Argument.Shown shown) {
        limit = OptionalDouble.of(figure);
        return argument("limit", figure, shown);
    }

    /** What was found, which is also the next argument of the text. */
    Draft value(double figure, Argument.Shown shown) {
        value = OptionalDouble.of(figure);
        return argument("value", figure, shown);
    }

    Draft argument(String name, double figure, Argument.Shown shown) {
        arguments.add(new Argument(name, figure, shown));
        return this;
    }

    Draft source(Source other) {
        source = other;
        return this;
    }

    Caution crossed(Crossing crossing) {
        return new Caution(rule, signal, limit, value, crossing, arguments, source);
    }

    Caution always() {
        return crossed(new Crossing.Always());
    }

    Caution kept() {
        return crossed(new Crossing.Not());
    }
}
