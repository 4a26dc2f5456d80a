/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.units.HeatTransferCoefficient;
import org.beveragethermal.materials.units.SiValues;

/**
 * What is under the end on which a vessel stands.
 *
 * @param support how the end meets it
 * @param coefficient conductance between the end and a conducting support [W/(m² K)], 0 for any other
 */
public record Footing(Support support, double coefficient) {

    private static final ValidityRange CONTACT = new ValidityRange("contact coefficient", 0.1, 1e5, "W/(m² K)");
    private static final double DRY_CONTACT = 250;
    private static final double NARROWEST_BASE_M = 0.005;
    private static final double WIDEST_BASE_M = 1;
    private static final Footing INSULATING = new Footing(Support.INSULATING, 0);
    private static final Footing OPEN = new Footing(Support.OPEN, 0);

    /** How an end meets what is under it. */
    public enum Support {
        /** It passes no heat. */
        INSULATING,
        /** The surroundings reach it from below. */
        OPEN,
        /** It touches something that has the temperature of the surroundings. */
        CONTACT
    }

    /**
     * Checks the coefficient.
     *
     * @param support how the end meets it
     * @param coefficient conductance per area of a conducting support [W/(m² K)], 0.1 to 1e5; 0 for any other
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the coefficient is outside its range
     * @throws IllegalArgumentException if a support that does not conduct has a coefficient
     */
    public Footing {
        if (support == Support.CONTACT) {
            CONTACT.require(coefficient, "footing");
        } else if (coefficient != 0) {
            throw new IllegalArgumentException(
                    "footing " + support + " with a coefficient of " + coefficient + " W/(m² K): expected 0");
        }
    }

    /**
     * Something that passes no heat, such as a wooden shelf, a cloth or the dry bottom of a box.
     *
     * @return the footing
     */
    public static Footing insulating() {
        return INSULATING;
    }

    /**
     * Nothing to speak of: the surroundings reach the end from below, as on a wire shelf.
     *
     * @return the footing
     */
    public static Footing open() {
        return OPEN;
    }

    /**
     * A conducting support that keeps the temperature of the surroundings, such as a metal plate or the bottom of a bucket.
     *
     * @param coefficient conductance between the end and the support per area of the end, 0.1 to 100,000 W/(m² K); dry glass on a flat
     *     plate touches in few points, and air of 0.1 mm between them conducts 250 W/(m² K) (own estimate, k/δ)
     * @return the footing
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the coefficient is outside its range
     */
    public static Footing contact(Quantity<HeatTransferCoefficient> coefficient) {
        return new Footing(
                Support.CONTACT,
                SiValues.heatTransferCoefficient(coefficient, "contact coefficient", CONTACT.low(), CONTACT.high()));
    }

    /**
     * A thick table top or floor: what stands on it gives heat into a solid that is wide and deep beside its base. Conductance per area of
     * a disc on a half-space, 8 k/(π D), in series with 250 W/(m² K) for the air between dry glass and a flat plate (own estimate, k/δ of 0.1
     * mm); the far end of the solid has the temperature of the surroundings.
     *
     * <p>It is the steady value: in the first minutes a heavy solid takes more, and a plate thinner than the base is wide, above all of
     * metal, takes less or more by how well it is cooled. On a base of 70 mm wood gives some 6 W/(m² K), granite some 70 W/(m² K), glass some
     * 30 W/(m² K). Source: shape factor 2 D of a disc, Incropera, table 4.1 (from memory).
     *
     * @param solid what the table top is made of
     * @param baseDiameter diameter of what stands on it, 5 mm to 1 m
     * @return the footing
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the diameter is outside its range
     */
    public static Footing tableTop(Solid solid, Quantity<Length> baseDiameter) {
        double diameter = SiValues.lengthM(baseDiameter, "diameter of a base", NARROWEST_BASE_M, WIDEST_BASE_M);
        double spreading = 8 * solid.thermalConductivity().value() / (Math.PI * diameter);
        return new Footing(Support.CONTACT, 1 / (1 / spreading + 1 / DRY_CONTACT));
    }
}
