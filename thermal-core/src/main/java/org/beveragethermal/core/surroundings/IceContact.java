/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * How ice without water touches a wall: part of the wall through a film of melt water, the rest across gaps of air.
 *
 * <p>A block touches a round wall with a face, an edge or a corner, taken as equally frequent; melt water fills the gap
 * between the two where it is narrower than {@link #BRIDGED_GAP}. On a cylinder of radius R a face of side a is bridged over
 * the part 2 √(2 R ε)/a of its width, an edge over 2 ε/a of the block, a corner over the area (3 √3/2) ε² of a cube stood on
 * its corner. Beside the blocks there are the gaps of the pile. This estimate is ours; a factor of two either way is
 * honest, because nothing presses the ice against an upright wall and what melts is not always followed up.
 *
 * <p>Theory manual, equation (4.11).
 */
final class IceContact {

    private static final Source OWN = new Source(
            "contact-of-ice",
            "own geometric estimate of blocks of ice beside a round wall",
            Source.Kind.OWN_ASSUMPTION);
    private static final Source FILM = new Source(
            "melt-film",
            "own assumption; layers in close-contact melting stay typically below 1 mm (G. Ziskind, Y. Kozak 2018, as told"
                    + " by Y. Kozak, Theoretical analysis of close-contact melting on superhydrophobic surfaces, J. Fluid"
                    + " Mech. (2022), introduction)",
            Source.Kind.OWN_ASSUMPTION);

    /** Mean thickness of the melt water between ice and wall where they touch. */
    static final Constant MELT_FILM =
            new Constant("thickness of the melt film", 0.5e-3, "m", Uncertainty.rectangular(0.4e-3), FILM);

    /** Gap up to which melt water bridges ice and wall; less than the capillary length of water, 2.7 mm. */
    static final Constant BRIDGED_GAP =
            new Constant("gap bridged by melt water", 1e-3, "m", Uncertainty.rectangular(0.5e-3), OWN);

    /** Mean width of the gaps of air beside the contacts, as a part of a block's side. */
    static final Constant GAP_PART =
            new Constant("width of air gaps per side of a block", 0.25, "1", Uncertainty.rectangular(0.1), OWN);

    /** Emissivity of ice, 0.97 (from memory, Incropera table A.11: 0.95 to 0.98). */
    private static final double ICE_EMISSIVITY = 0.97;

    private static final double FREEZING_K = 273.15;
    /** The air of the gaps is taken at this temperature [K]; ±10 K change its conductivity by 3 %. */
    private static final double GAP_K = 278.15;
    /** A block's three ways to touch: face, edge, corner. */
    private static final double WAYS = 3;

    private static final double CORNER_AREA = 1.5 * Math.sqrt(3);

    private final double givenFraction;
    private final double filmM;
    private final double sideM;
    private final double solidFraction;

    /** Contact of blocks; the fraction is estimated if it is NaN. */
    IceContact(double givenFraction, double filmM, double sideM, double solidFraction) {
        this.givenFraction = givenFraction;
        this.filmM = filmM;
        this.sideM = sideM;
        this.solidFraction = solidFraction;
    }

    static List<Constant> assumptions() {
        return List.of(MELT_FILM, BRIDGED_GAP, GAP_PART);
    }

    /** Part of a wall beside ice that it touches; an infinite radius is a flat wall. */
    double fraction(double wallRadiusM) {
        if (!Double.isNaN(givenFraction)) {
            return givenFraction;
        }
        double gap = BRIDGED_GAP.value();
        double face = Math.min(1, 2 * Math.sqrt(2 * wallRadiusM * gap) / sideM);
        double edge = Math.min(1, 2 * gap / sideM);
        double corner = Math.min(1, CORNER_AREA * gap * gap / (sideM * sideM));
        return solidFraction * (face + edge + corner) / WAYS;
    }

    /** Through the melt film [W/(m² K)]. */
    double filmCoefficient() {
        return Water.liquid().thermalConductivity(FREEZING_K) / filmM;
    }

    /** Conduction across the gaps [W/(m² K)]; convection in gaps of a few millimetres does not start. */
    double gapCoefficient() {
        return DryAir.thermalConductivity(GAP_K) / (GAP_PART.value() * sideM);
    }

    /** Emissivity of a wall and the ice that faces it across the gaps, as between parallel planes. */
    static double exchangeEmissivity(double wallEmissivity) {
        return RadiativeFilm.facing(wallEmissivity, ICE_EMISSIVITY);
    }
}
