/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import java.util.List;
import java.util.stream.Collectors;
import org.beveragethermal.materials.provenance.Constant;

/**
 * Solids of vessels, gear and surroundings. Each figure is the middle of what its sources say, with an uncertainty that
 * reaches all of them; {@link Constant#source()} names the sources with the row and the number read in each. What no
 * table was found for is remembered, and its {@linkplain org.beveragethermal.materials.provenance.Source#kind() kind}
 * says so.
 *
 * <p>Figures are for room temperature; {@link Solid#temperatures()} says how far they may be carried.
 */
public final class Solids {
    private static final List<Solid> ALL = List.of(
            SolidTable.SODA_LIME_GLASS,
            SolidTable.BOROSILICATE_GLASS,
            SolidTable.LEAD_CRYSTAL,
            SolidTable.STAINLESS_STEEL,
            SolidTable.ALUMINIUM,
            SolidTable.LACQUERED_ALUMINIUM,
            SolidTable.PET,
            SolidTable.HDPE,
            SolidTable.POLYPROPYLENE,
            SolidTable.CORK,
            SolidTable.WOOD,
            SolidTable.TERRACOTTA,
            SolidTable.WET_TERRACOTTA,
            SolidTable.PORCELAIN,
            SolidTable.EXPANDED_POLYSTYRENE,
            SolidTable.EXTRUDED_POLYSTYRENE,
            SolidTable.ELASTOMERIC_FOAM,
            SolidTable.POLYURETHANE_FOAM,
            SolidTable.NEOPRENE_RUBBER,
            SolidTable.NEOPRENE_FOAM,
            SolidTable.COTTON,
            SolidTable.WET_COTTON,
            SolidTable.FELT,
            SolidTable.PAPER,
            SolidTable.WET_PAPER,
            SolidTable.CARDBOARD,
            SolidTable.DRY_SAND,
            SolidTable.DAMP_SAND,
            SolidTable.WET_SAND,
            SolidTable.DRY_CLAY,
            SolidTable.DAMP_CLAY,
            SolidTable.WET_CLAY,
            SolidTable.GRANITE,
            SolidTable.CRUSHED_ICE,
            SolidTable.FRESH_SNOW,
            SolidTable.COMPACTED_SNOW,
            SolidTable.FROZEN_GEL,
            SolidTable.THAWED_GEL);

    private Solids() {}

    /**
     * Soda-lime glass, of which bottles are made.
     *
     * @return the solid
     */
    public static Solid sodaLimeGlass() {
        return SolidTable.SODA_LIME_GLASS;
    }

    /**
     * Stainless steel, of which ice buckets are made. Its emissivity depends on the finish and is poorly known.
     *
     * @return the solid
     */
    public static Solid stainlessSteel() {
        return SolidTable.STAINLESS_STEEL;
    }

    /**
     * Borosilicate glass, of which laboratory ware and heat-proof carafes are made.
     *
     * @return the solid
     */
    public static Solid borosilicateGlass() {
        return SolidTable.BOROSILICATE_GLASS;
    }

    /**
     * Lead crystal, of which decanters and cut glasses are made; its conductivity is remembered.
     *
     * @return the solid
     */
    public static Solid leadCrystal() {
        return SolidTable.LEAD_CRYSTAL;
    }

    /**
     * Bare aluminium.
     *
     * @return the solid
     */
    public static Solid aluminium() {
        return SolidTable.ALUMINIUM;
    }

    /**
     * Aluminium under ink and lacquer, of which cans are made; its colour decides what the sun does.
     *
     * @return the solid
     */
    public static Solid lacqueredAluminium() {
        return SolidTable.LACQUERED_ALUMINIUM;
    }

    /**
     * Polyethylene terephthalate, of which soft-drink bottles are made. Tables of its conductivity differ by a factor
     * of three.
     *
     * @return the solid
     */
    public static Solid pet() {
        return SolidTable.PET;
    }

