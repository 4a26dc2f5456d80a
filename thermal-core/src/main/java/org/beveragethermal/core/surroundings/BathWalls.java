/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.HorizontalCylinder;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.jspecify.annotations.Nullable;

/** What all baths share: loss through bucket wall and surface, and the film on the vessels in the water. */
final class BathWalls {

    /** Emissivity of water, 0.96 (from memory, Incropera table A.11). */
    private static final double WATER_EMISSIVITY = 0.96;

    /** Brine has an activity of 0.85 to 1, which is left out. */
    private static final double PURE_WATER = 1;

    private BathWalls() {}

    /** Water side of the open surface: large, so that the air side decides; our simplification [W/(m² K)]. */
    private static final double SURFACE_COEFFICIENT = 500;

    /** From bath water through the wetted side of the bucket to the room. */
    static Path side(
            String name, Node water, Bucket bucket, FillLevel level, AirMedium room, @Nullable AmountWeight share) {
        double area = bucket.circumferenceM() * level.depthM();
        List<Link> links = new ArrayList<>();
        links.add(Link.of(water, "conduction", HeatLaw.conductance(bucket.wallCoefficient() * area)));
        links.addAll(room.upright(area, level.depthM(), bucket.innerDiameterM(), bucket.emissivity()));
        return JunctionPath.of(name, shared(links, share));
    }

    /**
     * From bath water through its open surface to the room, whose vapour condenses on it or into which it evaporates if a humidity is
     * stated; the mass of that water, less than a gram per minute of a warm bucket, is not counted.
     */
    static Path surface(
            String name, Node water, Bucket bucket, FillLevel level, AirMedium room, @Nullable AmountWeight share) {
        List<Link> links = new ArrayList<>();
        links.add(Link.of(water, "conduction", HeatLaw.conductance(SURFACE_COEFFICIENT * level.freeAreaM2())));
        links.addAll(
                room.atWetSurfaces(PURE_WATER).level(level.freeAreaM2(), bucket.circumferenceM(), WATER_EMISSIVITY));
        return JunctionPath.of(name, shared(links, share));
    }

    /** Every link of a face scaled by the face's share of the area. */
    private static List<Link> shared(List<Link> links, @Nullable AmountWeight share) {
        return share == null
                ? links
                : links.stream().map(link -> link.weightedBy(share)).toList();
    }

    /**
     * Film between bath water and the wetted side of a vessel. A vessel that lies has the mean of a whole cylinder, on its
     * diameter, even where only a part of it is wetted.
     */
    static ConvectiveFilm film(WallPatch patch, double wettedHeightM, Fluid water, Agitation agitation) {
        return still(patch, wettedHeightM, water)
                .withStream(agitation.speedMPerS(), patch.diameterM(), CrossflowCylinder.CHURCHILL_BERNSTEIN);
    }

    /** The same in water that nothing moves but its density. */
    static ConvectiveFilm still(WallPatch patch, double wettedHeightM, Fluid water) {
        return patch.orientation() == Orientation.LYING_WALL
                ? ConvectiveFilm.free(patch.outerAreaM2(), patch.diameterM(), water, HorizontalCylinder.CHURCHILL_CHU)
                : ConvectiveFilm.free(patch.outerAreaM2(), wettedHeightM, water, VerticalPlate.CHURCHILL_CHU);
    }
}
