/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

/**
 * How area grows with the distance from the middle.
 *
 * <p>Theory manual, equation (1.5).
 */
enum Geometry {
    /** Plane; size is the area [m²]. */
    PLANE {
        @Override
        double area(double size, double x) {
            return size;
        }

        @Override
        double volume(double size, double a, double b) {
            return size * (b - a);
        }

        @Override
        double shape(double size, double a, double b) {
            return size / (b - a);
        }
    },
    /** Cylinder; size is the length [m]. */
    CYLINDER {
        @Override
        double area(double size, double r) {
            return 2 * Math.PI * r * size;
        }

        @Override
        double volume(double size, double a, double b) {
            return Math.PI * (b * b - a * a) * size;
        }

        @Override
        double shape(double size, double a, double b) {
            return 2 * Math.PI * size / Math.log(b / a);
        }
    },
    /** Sphere; size is the part of the full sphere [-]. */
    SPHERE {
        @Override
        double area(double size, double r) {
            return 4 * Math.PI * r * r * size;
        }

        @Override
        double volume(double size, double a, double b) {
            return 4.0 / 3 * Math.PI * (b * b * b - a * a * a) * size;
        }

        @Override
        double shape(double size, double a, double b) {
            return 4 * Math.PI * size / (1 / a - 1 / b);
        }
    };

    /** Area at a distance from the middle [m²]. */
    abstract double area(double size, double x);

    /** Volume between two distances [m³]. */
    abstract double volume(double size, double a, double b);

    /** Conductance over conductivity between two distances [m]. */
    abstract double shape(double size, double a, double b);
}
