/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.millimetres;

import java.util.List;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** Closed forms of solid geometry (Euclid, Elements XII) for cylinder, cone frustum and cone. */
class ProfileTest {
    private static final double PI = Math.PI;
    private static final Profile CYLINDER = cylinder(0);

    private static Profile cylinder(double punt) {
        return Profile.of(List.of(new Station(0, 0.04, 0.003), new Station(0.2, 0.04, 0.003)), 0.005, punt);
    }

    @Test
    void aCylinderHasTheVolumesAndAreasOfACylinder() {
        double r = 0.037;
        assertThat(CYLINDER.heightM()).isEqualTo(0.2);
        assertThat(CYLINDER.brimfulVolumeM3()).isCloseTo(PI * r * r * 0.195, within(1e-15));
        assertThat(CYLINDER.innerVolumeM3(0.105)).isCloseTo(PI * r * r * 0.1, within(1e-15));
        assertThat(CYLINDER.innerVolumeM3(0.005)).isZero();
        assertThat(CYLINDER.innerVolumeM3(0.002)).isZero();
        assertThat(CYLINDER.outerSideAreaM2(0.05, 0.15)).isCloseTo(2 * PI * 0.04 * 0.1, within(1e-15));
        assertThat(CYLINDER.innerSideAreaM2(0.05, 0.15)).isCloseTo(2 * PI * r * 0.1, within(1e-15));
        assertThat(CYLINDER.innerSideAreaM2(0, 0.2)).isCloseTo(2 * PI * r * 0.195, within(1e-15));
        assertThat(CYLINDER.innerSideAreaM2(0, 0.004)).isZero();
        assertThat(CYLINDER.outerVolumeM3(0, 0.2)).isCloseTo(PI * 0.0016 * 0.2, within(1e-15));
        assertThat(CYLINDER.wallVolumeM3(0.05, 0.15)).isCloseTo(PI * (0.0016 - r * r) * 0.1, within(1e-15));
        assertThat(CYLINDER.baseWallVolumeM3()).isCloseTo(PI * r * r * 0.005, within(1e-16));
        assertThat(CYLINDER.baseAreaM2()).isCloseTo(PI * 0.0016, within(1e-16));
        assertThat(CYLINDER.wallThicknessM(0.1)).isCloseTo(0.003, within(1e-15));
        assertThat(CYLINDER.maxOuterRadiusM()).isEqualTo(0.04);
    }

    @Test
    void aConeFrustumHasTheVolumesAndAreasOfAFrustum() {
        // Outer radius 50 to 30 mm over 150 mm, wall 2 mm, base 1 mm.
        Profile frustum = Profile.of(List.of(new Station(0, 0.05, 0.002), new Station(0.15, 0.03, 0.002)), 0.001, 0);
        double slant = Math.hypot(0.15, 0.02);
        assertThat(frustum.outerVolumeM3(0, 0.15)).isCloseTo(PI * 0.15 / 3 * (0.0025 + 0.0015 + 0.0009), within(1e-15));
        assertThat(frustum.outerSideAreaM2(0, 0.15)).isCloseTo(PI * 0.08 * slant, within(1e-15));
        assertThat(frustum.outerRadiusM(0.075)).isCloseTo(0.04, within(1e-15));
        assertThat(frustum.innerRadiusM(0.075)).isCloseTo(0.038, within(1e-15));
        double r0 = 0.048 - 0.02 * 0.001 / 0.15;
        double r1 = 0.028;
        assertThat(frustum.brimfulVolumeM3()).isCloseTo(PI * 0.149 / 3 * (r0 * r0 + r0 * r1 + r1 * r1), within(1e-15));
        assertThat(frustum.innerSideAreaM2(0, 0.15))
                .isCloseTo(PI * (r0 + r1) * Math.hypot(0.149, r0 - r1), within(1e-15));
    }

    @Test
    void thePuntTakesTheVolumeOfACone() {
        Profile punted = cylinder(0.03);
        double r = 0.037;
        double cone = PI * r * r * 0.03 / 3;
        assertThat(CYLINDER.brimfulVolumeM3() - punted.brimfulVolumeM3()).isCloseTo(cone, within(1e-15));
        // Half-way up the cone an eighth of it is left above.
        assertThat(CYLINDER.innerVolumeM3(0.02) - punted.innerVolumeM3(0.02)).isCloseTo(cone * 7 / 8, within(1e-15));
        assertThat(punted.baseWallVolumeM3()).isEqualTo(CYLINDER.baseWallVolumeM3());
        assertThat(punted.outerVolumeM3(0, 0.2)).isEqualTo(CYLINDER.outerVolumeM3(0, 0.2));
    }

    @Test
    void fillHeightAtTheEnds() {
        assertThat(CYLINDER.fillHeightM(0)).isEqualTo(0.005);
        assertThat(CYLINDER.fillHeightM(CYLINDER.brimfulVolumeM3())).isCloseTo(0.2, within(1e-12));
        assertThat(cylinder(0.03).fillHeightM(1e-12)).isBetween(0.005, 0.0051);
    }

