/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.OptionalDouble;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;

/**
 * A piece of gear in one run: its nodes, its paths to the room and its links to the walls of the vessels in it.
 *
 * <p>Called by scenes; implemented by kinds of surroundings, those of this package and your own. Unsettled.
 */
public interface Medium {

    /**
     * Nodes that live through the whole run.
     *
     * @return own nodes, possibly none; the same objects at each call
     */
    List<Node> nodes();

    /**
     * Height to which a vessel that stands or lies in this gear is wetted.
     *
     * @param vessel the vessel
     * @param occupants all vessels that are in the gear at that time
     * @return height above the vessel's lowest point [m], 0 in air
     */
    double wettedHeightM(Occupant vessel, List<Occupant> occupants);

    /**
     * The gear's own paths.
     *
     * @param occupants vessels that are in the gear
     * @return paths, possibly none
     */
    List<Path> paths(List<Occupant> occupants);

    /**
     * What touches the outside of a patch of wall or of an end.
     *
     * @param patch the patch
     * @param vessel the vessel it belongs to
     * @param occupants all vessels that are in the gear
     * @return the faces into which the patch divides; none for an end that stands on something that insulates
     */
    List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants);

    /**
     * What a user of the prediction should know about this gear with these vessels in it.
     *
     * @param occupants vessels that are in the gear
     * @return sentences, possibly none
     */
    List<String> notes(List<Occupant> occupants);

    /**
     * What becomes of the gear when somebody tends it.
     *
     * @param when names the moment in refusals, such as {@code after PT20M}
     * @param tendings what is done, in this order
     * @param occupants vessels that are in the gear then
     * @param iceLeftKg ice that is left just before [kg], as far as it is known; it decides where the water stands afterwards
     * @return the gear from then on, and the change of state
     * @throws IllegalArgumentException if this gear cannot be tended
     */
    default Tended tended(String when, List<Tending> tendings, List<Occupant> occupants, OptionalDouble iceLeftKg) {
        throw new IllegalArgumentException(tendings + " " + when + ": expected gear that can be tended");
    }
}
