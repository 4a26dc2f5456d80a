/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import java.util.List;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.PathEvaluation;

/** A path of films along the wall of a stratified liquid that can describe the film beside each slice. */
public interface SliceFilms {

    /**
     * Describes the films between slices and what lies behind a piece of wall.
     *
     * @param e the path evaluated at a moment, not modified
     * @param wall what lies behind the wall's inner surface
     * @return one for each slice or part of a slice beside it, from the bottom upwards; none if this path does not meet that wall
     */
    List<SliceFilm> describe(PathEvaluation e, End wall);
}
