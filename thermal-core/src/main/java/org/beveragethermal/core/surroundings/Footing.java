/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import javax.measure.Quantity;
import org.beveragethermal.materials.provenance.ValidityRange;
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
}
