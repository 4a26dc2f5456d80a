/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.measured.Given.drawnFrom;
import static org.beveragethermal.measured.Given.known;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.Vessel;

/** How each row is run, and why some are not. */
final class Mappings {

    /**
     * Rows that one run answers.
     *
     * @param ids names of the rows
     * @param fromMinutes the run's start on the clock of the rows [min]
     * @param run the run
     */
    record Series(List<String> ids, double fromMinutes, Described run) {}

    private static final Liquid BEER = Beverage.beer(percentByVolume(5));
    private static final Liquid WINE = Beverage.wine(percentByVolume(12.5));
    private static final Liquid SOFT_DRINK = Beverage.softDrink(gramsPerLitre(105));
    private static final Liquid WATER = Beverage.water();
    /** 45 mL of spirit of 40 % and 22.5 mL of vermouth of 17 % in 90 mL with the melt water. */
    private static final Liquid STIRRED_DRINK = Beverage.spirit(percentByVolume(24));

    private static final Given ROOM = drawnFrom(Conditions.ROOM);
    private static final Given SOME_FREEZER = drawnFrom(Conditions.FREEZER);

    /** A cup of 1/16 US gallon, as kitchens measure [L]. */
    private static final double CUP_L = 0.2365882;

    private static final double ICE_KG_PER_L = 0.917;

    private static final Function<Draw, Vessel> BEER_BOTTLE = VesselDraws.beerBottle();
    private static final Function<Draw, Vessel> WINE_BOTTLE = VesselDraws.wineBottle();
    private static final Function<Draw, Vessel> CAN_330 = VesselDraws.can(330);
    private static final Function<Draw, Vessel> CAN_355 = VesselDraws.can(355);
    private static final Function<Draw, Vessel> BOTTLE_473 = VesselDraws.plainBottle(473);

    private Mappings() {}

    /** Everything that is run, as it was first drawn. */
    static List<Series> all() {
        List<Series> all = new ArrayList<>();
        all.addAll(inAir(Settings.Detail.AS_FIRST_DRAWN));
        all.addAll(outdoors());
        all.addAll(underTapAndPack());
        all.addAll(inWetWraps());
        all.addAll(inWater());
        all.addAll(inIce());
        all.addAll(inGlasses());
        return List.copyOf(all);
    }

    /** What is run in rooms and appliances, in use. */
    static List<Series> inUse() {
        return inAir(Settings.Detail.IN_USE);
    }

    private static List<Series> inAir(Settings.Detail detail) {
        Setting refrigerator = Settings.refrigerator(detail);
        Setting freezer = Settings.freezer(SOME_FREEZER, detail);
        Setting room = Settings.room(ROOM, detail);
        Given about21 = drawnFrom(Conditions.ABOUT_21);
        return List.of(
                series(BEER_BOTTLE, BEER, known(20.5), Settings.room(about21, detail), "M001"),
                series(BEER_BOTTLE, BEER, known(20.5), refrigerator, "M005"),
                series(BEER_BOTTLE, BEER, known(20.5), freezer, "M007"),
                series(CAN_330, BEER, ROOM, refrigerator, "M013", "M014"),
                series(WINE_BOTTLE, WINE, ROOM, freezer, "M020", "M026", "M029"),
                series(WINE_BOTTLE, WINE, known(4.4), room, "M023"),
                series(WINE_BOTTLE, WINE, ROOM, refrigerator, "M025"),
                series(BOTTLE_473, WATER, known(21.1), refrigerator, "M036"),
                series(BOTTLE_473, WATER, known(21.1), freezer, "M037"),
                series(VesselDraws.can(500), WATER, known(21.4), Settings.stillFreezer(known(-14), detail), "M043"),
                series(WINE_BOTTLE, WATER, known(22.5), Settings.freezer(known(-18), detail), "M045"),
                // The start is not stated: the first reading, after 5 minutes, is taken for it.
                new Series(
                        List.of("M050", "M053"),
                        5,
                        new Described(
                                VesselDraws.can(330, 355),
                                SOFT_DRINK,
                                known(27.9),
                                freezer,
                                Described.Reading.CONTENTS)),
                series(CAN_355, BEER, ROOM, freezer, "M065"),
                series(CAN_355, SOFT_DRINK, ROOM, freezer, "M067"),
                series(CAN_355, SOFT_DRINK, ROOM, refrigerator, "M070"),
                new Series(
                        List.of("M076", "M077", "M078", "M079"),
                        0,
                        new Described(
                                WINE_BOTTLE, WINE, drawnFrom(Conditions.REFRIGERATOR), room, Described.Reading.WALL)));
    }

