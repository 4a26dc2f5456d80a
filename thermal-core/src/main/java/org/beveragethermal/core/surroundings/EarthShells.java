/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.conduction.AxisymmetricBlock;
import org.beveragethermal.core.conduction.AxisymmetricBlock.Facet;
import org.beveragethermal.core.conduction.AxisymmetricBlock.Side;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;

/**
 * Ground as shells round a hole: cylinders with half a sphere at each end that is covered with earth.
 *
 * <p>At a radius r the shells have the area 2 π r L + n 2 π r², n being the number of covered ends and L such that the area at
 * the wall is that of the hole. Near the wall heat spreads as from the hole's own surface, far away as from a sphere. In the steady state a
 * buried body of L/2R = 3.2 gets 4 % more than by the capacitance of a cylinder (W. R. Smythe, J. Appl. Phys. 33 (1962) 2966, 8 +
 * 6.95 (b/a)^0.76; from memory).
 *
 * <p>Theory manual, equation (4.6).
 */
final class EarthShells {

    private static final double FIRST_M = 0.004;
    private static final double GROWTH = 1.25;

    private final double lengthM;
    private final int ends;
    private final double conductivity;
    private final List<Node> nodes = new ArrayList<>();
    private final List<Path> paths = new ArrayList<>();
    private final List<Facet> facets;

    EarthShells(String id, Earth earth, double originS) {
        double radius = earth.radiusM();
        double buried = earth.bottomM() - earth.topM();
        ends = earth.topM() > 0 ? 2 : 1;
        conductivity = earth.conductivity();
        // 2 π R L + n 2 π R² = 2 π R H + n π R²
        lengthM = Math.max(0.1 * buried, buried - 0.5 * ends * radius);
        double[] edges = AxisymmetricBlock.graded(radius, radius + earth.farM(), FIRST_M, GROWTH);
        double startK = meanK(earth, originS);
        for (int i = 0; i + 1 < edges.length; i++) {
            double volume = volumeM3(edges[i + 1]) - volumeM3(edges[i]);
            nodes.add(Node.sensible(id + " shell " + (i + 1), earth.volumetricHeatCapacity() * volume, startK));
        }
        for (int i = 0; i + 1 < nodes.size(); i++) {
            double resistance = kelvinPerWatt(middle(edges, i), middle(edges, i + 1));
            paths.add(DirectPath.of(
                            id + " shell " + (i + 1) + " to " + (i + 2),
                            nodes.get(i),
                            nodes.get(i + 1),
                            "conduction",
                            HeatLaw.conductance(1 / resistance))
                    .scaledBy(Multipliers.EARTH_CONDUCTION));
        }
        facets = facets(earth, kelvinPerWatt(radius, middle(edges, 0)));
    }

    /** All faces lead to the first shell, each with its part of the resistance. */
    private List<Facet> facets(Earth earth, double wholeKelvinPerWatt) {
        double radius = earth.radiusM();
        double side = 2 * Math.PI * radius * (earth.bottomM() - earth.topM());
        double end = Math.PI * radius * radius;
        double all = side + ends * end;
        List<Facet> faces = new ArrayList<>();
        Node first = nodes.get(0);
        faces.add(
                new Facet(Side.HOLE_WALL, first, side, wholeKelvinPerWatt * all / side, earth.topM(), earth.bottomM()));
        faces.add(new Facet(Side.HOLE_BOTTOM, first, end, wholeKelvinPerWatt * all / end, 0, radius));
        if (earth.topM() > 0) {
            faces.add(new Facet(Side.HOLE_TOP, first, end, wholeKelvinPerWatt * all / end, 0, radius));
        }
        return List.copyOf(faces);
    }

    /** Mean of the undisturbed ground beside the hole, by Simpson's rule in eight parts [K]. */
    private static double meanK(Earth earth, double originS) {
        int parts = 8;
        double step = (earth.bottomM() - earth.topM()) / parts;
        double sum = 0;
        for (int i = 0; i <= parts; i++) {
            double weight = i == 0 || i == parts ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * earth.startK(earth.topM() + i * step, originS);
        }
        return sum / (3 * parts);
    }

    private static double middle(double[] edges, int i) {
        return 0.5 * (edges[i] + edges[i + 1]);
    }

    private double volumeM3(double radiusM) {
        return Math.PI * radiusM * radiusM * lengthM + ends * 2.0 / 3.0 * Math.PI * Math.pow(radiusM, 3);
    }

    /** ∫ dr / (k A(r)), in closed form. */
    private double kelvinPerWatt(double innerM, double outerM) {
        return Math.log(outerM * (lengthM + ends * innerM) / (innerM * (lengthM + ends * outerM)))
                / (2 * Math.PI * conductivity * lengthM);
    }

    List<Node> nodes() {
        return List.copyOf(nodes);
    }

    List<Path> paths() {
        return List.copyOf(paths);
    }

    List<Facet> facets() {
        return facets;
    }
}
