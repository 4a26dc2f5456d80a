/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import java.time.Duration;
import java.util.Locale;
import org.beveragethermal.core.internal.Figures;
import org.beveragethermal.core.internal.Shown;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;

/** Answer to "when have the contents taken all the room in the closed vessel?": from then on it forces its closure or bursts. */
public sealed interface Fullness extends Answer {

    /**
     * The vessel is full.
     *
     * @param after time since the start of the run, 0 if it is full from the start
     * @param meanK mean temperature of the contents then [K]
     * @param iceFraction mass of ice per mass of drink then [-]; 0 if it is heat that made the liquid fill the vessel
     */
    record Fills(Duration after, double meanK, double iceFraction) implements Fullness {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "After %.0f min, at %.1f °C%s, the contents fill the vessel: from then on they force its closure or burst it. Pressed"
                            + " gas under the closure may push it out before.",
                    after.toMillis() / 60_000.0,
                    Shown.celsius(meanK, 1),
                    iceFraction > 0 ? String.format(Locale.ROOT, " with %.0f %% of it ice", 100 * iceFraction) : "");
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "fills",
                    Figures.with("afterS", after.toMillis() / 1000.0)
                            .and("meanK", meanK)
                            .and("iceFraction", iceFraction)
                            .map());
        }
    }

    /**
     * There is room throughout the run.
     *
     * @param leastHeadspaceM3 the smallest room that is left [m³], above 0
     * @param after when it is smallest, time since the start
     */
    record NeverFills(double leastHeadspaceM3, Duration after) implements Fullness {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "There is room throughout: least after %.0f min, %.1f mL.",
                    after.toMillis() / 60_000.0,
                    leastHeadspaceM3 * ClosedVessel.ML_PER_M3);
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "neverFills",
                    Figures.with("leastHeadspaceM3", leastHeadspaceM3)
                            .and("afterS", after.toMillis() / 1000.0)
                            .map());
        }
    }
}
