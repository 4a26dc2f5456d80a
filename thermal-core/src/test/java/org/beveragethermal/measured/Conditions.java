/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * What reports leave out, and what it is drawn from where they do. All are own assumptions, the same for every row, and were
 * fixed before the first comparison. None may be changed in view of a row.
 */
final class Conditions {

    /** Air and walls of a room, and what has stood in it [°C]. */
    static final UncertainInput ROOM = between("room, °C", 18, 25);
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
    /** Where in its distribution the stirring of a bath is, of which nothing is said [-]. */
    static final UncertainInput STIRRING = share("stirring");
    /** Which of the vessels that fit the description it was [-]. */
    static final UncertainInput WHICH_VESSEL = share("which vessel");
    /** Whether a can stood on the floor of the bath or floated at its surface [-]. */
    static final UncertainInput WHERE_IN_BATH = share("where in the bath");
    /** Whether the shelf of an appliance was closed or a grid [-]. */
    static final UncertainInput WHICH_SHELF = share("which shelf");
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

    /** Fastest water along a vessel where nothing is said of stirring [m/s]: by hand, now and then. */
    private static final double FASTEST_UNSTATED = 0.1;
    /** Slowest and fastest water along a vessel in a bath that is said to be stirred [m/s]. */
    private static final double SLOWEST_STIRRED = 0.05;

    private static final double FASTEST_STIRRED = 0.2;

    private Conditions() {}

    private static UncertainInput between(String name, double low, double high) {
        return new UncertainInput(name, 0.5 * (low + high), Uncertainty.rectangular(0.5 * (high - low)));
    }

    private static UncertainInput share(String name) {
        return between(name + ", part", 0, 1);
    }

    /** All of them, with the scatter of the laws. Draws are handed out in this order: a new one goes to the end, so that the others stay. */
    static List<UncertainInput> all() {
        return Stream.concat(
                        LawScatter.all().stream(),
                        Stream.of(
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
                                WATER_PER_ICE))
                .toList();
    }

    /** The factors on laws. */
    static Map<String, Double> multipliers(Draw draw) {
        return LawScatter.all().stream().collect(Collectors.toMap(UncertainInput::name, law -> draw.value(law.name())));
    }

    static double in(Draw draw, UncertainInput input) {
        return draw.value(input.name());
    }

    /** Whether a bath of which nothing is said is still in a draw. */
    static boolean isStill(Draw draw) {
        return unstatedStirring(draw) == 0;
    }

    /** Speed of bath water where nothing is said [m/s]: half of all baths are still, the rest are stirred a little. */
    static double unstatedStirring(Draw draw) {
        return Math.max(0, 2 * in(draw, STIRRING) - 1) * FASTEST_UNSTATED;
    }

    /** Speed of bath water that is said to be stirred [m/s]. */
    static double statedStirring(Draw draw) {
        return SLOWEST_STIRRED + (FASTEST_STIRRED - SLOWEST_STIRRED) * in(draw, STIRRING);
    }
}
