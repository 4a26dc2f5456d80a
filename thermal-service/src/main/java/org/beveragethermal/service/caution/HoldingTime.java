/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.time.Duration;
import org.beveragethermal.materials.provenance.Source;

/** Answer to "has a drink that spoils been out too long?". */
public sealed interface HoldingTime {

    /**
     * The time allowed has run out.
     *
     * @param after when it ran out, time since the start
     * @param allowed time that was allowed
     */
    record Over(Duration after, Duration allowed) implements HoldingTime {}

    /**
     * The time allowed has run out if it was outside while nobody read its temperature.
     *
     * @param after when it ran out then, time since the start
     * @param allowed time that was allowed
     * @param surely time that it was outside for certain
     */
    record MayBeOver(Duration after, Duration allowed, Duration surely) implements HoldingTime {}

    /**
     * The time allowed has not run out by the end.
     *
     * @param counted time that counts by then, unread times included
     * @param left time that it may still be outside; none if it has been out once and may not again
     */
    record Within(Duration counted, Duration left) implements HoldingTime {}

    /**
     * The jurisdiction states no figure.
     *
     * @param source what it says instead
     */
    record NoFigure(Source source) implements HoldingTime {}
}
