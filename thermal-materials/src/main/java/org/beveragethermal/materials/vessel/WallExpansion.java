/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import java.util.Map;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;

/** How much vessels grow when they get warmer: linear expansion of their walls, averaged around 20 °C. */
final class WallExpansion {

    private static final Source MEMORY = new Source(
            "linear expansion", "handbook tables of linear thermal expansion, from memory", Source.Kind.FROM_MEMORY);
    private static final Source NONE =
            new Source("no expansion known", "taken as that of glass, doubled either way", Source.Kind.OWN_ASSUMPTION);

    private static final double OF_GLASS = 9e-6;
    private static final Constant UNKNOWN =
            new Constant("linear expansion of the wall", OF_GLASS, "1/K", Uncertainty.rectangularRelative(1), NONE);

    private static final Map<String, Constant> BY_SOLID = Map.ofEntries(
            remembered(Solids.sodaLimeGlass(), OF_GLASS, 0.06),
            remembered(Solids.leadCrystal(), 9e-6, 0.1),
            remembered(Solids.borosilicateGlass(), 3.3e-6, 0.05),
            remembered(Solids.stainlessSteel(), 16.5e-6, 0.06),
            remembered(Solids.aluminium(), 23.2e-6, 0.04),
            remembered(Solids.lacqueredAluminium(), 23.2e-6, 0.04),
            remembered(Solids.pet(), 70e-6, 0.2),
            remembered(Solids.porcelain(), 5e-6, 0.3));

    private WallExpansion() {}

    private static Map.Entry<String, Constant> remembered(Solid wall, double value, double doubt) {
        return Map.entry(
                wall.name(),
                new Constant(
                        "linear expansion of " + wall.name(),
                        value,
                        "1/K",
                        Uncertainty.rectangularRelative(doubt),
                        MEMORY));
    }

    static Constant of(Solid wall) {
        return BY_SOLID.getOrDefault(wall.name(), UNKNOWN);
    }
}
