/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.internal.Hazards;

/** What a user should know of hot water beside its temperature. */
final class HotWater {

    /** As cold as glass with a drink in it may be [K]; from here the difference is counted. */
    private static final double COLD_GLASS_K = 273.15;

    private static final double ZERO_CELSIUS_K = 273.15;

    private HotWater() {}

    /** Cautions for water of a temperature [K]; none for water that is not hot. */
    static List<String> notes(String where, double waterK) {
        List<String> notes = new ArrayList<>();
        if (waterK > Hazards.SCALDS_K) {
            notes.add(String.format(
                    Locale.ROOT,
                    "%s: water of %.0f °C scalds, within seconds at 60 °C; keep hands and children away and follow the rules of the"
                            + " place",
                    where,
                    waterK - ZERO_CELSIUS_K));
        }
        if (waterK > COLD_GLASS_K + Hazards.SHOCK_K) {
            notes.add(String.format(
                    Locale.ROOT,
                    "%s: glass more than about %.0f K colder than the water may crack, thick, scratched or cut glass sooner; warm it"
                            + " in steps",
                    where,
                    Hazards.SHOCK_K));
        }
        return notes;
    }
}