    @Test
    void theBuilderTakesQuantities() {
        Profile built = Profile.builder()
                .station(metres(0), millimetres(80), millimetres(3))
                .station(metres(0.2), millimetres(80), millimetres(3))
                .baseThickness(millimetres(5))
                .build();
        assertThat(built).isEqualTo(CYLINDER);
        assertThat(built.hashCode()).isEqualTo(CYLINDER.hashCode());
        assertThat(built).isNotEqualTo(cylinder(0.03));
        assertThat(built.stations()).hasSize(2);
        assertThat(built.baseThicknessM()).isEqualTo(0.005);
        assertThat(built.puntDepthM()).isZero();
        assertThat(Profile.builder()
                        .station(metres(0), millimetres(80), millimetres(3))
                        .station(metres(0.2), millimetres(80), millimetres(3))
                        .baseThickness(millimetres(5))
                        .puntDepth(millimetres(30))
                        .build())
                .isEqualTo(cylinder(0.03));
    }

    @Test
    void impossibleStationsAreRefused() {
        assertThatThrownBy(() -> new Station(-0.1, 0.04, 0.003)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Station(0, 0, 0.003)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Station(0, 0.04, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Station(0, 0.04, 0.04)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Station(0, Double.NaN, 0.003)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void impossibleProfilesAreRefused() {
        Station bottom = new Station(0, 0.04, 0.003);
        Station top = new Station(0.2, 0.04, 0.003);
        assertThatThrownBy(() -> Profile.of(List.of(bottom), 0.005, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least 2, got 1");
        assertThatThrownBy(() -> Profile.of(List.of(top, top), 0.005, 0)).hasMessageContaining("at height 0 m");
        assertThatThrownBy(() -> Profile.of(List.of(bottom, top, top), 0.005, 0))
                .hasMessageContaining("strictly increasing");
        assertThatThrownBy(() -> Profile.of(List.of(bottom, new Station(11, 0.04, 0.003)), 0.005, 0))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Profile.of(List.of(bottom, top), 0, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Profile.of(List.of(bottom, top), 0.2, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Profile.of(List.of(bottom, top), 0.005, -0.01))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Profile.of(List.of(bottom, top), 0.005, 0.195))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Profile.of(
                        List.of(bottom, new Station(0.05, 0.01, 0.003), new Station(0.2, 0.01, 0.003)), 0.005, 0.15))
                .hasMessageContaining("the inside is only");
        assertThatThrownBy(() -> Profile.builder().build()).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Profile.builder().station(metres(0), metres(0), metres(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Profile.builder().baseThickness(metres(0))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Profile.builder().puntDepth(metres(-1))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void heightsOutsideTheVesselAreRefused() {
        for (double bad : new double[] {-0.001, 0.201}) {
            assertThatThrownBy(() -> CYLINDER.outerRadiusM(bad)).isInstanceOf(OutOfRangeException.class);
            assertThatThrownBy(() -> CYLINDER.innerRadiusM(bad)).isInstanceOf(OutOfRangeException.class);
            assertThatThrownBy(() -> CYLINDER.wallThicknessM(bad)).isInstanceOf(OutOfRangeException.class);
            assertThatThrownBy(() -> CYLINDER.innerVolumeM3(bad)).isInstanceOf(OutOfRangeException.class);
            assertThatThrownBy(() -> CYLINDER.outerSideAreaM2(bad, 0.1)).isInstanceOf(OutOfRangeException.class);
            assertThatThrownBy(() -> CYLINDER.innerSideAreaM2(bad, 0.1)).isInstanceOf(OutOfRangeException.class);
            assertThatThrownBy(() -> CYLINDER.outerVolumeM3(bad, 0.1)).isInstanceOf(OutOfRangeException.class);
            assertThatThrownBy(() -> CYLINDER.wallVolumeM3(0.1, bad)).isInstanceOf(OutOfRangeException.class);
        }
        assertThatThrownBy(() -> CYLINDER.outerVolumeM3(0.15, 0.1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> CYLINDER.innerVolumeM3(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CYLINDER.fillHeightM(-1e-9)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> CYLINDER.fillHeightM(1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> CYLINDER.fillHeightM(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void roundingAtTheEndsIsForgiven() {
        assertThat(CYLINDER.innerVolumeM3(0.2 + 1e-12)).isEqualTo(CYLINDER.brimfulVolumeM3());
        assertThat(CYLINDER.outerRadiusM(-1e-12)).isEqualTo(0.04);
    }

    @Test
    void zeroHasNoSign() {
        List<Station> stations = List.of(new Station(0, 0.03, 0.001), new Station(0.1, 0.03, 0.001));
        List<Station> negative = List.of(new Station(-0.0, 0.03, 0.001), new Station(0.1, 0.03, 0.001));
        assertThat(Profile.of(negative, 0.002, -0.0))
                .isEqualTo(Profile.of(stations, 0.002, 0))
                .hasSameHashCodeAs(Profile.of(stations, 0.002, 0));
    }

    /** A cone over next to no height would have a slope that no number holds. */
    @Test
    void stationsHaveAnExtent() {
        List<Station> stations =
                List.of(new Station(0, 0.05, 0.001), new Station(1e-300, 0.03, 0.001), new Station(0.1, 0.03, 0.001));
        assertThatThrownBy(() -> Profile.of(stations, 0.002, 0))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("height of station 2")
                .hasMessageContaining("1 nm");
    }
}