    /**
     * High-density polyethylene, of which boxes and crates are made.
     *
     * @return the solid
     */
    public static Solid hdpe() {
        return SolidTable.HDPE;
    }

    /**
     * Polypropylene, of which cups, buckets and closures are made.
     *
     * @return the solid
     */
    public static Solid polypropylene() {
        return SolidTable.POLYPROPYLENE;
    }

    /**
     * Cork, of stoppers and coasters.
     *
     * @return the solid
     */
    public static Solid cork() {
        return SolidTable.CORK;
    }

    /**
     * Wood of tables and barrels, across the grain.
     *
     * @return the solid
     */
    public static Solid wood() {
        return SolidTable.WOOD;
    }

    /**
     * Dry terracotta, of which wine coolers are made.
     *
     * @return the solid
     */
    public static Solid terracotta() {
        return SolidTable.TERRACOTTA;
    }

    /**
     * Terracotta soaked with water, about 22 % of its volume, by the rule of {@link #wetted}; on bricks the rule holds
     * within 10 %.
     *
     * @return the solid
     */
    public static Solid wetTerracotta() {
        return SolidTable.WET_TERRACOTTA;
    }

    /**
     * Porcelain and glazed ceramic, of cups and mugs.
     *
     * @return the solid
     */
    public static Solid porcelain() {
        return SolidTable.PORCELAIN;
    }

    /**
     * Expanded polystyrene, of which light boxes are made.
     *
     * @return the solid
     */
    public static Solid expandedPolystyrene() {
        return SolidTable.EXPANDED_POLYSTYRENE;
    }

    /**
     * Extruded polystyrene, of boards and boxes.
     *
     * @return the solid
     */
    public static Solid extrudedPolystyrene() {
        return SolidTable.EXTRUDED_POLYSTYRENE;
    }

    /**
     * Flexible elastomeric foam, black, of pipe insulation and sleeves.
     *
     * @return the solid
     */
    public static Solid elastomericFoam() {
        return SolidTable.ELASTOMERIC_FOAM;
    }

    /**
     * Polyurethane foam, inside the walls of hard boxes.
     *
     * @return the solid
     */
    public static Solid polyurethaneFoam() {
        return SolidTable.POLYURETHANE_FOAM;
    }

    /**
     * Solid neoprene.
     *
     * @return the solid
     */
    public static Solid neoprene() {
        return SolidTable.NEOPRENE_RUBBER;
    }

    /**
     * Cellular neoprene, of which bottle sleeves are made.
     *
     * @return the solid
     */
    public static Solid neopreneFoam() {
        return SolidTable.NEOPRENE_FOAM;
    }

    /**
     * Dry cotton cloth or towelling.
     *
     * @return the solid
     */
    public static Solid cotton() {
        return SolidTable.COTTON;
    }

    /**
     * Wet, wrung cotton cloth, six tenths of its volume water, by the rule of {@link #wetted}.
     *
     * @return the solid
     */
    public static Solid wetCotton() {
        return SolidTable.WET_COTTON;
    }

    /**
     * Felt of wool or hair.
     *
     * @return the solid
     */
    public static Solid felt() {
        return SolidTable.FELT;
    }

    /**
     * Dry paper in layers.
     *
     * @return the solid
     */
    public static Solid paper() {
        return SolidTable.PAPER;
    }

    /**
     * Wet paper, half of its volume water, by the rule of {@link #wetted}.
     *
     * @return the solid
     */
    public static Solid wetPaper() {
        return SolidTable.WET_PAPER;
    }

    /**
     * Corrugated cardboard of boxes, hollows included.
     *
     * @return the solid
     */
    public static Solid cardboard() {
        return SolidTable.CARDBOARD;
    }

    /**
     * Dry sand: dried, not merely fit for building, which conducts two to three times as well.
     *
     * @return the solid
     */
    public static Solid drySand() {
        return SolidTable.DRY_SAND;
    }

