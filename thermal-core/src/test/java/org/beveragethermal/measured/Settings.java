/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.degrees;
import static org.beveragethermal.materials.units.Measures.fraction;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.litresPerMinute;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.BareIce;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.DrinkTint;
import org.beveragethermal.core.surroundings.Footing;
import org.beveragethermal.core.surroundings.GelPacks;
import org.beveragethermal.core.surroundings.GlassTint;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.RunningTap;
import org.beveragethermal.core.surroundings.SaltedIce;
import org.beveragethermal.core.surroundings.Sunlight;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.core.surroundings.WetWrap;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.core.uncertainty.UnstatedConditions;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;

/** The means of the reports that the library has surroundings for. */
final class Settings {

    /** Long enough for what levels off near its target; what takes longer counts as never. */
    private static final Duration LONGEST_IN_AIR = Duration.ofDays(2);

    /** Long enough for a wrap to dry or to freeze. */
    private static final Duration LONGEST_IN_WRAP = Duration.ofHours(6);

    private static final Duration LONGEST_IN_BATH = Duration.ofHours(3);

    /** Against 24 slices this moved the median temperature in four baths after 10 minutes by less than 0.2 K, in a quarter of the time. */
    private static final VesselModel SLICES = VesselModel.axial(8);

    /**
     * Among pieces that sink past a vessel steps are short, and what comes is known to a factor of two. Against 8 slices this moved the
     * medians of three rows by no more than 0.1 K and 4 %.
     */
    private static final VesselModel SLICES_IN_PIECES = VesselModel.axial(4);

    private static final Duration LONGEST_IN_PIECES = Duration.ofHours(1);

    /** A bucket is as high as it has to be, and at least this high [m]. */
    private static final double LOWEST_BUCKET_M = 0.22;

    private static final double FREEBOARD_M = 0.02;
    private static final double WATER_DENSITY = 1000;
    private static final double ICE_DENSITY = Ice.density(273.15);
    private static final double MELTING_C = 0;
    private static final double ZERO_CELSIUS_K = 273.15;

    /** How much of rooms and appliances is drawn. */
    enum Detail {
        /** Air held at a temperature, still and dry, and a shelf. */
        AS_FIRST_DRAWN,
        /** Also fan, plate, load, neighbours and door of an appliance, draught and humidity of a room. */
        IN_USE
    }

    private Settings() {}

    /** A table in a room; its air is still and dry as it was first drawn. */
    static Setting room(Given air, Detail detail) {
        return new Setting(
                Setting.Means.ROOM,
                air,
                VesselModel.lumped(),
                LONGEST_IN_AIR,
                Setting.Alternatives.NONE,
                (draw, vessel, duration) -> {
                    Air still = Air.at(celsius(air.in(draw)));
                    return Exposure.in(
                            detail == Detail.AS_FIRST_DRAWN ? still : UnstatedConditions.room(still, draw), duration);
                });
    }

    /** An open drink on a table in a room, with draught and humidity. */
    static Setting openDrink(Given air) {
        return new Setting(
                Setting.Means.GLASS,
                air,
                VesselModel.lumped(),
                LONGEST_IN_AIR,
                Setting.Alternatives.NONE,
                (draw, vessel, duration) ->
                        Exposure.in(UnstatedConditions.room(Air.at(celsius(air.in(draw))), draw), duration));
    }

    /** Shade in the open, with some wind and moist air. */
    static Setting outdoors(Given air, VesselModel model) {
        return new Setting(
                Setting.Means.OUTDOORS,
                air,
                model,
                LONGEST_IN_AIR,
                Setting.Alternatives.NONE,
                (draw, vessel, duration) -> Exposure.in(
                        Air.at(celsius(air.in(draw)))
                                .withSpeed(metresPerSecond(Conditions.in(draw, Conditions.WIND)))
                                .withRelativeHumidity(percent(Conditions.in(draw, Conditions.OUTDOOR_HUMIDITY))),
                        duration));
    }

    /** Minutes for which a car stood in the sun before the thermometer was read: from 7 to 13 h solar time. */
    static final double PARKED_MINUTES = 360;

