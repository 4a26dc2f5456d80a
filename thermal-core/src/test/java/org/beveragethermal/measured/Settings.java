/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.millimetres;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Footing;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;

/** The means of the reports that the library has surroundings for. */
final class Settings {

    /** Long enough for what levels off near its target; what takes longer counts as never. */
    private static final Duration LONGEST_IN_AIR = Duration.ofDays(2);

    private static final Duration LONGEST_IN_BATH = Duration.ofHours(3);

    /** Against 24 slices this moved the median temperature in four baths after 10 minutes by less than 0.2 K, in a quarter of the time. */
    private static final VesselModel SLICES = VesselModel.axial(8);

    /** A bucket is as high as it has to be, and at least this high [m]. */
    private static final double LOWEST_BUCKET_M = 0.22;

    private static final double FREEBOARD_M = 0.02;
    private static final double WATER_DENSITY = 1000;
    private static final double ICE_DENSITY = Ice.density(273.15);
    private static final double MELTING_C = 0;

    private Settings() {}

    /** A table in a room. */
    static Setting room(Given air) {
        return new Setting(
                Setting.Means.ROOM,
                air,
                VesselModel.lumped(),
                LONGEST_IN_AIR,
                false,
                (draw, vessel, duration) -> Exposure.in(Air.at(celsius(air.in(draw))), duration));
    }

    /** A closed or an open shelf of a refrigerator. */
    static Setting refrigerator() {
        return appliance(Setting.Means.REFRIGERATOR, Given.drawnFrom(Conditions.REFRIGERATOR));
    }

    /** A closed or an open shelf of a freezer. */
    static Setting freezer(Given air) {
        return appliance(Setting.Means.FREEZER, air);
    }

    private static Setting appliance(Setting.Means means, Given air) {
        return new Setting(
                means,
                air,
                VesselModel.lumped(),
                LONGEST_IN_AIR,
                false,
                (draw, vessel, duration) ->
                        Exposure.in(Refrigerator.at(celsius(air.in(draw))).on(shelf(draw)), duration));
    }

    private static Footing shelf(Draw draw) {
        return Conditions.in(draw, Conditions.WHICH_SHELF) < 0.5 ? Footing.insulating() : Footing.open();
    }

    /** A bucket of tap water, warmed by the vessel and by its room. */
    static Setting tapWater() {
        return new Setting(
                Setting.Means.WATER,
                Given.drawnFrom(Conditions.TAP),
                SLICES,
                LONGEST_IN_BATH,
                true,
                (draw, vessel, duration) -> {
                    double water = Conditions.in(draw, Conditions.WATER_KG);
                    Surroundings bath = WaterBath.of(
                                    bucket(draw, water / WATER_DENSITY, vessel),
                                    litres(water),
                                    celsius(Conditions.in(draw, Conditions.TAP)),
                                    room(draw))
                            .with(new Agitation(Conditions.unstatedStirring(draw)));
                    return placed(draw, bath, vessel, duration);
                });
    }

    /**
     * A bucket of ice and water; the excess is counted on the melting point of ice, whatever the bath is at.
     *
     * @param iceKg mass of ice
     * @param waterKg mass of water
     * @param speed how fast the water moves along the vessel [m/s], empty if nothing is said
     */
    static Setting iceWater(
            ToDoubleFunction<Draw> iceKg, ToDoubleFunction<Draw> waterKg, Optional<ToDoubleFunction<Draw>> speed) {
        ToDoubleFunction<Draw> stirring = speed.orElse(Conditions::unstatedStirring);
        return new Setting(
                Setting.Means.ICE_WATER,
                Given.known(MELTING_C),
                SLICES,
                LONGEST_IN_BATH,
                speed.isEmpty(),
                (draw, vessel, duration) -> {
                    double ice = iceKg.applyAsDouble(draw);
                    double water = waterKg.applyAsDouble(draw);
                    Surroundings bath = IceWaterBath.in(
                                    bucket(draw, ice / ICE_DENSITY + water / WATER_DENSITY, vessel), room(draw))
                            .ice(
                                    kilograms(ice),
                                    millimetres(Conditions.in(draw, Conditions.CUBE_MM)),
                                    celsius(Conditions.in(draw, Conditions.ICE_C)))
                            .water(kilograms(water), celsius(Conditions.in(draw, Conditions.TAP)))
                            .agitation(new Agitation(stirring.applyAsDouble(draw)))
                            .solidFraction(Conditions.in(draw, Conditions.PACKING))
                            .build();
                    return placed(draw, bath, vessel, duration);
                });
    }

    /** Ice and water of which nothing is stated. */
    static Setting iceWater() {
        return iceWater(
                draw -> Conditions.in(draw, Conditions.ICE_KG),
                draw -> Conditions.in(draw, Conditions.WATER_KG),
                Optional.empty());
    }

    private static Air room(Draw draw) {
        return Air.at(celsius(Conditions.in(draw, Conditions.ROOM)));
    }

    private static Bucket bucket(Draw draw, double bathM3, FilledVessel vessel) {
        double diameter = 0.01 * Conditions.in(draw, Conditions.BUCKET_CM);
        double area = Math.PI / 4 * diameter * diameter;
        double outer = vessel.vessel()
                .profile()
                .outerVolumeM3(0, vessel.vessel().profile().heightM());
        double height = Math.max(LOWEST_BUCKET_M, (bathM3 + outer) / area + FREEBOARD_M);
        return Bucket.of(metres(diameter), metres(height));
    }

    /** Bottles stand on the floor; a can weighs about as much as the water that it displaces, so that half of them float. */
    private static Exposure placed(Draw draw, Surroundings bath, FilledVessel vessel, Duration duration) {
        Exposure standing = Exposure.in(bath, duration);
        boolean floats =
                vessel.vessel().shape() == VesselShape.CAN && Conditions.in(draw, Conditions.WHERE_IN_BATH) < 0.5;
        return floats && isCovered(bath, vessel)
                ? standing.immersedTo(metres(vessel.vessel().profile().heightM()))
                : standing;
    }

    /** Whether a vessel that hangs in a bath is covered; where the water is shallower it stands on the floor. */
    private static boolean isCovered(Surroundings bath, FilledVessel vessel) {
        Occupant afloat = new Occupant("afloat", vessel.vessel());
        return bath.open("bath", 0).wettedHeightM(afloat, List.of(afloat)) >= afloat.heightM();
    }
}