    private static List<Series> outdoors() {
        // A sleeve of 4 mm, as such sleeves are (from memory).
        VesselModel inSleeve = VesselModel.lumped().wrappedIn(Layer.of(Solids.neopreneFoam(), millimetres(4)));
        Given shade = known(33.3);
        return List.of(
                // The air and dew point of 8 July 2003 at Dhahran (National Weather Service,
                // JetStream, heat index).
                condensation(Settings.humid(known(42), known(35)), "M096"),
                condensation(
                        Settings.humid(drawnFrom(Conditions.HUMID_SUMMER_C), drawnFrom(Conditions.DEW_POINT_C)),
                        "M097"),
                series(CAN_355, BEER, known(8.5), Settings.outdoors(shade, VesselModel.lumped()), "M094"),
                series(CAN_355, BEER, known(8.5), Settings.outdoors(shade, inSleeve), "M095"),
                // The row states the hour of the reading and nothing before it.
                new Series(
                        List.of("M104"),
                        -Settings.PARKED_MINUTES,
                        new Described(
                                VesselDraws.plasticBottle(500, 1500),
                                WATER,
                                drawnFrom(Conditions.SUMMER_MORNING_C),
                                Settings.parkedCar(),
                                Described.Reading.CONTENTS)));
    }

    private static List<Series> underTapAndPack() {
        Setting tap = Settings.runningTap();
        return List.of(
                series(BEER_BOTTLE, BEER, known(20.5), tap, "M002"),
                series(VesselDraws.plasticBottle(500), WATER, known(21.1), tap, "M035"),
                series(BOTTLE_473, WATER, known(21.1), tap, "M038"),
                series(CAN_355, WATER, known(21.1), tap, "M041"),
                series(WINE_BOTTLE, WATER, known(22.5), Settings.frozenPack(known(-18)), "M046"));
    }

    private static List<Series> inWetWraps() {
        Setting paper = Settings.wrappedInFreezer(SOME_FREEZER, Settings::fanSpeed, Settings.paper());
        Setting paperOf20mL = Settings.wrappedInFreezer(
                known(-14), draw -> 0, Settings.paper(draw -> 20, draw -> Conditions.in(draw, Conditions.TAP)));
        Setting napkin = Settings.wrappedInFreezer(
                known(-18),
                Settings::fanSpeed,
                Settings.cloth(draw -> 20, draw -> 54, draw -> Conditions.in(draw, Conditions.TAP)));
        Setting chilledPaper = Settings.wrappedInFreezer(
                SOME_FREEZER,
                Settings::fanSpeed,
                Settings.paper(
                        draw -> Conditions.in(draw, Conditions.PAPER_G) * Conditions.in(draw, Conditions.PAPER_WATER),
                        draw -> Conditions.in(draw, Conditions.CHILLED_WRAP_C)));
        Setting towel = Settings.wrappedInFreezer(SOME_FREEZER, Settings::fanSpeed, Settings.cloth());
        return List.of(
                series(
                        BEER_BOTTLE,
                        BEER,
                        known(20.5),
                        Settings.wrappedInABreeze(drawnFrom(Conditions.ABOUT_21)),
                        "M004"),
                series(BEER_BOTTLE, BEER, known(20.5), paper, "M006"),
                series(WINE_BOTTLE, WINE, ROOM, towel, "M021"),
                series(VesselDraws.can(500), WATER, known(21.4), paperOf20mL, "M042"),
                series(WINE_BOTTLE, WATER, known(22.5), napkin, "M044"),
                // The start is not stated: the first reading, after 5 minutes, is taken for it.
                new Series(
                        List.of("M051", "M054"),
                        5,
                        new Described(
                                VesselDraws.can(330, 355),
                                SOFT_DRINK,
                                known(26.2),
                                chilledPaper,
                                Described.Reading.CONTENTS)),
                series(VesselDraws.can(330, 355), BEER, known(24.3), paper, "M062"));
    }

    private static Series condensation(Setting air, String id) {
        return new Series(List.of(id), 0, new Described(CAN_355, WATER, known(0), air, Described.Reading.CONDENSATION));
    }

