/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;

/**
 * What closes a vessel: a plug of one solid as wide as the mouth, through which heat passes along its length.
 *
 * <p>A skirt that grips the neck, linings and wires are left out. The lengths of the typical ones are from memory.
 *
 * @param name what it is, by its trade term; not blank
 * @param solid what it is made of; where it has parts, the one that resists most
 * @param lengthM how far heat goes through it, m, greater than 0, at most 1
 * @param reachM how far it reaches into the neck, m, 0 for a cap, at most its length
 * @param lengthUncertainty how far the length of a real one may differ
 * @param source where the lengths come from
 */
public record Closure(
        String name, Solid solid, double lengthM, double reachM, Uncertainty lengthUncertainty, Source source) {

    private static final double LONGEST_M = 1;
    private static final Source MEMORY = new Source(
            "closures", "lengths and thicknesses of closures of drinks, from memory", Source.Kind.FROM_MEMORY);
    private static final Source USER = new Source("user", "handed in by the user", Source.Kind.OWN_ASSUMPTION);

    private static final Closure NATURAL_CORK = usual("natural cork", Solids.cork(), 0.045, 0.045, 0.15);
    private static final Closure SPARKLING_CORK = usual("sparkling wine cork", Solids.cork(), 0.048, 0.025, 0.15);
    private static final Closure CROWN_CORK = usual("crown cork", Solids.stainlessSteel(), 0.000_22, 0, 0.2);
    private static final Closure SCREW_CAP = usual("screw cap", Solids.expandedPolystyrene(), 0.002, 0, 0.5);
    private static final Closure PLASTIC_CAP = usual("plastic screw cap", Solids.hdpe(), 0.002, 0, 0.3);
    private static final Closure CAN_END = usual("can end", Solids.lacqueredAluminium(), 0.000_22, 0, 0.15);
    private static final Closure FITTING = usual("steel fitting", Solids.stainlessSteel(), 0.006, 0, 0.5);
    private static final Closure STOPPER = usual("plastic stopper", Solids.polypropylene(), 0.025, 0.015, 0.5);

    /**
     * Checks the parts.
     *
     * @param name what it is; not blank
     * @param solid what it is made of
     * @param lengthM how far heat goes through it, m, greater than 0, at most 1
     * @param reachM how far it reaches into the neck, m, 0 to its length
     * @param lengthUncertainty how far the length of a real one may differ
     * @param source where the lengths come from
     * @throws OutOfRangeException if a length is outside its range
     * @throws IllegalArgumentException if the name is blank or a length is NaN
     */
    public Closure {
        if (name.isBlank()) {
            throw new IllegalArgumentException("closure: expected a name, got a blank one");
        }
        require("length of " + name, lengthM, Double.MIN_VALUE, LONGEST_M);
        require("reach of " + name + " into the neck", reachM, 0, lengthM);
    }

    private static void require(String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw OutOfRangeException.refusal(what, value, low, high, "m", "");
        }
    }

    private static Closure usual(String name, Solid solid, double lengthM, double reachM, double doubt) {
        return new Closure(name, solid, lengthM, reachM, Uncertainty.rectangularRelative(doubt), MEMORY);
    }

    /**
     * A closure of the user's own, its length taken as exact.
     *
     * @param name what it is; not blank
     * @param solid what it is made of
     * @param length how far heat goes through it, greater than 0, at most 1 m
     * @param reach how far it reaches into the neck, 0 to its length
     * @return the closure
     * @throws OutOfRangeException if a length is outside its range
     * @throws IllegalArgumentException if the name is blank or a quantity is null, not a length or not finite
     */
    public static Closure of(String name, Solid solid, Quantity<Length> length, Quantity<Length> reach) {
        double lengthM = SiValues.lengthM(length, "length of " + name, Double.MIN_VALUE, LONGEST_M);
        double reachM = SiValues.lengthM(reach, "reach of " + name + " into the neck", 0, lengthM);
        return new Closure(name, solid, lengthM, reachM, Uncertainty.exact(), USER);
    }

    /**
     * Cork of a still wine, 45 mm long, all of it in the neck.
     *
     * @return the closure
     */
    public static Closure naturalCork() {
        return NATURAL_CORK;
    }

    /**
     * Cork of a sparkling wine, 48 mm long, 25 mm of it in the neck.
     *
     * @return the closure
     */
    public static Closure sparklingCork() {
        return SPARKLING_CORK;
    }

    /**
     * Crown cork of a beer bottle: sheet of 0.22 mm. Its lining is left out and its tinplate taken as stainless steel; in either, the
     * air on both sides resists a thousand times more.
     *
     * @return the closure
     */
    public static Closure crownCork() {
        return CROWN_CORK;
    }

    /**
     * Screw cap of a wine bottle. Its liner, 2 mm of foam, resists; it is taken to conduct as expanded polystyrene does, and the
     * aluminium round it is left out.
     *
     * @return the closure
     */
    public static Closure screwCap() {
        return SCREW_CAP;
    }

    /**
     * Screw cap of a plastic bottle, 2 mm of high-density polyethylene.
     *
     * @return the closure
     */
    public static Closure plasticScrewCap() {
        return PLASTIC_CAP;
    }

    /**
     * The usual closure of a shape: a cork for bottles of wine, a crown cork for beer, the end of a can, a cap, fitting or stopper for
     * the rest. Common practice, no source.
     *
     * @param shape the shape
     * @return its usual closure; for a shape that usually stands open or is not known, a screw cap
     */
    public static Closure usual(VesselShape shape) {
        return switch (shape) {
            case HIGH_SHOULDERED, SLOPING_SHOULDERED, TALL_SLIM -> NATURAL_CORK;
            case SPARKLING -> SPARKLING_CORK;
            case LONG_NECK -> CROWN_CORK;
            case CAN -> CAN_END;
            case PLASTIC_BOTTLE -> PLASTIC_CAP;
            case KEG -> FITTING;
            case FLASK -> STOPPER;
            default -> SCREW_CAP;
        };
    }
}
