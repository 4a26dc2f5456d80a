/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;

/**
 * A hand that holds a vessel: the bowl of a glass, the neck of a bottle, in other surroundings.
 *
 * <p><b>What passes heat.</b> Skin that is 33 °C when it touches nothing gives heat to a stated area of the wall between two heights,
 * through what tissue and blood conduct. The conductance is the middle, 60 W/(m² K), of the range that 5.28 + 1.163 W/(m² K) per L/(h m²) of
 * blood gives from skin at rest (6.3 L/(h m²), 13 W/(m² K)) to skin that is as warm as can be (90, 110): A. P. Gagge, A. P. Fobelets and L. G.
 * Berglund, ASHRAE Trans. 92 (1986) 709, model of the whole body, from memory. Skin that is cooled shuts its vessels: that it then
 * gives less is inside the uncertainty, ±70 %, on the factor {@link Multipliers#HAND}. The contact itself, some 1000 W/(m² K), is
 * left out, as is the heat that the skin gives off in the first minute while it is cooled. The rest of the wall is in the
 * surroundings as without a hand; the back of the hand shades nothing.
 *
 * <p>The palm with its fingers is some 150 cm² (0.8 % of the body's surface, rule of burns, from memory); around a bowl or a neck about
 * half of it touches, two fingers and a thumb at a stem or foot next to nothing (own estimates).
 *
 * <p><b>Cautions.</b> A glass too hot to be held is too hot for this description: the hand is not warmed by it. Skin that stays on
 * metal below −15 °C or above 45 °C to 60 °C is hurt, by time and material (ISO 13732-1 and -3, from memory).
 *
 * <p>One hand is around one vessel at a time. Immutable.
 *
 * <p>Theory manual, equation (4.13).
 */
public final class Hand implements Surroundings {

    private static final Source GAGGE = new Source(
            "gagge-1986",
            "A. P. Gagge, A. P. Fobelets and L. G. Berglund, A standard predictive index of human response to the thermal"
                    + " environment, ASHRAE Trans. 92 (1986) 709-731 (figures from memory); the middle of the range is ours",
            Source.Kind.PUBLISHED);

    /** From the inside of a hand to its skin. */
    static final Constant CONDUCTANCE =
            new Constant("conductance of a hand", 60, "W/(m² K)", Uncertainty.rectangularRelative(0.7), GAGGE);

    /** Skin of a hand that touches nothing. */
    static final Constant SKIN = new Constant(
            "temperature of the skin of a hand",
            306.15,
            "K",
            Uncertainty.rectangular(3),
            new Source("hand-skin", "skin of hands in comfort, from memory", Source.Kind.OWN_ASSUMPTION));

    private static final ValidityRange SKINS = new ValidityRange("temperature of skin", 283.15, 313.15, "K");
    private static final double LEAST_M2 = 1e-4;
    private static final double MOST_M2 = 0.1;
    private static final double HIGHEST_M = 2;

    private final double areaM2;
    private final double fromM;
    private final double toM;
    private final double skinK;
    private final Surroundings outside;

    private Hand(double areaM2, double fromM, double toM, double skinK, Surroundings outside) {
        this.areaM2 = areaM2;
        this.fromM = fromM;
        this.toM = toM;
        this.skinK = skinK;
        this.outside = outside;
    }

    /**
     * A hand of 33 °C that holds a vessel.
     *
     * @param area area of wall that it touches, 1 cm² to 1000 cm²; never more than the wall has between the heights
     * @param from lower height of the touched wall above the base, 0 to less than 2 m; at or above the top of the vessel it is refused
     *     when the run is made
     * @param to upper height, above the lower one, to 2 m; what is above the top of the vessel is cut off
     * @param outside what it is in: any surroundings but a bath or a running tap
     * @return the hand
     * @throws IllegalArgumentException if the surroundings are a bath or a running tap
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Hand holding(Quantity<Area> area, Quantity<Length> from, Quantity<Length> to, Surroundings outside) {
        double touched = SiValues.areaM2(area, "area that a hand touches", LEAST_M2, MOST_M2);
        double low = SiValues.lengthM(from, "lower height of a hand", 0, HIGHEST_M);
        double high = SiValues.lengthM(to, "upper height of a hand", Math.nextUp(low), HIGHEST_M);
        return new Hand(touched, low, high, SKIN.value(), DryGear.require("a hand", outside));
    }

    /**
     * The same hand, colder or warmer.
     *
     * @param temperature temperature of its skin when it touches nothing, 10 °C to 40 °C
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public Hand withSkin(Quantity<Temperature> temperature) {
        return new Hand(
                areaM2,
                fromM,
                toM,
                SiValues.temperatureK(temperature, SKINS.quantity(), SKINS.low(), SKINS.high()),
                outside);
    }

    /**
     * Sources of what the description assumes.
     *
     * @return constants with their uncertainty
     */
    public static List<Constant> assumptions() {
        return List.of(CONDUCTANCE, SKIN);
    }

    @Override
    public Medium open(String id, double originS) {
        Boundary skin = Boundary.constant(id + " skin", skinK);
        Medium around = outside.open(id + " room", originS);
        return new Medium() {
            @Override
            public List<Node> nodes() {
                return around.nodes();
            }

            @Override
            public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
                return 0;
            }

            @Override
            public List<Path> paths(List<Occupant> occupants) {
                Occupant.requireAlone(occupants, "hand " + id);
                return around.paths(occupants);
            }

            @Override
            public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
                Occupant.requireAlone(occupants, "hand " + id);
                double part = EndFaces.isEnd(patch) ? 0 : touchedPart(patch, vessel);
                List<Face> faces = new ArrayList<>();
                if (part > Span.LEAST_PART) {
                    HeatLaw law = HeatLaw.conductance(CONDUCTANCE.value() * part * patch.outerAreaM2());
                    faces.add(Face.whole(
                                    id, List.of(Link.of(skin, "conduction", law).scaledBy(Multipliers.HAND)))
                            .as(part));
                }
                if (1 - part > Span.LEAST_PART) {
                    double rest = 1 - part;
                    around.faces(rest == 1 ? patch : patch.part(rest), vessel, occupants)
                            .forEach(face -> faces.add(face.as(rest * face.part())));
                }
                return faces;
            }

            @Override
            public List<String> notes(List<Occupant> occupants) {
                return around.notes(occupants);
            }
        };
    }

    /** Part of a patch of the side that the hand touches. */
    private double touchedPart(WallPatch patch, Occupant vessel) {
        Span all = Span.of(patch, vessel);
        Span held = new Span(fromM, Math.min(toM, vessel.lengthM()));
        double reach = held.areaM2(vessel.vessel().profile());
        if (reach == 0) {
            throw new IllegalArgumentException("hand from " + fromM + " m on vessel " + vessel.id()
                    + ": expected a height below the vessel's " + vessel.lengthM() + " m");
        }
        double share = Math.min(1, areaM2 / reach);
        return share * held.partOf(all, vessel.vessel().profile());
    }
}