    private static List<Series> inWater() {
        Setting tapWater = Settings.tapWater();
        Setting iceWater = Settings.iceWater();
        Setting oneKilogram =
                Settings.iceWater(draw -> 1, draw -> Conditions.in(draw, Conditions.WATER_KG), Optional.empty());
        Setting halfAndHalf = Settings.iceWater(
                draw -> Conditions.in(draw, Conditions.ICE_KG),
                draw -> Conditions.in(draw, Conditions.ICE_KG) * Conditions.in(draw, Conditions.WATER_PER_ICE),
                Optional.of(draw -> 0));
        Setting fiveCups = Settings.iceWater(Mappings::fiveCupsOfIceKg, draw -> 16 * CUP_L, Optional.of(draw -> 0));
        Setting fiveCupsStirred = Settings.iceWater(
                Mappings::fiveCupsOfIceKg, draw -> 16 * CUP_L, Optional.of(Conditions::statedStirring));
        return List.of(
                series(BEER_BOTTLE, BEER, known(20.5), tapWater, "M003"),
                series(CAN_330, BEER, ROOM, tapWater, "M010"),
                series(BEER_BOTTLE, BEER, known(20.5), oneKilogram, "M008"),
                series(CAN_330, BEER, ROOM, iceWater, "M011", "M012"),
                series(WINE_BOTTLE, WINE, known(23.9), halfAndHalf, "M019"),
                series(WINE_BOTTLE, WINE, ROOM, iceWater, "M027"),
                series(CAN_355, BEER, ROOM, fiveCups, "M056"),
                series(CAN_355, BEER, ROOM, fiveCupsStirred, "M058"),
                series(CAN_355, BEER, ROOM, iceWater, "M064"),
                series(CAN_355, SOFT_DRINK, ROOM, iceWater, "M069"),
                series(CAN_355, SOFT_DRINK, known(18), iceWater, "M072"));
    }

    private static List<Series> inIce() {
        Setting bareIce = Settings.bareIce();
        Setting oneKilogramSalted = Settings.saltedIce(
                draw -> 1, draw -> Conditions.in(draw, Conditions.WATER_KG), draw -> 0.1, Optional.empty());
        Setting fiveCups = Settings.saltedIce(
                Mappings::fiveCupsOfIceKg, draw -> 16 * CUP_L, Mappings::halfCupOfSaltKg, Optional.of(draw -> 0));
        Setting fiveCupsStirred = Settings.saltedIce(
                Mappings::fiveCupsOfIceKg,
                draw -> 16 * CUP_L,
                Mappings::halfCupOfSaltKg,
                Optional.of(Conditions::statedStirring));
        Setting salted = Settings.saltedIce(draw -> Conditions.in(draw, Conditions.SALT_KG));
        Setting muchSalt = Settings.saltedIce(draw -> Conditions.in(draw, Conditions.MUCH_SALT_KG));
        return List.of(
                series(CAN_355, BEER, ROOM, bareIce, "M063"),
                series(CAN_355, SOFT_DRINK, ROOM, bareIce, "M068"),
                series(CAN_355, SOFT_DRINK, known(18), bareIce, "M071"),
                series(BEER_BOTTLE, BEER, known(20.5), oneKilogramSalted, "M009"),
                series(WINE_BOTTLE, WINE, ROOM, salted, "M022"),
                series(WINE_BOTTLE, WINE, ROOM, muchSalt, "M031"),
                series(CAN_355, BEER, ROOM, fiveCups, "M057"),
                series(CAN_355, BEER, ROOM, fiveCupsStirred, "M059"),
                series(CAN_355, BEER, known(22.6), muchSalt, "M061"));
    }

    private static List<Series> inGlasses() {
        Given seventeen = known(17);
        Given summer = drawnFrom(Conditions.SUMMER_C);
        return List.of(
                new Series(
                        List.of("M105", "M106", "M107", "M108", "M109", "M110", "M111", "M112", "M113"),
                        0,
                        new Described(
                                VesselDraws.cup(),
                                WATER,
                                known(83.3),
                                Settings.openDrink(known(23.7)),
                                Described.Reading.CONTENTS)),
                // The mug is at the room's temperature before it is filled, but for what it has taken up when first
                // read.
                poured(VesselDraws.mug(), WATER, known(82), ROOM, Mappings::roomC, 0, "M114"),
                new Series(
                        List.of("M115"),
                        0,
                        new Described(
                                VesselDraws.mug(),
                                WATER,
                                known(82),
                                Settings.openDrink(ROOM),
                                Described.Reading.CONTENTS)),
                poured(
                        VesselDraws.coupe(),
                        STIRRED_DRINK,
                        known(-1.3),
                        seventeen,
                        draw -> 17,
                        0,
                        "M080",
                        "M082",
                        "M084",
                        "M086"),
                poured(
                        VesselDraws.coupe(),
                        STIRRED_DRINK,
                        known(-3.4),
                        seventeen,
                        draw -> 1,
                        0,
                        "M081",
                        "M083",
                        "M085",
                        "M087"),
                poured(
                        VesselDraws.wineGlass(),
                        WINE,
                        drawnFrom(Conditions.SERVED_COOL),
                        summer,
                        draw -> Conditions.in(draw, Conditions.SUMMER_C),
                        4,
                        "M092"));
    }

