/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** Parts of vessels: the ends of what each allows, what a refusal says, and that a drawing in millimetres arrives in metres. */
class VesselPartsTest {

    private static final Source OWN = new Source("own", "made up for this test", Source.Kind.OWN_ASSUMPTION);

    private static Closure closure(double lengthM, double reachM) {
        return new Closure("plug", Solids.cork(), lengthM, reachM, Uncertainty.exact(), OWN);
    }

    @Test
    void aDrawingInMillimetresBecomesAVesselInMetres() {
        Vessel vessel = VesselSheet.of("tube", Vessels.highShouldered750().shape(), 200, Solids.sodaLimeGlass(), OWN)
                .diameterWithin(0.02)
                .base(5, 10)
                .without("stem", 50, 40)
                .line("0/40/3 200/40/3")
                .vessel();
        assertThat(vessel.profile())
                .isEqualTo(Profile.of(
                        List.of(new Station(0, 40 * 1e-3, 3 * 1e-3), new Station(200 * 1e-3, 40 * 1e-3, 3 * 1e-3)),
                        5 * 1e-3,
                        10 * 1e-3));
        assertThat(vessel.nominalVolumeM3()).isCloseTo(2e-4, within(1e-18));
        assertThat(vessel.diameterUncertainty())
                .isEqualTo(Uncertainty.rectangularRelative(0.02).perVessel());
        assertThat(vessel.outerParts()).hasValueSatisfying(parts -> {
            assertThat(parts.massKg()).isCloseTo(0.05, within(1e-15));
            assertThat(parts.heightBelowM()).isCloseTo(0.04, within(1e-15));
        });
        Vessel bare = VesselSheet.of("tube", Vessels.highShouldered750().shape(), 200, Solids.sodaLimeGlass(), OWN)
                .base(5, 10)
                .line("0/40/3 200/40/3")
                .vessel();
        assertThat(bare.outerParts()).isEmpty();
    }

    @Test
    void partsAtTheEndsOfTheirRangesAreAllowedAndNoneBeyond() {
        assertThat(closure(1, 1).reachM()).isEqualTo(1);
        assertThat(closure(Double.MIN_VALUE, 0).lengthM()).isPositive();
        assertThatThrownBy(() -> closure(1.001, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> closure(0, 0)).hasMessageContaining("length of plug");
        assertThatThrownBy(() -> closure(0.04, -0.001)).hasMessageContaining("reach of plug into the neck");
        assertThatThrownBy(() -> closure(0.04, 0.041)).hasMessageContaining("reach of plug into the neck");

        assertThat(new OuterParts("foot", 1000, 10).massKg()).isEqualTo(1000);
        assertThat(new OuterParts("foot", 1, 0).heightBelowM()).isZero();
        for (double mass : new double[] {0, Math.nextUp(1000.0)}) {
            assertThatThrownBy(() -> new OuterParts("foot", mass, 1)).hasMessageContaining("mass of foot");
        }
        for (double height : new double[] {-1e-9, Math.nextUp(10.0)}) {
            assertThatThrownBy(() -> new OuterParts("foot", 1, height)).hasMessageContaining("height of foot");
        }

        assertThatThrownBy(() -> new Station(0, 0, 0.003)).hasMessageContaining("outer radius");
        assertThatThrownBy(() -> new Station(0, Double.POSITIVE_INFINITY, 0.003))
                .hasMessageContaining("outer radius");
        assertThat(new Station(Double.MAX_VALUE, Double.MAX_VALUE, Double.MIN_VALUE).outerRadiusM())
                .isEqualTo(Double.MAX_VALUE);
        assertThat(new Station(0, 1, Math.nextDown(1.0)).innerRadiusM()).isPositive();
    }

    @Test
    void aVesselMayBeFullToTheBrimAndSaysWhatItLacks() {
        Profile tube = Profile.of(List.of(new Station(0, 0.04, 0.003), new Station(0.2, 0.04, 0.003)), 0.005, 0);
        double litres = tube.brimfulVolumeM3() * 1e3;
        Vessel.Builder builder = Vessel.builder("tube").profile(tube);
        assertThatThrownBy(builder::build).hasMessageContaining("got profile given and shape null");
        assertThatThrownBy(() ->
                        Vessel.builder("tube").shape(Vessels.magnum().shape()).build())
                .hasMessageContaining("got profile none");
        builder.shape(Vessels.magnum().shape());
        assertThat(builder.nominalVolume(Measures.litres(litres)).build().nominalVolumeM3())
                .isCloseTo(tube.brimfulVolumeM3(), within(1e-18));
        assertThatThrownBy(() ->
                        builder.nominalVolume(Measures.litres(1.001 * litres)).build())
                .hasMessageContaining("brimful volume");
    }

    @Test
    void tablesAreNotEmptyAndVolumesAreVolumes() {
        assertThat(Vessels.drawn()).contains(Vessels.magnum(), Vessels.highShouldered750());
        assertThat(NominalVolumes.all()).hasSizeGreaterThan(1);
        assertThat(new NominalVolumes("cup", OWN, List.of(Double.MIN_VALUE, 1e-3)).volumesM3())
                .hasSize(2);
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new NominalVolumes("cup", OWN, List.of(bad)))
                    .hasMessageContaining("expected more than 0");
        }
    }
}
