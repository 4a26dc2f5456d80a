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

    private static final Map<String, Constant> BY_SOLID = Map.of(
            Solids.sodaLimeGlass().name(), remembered(OF_GLASS, 0.06),
            Solids.leadCrystal().name(), remembered(9e-6, 0.1),
            Solids.borosilicateGlass().name(), remembered(3.3e-6, 0.05),
            Solids.stainlessSteel().name(), remembered(16.5e-6, 0.06),
            Solids.aluminium().name(), remembered(23.2e-6, 0.04),
            Solids.lacqueredAluminium().name(), remembered(23.2e-6, 0.04),
            Solids.pet().name(), remembered(70e-6, 0.2),
            Solids.porcelain().name(), remembered(5e-6, 0.3));

    private WallExpansion() {}

    private static Constant remembered(double value, double doubt) {
        return new Constant(
                "linear expansion of the wall", value, "1/K", Uncertainty.rectangularRelative(doubt), MEMORY);
    }

    static Constant of(Solid wall) {
        return BY_SOLID.getOrDefault(wall.name(), UNKNOWN);
    }
}
