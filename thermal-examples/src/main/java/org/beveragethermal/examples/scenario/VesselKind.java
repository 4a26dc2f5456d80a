/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;

/** The bottles a scenario may use. */
public enum VesselKind {
    /** High-shouldered bottle of 750 mL. */
    HIGH_SHOULDERED_750("high-shouldered-750", 1),
    /** Sparkling-wine bottle of 750 mL. */
    SPARKLING_750("sparkling-750", 1),
    /** High-shouldered bottle of 1.5 L. */
    MAGNUM("magnum", 2);

    private final String id;
    private final int bottlePlaces;

    VesselKind(String id, int bottlePlaces) {
        this.id = id;
        this.bottlePlaces = bottlePlaces;
    }

    /**
     * The word in the file.
     *
     * @return for example {@code high-shouldered-750}
     */
    public String id() {
        return id;
    }

    /**
     * How many bottles of 750 mL it takes the room of. A magnum takes that of two (own assumption).
     *
     * @return 1 or 2
     */
    public int bottlePlaces() {
        return bottlePlaces;
    }

    /**
     * The bottle.
     *
     * @return the generic vessel of that kind
     */
    public Vessel vessel() {
        return switch (this) {
            case HIGH_SHOULDERED_750 -> Vessels.highShouldered750();
            case SPARKLING_750 -> Vessels.sparkling750();
            case MAGNUM -> Vessels.magnum();
        };
    }
}
