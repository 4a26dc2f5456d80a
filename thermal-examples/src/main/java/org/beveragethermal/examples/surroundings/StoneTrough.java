/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Face;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Orientation;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.SunOptics;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WallPatch;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.units.SiValues;

/**
 * A round trough of stone, open at the top, in which a bottle stands with a narrow gap of air around it: chilled beforehand, it keeps a
 * bottle cool.
 *
 * <p>The stone is one node (its Biot number is small: 60 mm of granite in still air, 0.1). On its outside it is a wall in the
 * room like any other: moving air, sun and a clear sky reach it. Across the gap heat passes by conduction and radiation; air in a gap of a few millimetres does not
 * turn over. What of the vessel is higher than the trough, and its ends, are in the air of the room. The trough stands on something
 * that insulates.
 *
 * <p>It is an example of surroundings of a user's own, not part of the library. Temperatures −20 °C to 60 °C. Immutable.
 */
public final class StoneTrough implements Surroundings {

    private static final double COLDEST_K = 253.15;
    private static final double WARMEST_K = 333.15;
    private static final double LEAST_M = 0.01;
    private static final double MOST_M = 1;
    /** Air of the gap is taken at this temperature, and radiation across it is linear there [K]. */
    private static final double GAP_K = 283.15;

    private final Solid stone;
    private final double boreM;
    private final double heightM;
    private final double wallM;
    private final Air room;
    private final double startK;

    private StoneTrough(Solid stone, double boreM, double heightM, double wallM, Air room, double startK) {
        this.stone = stone;
        this.boreM = boreM;
        this.heightM = heightM;
        this.wallM = wallM;
        this.room = room;
        this.startK = startK;
    }

    /**
     * A trough as warm as its room.
     *
     * @param stone what it is made of
     * @param bore inner diameter, 10 mm to 1 m
     * @param height how high it reaches, 10 mm to 1 m
     * @param wall thickness of its wall, 10 mm to 1 m
     * @param room where it stands
     * @return the trough
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a length is outside its range
     */
    public static StoneTrough of(
            Solid stone, Quantity<Length> bore, Quantity<Length> height, Quantity<Length> wall, Air room) {
        return new StoneTrough(
                Objects.requireNonNull(stone, "stone"),
                SiValues.lengthM(bore, "bore of the trough", LEAST_M, MOST_M),
                SiValues.lengthM(height, "height of the trough", LEAST_M, MOST_M),
                SiValues.lengthM(wall, "wall of the trough", LEAST_M, MOST_M),
                Objects.requireNonNull(room, "room"),
                room.airK().at(0));
    }

    /**
     * The same trough, chilled or warmed beforehand.
     *
     * @param temperature temperature of the stone at the start, −20 °C to 60 °C
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public StoneTrough startingAt(Quantity<Temperature> temperature) {
        return new StoneTrough(
                stone,
                boreM,
                heightM,
                wallM,
                room,
                SiValues.temperatureK(temperature, "temperature of the trough", COLDEST_K, WARMEST_K));
    }

    /**
     * How much heat the stone stores.
     *
     * @return heat capacity [J/K]
     */
    public double heatCapacityJPerK() {
        double outer = boreM + 2 * wallM;
        double volume = Math.PI / 4 * (outer * outer - boreM * boreM) * heightM;
        return volume * stone.density().value() * stone.specificHeatCapacity().value();
    }

    @Override
    public Medium open(String id, double originS) {
        return new Live(id, originS);
    }

    /** The trough in one run. */
    private final class Live implements Medium {

        private final String id;
        private final Node block;
        private final Medium around;
        private final Occupant body;

        Live(String id, double originS) {
            this.id = id;
            block = Node.sensible(id + " stone", heatCapacityJPerK(), startK);
            around = room.open(id + " room", originS);
            body = Occupant.body(id, heightM, boreM + 2 * wallM);
        }

        /** From the middle of the wall to its surface, and from there to whatever the room has: air, walls, wind, sun, sky. */
        private List<Path> outside() {
            double diameter = boreM + 2 * wallM;
            double area = Math.PI * diameter * heightM;
            WallPatch side = new WallPatch(
                            0, heightM, area, diameter, stone.emissivity().value())
                    .withOptics(SunOptics.of(stone));
            Link half = Link.of(
                    block,
                    "conduction",
                    HeatLaw.conductance(stone.thermalConductivity().value() * area / (0.5 * wallM)));
            return around.faces(side, body, List.of(body)).stream()
                    .map(face -> face.joinedTo(half, id + " outside"))
                    .toList();
        }

        @Override
        public List<Node> nodes() {
            List<Node> nodes = new ArrayList<>(around.nodes());
            nodes.add(block);
            return nodes;
        }

        @Override
        public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
            return 0;
        }

        @Override
        public List<Path> paths(List<Occupant> occupants) {
            List<Path> paths = new ArrayList<>(around.paths(occupants));
            paths.addAll(outside());
            return paths;
        }

        @Override
        public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
            requireFits(vessel, occupants);
            double inside = patch.orientation() == Orientation.UPRIGHT_WALL ? partInside(patch) : 0;
            List<Face> faces = new ArrayList<>();
            if (inside > 0) {
                faces.add(Face.whole("stone", List.of(acrossTheGap(patch.part(inside))))
                        .as(inside));
            }
            if (inside < 1) {
                double rest = 1 - inside;
                around.faces(patch.part(rest), vessel, occupants).forEach(face -> faces.add(face.as(rest)));
            }
            return faces;
        }

        private double partInside(WallPatch patch) {
            double reach = Math.min(heightM, patch.highM()) - patch.lowM();
            return Math.min(1, Math.max(0, reach / (patch.highM() - patch.lowM())));
        }

        private Link acrossTheGap(WallPatch patch) {
            double gap = 0.5 * (boreM - patch.diameterM());
            double facing =
                    RadiativeFilm.facing(patch.emissivity(), stone.emissivity().value());
            double radiation =
                    new RadiativeFilm(1, facing).describe(GAP_K, GAP_K).coefficient();
            double coefficient = DryAir.thermalConductivity(GAP_K) / gap + radiation;
            return Link.of(block, "conduction", HeatLaw.conductance(coefficient * patch.outerAreaM2()));
        }

        private void requireFits(Occupant vessel, List<Occupant> occupants) {
            double diameter = 2 * vessel.vessel().profile().maxOuterRadiusM();
            if (occupants.size() > 1 || vessel.posture() == Posture.LYING || diameter >= boreM) {
                throw new IllegalArgumentException(
                        "vessel " + vessel.id() + ", " + vessel.posture() + ", of " + diameter
                                + " m in trough " + id + " with a bore of " + boreM
                                + " m: expected one vessel, one that stands, and a narrower one");
            }
        }

        @Override
        public List<String> notes(List<Occupant> occupants) {
            List<String> notes = new ArrayList<>(around.notes(occupants));
            notes.add("in " + id + " the stone is one store of heat, and its rim and floor pass none");
            return notes;
        }
    }
}
