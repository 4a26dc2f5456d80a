/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import org.beveragethermal.core.network.Node;

/**
 * A band of a vessel's wall as a prediction knows it.
 *
 * @param name name of the band
 * @param wall its node
 * @param insidePath name of the path from the contents to the wall, empty if the band holds no liquid
 * @param outsidePath how the names of the paths begin that lead from the wall to what touches it, one per face
 * @param lowM lower edge above the base [m]
 * @param highM upper edge above the base [m]
 * @param slice index of the slice of contents beside it, −1 if the contents are one node or the band holds no liquid
 */
public record WallBand(
        String name, Node wall, String insidePath, String outsidePath, double lowM, double highM, int slice) {}
