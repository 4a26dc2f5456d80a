/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.compared;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.RunningTap;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * What is drawn: the factors on the laws, how densely ice lies, and how much of a wall water under a tap covers. Settings and vessel are those stated, so that the interval says what
 * the laws leave open and nothing else.
 *
 * @param solidFraction part of a pile of ice that is ice [-]
 * @param wettedShare part of the wall under a running tap that the water covers [-]
 * @param contact factor on the part of a wall that ice alone touches, before that reaches the whole [-]
 * @param multipliers factor by name of a law
 */
record Doubts(double solidFraction, double wettedShare, double contact, Map<String, Double> multipliers) {

    private static final UncertainInput PACKING = new UncertainInput(
            "solid fraction of the pack",
            IceWaterBath.PACK_SOLID_FRACTION.value(),
            IceWaterBath.PACK_SOLID_FRACTION.uncertainty());

    private static final UncertainInput WETTED = new UncertainInput(
            "wetted share under a tap", RunningTap.WETTED_SHARE.value(), RunningTap.WETTED_SHARE.uncertainty());

    /** The part of a wall that ice alone touches is known to a factor of two either way: a half times two to the power of this. Draws are not negative. */
    private static final UncertainInput CONTACT =
            new UncertainInput("part of a wall that ice alone touches, power of two", 1, Uncertainty.rectangular(1));

    /** Laws that were there before the inputs that are no laws. */
    private static final int FIRST_LAWS = 11;

    /** Everything that is drawn. A new one goes to the end, so that the others stay: laws that came later too. */
    static List<UncertainInput> all() {
        List<UncertainInput> laws = LawScatter.all();
        List<UncertainInput> all = new ArrayList<>(laws.subList(0, FIRST_LAWS));
        all.add(PACKING);
        all.add(CONTACT);
        all.add(WETTED);
        all.addAll(laws.subList(FIRST_LAWS, laws.size()));
        return all;
    }

    static Doubts none() {
        return new Doubts(PACKING.value(), WETTED.value(), 1, Map.of());
    }

    Doubts with(Map<String, Double> newMultipliers) {
        return new Doubts(solidFraction, wettedShare, contact, Map.copyOf(newMultipliers));
    }

    static Doubts of(Draw draw) {
        Map<String, Double> multipliers = new LinkedHashMap<>();
        LawScatter.all().forEach(law -> multipliers.put(law.name(), draw.value(law.name())));
        return new Doubts(
                draw.value(PACKING.name()),
                draw.value(WETTED.name()),
                0.5 * Math.pow(2, draw.value(CONTACT.name())),
                Map.copyOf(multipliers));
    }
}
