/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.FlatPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.materials.liquid.Water;

/** A stream in one run: a boundary below the waterline, air above it. */
final class StreamMedium implements Medium {

    /** Above this a vessel that nobody holds is in danger [m/s]; common practice for people wading, no source. */
    private static final double CARRIES_AWAY_M_PER_S = 0.5;

    private final String id;
    private final Stream stream;
    private final Boundary water;
    private final AirMedium air;
    private final Fluid fluid = Fluid.of(Water.liquid());

    StreamMedium(String id, Stream stream, double originS) {
        this.id = id;
        this.stream = stream;
        water = Boundary.varying(id + " water", stream.waterK().startingAt(originS));
        air = new AirMedium(id + " room", stream.above(), originS);
    }

    @Override
    public List<Node> nodes() {
        return List.of();
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return vessel.wettedM(stream.depthM());
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        return List.of();
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        Footing footing = EndFaces.footing(vessel, stream.depthM(), stream.bed());
        if (EndFaces.isCovered(patch, footing)) {
            return List.of();
        }
        double wetted = vessel.wettedM(stream.depthM());
        if (patch.middleM() > wetted) {
            return air.faces(patch, vessel, occupants);
        }
        Link link = EndFaces.isEnd(patch)
                ? EndFaces.inWater(water, patch, vessel, footing, fluid, stream.speedMPerS())
                : Link.of(water, "convection", side(patch, vessel, wetted));
        return List.of(Face.whole("stream", List.of(link.law() instanceof Film ? scaled(link) : link)));
    }

    private static Link scaled(Link link) {
        return link.scaledBy(Multipliers.STREAM_FILM);
    }

    private ConvectiveFilm side(WallPatch patch, Occupant vessel, double wettedM) {
        ConvectiveFilm still = BathWalls.still(patch, wettedM, fluid);
        boolean along = stream.isAlongFlow() && patch.orientation() == Orientation.LYING_WALL;
        return along
                ? still.withStream(stream.speedMPerS(), vessel.lengthM(), FlatPlate.LAMINAR)
                : still.withStream(stream.speedMPerS(), patch.diameterM(), CrossflowCylinder.CHURCHILL_BERNSTEIN);
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        return stream.speedMPerS() > CARRIES_AWAY_M_PER_S
                ? List.of(String.format(
                        Locale.ROOT,
                        "stream %s: at %.1f m/s the current carries away what is not held",
                        id,
                        stream.speedMPerS()))
                : List.of();
    }
}
