/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

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
record Figure(
        String file,
        String title,
        String xLabel,
        String yLabel,
        boolean logarithmic,
        boolean equalScales,
        List<Curve> curves) {

    static Figure of(String file, String title, String xLabel, String yLabel, List<Curve> curves) {
        return new Figure(file, title, xLabel, yLabel, false, false, curves);
    }

    Figure onLogarithmicScale() {
        return new Figure(file, title, xLabel, yLabel, true, equalScales, curves);
    }

    Figure toScale() {
        return new Figure(file, title, xLabel, yLabel, logarithmic, true, curves);
    }
}
