/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import static org.beveragethermal.materials.units.Measures.millilitres;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;

/**
 * The table of generic glass bottles.
 *
 * <p>No standard gives these shapes, and printed figures disagree (a wall of 4 mm printed beside a mass that implies
 * 2.9 mm). Each bottle here was drawn by this project inside the ranges of height, diameter, side wall and empty mass
 * that are common in the trade, so that the nominal volume leaves 10 to 20 mL of headspace to the brim at 20 °C (more in
 * the magnum) and the mass is 2500 kg/m³ times the volume of glass. A real bottle may differ: the diameter by 10 %, the
 * mass by 25 %, rectangular, from vessel to vessel.
 */
public final class Vessels {
    private static final double MM = 1e-3;

    private static final Source DRAWN = new Source(
            "drawn within trade ranges",
            "own drawing inside the ranges of height, diameter, wall and mass common in the trade, partly from memory",
            Source.Kind.OWN_ASSUMPTION);

    private static final Vessel HIGH_SHOULDERED_750 = bottle(
            "high-shouldered bottle 750 mL",
            VesselShape.HIGH_SHOULDERED,
            750,
            5.5,
            18,
            station(0, 34.5, 5.0),
            station(5, 37.0, 3.8),
            station(15, 37.5, 2.8),
            station(183, 37.5, 2.8),
            station(197, 34.4, 2.8),
            station(213, 20.8, 3.0),
            station(225, 15.2, 3.6),
            station(288, 14.0, 4.4),
            station(305, 14.3, 5.0));

    private static final Vessel SLOPING_SHOULDERED_750 = bottle(
            "sloping-shouldered bottle 750 mL",
            VesselShape.SLOPING_SHOULDERED,
            750,
            5.5,
            20,
            station(0, 38.0, 5.0),
            station(6, 40.8, 3.8),
            station(16, 41.3, 3.0),
            station(119, 41.3, 3.0),
            station(149, 36.6, 3.0),
            station(179, 27.6, 3.2),
            station(209, 18.5, 3.6),
            station(234, 15.0, 4.2),
            station(298, 14.5, 5.0));

    private static final Vessel TALL_SLIM_750 = bottle(
            "tall slim bottle 750 mL",
            VesselShape.TALL_SLIM,
            750,
            5,
            4,
            station(0, 34.5, 4.5),
            station(6, 37.5, 3.2),
            station(16, 38.0, 2.5),
            station(122, 38.0, 2.5),
            station(157, 34.0, 2.5),
            station(202, 25.0, 2.6),
            station(247, 17.0, 3.0),
            station(272, 14.5, 4.0),
            station(335, 14.0, 4.6));

    private static final Vessel SPARKLING_750 = bottle(
            "sparkling wine bottle 750 mL",
            VesselShape.SPARKLING,
            750,
            10.5,
            30,
            station(0, 40.0, 8.0),
            station(8, 43.7, 6.2),
            station(20, 44.2, 5.0),
            station(118, 44.2, 5.0),
            station(148, 39.6, 5.0),
            station(178, 30.7, 5.2),
            station(208, 21.2, 5.4),
            station(238, 16.0, 5.6),
            station(295, 14.5, 5.4),
            station(312, 14.6, 5.4));

    private static final Vessel MAGNUM = bottle(
            "high-shouldered magnum 1.5 L",
            VesselShape.HIGH_SHOULDERED,
            1500,
            7.5,
            25,
            station(0, 46.5, 6.0),
            station(7, 50.5, 4.6),
            station(18, 51.2, 3.6),
            station(193, 51.2, 3.6),
            station(211, 46.8, 3.6),
            station(233, 27.2, 3.8),
            station(249, 17.5, 4.4),
            station(335, 15.0, 4.8),
            station(352, 15.3, 5.4));

    private static final List<Vessel> DRAWN_BOTTLES =
            List.of(HIGH_SHOULDERED_750, SLOPING_SHOULDERED_750, TALL_SLIM_750, SPARKLING_750, MAGNUM);

    private static final double SMALLEST_M3 = 100e-6;
    private static final double LARGEST_M3 = 15e-3;
    /** Two volumes closer than this are one, whatever units they were given in. */
    private static final double SAME_VOLUME = 1e-9;

