/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;

/**
 * The table of generic vessels.
 *
 * <p>No standard gives these shapes, and printed figures disagree (a wall of 4 mm printed beside a mass that implies
 * 2.9 mm). Each vessel here was drawn by this project inside the ranges of height, diameter, side wall and empty mass
 * that are common in the trade, so that the nominal volume of a bottle of 750 mL leaves 10 to 20 mL of headspace to the brim at
 * 20 °C, and the mass is density times the volume of the wall. A real vessel may differ: the diameter by 10 % (2 to 3 % where a
 * standard gives it), the mass by 25 %, rectangular, from vessel to vessel. The {@linkplain Vessel#dimensionsSource() source} of
 * the dimensions says what each rests on.
 *
 * <p>The stem and foot of a glass, the chimes of a keg and the handle of a cup are {@linkplain Vessel#outerParts() outer parts},
 * no part of the thermal wall. Double-walled vacuum flasks are not in the table: one wall of one solid cannot stand for two walls
 * and a vacuum, and no published heat loss was found to make an effective one from.
 */
public final class Vessels {
    private static final double M3_PER_ML = 1e-6;
    private static final double SMALLEST_M3 = 100e-6;
    private static final double LARGEST_M3 = 15e-3;
    /** Two volumes closer than this are one, whatever units they were given in. */
    private static final double SAME_VOLUME = 1e-9;

    private Vessels() {}

    /** Scaling takes some milliseconds: done when the whole table is first asked for. */
    private static final class Whole {
        private static final List<Vessel> TABLE = table();

        private static List<Vessel> table() {
            List<Vessel> all = new ArrayList<>();
            for (VesselShape shape : VesselShape.values()) {
                for (int ml : VesselTable.USUAL_ML.getOrDefault(shape, List.of())) {
                    all.add(drawnOrScaled(shape, ml * M3_PER_ML));
                }
                VesselTable.FIXED.stream().filter(v -> v.shape() == shape).forEach(all::add);
            }
            return List.copyOf(all);
        }
    }

    /**
     * High-shouldered bottle of 750 mL: 305 mm high, 75 mm in diameter.
     *
     * @return the vessel
     */
    public static Vessel highShouldered750() {
        return VesselTable.HIGH_SHOULDERED_750;
    }

    /**
     * Sloping-shouldered bottle of 750 mL: 298 mm high, 82.6 mm in diameter.
     *
     * @return the vessel
     */
    public static Vessel slopingShouldered750() {
        return VesselTable.SLOPING_SHOULDERED_750;
    }

    /**
     * Tall slim bottle of 750 mL: 335 mm high, 76 mm in diameter.
     *
     * @return the vessel
     */
    public static Vessel tallSlim750() {
        return VesselTable.TALL_SLIM_750;
    }

    /**
     * Sparkling wine bottle of 750 mL: 312 mm high, 88.4 mm in diameter, thick-walled.
     *
     * @return the vessel
     */
    public static Vessel sparkling750() {
        return VesselTable.SPARKLING_750;
    }

    /**
     * High-shouldered bottle of 1.5 L: 352 mm high, 102.4 mm in diameter.
     *
     * @return the vessel
     */
    public static Vessel magnum() {
        return VesselTable.MAGNUM;
    }

    /**
     * The wine-tasting glass of ISO 3591: 215 mL to the brim, a serving of 50 mL, 65 mm wide; stem and foot are outer parts.
     *
     * @return the vessel
     */
    public static Vessel tastingGlass() {
        return VesselTable.TASTING_GLASS_50;
    }

    /**
     * A vessel by shape and volume, since the trade's names of large formats mean different volumes for different shapes.
     *
     * <p>Bottles for wine and spirits (high-shouldered, sloping-shouldered, tall slim, sparkling) may have any volume from 100 mL to
     * 15 L: the five drawn ones are returned as drawn, any other is scaled from the bottle of 750 mL by a rule of ours, which the
     * {@linkplain Vessel#dimensionsSource() source} of its dimensions says; {@link NominalVolumes} lists those allowed for prepacked
     * drinks in the European Union. Vessels of other shapes exist in the volumes of the table only.
     *
     * @param shape shape of the vessel
     * @param nominalVolume nominal volume at 20 °C; of a vessel to drink from, the usual serving
     * @return the vessel
     * @throws OutOfRangeException if the shape is scaled and the volume outside 100 mL to 15 L
     * @throws IllegalArgumentException if the table has no vessel of that shape and volume; the message lists what there is; or if
     *     the quantity is null, of another dimension or not finite
     */
    public static Vessel of(VesselShape shape, Quantity<Volume> nominalVolume) {
        if (VesselTable.SCALED_FROM.containsKey(shape)) {
            return drawnOrScaled(shape, SiValues.volumeM3(nominalVolume, "nominal volume", SMALLEST_M3, LARGEST_M3));
        }
        double m3 = SiValues.volumeM3(nominalVolume, "nominal volume", Double.MIN_VALUE, Double.MAX_VALUE);
        return all(shape).stream()
                .filter(v -> sameVolume(v, m3))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        shape.label() + " of " + BottleScaling.volumeName(m3) + ": expected " + volumesOf(shape)));
    }

    private static String volumesOf(VesselShape shape) {
        List<Vessel> there = all(shape);
        return there.isEmpty()
                ? "one of the shapes "
                        + all().stream().map(v -> v.shape().name()).distinct().collect(Collectors.joining(", "))
                : "one of "
                        + there.stream()
                                .map(v -> BottleScaling.volumeName(v.nominalVolumeM3()))
                                .collect(Collectors.joining(", "));
    }

    private static Vessel drawnOrScaled(VesselShape shape, double m3) {
        for (Vessel drawn : VesselTable.DRAWN_BOTTLES) {
            if (drawn.shape() == shape && sameVolume(drawn, m3)) {
                return drawn;
            }
        }
        return BottleScaling.scaled(Objects.requireNonNull(VesselTable.SCALED_FROM.get(shape)), m3);
    }

    private static boolean sameVolume(Vessel vessel, double m3) {
        return Math.abs(m3 / vessel.nominalVolumeM3() - 1) < SAME_VOLUME;
    }

    /**
     * The bottles of this table that were drawn for their volume and from which others are scaled, and the magnum.
     *
     * @return the vessels, unmodifiable
     */
    public static List<Vessel> drawn() {
        return VesselTable.DRAWN_BOTTLES;
    }

    /**
     * All vessels of the table, by shape and volume: the drawn ones, and bottles scaled to the volumes that are usual.
     *
     * @return the vessels, unmodifiable
     */
    public static List<Vessel> all() {
        return Whole.TABLE;
    }

    /**
     * The vessels of one shape.
     *
     * @param shape the shape
     * @return the vessels, by volume, unmodifiable; empty for {@link VesselShape#OTHER}
     */
    public static List<Vessel> all(VesselShape shape) {
        return all().stream().filter(v -> v.shape() == shape).toList();
    }
}
