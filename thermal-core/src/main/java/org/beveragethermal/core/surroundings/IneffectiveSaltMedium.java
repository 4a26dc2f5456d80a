/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.stream.Stream;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;

/**
 * Salted ice whose salt lies on the floor and does nothing: a bath of ice and water that says so.
 *
 * @param id the gear's id
 * @param bath the bath of ice and water
 */
record IneffectiveSaltMedium(String id, Medium bath) implements Medium {

    @Override
    public List<Node> nodes() {
        return bath.nodes();
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        return bath.wettedHeightM(vessel, occupants);
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        return bath.paths(occupants);
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        return bath.faces(patch, vessel, occupants);
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        return Stream.concat(
                        Stream.of(
                                "salted ice " + id
                                        + " is predicted with ineffective salt: it stays on the floor and the bath is one of ice"
                                        + " and water; stirred, it gets colder, at best as the prediction that is mixed and stirred",
                                SaltedIce.CAUTION),
                        bath.notes(occupants).stream())
                .toList();
    }
}
