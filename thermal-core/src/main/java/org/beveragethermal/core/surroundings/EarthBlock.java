/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.stream.DoubleStream;
import org.beveragethermal.core.conduction.AxisymmetricBlock;

/**
 * Ground round a hole as rings, small at the hole and at the surface, larger with the distance from them.
 *
 * <p>Theory manual, equation (4.6).
 */
final class EarthBlock {

    /**
     * How finely.
     *
     * @param firstM size of the rings beside hole and surface, before they are cut [m]
     * @param growth size of a ring over that of the one nearer to hole or surface, before they are cut
     * @param cuts number of parts into which each ring is cut each way, their sizes growing alike
     */
    record Grid(double firstM, double growth, int cuts) {

        static Grid of(Earth.Model model) {
            return new Grid(0.012, 1.6, model == Earth.Model.FINE_BLOCK ? 2 : 1);
        }

        /** Boundaries from one end of a stretch to the other, small where it begins. */
        double[] graded(double from, double to) {
            double length = to - from;
            int cells = (int) Math.ceil(Math.log1p(length * (growth - 1) / firstM) / Math.log(growth));
            double[] edges = new double[cells * cuts + 1];
            double scale = length / (Math.pow(growth, cells) - 1);
            for (int i = 0; i < edges.length; i++) {
                edges[i] = from + scale * (Math.pow(growth, (double) i / cuts) - 1);
            }
            edges[edges.length - 1] = to;
            return edges;
        }

        /** Small at both ends of a stretch. */
        double[] bothEnds(double from, double to) {
            double middle = 0.5 * (from + to);
            double[] half = graded(from, middle);
            double[] mirrored = new double[half.length];
            for (int i = 0; i < half.length; i++) {
                mirrored[i] = from + to - half[half.length - 1 - i];
            }
            mirrored[0] = middle;
            mirrored[half.length - 1] = to;
            return joined(half, mirrored);
        }

        /** From the axis to the wall of the hole, small at the wall. */
        double[] under(double radius) {
            double[] inwards = graded(0, radius);
            double[] edges = new double[inwards.length];
            for (int i = 0; i < edges.length; i++) {
                edges[i] = radius - inwards[edges.length - 1 - i];
            }
            edges[0] = 0;
            edges[edges.length - 1] = radius;
            return edges;
        }
    }

    private EarthBlock() {}

    static AxisymmetricBlock of(String id, Earth earth, double originS, Grid grid) {
        double radius = earth.radiusM();
        double[] radii = joined(grid.under(radius), grid.graded(radius, radius + earth.farM()));
        double[] cover = earth.topM() > 0 ? grid.bothEnds(0, earth.topM()) : new double[] {0};
        double[] depths = joined(
                joined(cover, grid.bothEnds(earth.topM(), earth.bottomM())),
                grid.graded(earth.bottomM(), earth.bottomM() + earth.farM()));
        return AxisymmetricBlock.of(
                id,
                radii,
                depths,
                earth.conductivity(),
                earth.volumetricHeatCapacity(),
                depthM -> earth.startK(depthM, originS),
                radius,
                earth.topM(),
                earth.bottomM());
    }

    /** Boundaries of two stretches that meet. */
    private static double[] joined(double[] a, double[] b) {
        return DoubleStream.concat(DoubleStream.of(a), DoubleStream.of(b).skip(1))
                .toArray();
    }
}
