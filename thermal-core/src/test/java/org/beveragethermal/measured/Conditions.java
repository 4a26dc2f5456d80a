/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.RunningTap;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.beveragethermal.core.uncertainty.UnstatedConditions;
import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * What reports leave out, and what it is drawn from where they do. All are own assumptions, the same for every row, and were
 * fixed before the first comparison, but for those {@linkplain #addedLater added for appliances and rooms} after it, which
 * were fixed before they were run. None may be changed in view of a row.
 */
final class Conditions {

    /** Air and walls of a room, and what has stood in it [°C]. */
    static final UncertainInput ROOM = unstated("room, °C");
    /** Air and walls of a room of "about 21 °C" [°C]. */
    static final UncertainInput ABOUT_21 = between("room of about 21 °C", 20, 22);
    /** Air in a refrigerator [°C]. */
    static final UncertainInput REFRIGERATOR = between("refrigerator, °C", 2, 7);
    /** Air in a freezer [°C]. */
    static final UncertainInput FREEZER = between("freezer, °C", -23, -15);
    /** Water from the tap [°C]. */
    static final UncertainInput TAP = between("tap water, °C", 8, 20);
    /** Ice in a bath [kg]. */
    static final UncertainInput ICE_KG = between("ice, kg", 1, 3);
    /** Water in a bath [kg]. */
    static final UncertainInput WATER_KG = between("water, kg", 2, 6);
    /** Inner diameter of a bucket [cm]. */
    static final UncertainInput BUCKET_CM = between("bucket, cm", 18, 26);
    /** Side of an ice cube [mm]. */
    static final UncertainInput CUBE_MM = between("ice cube, mm", 20, 40);
    /** Ice as it goes into a bath [°C]: from the freezer, or already wet. */
    static final UncertainInput ICE_C = between("ice, °C", -15, 0);
    /** Part of a pack of loose cubes that is ice [-]. */
    static final UncertainInput PACKING = new UncertainInput(
            "solid fraction of the pack",
            IceWaterBath.PACK_SOLID_FRACTION.value(),
            IceWaterBath.PACK_SOLID_FRACTION.uncertainty());
    /** Relative humidity in the open [%]. */
    static final UncertainInput OUTDOOR_HUMIDITY = between("humidity outdoors, %", 40, 80);
    /** Wind in the shade near the ground [m/s]. */
    static final UncertainInput WIND = between("wind, m/s", 0.3, 3);
    /** Cup of salt [kg], of fine or coarse salt. */
    static final UncertainInput CUP_OF_SALT_KG = between("a cup of salt, kg", 0.24, 0.30);
    /** Salt in a bath of which nothing is said [kg]. */
    static final UncertainInput SALT_KG = between("salt, kg", 0.1, 0.5);
    /** Salt where there was much of it [kg]. */
    static final UncertainInput MUCH_SALT_KG = between("much salt, kg", 0.5, 1.2);
    /** Whether the salt was mixed in or lay on the floor [-]. */
    static final UncertainInput SALT_MIXED = share("salt mixed in");
    /** Film of melt water between ice and a wall [mm]. */
    static final UncertainInput MELT_FILM_MM = between("melt film, mm", 0.1, 0.9);
    /** Where in its distribution the stirring of a bath is, of which nothing is said [-]. */
    static final UncertainInput STIRRING = unstated("stirring, part");
    /** Which of the vessels that fit the description it was [-]. */
    static final UncertainInput WHICH_VESSEL = share("which vessel");
    /** Whether a can stood on the floor of the bath or floated at its surface [-]. */
    static final UncertainInput WHERE_IN_BATH = share("where in the bath");
    /** Whether the shelf of an appliance was closed or a grid [-]. */
    static final UncertainInput WHICH_SHELF = unstated("which shelf, part");
    /** Whether the contents were mixed before they were read, or where the probe was [-]. */
    static final UncertainInput WHERE_READ = share("where it was read");
    /** Where in its distribution the diameter of the vessel is [-]. */
    static final UncertainInput DIAMETER = share("diameter");
    /** Where in its distribution the mass of the vessel is [-]. */
    static final UncertainInput MASS = share("mass of the vessel");
    /** Where in its distribution the emissivity of the vessel is [-]. */
    static final UncertainInput EMISSIVITY = share("emissivity");
    /** Water over ice by mass where a bath is said to be half ice and half water [-]: of equal mass, or of equal height when poured in. */
    static final UncertainInput WATER_PER_ICE = between("water over ice", 1, 1.9);

    /** Air on a hot and humid summer day [°C]. */
    static final UncertainInput HUMID_SUMMER_C = between("humid summer day, °C", 29, 34);
    /** Its dew point [°C]. */
    static final UncertainInput DEW_POINT_C = between("dew point of a humid summer day, °C", 22, 26);

    /** Flow of a running tap [L/min]. */
    static final UncertainInput TAP_FLOW = between("running tap, L/min", 4, 12);
    /** Part of the wall that a running tap wets [-]. */
    static final UncertainInput WETTED_SHARE = new UncertainInput(
            "wetted share under a tap", RunningTap.WETTED_SHARE.value(), RunningTap.WETTED_SHARE.uncertainty());
    /** Mass of a frozen gel pack [kg]. */
    static final UncertainInput PACK_KG = between("gel pack, kg", 0.2, 0.6);
    /** Thickness of a frozen gel pack [mm]. */
    static final UncertainInput PACK_MM = between("thickness of a gel pack, mm", 20, 40);

    /** Relative humidity in a freezer, over ice [%]. */
    static final UncertainInput FREEZER_HUMIDITY = between("humidity in a freezer, %", 40, 90);
    /** Dry mass of a cloth around a bottle: flannel, napkin, kitchen towel [g]. */
    static final UncertainInput CLOTH_G = between("dry cloth, g", 20, 80);
    /** Thickness of a cloth as it is wound [mm]. */
    static final UncertainInput CLOTH_MM = between("cloth, mm", 1, 4);
    /** Water in a wet cloth per dry mass [-]. */
    static final UncertainInput CLOTH_WATER = between("water per dry cloth", 1, 3);
    /** Dry mass of paper around a bottle or can: tissue, kitchen paper [g]. */
    static final UncertainInput PAPER_G = between("dry paper, g", 3, 15);
    /** Thickness of wet paper as it is wound [mm]. */
    static final UncertainInput PAPER_MM = between("paper, mm", 0.3, 1.5);
    /** Water in wet paper per dry mass [-]. */
    static final UncertainInput PAPER_WATER = between("water per dry paper", 2, 5);
    /** A wrap some minutes after it was laid around in a freezer [°C]. */
    static final UncertainInput CHILLED_WRAP_C = between("wrap that has been in a freezer, °C", 0, 15);
    /** Morning of a summer day, and the cabin of a car that was parked then [°C]. */
    static final UncertainInput SUMMER_MORNING_C = between("summer morning, °C", 18, 28);
    /** Air at the rear window of a car that has stood in the sun of a summer day, at about 13 h solar time [°C]. */
    static final UncertainInput PARKED_CABIN_C = between("cabin of a parked car in the sun, °C", 42, 65);
    /** How much warmer than that air is what a bottle there sees: shelf, seats and panes in the sun [K]. */
    static final UncertainInput SUNLIT_CABIN_K = between("sunlit cabin above its air, K", 0, 15);
    /** What the rear window lets through of sunlight [-]: clear and tinted panes, sloping. */
    static final UncertainInput REAR_WINDOW = between("transmittance of a rear window, part", 0.4, 0.75);
    /** Latitude [°]. */
    static final UncertainInput LATITUDE = between("latitude, °", 30, 50);
    /** What the roof of a car and its pillars leave of the light at its rear window [-], beam and sky alike. */
    static final UncertainInput UNDER_ROOF = between("light left beside roof and pillars, part", 0.5, 1);
    /** Whether the bottle stood or lay [-]. */
    static final UncertainInput LIES = share("lies in the window");
    /** Part of its difference to the drink that the wall of a glass still has at the first reading after pouring [-]. */
    static final UncertainInput WALL_LEFT = share("difference of a glass left when first read");
    /** Wine that is served cool [°C]. */
    static final UncertainInput SERVED_COOL = between("wine served cool, °C", 6, 14);
    /** A place in summer, in the shade or in a room [°C]. */
    static final UncertainInput SUMMER_C = between("somewhere in summer, °C", 22, 32);

    private static final Set<String> FIRST_LAWS = Set.of(
            Multipliers.INSIDE_FILM,
            Multipliers.AIR_FILM,
            Multipliers.RADIATION,
            Multipliers.WATER_FILM,
            Multipliers.ICE_FILM,
            Multipliers.PACK_EXCHANGE);
    private static final List<UncertainInput> FIRST = List.of(
            ROOM,
            ABOUT_21,
            REFRIGERATOR,
            FREEZER,
            TAP,
            ICE_KG,
            WATER_KG,
            BUCKET_CM,
            CUBE_MM,
            ICE_C,
            PACKING,
            STIRRING,
            WHICH_VESSEL,
            WHERE_IN_BATH,
            WHICH_SHELF,
            WHERE_READ,
            DIAMETER,
            MASS,
            EMISSIVITY,
            WATER_PER_ICE);
    private static final List<UncertainInput> WITH_ICE_AND_OUTDOORS =
            List.of(OUTDOOR_HUMIDITY, WIND, CUP_OF_SALT_KG, SALT_KG, MUCH_SALT_KG, SALT_MIXED, MELT_FILM_MM);
    private static final List<UncertainInput> OF_APPLIANCES_AND_ROOMS = UnstatedConditions.all().stream()
            .filter(input -> !FIRST.contains(input))
            .toList();

    private static final List<UncertainInput> OF_HUMID_PLACES = List.of(HUMID_SUMMER_C, DEW_POINT_C);

    private static final List<UncertainInput> OF_TAPS_AND_PACKS = List.of(TAP_FLOW, WETTED_SHARE, PACK_KG, PACK_MM);

    private static final List<UncertainInput> OF_WRAPS =
            List.of(FREEZER_HUMIDITY, CLOTH_G, CLOTH_MM, CLOTH_WATER, PAPER_G, PAPER_MM, PAPER_WATER, CHILLED_WRAP_C);
    private static final List<UncertainInput> OF_PARKED_CARS =
            List.of(SUMMER_MORNING_C, PARKED_CABIN_C, SUNLIT_CABIN_K, REAR_WINDOW, LATITUDE, UNDER_ROOF, LIES);
    private static final List<UncertainInput> OF_GLASSES = List.of(WALL_LEFT, SERVED_COOL, SUMMER_C);

    /** Slowest and fastest water along a vessel in a bath that is said to be stirred [m/s]. */
    private static final double SLOWEST_STIRRED = 0.05;

    private static final double FASTEST_STIRRED = 0.2;

    private Conditions() {}

    /** What the library draws itself where it is not stated. */
    private static UncertainInput unstated(String name) {
        return UnstatedConditions.all().stream()
                .filter(input -> input.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static UncertainInput between(String name, double low, double high) {
        return new UncertainInput(name, 0.5 * (low + high), Uncertainty.rectangular(0.5 * (high - low)));
    }

    private static UncertainInput share(String name) {
        return between(name + ", part", 0, 1);
    }

    /**
     * All of them, with the scatter of the laws. Draws are handed out in this order, so that a new one goes to the end and the others
     * stay: the laws that were there first, what was drawn first, what was added with ice alone, salt and the open air, what was added
     * for appliances and rooms after the first comparison, humid summers, taps and packs, laws that came later, wraps, parked cars, and
     * glasses.
     */
    static List<UncertainInput> all() {
        return Stream.of(
                        laws().filter(Conditions::isFirst),
                        FIRST.stream(),
                        WITH_ICE_AND_OUTDOORS.stream(),
                        OF_APPLIANCES_AND_ROOMS.stream(),
                        OF_HUMID_PLACES.stream(),
                        OF_TAPS_AND_PACKS.stream(),
                        laws().filter(law -> !isFirst(law)),
                        OF_WRAPS.stream(),
                        OF_PARKED_CARS.stream(),
                        OF_GLASSES.stream())
                .flatMap(inputs -> inputs)
                .toList();
    }

    /** What is drawn for appliances and rooms only since the first comparison was seen. */
    static List<UncertainInput> addedLater() {
        return OF_APPLIANCES_AND_ROOMS;
    }

    private static boolean isFirst(UncertainInput law) {
        return FIRST_LAWS.contains(law.name());
    }

    /** The film of melt water where ice alone touches is drawn by its thickness, so that the factor on it would count it twice. */
    private static Stream<UncertainInput> laws() {
        return LawScatter.all().stream().filter(law -> !law.name().equals(Multipliers.ICE_CONTACT));
    }

    /** The factors on laws. */
    static Map<String, Double> multipliers(Draw draw) {
        return laws().collect(Collectors.toMap(UncertainInput::name, law -> draw.value(law.name())));
    }

    static double in(Draw draw, UncertainInput input) {
        return draw.value(input.name());
    }

    /** Whether a bath of which nothing is said is still in a draw. */
    static boolean isStill(Draw draw) {
        return unstatedStirring(draw) == 0;
    }

    /** Whether the salt of a bath is mixed in, in a draw. */
    static boolean isSaltMixed(Draw draw) {
        return in(draw, SALT_MIXED) < 0.5;
    }

    /** Speed of bath water where nothing is said [m/s]: half of all baths are still, the rest are stirred a little. */
    static double unstatedStirring(Draw draw) {
        return UnstatedConditions.stirring(draw).speedMPerS();
    }

    /** Speed of bath water that is said to be stirred [m/s]. */
    static double statedStirring(Draw draw) {
        return SLOWEST_STIRRED + (FASTEST_STIRRED - SLOWEST_STIRRED) * in(draw, STIRRING);
    }
}
