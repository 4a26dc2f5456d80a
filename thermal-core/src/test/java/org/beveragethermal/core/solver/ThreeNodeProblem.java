/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;

/**
 * A drink, its glass and a sleeve, 22 °C, an hour in a refrigerator (air 4 °C, walls 5 °C), then an hour in ice water:
 * non-linear films inside and outside and a surface temperature to be solved. All numbers are part of the problem.
 */
final class ThreeNodeProblem {

    private static final double SIGMA = 5.670374419e-8;
    private static final double ZERO = 273.15;
    private static final double INNER_AREA = 0.0640;
    private static final double GLASS_AREA = 0.0700;
    private static final double SLEEVE_AREA = 0.0720;

    static final Node DRINK = Node.sensible("drink", 0.73875 * 4150, ZERO + 22);
    static final Node GLASS = Node.sensible("glass", 0.520 * 840, ZERO + 22);
    static final Node SLEEVE = Node.sensible("sleeve", 0.060 * 1600, ZERO + 22);

    private ThreeNodeProblem() {}

    static List<Phase> phases() {
        Boundary air = Boundary.constant("air", ZERO + 4);
        Boundary walls = Boundary.constant("walls", ZERO + 5);
        Boundary iceWater = Boundary.constant("ice water", ZERO);
        double dry = 0.0015 / 0.045;
        double wet = 0.0015 / 0.20;
        HeatLaw airFilm = HeatLaw.of(
                (from, to) -> SLEEVE_AREA * 1.42 * Math.pow(Math.abs(to - from) / 0.200, 0.25) * (from - to));
        HeatLaw radiation =
                HeatLaw.of((from, to) -> SLEEVE_AREA * 0.90 * SIGMA * (Math.pow(from, 4) - Math.pow(to, 4)));
        HeatLaw waterFilm =
                HeatLaw.of((from, to) -> SLEEVE_AREA * (120 + 85 * Math.cbrt(Math.abs(to - ZERO))) * (from - to));
        Path refrigerator = JunctionPath.of(
                "outside",
                Link.of(SLEEVE, "conduction", HeatLaw.conductance(SLEEVE_AREA / dry)),
                Link.of(air, "convection", airFilm),
                Link.of(walls, "radiation", radiation));
        Path bath = JunctionPath.of(
                "outside",
                Link.of(SLEEVE, "conduction", HeatLaw.conductance(SLEEVE_AREA / wet)),
                Link.of(iceWater, "convection", waterFilm));
        return List.of(
                new Phase(
                        0,
                        Network.of(List.of(DRINK, GLASS, SLEEVE), List.of(inside(), contact(180, dry), refrigerator))),
                new Phase(3600, Network.of(List.of(DRINK, GLASS, SLEEVE), List.of(inside(), contact(600, wet), bath))));
    }

    private static Path inside() {
        return DirectPath.of(
                "inside film",
                DRINK,
                GLASS,
                "convection",
                HeatLaw.of((from, to) -> INNER_AREA * (35 + 55 * Math.pow(Math.abs(from - to), 0.25)) * (from - to)));
    }

    private static Path contact(double contactConductance, double halfSleeve) {
        return DirectPath.of(
                "sleeve contact",
                GLASS,
                SLEEVE,
                "conduction",
                HeatLaw.conductance(GLASS_AREA / (1 / contactConductance + halfSleeve)));
    }
}
