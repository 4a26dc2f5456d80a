/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.internal;

import java.util.List;

/**
 * A figure, before it is drawn.
 *
 * @param file name of its file without ending
 * @param title what it shows
 * @param xLabel quantity and unit of the abscissa
 * @param yLabel quantity and unit of the ordinate
 * @param logarithmic whether the ordinate is logarithmic
 * @param equalScales whether both axes have one scale, as for the outline of a body
 * @param curves its lines; those without a name are thin and grey
 */
public record Figure(
        String file,
        String title,
        String xLabel,
        String yLabel,
        boolean logarithmic,
        boolean equalScales,
        List<Curve> curves) {

    /**
     * A figure with linear axes of their own scales.
     *
     * @param file name of its file without ending
     * @param title what it shows
     * @param xLabel quantity and unit of the abscissa
     * @param yLabel quantity and unit of the ordinate
     * @param curves its lines
     * @return the figure
     */
    public static Figure of(String file, String title, String xLabel, String yLabel, List<Curve> curves) {
        return new Figure(file, title, xLabel, yLabel, false, false, curves);
    }

    /**
     * The same with a logarithmic ordinate.
     *
     * @return the figure
     */
    public Figure onLogarithmicScale() {
        return new Figure(file, title, xLabel, yLabel, true, equalScales, curves);
    }

    /**
     * The same with one scale for both axes.
     *
     * @return the figure
     */
    public Figure toScale() {
        return new Figure(file, title, xLabel, yLabel, logarithmic, true, curves);
    }
}
