/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;

/** Levels, volumes and wetted areas of vessels that lie or stand on their mouths. */
class PostureProperties {

    private static final double RADIUS = 0.03;
    private static final double LENGTH = 0.2;
    private static final double FLOOR = 0.004;
    private static final Profile TUBE = Profile.of(
            List.of(new Station(0, RADIUS + 0.002, 0.002), new Station(LENGTH + FLOOR, RADIUS + 0.002, 0.002)),
            FLOOR,
            0);

    @Provide
    Arbitrary<Vessel> vessels() {
        return Arbitraries.of(Vessels.all());
    }

    @Example
    void lyingCylinderHoldsTheCircularSegment() {
        LyingProfile lying = LyingProfile.of(TUBE);
        for (double depth : new double[] {0.001, 0.01, 0.02, 0.03, 0.045, 0.0599}) {
            double segment = RADIUS * RADIUS * Math.acos((RADIUS - depth) / RADIUS)
                    - (RADIUS - depth) * Math.sqrt(2 * RADIUS * depth - depth * depth);
            double arc = 2 * RADIUS * Math.acos((RADIUS - depth) / RADIUS);
            double level = depth + 0.002;
            OutsideChecks.published("lying-cylinder-" + Math.round(1e4 * depth), "geometry of the circular segment")
                    .what("volume in a lying cylinder of radius 30 mm, filled " + 1e3 * depth + " mm deep")
                    .unit("m³")
                    .expected(segment * LENGTH)
                    .withinRelative(1e-10)
                    .check(lying.innerVolumeM3(level));
            assertThat(lying.wettedAreaM2(level)).isCloseTo(arc * LENGTH + segment, withinPercentage(1e-8));
        }
    }

    @Example
    void lyingConeHoldsHalfOfItsVolumeToTheAxisAndAreasAddUp() {
        Profile cone = Profile.of(List.of(new Station(0, 0.05, 0.002), new Station(0.2, 0.02, 0.002)), 0.005, 0.01);
        LyingProfile lying = LyingProfile.of(cone);
        assertThat(lying.innerVolumeM3(lying.axisM())).isCloseTo(cone.brimfulVolumeM3() / 2, withinPercentage(1e-9));
        double floor = Math.PI * cone.innerRadiusM(0.005) * Math.hypot(cone.innerRadiusM(0.005), 0.01);
        assertThat(lying.wettedAreaM2(2 * lying.axisM()))
                .isCloseTo(cone.innerSideAreaM2(0.005, 0.2) + floor, withinPercentage(1e-9));
        assertThat(lying.outerSideAreaM2(2 * lying.axisM()))
                .isCloseTo(cone.outerSideAreaM2(0, 0.2), withinPercentage(1e-9));
    }

    @Property(tries = 60, seed = "501")
    void lyingFullHoldsAsMuchAsUprightAndHalfIsAtTheAxis(@ForAll("vessels") Vessel vessel) {
        LyingProfile lying = LyingProfile.of(vessel.profile());
        assertThat(lying.innerVolumeM3(2 * lying.axisM())).isCloseTo(vessel.brimfulVolumeM3(), withinPercentage(1e-8));
        assertThat(lying.innerVolumeM3(lying.axisM())).isCloseTo(vessel.brimfulVolumeM3() / 2, withinPercentage(1e-8));
        assertThat(lying.innerVolumeM3(0)).isZero();
    }

    @Property(tries = 60, seed = "502")
    void levelsInvertVolumesAndRise(
            @ForAll("vessels") Vessel vessel, @ForAll @DoubleRange(min = 0.01, max = 0.98) double part) {
        double volume = part * vessel.brimfulVolumeM3();
        LyingProfile lying = LyingProfile.of(vessel.profile());
        InvertedProfile inverted = InvertedProfile.of(vessel.profile());
        assertThat(lying.innerVolumeM3(lying.levelM(volume))).isCloseTo(volume, withinPercentage(1e-7));
        assertThat(inverted.innerVolumeM3(inverted.levelM(volume))).isCloseTo(volume, withinPercentage(1e-7));
        assertThat(lying.levelM(volume * 1.01)).isGreaterThan(lying.levelM(volume));
        assertThat(inverted.levelM(volume * 1.01)).isGreaterThan(inverted.levelM(volume));
        assertThat(lying.wettedAreaM2(lying.levelM(volume * 1.01)))
                .isGreaterThan(lying.wettedAreaM2(lying.levelM(volume)));
    }

    @Property(tries = 40, seed = "504")
    void partsOfALyingVesselMakeTheWhole(
            @ForAll("vessels") Vessel vessel,
            @ForAll @DoubleRange(min = 0.02, max = 0.98) double part,
            @ForAll @DoubleRange(min = 0, max = 1) double place) {
        Profile upright = vessel.profile();
        LyingProfile lying = LyingProfile.of(upright);
        double level = part * 2 * lying.axisM();
        double cut = place * upright.heightM();
        double height = upright.heightM();
        double top = 2 * lying.axisM();
        assertThat(lying.innerSideAreaM2(0, cut, level)
                        + lying.innerSideAreaM2(cut, height, level)
                        + lying.floorAreaM2(level))
                .isCloseTo(lying.wettedAreaM2(level), within(1e-9));
        assertThat(lying.outerSideAreaM2(0, cut, level) + lying.outerSideAreaM2(cut, height, level))
                .isCloseTo(lying.outerSideAreaM2(level), within(1e-9));
        assertThat(lying.innerSideAreaM2(cut, height, top))
                .isCloseTo(upright.innerSideAreaM2(cut, height), within(1e-9));
        assertThat(lying.outerSideAreaM2(0, cut, top)).isCloseTo(upright.outerSideAreaM2(0, cut), within(1e-9));
        assertThat(lying.outerVolumeM3(top)).isCloseTo(upright.outerVolumeM3(0, height), withinPercentage(1e-8));
        assertThat(lying.outerVolumeM3(lying.axisM()))
                .isCloseTo(upright.outerVolumeM3(0, height) / 2, withinPercentage(1e-8));
        // The surface is the slope of the volume.
        double step = 1e-5 * lying.axisM();
        double slope = (lying.innerVolumeM3(level + step) - lying.innerVolumeM3(level - step)) / (2 * step);
        assertThat(lying.surfaceAreaM2(level)).isCloseTo(slope, within(1e-3 * upright.heightM() * lying.axisM()));
    }