    /**
     * Sand with 5 to 12 % of its dry mass in water.
     *
     * @return the solid
     */
    public static Solid dampSand() {
        return SolidTable.DAMP_SAND;
    }

    /**
     * Sand with its pores full of water, 20 to 25 % of its dry mass.
     *
     * @return the solid
     */
    public static Solid wetSand() {
        return SolidTable.WET_SAND;
    }

    /**
     * Dry clay soil.
     *
     * @return the solid
     */
    public static Solid dryClay() {
        return SolidTable.DRY_CLAY;
    }

    /**
     * Clay soil with 5 to 12 % of its dry mass in water.
     *
     * @return the solid
     */
    public static Solid dampClay() {
        return SolidTable.DAMP_CLAY;
    }

    /**
     * Clay soil with its pores full of water, 20 to 25 % of its dry mass.
     *
     * @return the solid
     */
    public static Solid wetClay() {
        return SolidTable.WET_CLAY;
    }

    /**
     * Granite, of which table tops and chilling stones are made.
     *
     * @return the solid
     */
    public static Solid granite() {
        return SolidTable.GRANITE;
    }

    /**
     * Ice in small pieces with air between them, as a bulk; solid ice is {@link Ice}.
     *
     * @return the solid
     */
    public static Solid crushedIce() {
        return SolidTable.CRUSHED_ICE;
    }

    /**
     * Fresh or soft snow.
     *
     * @return the solid
     */
    public static Solid freshSnow() {
        return SolidTable.FRESH_SNOW;
    }

    /**
     * Snow pressed together by hand or by lying.
     *
     * @return the solid
     */
    public static Solid compactedSnow() {
        return SolidTable.COMPACTED_SNOW;
    }

    /**
     * A water-based gel pack: what it is frozen and thawed, and the heat of its melting. Its figures are remembered,
     * but for the emissivity of the bag and the upper end of the latent heat, which is that of water.
     *
     * @return the latent solid
     */
    public static LatentSolid gelPack() {
        return SolidTable.GEL_PACK;
    }

    /**
     * A porous solid some of whose air has given way to water, by a rule of ours: masses and heat capacities add up;
     * the conductivity is the geometric mean of solid, water and air weighted by their volumes, so that water in place
     * of air raises it by the ratio of the two (23) to the power of the volume of water. The conductivity carries 40 %,
     * rectangular, beside what the dry one and the fraction carry; fired clay is known to obey the rule within 10 %.
     * Not for ground, concrete and other grains that water bridges: there a little of it does far more. The emissivity
     * is that of a film of water; how much sunlight it takes up is not known, wetting darkens.
     *
     * @param dry the dry solid, bulk, with air in its pores
     * @param name what the wet one is called; not blank
     * @param waterVolumeFraction volume of water per volume of the whole, 0.01 to 0.95; the caller sees to it that the
     *     pores hold it
     * @return the wet solid, for 0 to 60 °C
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside its range, or the wet
     *     solid would be outside those of {@link Solid}
     * @throws IllegalArgumentException if the name is blank
     */
    public static Solid wetted(Solid dry, String name, Constant waterVolumeFraction) {
        return Wetting.wet(dry, name, waterVolumeFraction, Wetting.DOUBT);
    }

    /**
     * All solids of this table.
     *
     * @return the solids, unmodifiable; a gel pack as its frozen and its thawed state
     */
    public static List<Solid> all() {
        return ALL;
    }

    /**
     * The solid of a name.
     *
     * @param name name of one of {@link #all()}, in any case, for example {@code dry terracotta}
     * @return the solid
     * @throws IllegalArgumentException if there is none; the message lists the names there are
     */
    public static Solid named(String name) {
        return ALL.stream()
                .filter(solid -> solid.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("solid '" + name + "': expected one of "
                        + ALL.stream().map(Solid::name).collect(Collectors.joining(", "))));
    }
}
