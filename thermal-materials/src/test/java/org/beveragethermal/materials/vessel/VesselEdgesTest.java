/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** Vessels at the very ends of what is allowed, what they are equal to, and values that nothing else asks for. */
class VesselEdgesTest {

    private static final Station BOTTOM = new Station(0, 0.04, 0.003);
    private static final Station TOP = new Station(0.2, 0.04, 0.003);

    @Test
    void profilesAtTheEndsOfTheirRangesAreAllowed() {
        // A metre above a tenth of a nanometre is lost in rounding; these heights are a nanometre apart as numbers.
        double next = 0.2 + 1e-9;
        assertThat(Profile.of(List.of(BOTTOM, TOP, new Station(next, 0.04, 0.003)), 0.005, 0)
                        .heightM())
                .isEqualTo(next);
        assertThatThrownBy(() ->
                        Profile.of(List.of(BOTTOM, TOP, new Station(Math.nextDown(next), 0.04, 0.003)), 0.005, 0))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("height of station 3")
                .hasMessageContaining("0.200000001");
        assertThat(Profile.of(List.of(BOTTOM, new Station(10, 0.04, 0.003)), 0.005, 0)
                        .heightM())
                .isEqualTo(10);
        assertThat(Profile.of(List.of(BOTTOM, TOP), Math.nextDown(0.2), 0).brimfulVolumeM3())
                .isPositive();
    }

    /** A cone whose punt is as wide as the inside at a station just fits: radius 0.02 m at half the height of a punt of 0.1 m. */
    @Test
    void aPuntThatJustFitsIsAllowed() {
        Station foot = new Station(0, 0.0625, 0.03125);
        Station middle = new Station(0.0625, 0.046875, 0.03125);
        Station end = new Station(0.25, 0.046875, 0.03125);
        List<Station> stations = List.of(new Station(0, 0.0625, 0.03125), middle, end);
        assertThat(foot).isEqualTo(stations.get(0));
        double base = 1e-300;
        // The inside is 31.25 mm wide at the floor and 15.625 mm at half the punt's depth, as is the punt.
        assertThat(Profile.of(stations, base, 0.125).puntDepthM()).isEqualTo(0.125);
        assertThatThrownBy(() -> Profile.of(stations, base, 0.126))
                .hasMessageContaining("the inside is only 0.015625 m");
    }

    @Test
    void profilesThatDifferInOnePartAreNeitherEqualNorAlikeInHash() {
        List<Object> different = new ArrayList<>(List.of(
                Profile.of(List.of(BOTTOM, TOP), 0.005, 0),
                Profile.of(List.of(BOTTOM, TOP), 0.006, 0),
                Profile.of(List.of(BOTTOM, TOP), 0.005, 0.001),
                Profile.of(List.of(BOTTOM, new Station(0.21, 0.04, 0.003)), 0.005, 0)));
        Beverage wine = Beverage.wine(percentByVolume(12.5));
        FilledVessel filled = Vessels.highShouldered750().filledWith(wine, celsius(20));
        different.addAll(List.of(
                filled,
                filled.atTemperature(celsius(21)),
                Vessels.highShouldered750().filledWith(Water.liquid(), celsius(20)),
                Vessels.magnum().filledWith(wine, celsius(20)),
                Vessels.highShouldered750(),
                Vessels.magnum()));
        Set<Integer> hashes = new HashSet<>();
        for (int i = 0; i < different.size(); i++) {
            hashes.add(different.get(i).hashCode());
            for (int k = 0; k < different.size(); k++) {
                assertThat(different.get(i).equals(different.get(k))).isEqualTo(i == k);
            }
        }
        assertThat(hashes).hasSameSizeAs(different).doesNotContain(0);
        assertThat(filled.atTemperature(celsius(20))).isEqualTo(filled).hasSameHashCodeAs(filled);
    }

    @Test
    void theContentsFillTheirVolumeAndLeaveTheRest() {
        FilledVessel filled = Vessels.highShouldered750().filledWith(Water.liquid(), celsius(20));
        double volume = filled.liquidMassKg() / Water.liquid().density(293.15);
        assertThat(filled.liquidVolumeM3()).isEqualTo(volume).isCloseTo(0.75e-3, within(1e-9));
        assertThat(filled.headspaceM3()).isCloseTo(filled.vessel().brimfulVolumeM3(293.15) - volume, within(1e-15));
    }

    @Test
    void anEmptyLyingVesselHasItsLevelAtItsLowestPointAndPlacesAreInOrder() {
        LyingProfile lying = LyingProfile.of(Profile.of(List.of(BOTTOM, TOP), 0.005, 0));
        assertThat(lying.levelM(0)).isCloseTo(0.003, within(1e-15));
        assertThat(lying.levelM(Profile.of(List.of(BOTTOM, TOP), 0.005, 0).brimfulVolumeM3()))
                .isCloseTo(0.077, within(1e-9));
        assertThatThrownBy(() -> lying.outerSideAreaM2(0.1, 0.05, 0.04))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("above the first place");
        assertThatThrownBy(() -> lying.innerSideAreaM2(0.1, 0.05, 0.04)).isInstanceOf(OutOfRangeException.class);
        assertThat(lying.outerSideAreaM2(0.05, 0.1, 0.08)).isCloseTo(2 * Math.PI * 0.04 * 0.05, within(1e-12));
    }
}
