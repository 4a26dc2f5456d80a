/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;

/** From words to a vessel: its name, or its volume, or a part of its name with its volume. */
final class VesselWords {
    private static final Pattern VOLUME = Pattern.compile("[0-9][0-9.]*\\s*(?:ml|cl|l)\\b");
    private static final double SAME_M3 = 1e-9;

    private VesselWords() {}

    static Vessel vessel(String where, String given) {
        String allowed =
                "a volume such as \"750 mL\" (the first vessel of that volume), part of a name with a volume such as"
                        + " \"can 330 mL\", or a whole name; \"list vessels\" shows them all";
        String text = given.strip().toLowerCase(Locale.ROOT);
        Matcher volume = VOLUME.matcher(text);
        if (!volume.find()) {
            return Vessels.all().stream()
                    .filter(vessel -> vessel.name().toLowerCase(Locale.ROOT).equals(text))
                    .findFirst()
                    .orElseThrow(() -> Refusal.usage(where, given, allowed));
        }
        double volumeM3 = org.beveragethermal.materials.units.SiValues.volumeM3(
                Quantities.volume(where, volume.group()), "volume");
        List<String> words = wordsBeside(text);
        return Vessels.all().stream()
                .filter(vessel -> Math.abs(vessel.nominalVolumeM3() - volumeM3) < SAME_M3)
                .filter(vessel ->
                        wordsBeside(vessel.name().toLowerCase(Locale.ROOT)).containsAll(words))
                .findFirst()
                .orElseThrow(() -> Refusal.usage(where, given, allowed));
    }

    /** The words of a name without its volume. */
    private static List<String> wordsBeside(String name) {
        return Arrays.stream(VOLUME.matcher(name).replaceFirst(" ").strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
