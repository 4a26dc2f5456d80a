/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * The table of solids. Where two published tables disagree, the value is the middle of them and the uncertainty a
 * rectangle that reaches both.
 */
public final class Solids {
    private static final String EN = "EN 12524:2000 / EN ISO 10456, tabulated design values";
    private static final String CIBSE = "CIBSE Guide A, table 3.36";
    private static final Source BOTH_TABLES = Source.published("EN 12524, CIBSE A", EN + "; " + CIBSE);

    private static final Solid SODA_LIME_GLASS = new Solid(
            "soda-lime glass",
            constant("density of soda-lime glass", 2500, "kg/m³", Uncertainty.rectangular(30), BOTH_TABLES),
            constant(
                    "thermal conductivity of soda-lime glass",
                    1.025,
                    "W/(m K)",
                    Uncertainty.rectangular(0.05),
                    Source.published("EN 12524, CIBSE A", EN + " (1.0); " + CIBSE + " (1.05)")),
            constant(
                    "specific heat capacity of soda-lime glass",
                    795,
                    "J/(kg K)",
                    Uncertainty.rectangular(45),
                    Source.published("EN 12524, CIBSE A", EN + " (750); " + CIBSE + " (840)")),
            constant(
                    "emissivity of soda-lime glass",
                    0.9,
                    "1",
                    Uncertainty.rectangular(0.05),
                    Source.published(
                            "Properties of solids",
                            "Properties of solids, table of solar absorptance and emissivity at 288 K: window glass;"
                                    + " spread from memory of other tables")));

    private static final Solid STAINLESS_STEEL = new Solid(
            "stainless steel",
            constant(
                    "density of stainless steel",
                    7950,
                    "kg/m³",
                    Uncertainty.rectangular(50),
                    Source.published("EN 12524, CIBSE A", EN + " (7900); " + CIBSE + " (8000)")),
            constant(
                    "thermal conductivity of stainless steel",
                    16.5,
                    "W/(m K)",
                    Uncertainty.rectangular(0.5),
                    Source.published("EN 12524, CIBSE A", EN + " (17); " + CIBSE + " (16)")),
            constant(
                    "specific heat capacity of stainless steel",
                    470,
                    "J/(kg K)",
                    Uncertainty.rectangular(10),
                    Source.published("EN 12524, CIBSE A", EN + " (460); " + CIBSE + " (480)")),
            constant(
                    "emissivity of stainless steel",
                    0.4,
                    "1",
                    Uncertainty.rectangular(0.2),
                    new Source(
                            "polished steel",
                            "Mechanical Engineers' Handbook, vol. 4, table 19 gives 0.6 at 300 K for polished type 301;"
                                    + " clean polished sheet about 0.2, from memory",
                            Source.Kind.FROM_MEMORY)));

    private Solids() {}

    private static Constant constant(String name, double value, String unit, Uncertainty uncertainty, Source source) {
        return new Constant(name, value, unit, uncertainty, source);
    }

    /**
     * Soda-lime glass, of which bottles are made.
     *
     * @return the solid
     */
    public static Solid sodaLimeGlass() {
        return SODA_LIME_GLASS;
    }

    /**
     * Stainless steel, of which ice buckets are made. Its emissivity depends on the finish and is poorly known.
     *
     * @return the solid
     */
    public static Solid stainlessSteel() {
        return STAINLESS_STEEL;
    }
}
