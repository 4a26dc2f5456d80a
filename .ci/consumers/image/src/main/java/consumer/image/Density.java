/* SPDX-License-Identifier: Apache-2.0 */
package consumer.image;

import org.beveragethermal.materials.liquid.Water;

/** Prints the density of water at 20 °C [kg/m³]. */
public final class Density {
    private Density() {}

    /**
     * Prints one line.
     *
     * @param arguments not used
     */
    public static void main(String[] arguments) {
        System.out.println(Water.liquid().density(293.15));
    }
}
