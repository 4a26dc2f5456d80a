/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * What is done with a bottle: legs that follow one another from the start of the plan until it is finished. Two legs that meet are in
 * different places.
 *
 * @param kind what kind of way it is
 * @param legs the legs, one at least
 */
record Route(Kind kind, List<Leg> legs) {

    /** Kinds of ways. */
    enum Kind {
        /** It stays until it is served. */
        STAY,
        /** One means brings it to its temperature. */
        ONE_MEANS,
        /** Two means, one after the other. */
        TWO_MEANS,
        /** Into gear and out of it by turns while it is drunk. */
        BY_TURNS
    }

    Route {
        legs = List.copyOf(legs);
    }

    /** Legs without length are left out, and legs that meet in one place are one. */
    static Route of(Kind kind, Leg... legs) {
        List<Leg> joined = new ArrayList<>();
        for (Leg leg : legs) {
            int last = joined.size() - 1;
            if (leg.toS() <= leg.fromS()) {
                continue;
            }
            if (last >= 0 && joined.get(last).where().equals(leg.where())) {
                joined.set(last, new Leg(leg.where(), joined.get(last).fromS(), leg.toS()));
            } else {
                joined.add(leg);
            }
        }
        return new Route(kind, joined);
    }

    /** The leg that holds a moment; where two meet, the first of them. */
    Leg endingAtOrAfter(double timeS) {
        return legs.stream().filter(leg -> leg.toS() >= timeS).findFirst().orElse(legs.get(legs.size() - 1));
    }

    /** The leg that holds a moment; where two meet, the second of them. */
    Leg beginningAtOrBefore(double timeS) {
        Leg found = legs.get(0);
        for (Leg leg : legs) {
            found = leg.fromS() <= timeS ? leg : found;
        }
        return found;
    }
}
