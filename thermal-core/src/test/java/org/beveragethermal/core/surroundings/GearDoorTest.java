/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** What is refused at the doors of patches, faces, optics and gaps, and what a part of a patch is. */
class GearDoorTest {

    private static final Vessel GLASS = Vessels.highShouldered750();

    @Test
    void patchesOfNoAreaNoHeightOrNoEmissivityAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WallPatch(0, 0.1, Double.NaN, 0.1, 0.9))
                .withMessageContaining("area of a patch NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WallPatch(0, 0.1, -1, 0.1, 0.9))
                .withMessageContaining("area");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WallPatch(0, 0.1, 0.02, 0.1, 1.1))
                .withMessageContaining("emissivity");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WallPatch(0.2, 0.1, 0.02, 0.1, 0.9))
                .withMessageContaining("upper edge");
        WallPatch patch = new WallPatch(0, 0.1, 0.02, 0.1, 0.9);
        assertThat(patch.part(0.5).outerAreaM2()).isEqualTo(0.01);
        for (double part : new double[] {Double.NaN, -1, 1.5}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> patch.part(part))
                    .withMessageContaining("part of a patch " + part);
        }
    }

    @Test
    void partsOfLightAreBetweenNoneAndAll() {
        Node drink = Node.sensible("drink", 1000, 280);
        Face face = Face.whole("air", List.of());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> face.lightTo(drink, 1.5, "wall"))
                .withMessageContaining("light into drink 1.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SunOptics.UNKNOWN.mixedWith(SunOptics.opaque(0.2), 1.5))
                .withMessageContaining("1.5");
    }

    /** However deep and however badly the ground conducts, no wave is left there. */
    @Test
    void deepGroundHasItsMean() {
        GroundTemperature ground =
                GroundTemperature.of(celsius(12)).withDailyWave(kelvinDifference(8), Duration.ofHours(14));
        assertThat(ground.temperatureK(1e308, 0, 1e-300)).isCloseTo(285.15, within(1e-9));
        assertThat(ground.temperatureK(10, 0, 5e-7)).isCloseTo(285.15, within(1e-9));
    }

    /** A patch over shoulder and body is shared out by area: the shoulder has less of it per height. */
    @Test
    void aPartOfAPatchGoesByArea() {
        Profile profile = GLASS.profile();
        Span all = new Span(0, profile.heightM());
        Span lower = new Span(0, 0.5 * profile.heightM());
        double part = lower.partOf(all, profile);
        assertThat(part).isGreaterThan(0.52);
        assertThat(part + new Span(0.5 * profile.heightM(), 1).partOf(all, profile))
                .isCloseTo(1, within(1e-9));
    }

    /** The law of the gap is published for layers 5 to 110 times as high as wide. */
    @Test
    void gapsOutsideTheLawsRangeAreNoted() {
        assertThat(cooler(500).open("c", 0).notes(List.of(new Occupant("wine", GLASS))))
                .anyMatch(note -> note.contains("published for 5 to 110"));
        Occupant tube = Body.standing("tube", 0.2, 0.08);
        assertThat(cooler(100).open("c", 0).notes(List.of(tube))).noneMatch(note -> note.contains("published for"));
    }

    private static WalledCooler cooler(double innerMm) {
        return WalledCooler.doubleWalled(
                millimetres(innerMm),
                millimetres(210),
                Solids.polypropylene(),
                millimetres(2),
                wattsPerSquareMetreKelvin(6),
                celsius(24),
                Air.at(celsius(24)));
    }
}