    /** Behind the rear window of a car that stands in the sun of a clear summer day from the morning on, its air warming evenly. */
    static Setting parkedCar() {
        int july = 196;
        Duration parked = Duration.ofMinutes((long) PARKED_MINUTES);
        return new Setting(
                Setting.Means.PARKED_CAR,
                Given.drawnFrom(Conditions.PARKED_CABIN_C),
                VesselModel.lumped().tinted(GlassTint.COLOURLESS, DrinkTint.CLEAR),
                LONGEST_IN_AIR,
                Setting.Alternatives.NONE,
                (draw, vessel, duration) -> {
                    double morningC = Conditions.in(draw, Conditions.SUMMER_MORNING_C);
                    double cabinC = Conditions.in(draw, Conditions.PARKED_CABIN_C);
                    double seenC = cabinC + Conditions.in(draw, Conditions.SUNLIT_CABIN_K);
                    Sunlight sun = Sunlight.clearDay(
                                    degrees(Conditions.in(draw, Conditions.LATITUDE)), july, LocalTime.of(7, 0))
                            .behindPane(fraction(Conditions.in(draw, Conditions.REAR_WINDOW)))
                            .behindPane(fraction(Conditions.in(draw, Conditions.UNDER_ROOF)));
                    Air cabin = Air.varying(Map.of(Duration.ZERO, celsius(morningC), parked, celsius(cabinC)))
                            .withWalls(Map.of(Duration.ZERO, celsius(morningC), parked, celsius(seenC)))
                            .withSun(sun);
                    Exposure standing = Exposure.in(cabin, duration);
                    return Conditions.in(draw, Conditions.LIES) < 0.5 ? standing : standing.lying();
                });
    }

    /** Humid air with a dew point, moved as outdoors. */
    static Setting humid(Given air, Given dewPoint) {
        return new Setting(
                Setting.Means.OUTDOORS,
                air,
                VesselModel.lumped(),
                LONGEST_IN_AIR,
                Setting.Alternatives.NONE,
                (draw, vessel, duration) -> Exposure.in(
                        Air.at(celsius(air.in(draw)))
                                .withSpeed(metresPerSecond(Conditions.in(draw, Conditions.WIND)))
                                .withRelativeHumidity(fraction(MoistAir.relativeHumidityAtDewPoint(
                                        ZERO_CELSIUS_K + air.in(draw), ZERO_CELSIUS_K + dewPoint.in(draw)))),
                        duration));
    }

    /** Cubes without water. */
    static Setting bareIce() {
        return new Setting(
                Setting.Means.BARE_ICE,
                Given.known(MELTING_C),
                SLICES_IN_PIECES,
                LONGEST_IN_PIECES,
                Setting.Alternatives.NONE,
                (draw, vessel, duration) -> {
                    double ice = Conditions.in(draw, Conditions.ICE_KG);
                    double solid = Conditions.in(draw, Conditions.PACKING);
                    Surroundings pile = BareIce.in(bucket(draw, ice / ICE_DENSITY / solid, vessel), room(draw))
                            .ice(
                                    kilograms(ice),
                                    millimetres(Conditions.in(draw, Conditions.CUBE_MM)),
                                    celsius(Conditions.in(draw, Conditions.ICE_C)))
                            .solidFraction(solid)
                            .meltFilm(millimetres(Conditions.in(draw, Conditions.MELT_FILM_MM)))
                            .build();
                    return Exposure.in(pile, duration);
                });
    }

    /** Ice, water and salt, the salt mixed in in half of the draws and on the floor in the others. */
    static Setting saltedIce(
            ToDoubleFunction<Draw> iceKg,
            ToDoubleFunction<Draw> waterKg,
            ToDoubleFunction<Draw> saltKg,
            Optional<ToDoubleFunction<Draw>> speed) {
        ToDoubleFunction<Draw> stirring = speed.orElse(Conditions::unstatedStirring);
        return new Setting(
                Setting.Means.SALTED_ICE,
                Given.known(MELTING_C),
                SLICES,
                LONGEST_IN_BATH,
                Setting.Alternatives.SALT,
                (draw, vessel, duration) -> {
                    double ice = iceKg.applyAsDouble(draw);
                    double water = waterKg.applyAsDouble(draw);
                    double salt = saltKg.applyAsDouble(draw);
                    double solid = Conditions.in(draw, Conditions.PACKING);
                    double most = ice / ICE_DENSITY / solid + (water + salt) / WATER_DENSITY;
                    Surroundings bath = SaltedIce.in(bucket(draw, most, vessel), room(draw))
                            .ice(
                                    kilograms(ice),
                                    millimetres(Conditions.in(draw, Conditions.CUBE_MM)),
                                    celsius(Conditions.in(draw, Conditions.ICE_C)))
                            .water(kilograms(water), celsius(Conditions.in(draw, Conditions.TAP)))
                            .salt(kilograms(salt))
                            .effect(
                                    Conditions.isSaltMixed(draw)
                                            ? SaltedIce.SaltEffect.MIXED
                                            : SaltedIce.SaltEffect.INEFFECTIVE)
                            .agitation(new Agitation(stirring.applyAsDouble(draw)))
                            .solidFraction(solid)
                            .build();
                    return placed(draw, bath, vessel, duration);
                });
    }

