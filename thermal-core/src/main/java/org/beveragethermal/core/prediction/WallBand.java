/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.util.List;
import org.beveragethermal.core.network.Node;

/**
 * A band of a vessel's wall as a prediction knows it.
 *
 * @param name name of the band
 * @param wall its node
 * @param insidePath name of the path from the contents to the wall, empty if the band holds no liquid
 * @param outsidePath how the names of the paths begin that lead from the wall or its outermost layer to what touches it, one per
 *     face
 * @param lowM lower edge above the base [m]
 * @param highM upper edge above the base [m]
 * @param slice index of the slice of contents beside it, −1 if the contents are one node or the band holds no liquid
 * @param outerHalfKelvinPerWatt resistance from the wall's node to its outer surface [K/W]; 0 if no layers lie around the wall
 * @param layers resistances of the layers around the wall, from the wall outwards, each with the contact inside it; empty if
 *     there are none
 */
public record WallBand(
        String name,
        Node wall,
        String insidePath,
        String outsidePath,
        double lowM,
        double highM,
        int slice,
        double outerHalfKelvinPerWatt,
        List<Resistance> layers) {

    /**
     * Copies the list.
     *
     * @param name name of the band
     * @param wall its node
     * @param insidePath name of the path from the contents to the wall
     * @param outsidePath how the names of the paths to what touches it begin
     * @param lowM lower edge above the base [m]
     * @param highM upper edge above the base [m]
     * @param slice index of the slice of contents beside it
     * @param outerHalfKelvinPerWatt resistance from the wall's node to its outer surface [K/W]
     * @param layers resistances of the layers around the wall, not modified
     */
    public WallBand {
        layers = List.copyOf(layers);
    }

    /**
     * A band without layers around it.
     *
     * @param name name of the band
     * @param wall its node
     * @param insidePath name of the path from the contents to the wall, empty if the band holds no liquid
     * @param outsidePath how the names of the paths to what touches it begin
     * @param lowM lower edge above the base [m]
     * @param highM upper edge above the base [m]
     * @param slice index of the slice of contents beside it, −1 if the contents are one node or the band holds no liquid
     */
    public WallBand(
            String name, Node wall, String insidePath, String outsidePath, double lowM, double highM, int slice) {
        this(name, wall, insidePath, outsidePath, lowM, highM, slice, 0, List.of());
    }
}
