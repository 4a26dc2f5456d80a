/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import java.util.Optional;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.PathEvaluation;

/** A path of films along the wall of a stratified liquid that can describe the film beside each slice. */
public interface SliceFilms {

    /**
     * Describes the film between a slice and what lies behind the wall beside it.
     *
     * @param e the path evaluated at a moment, not modified
     * @param slice the slice's node
     * @param wall what lies behind the wall's inner surface
     * @return the film, or empty if the two do not face each other on this path
     */
    Optional<SliceFilm> describe(PathEvaluation e, End slice, End wall);
}
