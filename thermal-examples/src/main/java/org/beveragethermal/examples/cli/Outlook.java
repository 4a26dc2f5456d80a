/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.PredictionEnsemble;
import org.beveragethermal.core.uncertainty.TimeSpread;
import org.beveragethermal.core.uncertainty.UnstatedConditions;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * What a route may come to: runs in each of which the laws, and what is not stated of the places, are drawn anew; answers are their middle.
 * Or one run of everything as it is stated, which is the answer, and the laws drawn about it.
 *
 * @param asStated the run that is the answer; empty if the middle of the draws is
 * @param draws runs for intervals
 */
record Outlook(Optional<Prediction> asStated, PredictionEnsemble draws) {
    static final double PROBABILITY = 0.90;

    static Outlook drawn(Route route, FilledVessel filled, Ensemble ensemble) {
        return new Outlook(
                Optional.empty(),
                PredictionEnsemble.of(
                        ensemble,
                        UnstatedConditions.withLaws(),
                        draw -> route.drawn(filled, draw, solver(route, draw))));
    }

    static Outlook asStated(Route route, FilledVessel filled, NetworkSolver solver, Ensemble ensemble) {
        return new Outlook(
                Optional.of(route.asStated(filled, solver)),
                PredictionEnsemble.of(
                        ensemble,
                        LawScatter.all(),
                        draw -> route.asStated(filled, NetworkSolver.standard().withMultipliers(draw.values()))));
    }

    /** The laws as drawn; where all places are appliances, neighbours leave less of convection. */
    private static NetworkSolver solver(Route route, Draw draw) {
        Map<String, Double> factors = new HashMap<>(draw.values());
        if (route.isInAppliances()) {
            factors.merge(Multipliers.AIR_FILM, UnstatedConditions.convectionLeft(draw), (law, left) -> law * left);
        }
        return NetworkSolver.standard().withMultipliers(factors);
    }

    Duration end() {
        return draws.predictions().get(0).end();
    }

    double temperatureK(Duration at) {
        return asStated.map(run -> run.meanTemperatureK(PredictCommand.seconds(at)))
                .orElseGet(() -> interval(at).median());
    }

    Interval interval(Duration at) {
        return draws.temperatureK(at, PROBABILITY);
    }

    /** Runs that decide what is said to go wrong. */
    List<Prediction> deciding() {
        return asStated.map(List::of).orElseGet(draws::predictions);
    }

    /** What more than half of the runs say in the same words; figures that differ from run to run are in no such note. */
    List<String> notes() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        deciding().forEach(run -> run.notes().forEach(note -> counts.merge(note, 1, Integer::sum)));
        return counts.entrySet().stream()
                .filter(each -> 2 * each.getValue() > deciding().size())
                .map(Map.Entry::getKey)
                .toList();
    }

    /**
     * When a temperature is passed.
     *
     * @param after when it is first reached; empty if never
     * @param lost whether it is lost again
     * @param spread over the draws
     */
    record Passing(Optional<Duration> after, boolean lost, TimeSpread spread) {
        String kind() {
            return after.isEmpty() ? "never" : lost ? "reached, then lost" : "reached";
        }
    }

    Passing passing(Quantity<Temperature> target) {
        TimeSpread spread = draws.timeTo(target, PROBABILITY);
        List<Duration> reached = new ArrayList<>();
        int lost = 0;
        for (Prediction run : deciding()) {
            TimeToTemperature time = run.timeTo(target);
            if (time instanceof TimeToTemperature.Reached there) {
                reached.add(there.after());
            } else if (time instanceof TimeToTemperature.ReachedThenLost there) {
                reached.add(there.after());
                lost++;
            }
        }
        Optional<Duration> after = asStated.isPresent() ? reached.stream().findFirst() : spread.median();
        return new Passing(after, 2 * lost > reached.size(), spread);
    }
}
