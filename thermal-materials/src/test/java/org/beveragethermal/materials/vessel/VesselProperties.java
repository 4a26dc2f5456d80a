/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.beveragethermal.materials.liquid.Beverage;

/** What must hold for every vessel of the table, any fill and any temperature. */
class VesselProperties {

    @Provide
    Arbitrary<Vessel> vessels() {
        return Arbitraries.of(Vessels.all());
    }

    @Property(seed = "401")
    void fillHeightInvertsVolume(
            @ForAll("vessels") Vessel vessel, @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double part) {
        Profile profile = vessel.profile();
        double volume = part * profile.brimfulVolumeM3();
        assertThat(profile.innerVolumeM3(profile.fillHeightM(volume)))
                .isCloseTo(volume, within(1e-12 * profile.brimfulVolumeM3()));
    }

    @Property(seed = "402")
    void volumeInvertsFillHeight(
            @ForAll("vessels") Vessel vessel, @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 1) double part) {
        Profile profile = vessel.profile();
        double base = profile.baseThicknessM();
        double height = base + part * (profile.heightM() - base);
        assertThat(profile.fillHeightM(profile.innerVolumeM3(height))).isCloseTo(height, within(1e-9));
    }

    @Property(seed = "403")
    void piecesAddUp(
            @ForAll("vessels") Vessel vessel,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double a,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double b) {
        Profile profile = vessel.profile();
        double top = profile.heightM();
        double low = Math.min(a, b) * top;
        double high = Math.max(a, b) * top;
        assertThat(profile.outerVolumeM3(0, low) + profile.outerVolumeM3(low, high) + profile.outerVolumeM3(high, top))
                .isCloseTo(profile.outerVolumeM3(0, top), within(1e-15));
        assertThat(profile.outerSideAreaM2(0, low)
                        + profile.outerSideAreaM2(low, high)
                        + profile.outerSideAreaM2(high, top))
                .isCloseTo(profile.outerSideAreaM2(0, top), within(1e-13));
        assertThat(profile.innerSideAreaM2(0, low)
                        + profile.innerSideAreaM2(low, high)
                        + profile.innerSideAreaM2(high, top))
                .isCloseTo(profile.innerSideAreaM2(0, top), within(1e-13));
        assertThat(vessel.wallMassKg(0, low) + vessel.wallMassKg(low, high) + vessel.wallMassKg(high, top))
                .isCloseTo(vessel.wallMassKg(0, top), within(1e-12));
    }

    @Property(seed = "404")
    void densityTimesVolumeIsMass(
            @ForAll("vessels") Vessel vessel,
            @ForAll @Scale(6) @DoubleRange(min = 0.002, max = 1) double part,
            @ForAll @Scale(6) @DoubleRange(min = -5, max = 35) double celsius,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double strength) {
        double volumeMl = 1e6 * part * vessel.nominalVolumeM3();
        FilledVessel filled =
                vessel.filledWith(Beverage.wine(percentByVolume(strength)), millilitres(volumeMl), celsius(celsius));
        double volume = vessel.profile().innerVolumeM3(filled.liquidHeightM());
        assertThat(filled.liquid().density(filled.temperatureK()) * volume)
                .isCloseTo(filled.liquidMassKg(), within(1e-11 * Math.max(1, filled.liquidMassKg())));
        assertThat(volume + filled.headspaceM3())
                .isCloseTo(vessel.brimfulVolumeM3(filled.temperatureK()), within(1e-14));
    }
}
