/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.correlation.VerticalLayer;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.film.RadiativeFilm;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.materials.vessel.Profile;

/**
 * The ring of air between an upright vessel and a round wall that stands around it: convection of an upright layer of the mean width
 * beside each part of the vessel, with the curvature of conduction through an annulus, and radiation between concentric cylinders.
 *
 * <p>Theory manual, equation (3.14).
 *
 * @param id of the gear
 * @param radiusM inner radius of the wall [m]
 * @param heightM inner height of the wall [m]
 * @param emissivity of the wall's inner surface [-]
 * @param fluid the air
 */
record AnnularGap(String id, double radiusM, double heightM, double emissivity, Fluid fluid) {

    /** A vessel leaves at least as much air on each side [m]. */
    static final double NARROWEST_M = 1e-4;

    /** Heights over widths for which the law of the layer is published. */
    private static final double LOWEST_ASPECT = 5;

    private static final double HIGHEST_ASPECT = 110;
    private static final int SLICES = 6;

    /** Refuses a vessel that lies or is too wide. */
    void requireFits(Occupant vessel, String gear) {
        if (vessel.posture() == Posture.LYING) {
            throw new IllegalArgumentException("vessel " + vessel.id() + " lying in " + gear + " " + id
                    + ": expected one that stands upright or on its neck");
        }
        double width = 2 * vessel.vessel().profile().maxOuterRadiusM();
        double widest = 2 * (radiusM - NARROWEST_M);
        if (width > widest) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "vessel %s in %s %s: it is %.1f mm wide; expected at most %.1f mm, %.1f mm less than the inner diameter",
                    vessel.id(),
                    gear,
                    id,
                    1000 * width,
                    1000 * widest,
                    2000 * NARROWEST_M));
        }
    }

    /** How far up the vessel stands in it [m]. */
    double depthM(Occupant vessel) {
        return Math.min(heightM, vessel.lengthM());
    }

    private double widthM(Span span, Profile profile) {
        return Math.max(NARROWEST_M, radiusM - meanRadiusM(span, profile));
    }

    private static double meanRadiusM(Span span, Profile profile) {
        return span.areaM2(profile) / (2 * Math.PI * span.heightM());
    }

    /** From a wall to a part of the vessel's side; the patch has the area of the part. */
    List<Link> links(Node wall, Span span, WallPatch part, Occupant vessel) {
        Profile profile = vessel.vessel().profile();
        double radius = meanRadiusM(span, profile);
        double gap = widthM(span, profile);
        double area = part.outerAreaM2();
        // Conduction through an annulus, on the area of the vessel, over that through a plane layer.
        double curved = gap / (radius * Math.log1p(gap / radius));
        double facing = RadiativeFilm.facing(part.emissivity(), emissivity, Math.min(1, radius / radiusM));
        ConvectiveFilm air =
                ConvectiveFilm.free(area * curved, gap, fluid, VerticalLayer.elSherbiny(depthM(vessel) / gap));
        return List.of(
                Link.of(wall, "convection", air).scaledBy(Multipliers.GAP_FILM),
                Link.of(wall, "radiation", new RadiativeFilm(area, facing)).scaledBy(Multipliers.RADIATION));
    }

    /** Says so where the layer is lower or slimmer than those for which its law is published. */
    List<String> notes(Occupant vessel) {
        Profile profile = vessel.vessel().profile();
        double depth = depthM(vessel);
        double lowest = Double.POSITIVE_INFINITY;
        double highest = 0;
        for (int i = 0; i < SLICES; i++) {
            Span slice = Span.standing(depth * i / SLICES, depth * (i + 1) / SLICES, vessel);
            double aspect = depth / widthM(slice, profile);
            lowest = Math.min(lowest, aspect);
            highest = Math.max(highest, aspect);
        }
        return lowest < LOWEST_ASPECT || highest > HIGHEST_ASPECT
                ? List.of(String.format(
                        Locale.ROOT,
                        "in %s the air beside %s is %.1f to %.0f times as high as it is wide; its law is published for %.0f to"
                                + " %.0f, outside it is extrapolated",
                        id,
                        vessel.id(),
                        lowest,
                        highest,
                        LOWEST_ASPECT,
                        HIGHEST_ASPECT))
                : List.of();
    }
}
