/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.beveragethermal.materials.units.Measures.millimetres;

import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** What closes vessels. */
class ClosureTest {

    @Test
    void everyShapeHasAUsualClosureAndOpenVesselsHaveNone() {
        for (VesselShape shape : VesselShape.values()) {
            Closure closure = Closure.usual(shape);
            assertThat(closure.lengthM()).isPositive();
            assertThat(closure.reachM()).isBetween(0.0, closure.lengthM());
            assertThat(closure.source().kind()).isEqualTo(Source.Kind.FROM_MEMORY);
            assertThat(closure.lengthUncertainty().standardUncertainty(closure.lengthM()))
                    .isPositive();
        }
        for (Vessel vessel : Vessels.all()) {
            assertThat(vessel.closure().isEmpty()).isEqualTo(vessel.isOpen());
        }
        // Common practice, no source: still wine under cork, beer under a crown cork.
        assertThat(Vessels.highShouldered750().closure()).contains(Closure.naturalCork());
        assertThat(Closure.usual(VesselShape.LONG_NECK)).isEqualTo(Closure.crownCork());
        assertThat(Closure.usual(VesselShape.SPARKLING)).isEqualTo(Closure.sparklingCork());
        assertThat(Closure.usual(VesselShape.PLASTIC_BOTTLE)).isEqualTo(Closure.plasticScrewCap());
    }

    @Test
    void aVesselCanBeClosedByAnother() {
        Vessel bottle = Vessels.highShouldered750();
        Vessel capped = bottle.closedBy(Closure.screwCap());
        assertThat(capped.closure()).contains(Closure.screwCap());
        assertThat(capped)
                .isNotEqualTo(bottle)
                .isEqualTo(Vessels.highShouldered750().closedBy(Closure.screwCap()));
        assertThat(capped.closedBy(Closure.naturalCork())).isEqualTo(bottle).hasSameHashCodeAs(bottle);
        assertThat(capped.emptyMassKg()).isEqualTo(bottle.emptyMassKg());
        Vessel decanter = Vessels.all(VesselShape.DECANTER).get(0);
        assertThat(decanter.isOpen()).isTrue();
        assertThat(decanter.closedBy(Closure.screwCap()).isOpen()).isFalse();
    }

    @Test
    void badClosuresAreRefused() {
        assertThatThrownBy(() -> Closure.of("cork", Solids.cork(), millimetres(0), millimetres(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Closure.of("cork", Solids.cork(), millimetres(1001), millimetres(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Closure.of("cork", Solids.cork(), millimetres(40), millimetres(41)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("reach of cork");
        assertThatThrownBy(() -> Closure.of(" ", Solids.cork(), millimetres(40), millimetres(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("name");
    }
}
