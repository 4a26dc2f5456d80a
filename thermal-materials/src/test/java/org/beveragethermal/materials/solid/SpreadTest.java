/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.solid.Spread.at;

import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.junit.jupiter.api.Test;

/** How the figures of several sources become one constant. */
class SpreadTest {
    private static final Source A = Source.published("A", "table A");
    private static final Source B = Source.published("B", "table B");
    private static final Source MEMORY = SolidSources.memory("handbooks");

    @Test
    void theMiddleWithARectangleThatReachesAll() {
        Constant constant = Spread.density(at(A, "row", 100), at(B, "", 140, 160), at(B, "", 130))
                .of("x");
        assertThat(constant)
                .isEqualTo(new Constant(
                        "density of x",
                        130,
                        "kg/m³",
                        Uncertainty.rectangular(30),
                        Source.published("A, B", "table A: row (100); table B (140 to 160); table B (130)")));
    }

    @Test
    void agreementOfTablesIsNotTakenForKnowledge() {
        Constant density = Spread.density(at(A, "", 100), at(B, "", 100)).of("x");
        assertThat(density.uncertainty()).isEqualTo(Uncertainty.rectangular(2));
        assertThat(density.source().citation()).endsWith("; half-width widened to 2 by us");
        assertThat(Spread.conductivity(at(A, "", 2)).of("x").uncertainty()).isEqualTo(Uncertainty.rectangular(0.2));
        assertThat(Spread.specificHeat(at(A, "", 1000)).of("x").uncertainty()).isEqualTo(Uncertainty.rectangular(50));
        assertThat(Spread.emissivity(at(A, "", 0.9)).of("x").uncertainty()).isEqualTo(Uncertainty.rectangular(0.02));
        assertThat(Spread.absorptance(at(A, "", 0.5)).of("x").uncertainty()).isEqualTo(Uncertainty.rectangular(0.05));
    }

    @Test
    void theWeakestSourceNamesTheKind() {
        assertThat(Spread.density(at(A, "", 1), at(B, "", 2)).of("x").source().kind())
                .isEqualTo(Source.Kind.PUBLISHED);
        assertThat(Spread.density(at(A, "", 1), at(MEMORY, "", 2)).of("x").source())
                .isEqualTo(new Source(
                        "A, from memory", "table A (1); handbooks, from memory (2)", Source.Kind.FROM_MEMORY));
        assertThat(Spread.density(at(SolidSources.assumed("so"), "", 1), at(MEMORY, "", 2))
                        .of("x")
                        .source()
                        .kind())
                .isEqualTo(Source.Kind.OWN_ASSUMPTION);
    }
}