    /** Salted ice of which only how much salt there was is known. */
    static Setting saltedIce(ToDoubleFunction<Draw> saltKg) {
        return saltedIce(
                draw -> Conditions.in(draw, Conditions.ICE_KG),
                draw -> Conditions.in(draw, Conditions.WATER_KG),
                saltKg,
                Optional.empty());
    }

    /** A refrigerator. */
    static Setting refrigerator(Detail detail) {
        return appliance(
                Setting.Means.REFRIGERATOR, Given.drawnFrom(Conditions.REFRIGERATOR), Settings::fanSpeed, detail);
    }

    /** A freezer that may have a fan. */
    static Setting freezer(Given air, Detail detail) {
        return appliance(Setting.Means.FREEZER, air, Settings::fanSpeed, detail);
    }

    /** A freezer of which it is said that its air is still. */
    static Setting stillFreezer(Given air, Detail detail) {
        return appliance(Setting.Means.FREEZER, air, draw -> 0, detail);
    }

    private static Setting appliance(Setting.Means means, Given air, ToDoubleFunction<Draw> fan, Detail detail) {
        boolean asFirstDrawn = detail == Detail.AS_FIRST_DRAWN;
        return new Setting(
                means,
                air,
                VesselModel.lumped(),
                LONGEST_IN_AIR,
                Setting.Alternatives.NONE,
                draw -> asFirstDrawn ? 1 : UnstatedConditions.convectionLeft(draw),
                (draw, vessel, duration) -> Exposure.in(
                        asFirstDrawn
                                ? Refrigerator.at(celsius(air.in(draw))).on(shelf(draw))
                                : UnstatedConditions.appliance(
                                        celsius(air.in(draw)),
                                        metresPerSecond(fan.applyAsDouble(draw)),
                                        Duration.ZERO,
                                        draw),
                        duration));
    }

    /** A closed shelf or a grid. */
    private static Footing shelf(Draw draw) {
        return Conditions.in(draw, Conditions.WHICH_SHELF) < 0.5 ? Footing.insulating() : Footing.open();
    }

    /** Speed of the air in an appliance of which nothing is said [m/s]. */
    static double fanSpeed(Draw draw) {
        return UnstatedConditions.fan(draw).getValue().doubleValue();
    }

    /** A frozen gel pack laid on a vessel in a freezer, both as cold as the freezer's air. */
    static Setting frozenPack(Given air) {
        return new Setting(
                Setting.Means.FROZEN_PACK,
                air,
                VesselModel.lumped(),
                LONGEST_IN_AIR,
                Setting.Alternatives.NONE,
                (draw, vessel, duration) -> Exposure.in(
                        GelPacks.of(
                                1,
                                kilograms(Conditions.in(draw, Conditions.PACK_KG)),
                                millimetres(Conditions.in(draw, Conditions.PACK_MM)),
                                celsius(air.in(draw)),
                                Air.at(celsius(air.in(draw))).on(shelf(draw))),
                        duration));
    }

    /** What is wound around a vessel, as wet as it is drawn. */
    @FunctionalInterface
    interface Winding {
        WetWrap around(Draw draw, Surroundings air);
    }

    /** Cloth of a dry mass and water [g] that may be stated. */
    static Winding cloth(
            ToDoubleFunction<Draw> dryG, ToDoubleFunction<Draw> waterG, ToDoubleFunction<Draw> temperatureC) {
        return (draw, air) -> WetWrap.cloth(
                millimetres(Conditions.in(draw, Conditions.CLOTH_MM)),
                kilograms(1e-3 * dryG.applyAsDouble(draw)),
                kilograms(1e-3 * waterG.applyAsDouble(draw)),
                celsius(temperatureC.applyAsDouble(draw)),
                air);
    }

