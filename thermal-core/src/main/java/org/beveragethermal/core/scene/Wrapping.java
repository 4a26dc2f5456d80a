/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.conduction.LayerStack;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Resistance;

/**
 * The layers around one band of a vessel's wall.
 *
 * <p>They form a cylinder of the band's height whose inner radius is the band's outer area over 2 π times its height. So the area
 * where layer and wall meet is the wall's own, and the area grows outwards by 2 π height per thickness, as it does for every
 * surface of revolution with a straight outline (Steiner's formula), sloping shoulders included.
 */
final class Wrapping {

    private final String name;
    private final LayerStack stack;
    private final List<Layer> layers;
    private final double heightM;
    private final double innerRadiusM;
    private final Path toWall;

    /**
     * Layers around a band.
     *
     * @param name name of the band
     * @param layers layers from the wall outwards, at least one
     * @param wall the band's node
     * @param wallHalfWPerK conductance from that node to the wall's outer surface [W/K]
     * @param outerAreaM2 outer area of the band of wall [m²]
     * @param heightM height of the band [m]
     * @param temperatureK temperature at the start [K]
     */
    Wrapping(
            String name,
            List<Layer> layers,
            Node wall,
            double wallHalfWPerK,
            double outerAreaM2,
            double heightM,
            double temperatureK) {
        this.name = name;
        this.layers = List.copyOf(layers);
        this.heightM = heightM;
        this.innerRadiusM = outerAreaM2 / (2 * Math.PI * heightM);
        this.stack = LayerStack.cylinder(heightM, innerRadiusM).layers(layers).build(name, temperatureK);
        double toLayer = 1 / (1 / wallHalfWPerK + layers.get(0).contactResistance() / outerAreaM2);
        this.toWall = JunctionPath.of(
                name + " to layers", Link.of(wall, "conduction", HeatLaw.conductance(toLayer)), stack.innerSurface());
    }

    List<Node> nodes() {
        return stack.nodes();
    }

    /** From the wall to the middle of the outermost cell. */
    List<Path> paths() {
        List<Path> paths = new ArrayList<>();
        paths.add(toWall);
        paths.addAll(stack.paths());
        return paths;
    }

    /** Along the layers to those around the next higher band. */
    List<Path> pathsTo(Wrapping above) {
        return stack.endToEnd(name + " along layers", above.stack);
    }

    /** From the outermost cell to the outer surface. */
    Link outermost() {
        return stack.outerSurface();
    }

    double outerAreaM2() {
        return stack.outerAreaM2();
    }

    double heatCapacityJPerK() {
        double sum = 0;
        double radius = innerRadiusM;
        for (Layer layer : layers) {
            double outer = radius + layer.thicknessM();
            sum += layer.volumetricHeatCapacity() * Math.PI * heightM * (outer * outer - radius * radius);
            radius = outer;
        }
        return sum;
    }

    /** Each layer with the contact resistance inside it, from the wall outwards. */
    List<Resistance> resistances() {
        List<Resistance> parts = new ArrayList<>();
        double radius = innerRadiusM;
        for (Layer layer : layers) {
            double around = 2 * Math.PI * heightM;
            double kelvinPerWatt = layer.contactResistance() / (around * radius)
                    + Math.log1p(layer.thicknessM() / radius) / (around * layer.conductivity());
            parts.add(new Resistance(layer.name(), kelvinPerWatt, 0, 0, 0, 0, ""));
            radius += layer.thicknessM();
        }
        return parts;
    }
}