    @Example
    void surfaceOfALyingCylinderIsItsChord() {
        LyingProfile lying = LyingProfile.of(TUBE);
        // 3-4-5: 18 mm above the axis of a circle of 30 mm, half the chord is 24 mm.
        OutsideChecks.published("lying-cylinder-chord", "geometry of the circle: the triangle of 3, 4 and 5")
                .what("surface of a liquid 18 mm above the axis of a lying cylinder of radius 30 mm, length 200 mm")
                .unit("m²")
                .expected(0.048 * LENGTH)
                .withinRelative(1e-9)
                .check(lying.surfaceAreaM2(lying.axisM() + 0.018));
        assertThat(lying.surfaceLengthM(lying.axisM() + 0.018)).isCloseTo(LENGTH, withinPercentage(1e-8));
        assertThat(lying.surfaceLengthM(0.001)).isZero();
        assertThat(lying.surfaceAreaM2(0.001)).isZero();
        assertThatThrownBy(() -> lying.innerSideAreaM2(0.1, 0.05, 0.03)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> lying.outerSideAreaM2(-0.1, 0.05, 0.03)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> lying.outerVolumeM3(1)).isInstanceOf(OutOfRangeException.class);
    }

    @Property(tries = 40, seed = "503")
    void invertedAndUprightMakeTheWhole(
            @ForAll("vessels") Vessel vessel, @ForAll @DoubleRange(min = 0, max = 1) double part) {
        Profile upright = vessel.profile();
        InvertedProfile inverted = InvertedProfile.of(upright);
        double height = part * upright.heightM();
        assertThat(inverted.innerVolumeM3(upright.heightM() - height) + upright.innerVolumeM3(height))
                .isCloseTo(upright.brimfulVolumeM3(), withinPercentage(1e-9));
        assertThat(inverted.wettedSideAreaM2(upright.heightM() - height) + upright.innerSideAreaM2(0, height))
                .isCloseTo(upright.innerSideAreaM2(0, upright.heightM()), withinPercentage(1e-9));
        assertThat(inverted.outerSideAreaM2(upright.heightM() - height) + upright.outerSideAreaM2(0, height))
                .isCloseTo(upright.outerSideAreaM2(0, upright.heightM()), withinPercentage(1e-9));
    }

    @Example
    void aFullBottleTurnedOverStandsInItsNeckAndFillsItsSide() {
        FilledVessel bottle = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));
        double gap = bottle.vessel().profile().heightM() - bottle.invertedSurfaceHeightM();
        // The headspace, 10 to 20 mL, lies above the punt and around it.
        assertThat(gap).isBetween(0.005, 0.025);
        // A bottle of 75 mm on its side: a bubble along the top of the body.
        assertThat(bottle.lyingSurfaceHeightM()).isBetween(0.062, 0.0725);
    }

    @Example
    void whatIsOutsideIsRefused() {
        LyingProfile lying = LyingProfile.of(TUBE);
        InvertedProfile inverted = InvertedProfile.of(TUBE);
        assertThatThrownBy(() -> lying.innerVolumeM3(-0.001))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("level");
        assertThatThrownBy(() -> lying.levelM(1))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("volume of liquid");
        assertThatThrownBy(() -> lying.wettedAreaM2(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> inverted.innerVolumeM3(0.3)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> inverted.levelM(-1e-9)).isInstanceOf(OutOfRangeException.class);
    }

    @Example
    void headspaceIsUsedUpAtOneTemperatureOrNever() {
        Beverage wine = Beverage.wine(percentByVolume(12.5));
        FilledVessel bottle = Vessels.highShouldered750().filledWith(wine, celsius(20));
        double full = bottle.brimfulAtK().orElseThrow();
        double there = wine.density(full) * bottle.vessel().brimfulVolumeM3(full);
        assertThat(there).isCloseTo(bottle.liquidMassKg(), withinPercentage(1e-9));
        // 750 mL with some 15 mL of headspace: water alone would need about 65 °C, wine expands more.
        assertThat(full).isBetween(273.15 + 45, 273.15 + 80);
        assertThat(Vessels.tastingGlass().filledWith(wine, celsius(20)).brimfulAtK())
                .isEmpty();
    }

    @Example
    void glassGrowsByThriceItsLinearExpansion() {
        Vessel bottle = Vessels.highShouldered750();
        double grown = bottle.brimfulVolumeM3(303.15) - bottle.brimfulVolumeM3(293.15);
        OutsideChecks.published("glass-expansion", "OIML R 22, 12.5 % vol: glass takes 0.2 mL of the 750 mL per 10 K")
                .what("growth of a bottle of 750 mL over 10 K")
                .unit("mL")
                .expected(0.2)
                .within(0.05)
                .check(1e6 * grown);
        assertThat(bottle.brimfulVolumeM3(293.15)).isEqualTo(bottle.brimfulVolumeM3());
        assertThat(bottle.linearExpansion().value()).isCloseTo(9e-6, within(1e-6));
    }
}