    private static double roomC(Draw draw) {
        return Conditions.in(draw, Conditions.ROOM);
    }

    /**
     * A drink whose first reading in the glass is its start; the wall has then part of its own temperature left. It may be drunk down to
     * 59 mL in some minutes, 0 if it is not.
     */
    private static Series poured(
            Function<Draw, Vessel> vessel,
            Liquid liquid,
            Given start,
            Given room,
            ToDoubleFunction<Draw> wallC,
            int drunkMinutes,
            String... ids) {
        return new Series(
                List.of(ids),
                0,
                new Described(
                        vessel,
                        liquid,
                        start,
                        Settings.openDrink(room),
                        Described.Reading.CONTENTS,
                        Optional.of((scene, draw, filled) -> {
                            double drinkC = start.in(draw);
                            double left = Conditions.in(draw, Conditions.WALL_LEFT);
                            scene.vessel("shaker", filled, Described.Pouring.ROOM)
                                    .emptyVessel(
                                            Described.Pouring.GLASS,
                                            filled.vessel(),
                                            celsius(drinkC + left * (wallC.applyAsDouble(draw) - drinkC)),
                                            Described.Pouring.ROOM)
                                    .pourAll("shaker", Duration.ZERO, Described.Pouring.GLASS);
                            return drunkMinutes == 0
                                    ? scene
                                    : scene.drinkEvenly(
                                            Described.Pouring.GLASS,
                                            Duration.ZERO,
                                            Duration.ofMinutes(drunkMinutes),
                                            millilitres(59));
                        })));
    }

    private static double halfCupOfSaltKg(Draw draw) {
        return 0.5 * Conditions.in(draw, Conditions.CUP_OF_SALT_KG);
    }

    /** A cup of loose cubes holds as much ice as they pack. */
    private static double fiveCupsOfIceKg(Draw draw) {
        return 5 * CUP_L * ICE_KG_PER_L * Conditions.in(draw, Conditions.PACKING);
    }

    private static Series series(
            Function<Draw, Vessel> vessel, Liquid liquid, Given start, Setting setting, String... ids) {
        return new Series(List.of(ids), 0, new Described(vessel, liquid, start, setting, Described.Reading.CONTENTS));
    }

    /** Why rows are not run, by the name of the row. */
    static Map<String, String> notYet() {
        Map<String, String> reasons = new LinkedHashMap<>();
        because(reasons, "snow, which is not crushed ice", "M015 M016");
        because(reasons, "bags of frozen peas: loose grains, which are not gel", "M049 M052 M055");
        because(reasons, "its start is not stated; it is the start of the two readings that follow it", "M047 M048");
        because(reasons, "a bath of another liquid than water", "M060");
        because(reasons, "dry ice", "M066");
        because(reasons, "a glass without a stem for wine, which is not in the table of vessels", "M093");
        because(
                reasons,
                "a soft bottle with ice in the drink, in air whose speed is not stated and whose temperature varied",
                "M098 M099 M100 M101");
        because(
                reasons,
                "twelve bottles in one case, which is compared beside this table: here one vessel is run",
                "M102");
        because(reasons, "when water begins to freeze that is left alone: supercooling is not modelled", "M103");
        because(reasons, "a start that is not stated and an end that is a bound", "M117 M118");
        because(reasons, "vapour under the lid of a hot drink", "M116");
        return reasons;
    }

    private static void because(Map<String, String> reasons, String reason, String ids) {
        for (String id : ids.split(" ", -1)) {
            if (reasons.put(id, reason) != null) {
                throw new IllegalStateException(id + " is named twice: expected one reason");
            }
        }
    }
}