    /** Cloth of which nothing is stated, wetted under the tap. */
    static Winding cloth() {
        return cloth(
                draw -> Conditions.in(draw, Conditions.CLOTH_G),
                draw -> Conditions.in(draw, Conditions.CLOTH_G) * Conditions.in(draw, Conditions.CLOTH_WATER),
                draw -> Conditions.in(draw, Conditions.TAP));
    }

    /** Paper whose water [g] may be stated. */
    static Winding paper(ToDoubleFunction<Draw> waterG, ToDoubleFunction<Draw> temperatureC) {
        return (draw, air) -> WetWrap.paper(
                millimetres(Conditions.in(draw, Conditions.PAPER_MM)),
                kilograms(1e-3 * Conditions.in(draw, Conditions.PAPER_G)),
                kilograms(1e-3 * waterG.applyAsDouble(draw)),
                celsius(temperatureC.applyAsDouble(draw)),
                air);
    }

    /** Paper of which nothing is stated, wetted under the tap. */
    static Winding paper() {
        return paper(
                draw -> Conditions.in(draw, Conditions.PAPER_G) * Conditions.in(draw, Conditions.PAPER_WATER),
                draw -> Conditions.in(draw, Conditions.TAP));
    }

    /** Wound around in a freezer that may have a fan. */
    static Setting wrappedInFreezer(Given air, ToDoubleFunction<Draw> fan, Winding winding) {
        return new Setting(
                Setting.Means.WET_WRAP,
                air,
                VesselModel.lumped(),
                LONGEST_IN_WRAP,
                Setting.Alternatives.NONE,
                (draw, vessel, duration) -> Exposure.in(
                        winding.around(
                                draw,
                                Refrigerator.at(celsius(air.in(draw)))
                                        .withFan(metresPerSecond(fan.applyAsDouble(draw)))
                                        .withRelativeHumidity(percent(Conditions.in(draw, Conditions.FREEZER_HUMIDITY)))
                                        .on(shelf(draw))),
                        duration));
    }

    /** Wound around in a breeze, its lower edge in a bowl of water; what the bowl does to the base of the vessel is left out. */
    static Setting wrappedInABreeze(Given air) {
        return new Setting(
                Setting.Means.WET_WRAP,
                air,
                VesselModel.lumped(),
                LONGEST_IN_WRAP,
                Setting.Alternatives.NONE,
                (draw, vessel, duration) -> {
                    double height = vessel.vessel().profile().heightM();
                    return Exposure.in(
                            cloth().around(
                                            draw,
                                            Air.at(celsius(air.in(draw)))
                                                    .withSpeed(metresPerSecond(Conditions.in(draw, Conditions.WIND)))
                                                    .withRelativeHumidity(
                                                            percent(Conditions.in(draw, Conditions.OUTDOOR_HUMIDITY))))
                                    .covering(metres(height))
                                    .standingInDish(metres(height)),
                            duration);
                });
    }

    /** Under the tap, in the air of a room. */
    static Setting runningTap() {
        return new Setting(
                Setting.Means.RUNNING_TAP,
                Given.drawnFrom(Conditions.TAP),
                SLICES,
                LONGEST_IN_BATH,
                Setting.Alternatives.NONE,
                (draw, vessel, duration) -> Exposure.in(
                        RunningTap.at(
                                        celsius(Conditions.in(draw, Conditions.TAP)),
                                        litresPerMinute(Conditions.in(draw, Conditions.TAP_FLOW)),
                                        room(draw))
                                .withWettedShare(fraction(Conditions.in(draw, Conditions.WETTED_SHARE))),
                        duration));
    }

    /** A bucket of tap water, warmed by the vessel and by its room. */
    static Setting tapWater() {
        return new Setting(
                Setting.Means.WATER,
                Given.drawnFrom(Conditions.TAP),
                SLICES,
                LONGEST_IN_BATH,
                Setting.Alternatives.STIRRING,
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
                speed.isEmpty() ? Setting.Alternatives.STIRRING : Setting.Alternatives.NONE,
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
