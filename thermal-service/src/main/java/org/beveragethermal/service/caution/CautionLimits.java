/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;

/** Limits that no drink and no jurisdiction changes, each with its source. */
public final class CautionLimits {

    /** Bottles of sparkling wine are opened no warmer than this: 7.2 °C, 45 °F. */
    public static final Constant OPENING = constant("temperature of opening", 280.372, "K", CautionSources.OPENING);
    /** Gauge pressure that bottles of glass are kept below: 10 bar. */
    public static final Constant PRESSURE_IN_GLASS =
            constant("gauge pressure in a bottle of glass", 10e5, "Pa", CautionSources.PRESSURE);
    /** Gauge pressure that other vessels are kept below: 6 bar. */
    public static final Constant PRESSURE_IN_OTHERS =
            constant("gauge pressure in a can or another vessel", 6e5, "Pa", CautionSources.PRESSURE);
    /** Drinks count as carbonated from this much carbon dioxide on: 2 g/L. */
    public static final Constant CARBONATED = constant(
            "carbon dioxide of carbonated drinks",
            2,
            "kg/m³",
            new Source(
                    "carbonated drinks",
                    "own assumption: twice what still wine keeps, less than what semi-sparkling wine holds",
                    Source.Kind.OWN_ASSUMPTION));
    /** Difference at which soda-lime glass is warned of: 35 K. */
    public static final Constant SHOCK_WARNING = constant("difference to be wary of", 35, "K", CautionSources.SHOCK);
    /**
     * Difference at which soda-lime glass is stopped: 42 K.
     *
     * <p>It lies inside the doubt of {@link org.beveragethermal.core.hazard.ThermalShock#ALLOWABLE_QUENCH}, 33 K to 67 K, and is meant to:
     * 42 K is what new containers are validated to, so that nobody vouches for more, though most would bear it; that one is where a
     * container of unknown wear is expected to break, early or late. A caution stops where the vouching ends, not where breaking is certain.
     * A scratched one may break from 33 K on, which {@link #SHOCK_WARNING} does not quite cover: its text says so.
     */
    public static final Constant SHOCK_STOP = constant("difference not to be crossed", 42, "K", CautionSources.SHOCK);
    /** How much more borosilicate glass bears than soda-lime glass: the ratio of their expansions. */
    public static final Constant BOROSILICATE_RATIO =
            constant("borosilicate to soda-lime glass", 9.0 / 3.3, "1", CautionSources.BOROSILICATE);
    /** Hot liquid scalds badly within minutes from here on: 49 °C, 120 °F, where ten minutes do it. */
    public static final Constant SCALDS_IN_MINUTES =
            constant("scalds within minutes", 322.15, "K", CautionSources.SCALD);
    /** Hot liquid scalds badly within seconds from here on: 60 °C, 140 °F, where five seconds do it. */
    public static final Constant SCALDS_IN_SECONDS =
            constant("scalds within seconds", 333.15, "K", CautionSources.SCALD);
    /** Very hot to drink above this: 65 °C. */
    public static final Constant VERY_HOT = constant("very hot to drink", 338.15, "K", CautionSources.VERY_HOT);
    /** Hot drinks are pleasant and scald little at this: 57.8 °C. */
    public static final Constant DRINKABLE =
            constant("best compromise to drink", 330.95, "K", CautionSources.DRINKABLE);
    /** Salted ice has frozen skin after this time of contact: 10 min. */
    public static final Constant SALTED_ICE_CONTACT =
            constant("contact of skin with salted ice", 600, "s", CautionSources.SALTED_ICE);
    /** A decanter is not stoppered while it is warmer than this: 40 °C. */
    public static final Constant STOPPERED = constant("stoppered decanter", 313.15, "K", CautionSources.PRACTICE);
    /** Drinks count as alcoholic above this: 1.2 % by volume. */
    public static final Constant ALCOHOLIC = constant("alcoholic drinks", 0.012, "1", CautionSources.ALCOHOL);

    private CautionLimits() {}

    private static Constant constant(String name, double value, String unit, Source source) {
        return new Constant(name, value, unit, Uncertainty.exact(), source);
    }
}
