/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;

/** Networks drawn at random in which heat only ever flows from warm to cold. */
final class PassiveNetworks {

    private static final double SIGMA = 5.670374419e-8;

    private PassiveNetworks() {}

    /**
     * A network and the range in which all its temperatures must stay.
     *
     * @param network one to eight nodes, time constants from seconds to days
     * @param lowestK lowest temperature at the start or at a boundary
     * @param highestK highest temperature at the start or at a boundary
     */
    record Drawn(Network network, double lowestK, double highestK) {}

    static Drawn draw(int size, SplittableRandom random) {
        List<Node> nodes = new ArrayList<>();
        List<End> ends = new ArrayList<>();
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < size + 2; i++) {
            double temperatureK = 265 + 50 * random.nextDouble();
            lowest = Math.min(lowest, temperatureK);
            highest = Math.max(highest, temperatureK);
            if (i < size) {
                Node node = Node.sensible("node " + i, logUniform(10, 1e4, random), temperatureK);
                nodes.add(node);
                ends.add(node);
            } else {
                ends.add(Boundary.constant("boundary " + i, temperatureK));
            }
        }
        List<Path> paths = new ArrayList<>();
        for (int p = 0; p < size + 2; p++) {
            int from = random.nextInt(ends.size());
            int to = (from + 1 + random.nextInt(ends.size() - 1)) % ends.size();
            if (random.nextInt(3) == 0) {
                int third = random.nextInt(ends.size());
                paths.add(JunctionPath.of(
                        "path " + p,
                        Link.of(ends.get(from), "conduction", HeatLaw.conductance(logUniform(0.1, 10, random))),
                        Link.of(ends.get(to), "convection", law(random)),
                        Link.of(ends.get(third), "radiation", law(random))));
            } else {
                paths.add(DirectPath.of("path " + p, ends.get(from), ends.get(to), "convection", law(random)));
            }
        }
        return new Drawn(Network.of(nodes, paths), lowest, highest);
    }

    private static HeatLaw law(SplittableRandom random) {
        double conductance = logUniform(0.05, 10, random);
        return switch (random.nextInt(3)) {
            case 0 -> HeatLaw.conductance(conductance);
            case 1 -> HeatLaw.of((from, to) -> 0.5 * conductance * Math.cbrt(Math.abs(from - to)) * (from - to));
            default -> HeatLaw.of((from, to) -> conductance / 5 * SIGMA * (Math.pow(from, 4) - Math.pow(to, 4)));
        };
    }

    private static double logUniform(double low, double high, SplittableRandom random) {
        return low * Math.pow(high / low, random.nextDouble());
    }
}