    private Vessels() {}

    private static Station station(double heightMm, double outerRadiusMm, double wallMm) {
        return new Station(heightMm * MM, outerRadiusMm * MM, wallMm * MM);
    }

    private static Vessel bottle(
            String name,
            VesselShape shape,
            double nominalMl,
            double baseThicknessMm,
            double puntDepthMm,
            Station... stations) {
        return Vessel.builder(name)
                .shape(shape)
                .profile(Profile.of(List.of(stations), baseThicknessMm * MM, puntDepthMm * MM))
                .nominalVolume(millilitres(nominalMl))
                .dimensions(
                        DRAWN,
                        Uncertainty.rectangularRelative(0.10).perVessel(),
                        Uncertainty.rectangularRelative(0.25).perVessel())
                .build();
    }

    /**
     * High-shouldered bottle of 750 mL: 305 mm high, 75 mm in diameter.
     *
     * @return the vessel
     */
    public static Vessel highShouldered750() {
        return HIGH_SHOULDERED_750;
    }

    /**
     * Sloping-shouldered bottle of 750 mL: 298 mm high, 82.6 mm in diameter.
     *
     * @return the vessel
     */
    public static Vessel slopingShouldered750() {
        return SLOPING_SHOULDERED_750;
    }

    /**
     * Tall slim bottle of 750 mL: 335 mm high, 76 mm in diameter.
     *
     * @return the vessel
     */
    public static Vessel tallSlim750() {
        return TALL_SLIM_750;
    }

    /**
     * Sparkling wine bottle of 750 mL: 312 mm high, 88.4 mm in diameter, thick-walled.
     *
     * @return the vessel
     */
    public static Vessel sparkling750() {
        return SPARKLING_750;
    }

    /**
     * High-shouldered bottle of 1.5 L: 352 mm high, 102.4 mm in diameter.
     *
     * @return the vessel
     */
    public static Vessel magnum() {
        return MAGNUM;
    }

    /**
     * A bottle by shape and volume, since the trade's names of large formats mean different volumes for different shapes. The
     * five bottles of this table are returned as drawn; any other volume is scaled from the bottle of 750 mL by a rule of ours,
     * which the {@linkplain Vessel#dimensionsSource() source} of its dimensions says.
     *
     * <p>Nominal volumes allowed for prepacked wine in the European Union (Directive 2007/45/EC) are 100, 187, 250, 375, 500,
     * 750, 1000 and 1500 mL, for sparkling wine 125, 200, 375, 750 and 1500 mL, for spirits 100, 200, 350, 500, 700, 1000, 1500,
     * 1750 and 2000 mL; beyond them 3 to 15 L are common practice.
     *
     * @param shape shape of the bottle
     * @param nominalVolume nominal volume at 20 °C, 100 mL to 15 L
     * @return the vessel
     * @throws OutOfRangeException if the volume is outside 100 mL to 15 L
     * @throws IllegalArgumentException if the quantity is null, of another dimension or not finite
     */
    public static Vessel of(VesselShape shape, Quantity<Volume> nominalVolume) {
        double m3 = SiValues.volumeM3(nominalVolume, "nominal volume", SMALLEST_M3, LARGEST_M3);
        for (Vessel drawn : DRAWN_BOTTLES) {
            if (drawn.shape() == shape && Math.abs(m3 / drawn.nominalVolumeM3() - 1) < SAME_VOLUME) {
                return drawn;
            }
        }
        return switch (shape) {
            case HIGH_SHOULDERED -> BottleScaling.scaled(HIGH_SHOULDERED_750, "high-shouldered bottle", m3);
            case SLOPING_SHOULDERED -> BottleScaling.scaled(SLOPING_SHOULDERED_750, "sloping-shouldered bottle", m3);
            case TALL_SLIM -> BottleScaling.scaled(TALL_SLIM_750, "tall slim bottle", m3);
            case SPARKLING -> BottleScaling.scaled(SPARKLING_750, "sparkling wine bottle", m3);
        };
    }

    /**
     * The bottles of this table that were drawn, not scaled.
     *
     * @return the vessels, unmodifiable
     */
    public static List<Vessel> drawn() {
        return DRAWN_BOTTLES;
    }
}
