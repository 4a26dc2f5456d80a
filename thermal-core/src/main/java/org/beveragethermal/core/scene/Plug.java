/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.Closure;
import org.beveragethermal.materials.vessel.Profile;

/**
 * A closure in the mouth of a vessel: one node, half its length to either face, and its side to the neck.
 *
 * @param node the closure
 * @param solid what it is made of
 * @param lengthM how far heat goes through it [m]
 * @param areaM2 its cross-section [m²]
 * @param lowM height of its lower face above the vessel's base [m]
 */
record Plug(Node node, Solid solid, double lengthM, double areaM2, double lowM) {

    /** The closure of a vessel whose liquid reaches up to a height; it cannot reach below that. */
    static Plug of(String id, Profile profile, Closure closure, double surfaceM, double temperatureK) {
        double low = Math.max(profile.heightM() - closure.reachM(), surfaceM);
        double area = Math.PI * Math.pow(profile.innerRadiusM(profile.heightM()), 2);
        double capacity = closure.solid().density().value()
                * closure.solid().specificHeatCapacity().value()
                * area
                * closure.lengthM();
        Node node = Node.sensible(id + " closure", capacity, temperatureK);
        return new Plug(node, closure.solid(), closure.lengthM(), area, low);
    }

    double conductivity() {
        return solid.thermalConductivity().value();
    }

    /** From the middle of the closure to either face [W/K]. */
    double halfWPerK() {
        return conductivity() * areaM2 / (0.5 * lengthM);
    }

    Link half() {
        return Link.of(node, "conduction", HeatLaw.conductance(halfWPerK()));
    }

    /** From the mean of the part of a plug that is beside a height of neck to its side, in the slowest mode of a cylinder [W/K]. */
    double toNeckWPerK(double besideM) {
        return 2 * Math.PI * conductivity() * besideM * EnclosedLiquid.conduction(1);
    }

    /** From half the radius of a cap to the rim on which it lies [W/K]. */
    double toRimWPerK() {
        return 4 * Math.PI * conductivity() * lengthM;
    }
}
