/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import static org.beveragethermal.materials.units.Measures.metres;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.materials.vessel.LyingProfile;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Station;

/** Shapes of vessels: base, punt, two places to ask at, then height, outer radius and thickness of each station [m]. */
final class ProfileTarget implements FuzzTarget {

    @Override
    public String toString() {
        return name();
    }

    @Override
    public String name() {
        return "vessel profiles";
    }

    @Override
    public List<byte[]> corpus() {
        return Corpus.lines("profiles.txt");
    }

    @Override
    public List<String> words() {
        return List.of(
                "0.002", "0.0375", "0.3", "1e-6", "1e-12", "1e-160", "1e160", "5", "10", "0.99999999999", "1e-300");
    }

    @Override
    public boolean accepts(byte[] input) {
        double[] given = Corpus.numbers(input);
        if (given.length < 7) {
            return false;
        }
        try {
            Profile profile = profile(given);
            upright(profile, given[2], given[3]);
            lying(profile, given[2], given[3]);
            return true;
        } catch (IllegalArgumentException e) {
            return Documented.refusal(e);
        }
    }

    private static Profile profile(double[] given) {
        List<Station> stations = new ArrayList<>();
        Profile.Builder builder = Profile.builder();
        for (int i = 4; i + 2 < given.length; i += 3) {
            builder.station(metres(given[i]), metres(2 * given[i + 1]), metres(given[i + 2]));
            stations.add(new Station(given[i], given[i + 1], given[i + 2]));
        }
        builder.baseThickness(metres(given[0])).puntDepth(metres(given[1]));
        Profile built = builder.build();
        Profile direct = Profile.of(stations, given[0], given[1]);
        if (!built.equals(direct) || built.hashCode() != direct.hashCode()) {
            throw new AssertionError("builder and factory differ");
        }
        return built;
    }

    private static void upright(Profile profile, double a, double b) {
        double height = profile.heightM();
        Documented.finite(
                "whole",
                height,
                profile.maxOuterRadiusM(),
                profile.brimfulVolumeM3(),
                profile.baseWallVolumeM3(),
                profile.baseAreaM2(),
                profile.outerVolumeM3(0, height),
                profile.wallVolumeM3(0, height),
                profile.outerSideAreaM2(0, height),
                profile.innerSideAreaM2(0, height),
                profile.fillHeightM(profile.brimfulVolumeM3()),
                profile.fillHeightM(profile.brimfulVolumeM3() / 3));
        double at = a * height;
        Documented.finite(
                "at a height",
                profile.outerRadiusM(at),
                profile.innerRadiusM(at),
                profile.wallThicknessM(at),
                profile.innerVolumeM3(at),
                profile.outerVolumeM3(at, b * height),
                profile.wallVolumeM3(at, b * height),
                profile.outerSideAreaM2(at, b * height),
                profile.innerSideAreaM2(at, b * height));
    }

    private static void lying(Profile profile, double a, double b) {
        LyingProfile lying = LyingProfile.of(profile);
        double axis = lying.axisM();
        double level = 2 * axis * a;
        Documented.finite(
                "lying",
                axis,
                lying.innerVolumeM3(level),
                lying.levelM(b * profile.brimfulVolumeM3()),
                lying.surfaceAreaM2(level),
                lying.surfaceLengthM(level),
                lying.outerVolumeM3(level),
                lying.wettedAreaM2(level),
                lying.floorAreaM2(level),
                lying.outerSideAreaM2(level),
                lying.innerSideAreaM2(0, profile.heightM(), level));
    }
}
