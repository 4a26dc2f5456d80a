/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoublePredicate;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.materials.solid.Ice;

/** One search for the least ice, with its count of runs: by halving, and with additions where a full bucket is not enough. */
final class IceSearch {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double LEAST_ICE_KG = IceBudget.LEAST_ICE_KG;
    private static final double ACCURACY_PART = 0.02;
    private static final double ACCURACY_KG = 0.01;
    private static final int MOST_HALVINGS = 12;
    private static final int MARGIN_HALVINGS = 7;
    private static final int LAST_HALVINGS = 6;
    /** Ice is added when the first of these parts of a full bucket's is left, or the next if a vessel would be too warm by then. */
    private static final double[] RESERVE_PARTS = {0.25, 0.5, 0.75};

    private static final long S_PER_MIN = 60;

    private final IceBudget budget;
    private final IceEnergy energy;
    private int runs;

    IceSearch(IceBudget budget) {
        this.budget = budget;
        this.energy = budget.energy();
    }

    private BathRun run(double iceKg, List<TopUp> topUps) {
        runs++;
        return budget.run(iceKg, topUps, budget.solver());
    }

    IceAnswer answer() {
        double most = budget.room().mostIceKg();
        BathRun full = run(most, List.of());
        if (full.tooWarmK() > 0) {
            return withTopUps(most, full);
        }
        BathRun hardlyAny = run(LEAST_ICE_KG, List.of());
        double least = hardlyAny.tooWarmK() <= 0
                ? LEAST_ICE_KG
                : halve(
                        LEAST_ICE_KG,
                        most,
                        MOST_HALVINGS,
                        kg -> run(kg, List.of()).tooWarmK() <= 0);
        return checked(least, List.of());
    }

    private IceAnswer checked(double iceKg, List<TopUp> topUps) {
        BathRun found = run(iceKg, topUps);
        double total = iceKg + topUps.stream().mapToDouble(TopUp::iceKg).sum();
        if (found.tooColdK() > 0) {
            return never(
                    IceAnswer.Reason.BECOMES_TOO_COLD,
                    String.format(
                            Locale.ROOT,
                            "With the least ice that keeps all cold enough, %.2f kg, one falls below its range after %d min.",
                            total,
                            Math.round(found.firstTooColdS() / S_PER_MIN)),
                    "Take it out by then and put it back when it warms, or ask for a range from 0 °C upwards.");
        }
        // Where water alone does it there need be none.
        if (total > budget.atHandKg() && total > LEAST_ICE_KG) {
            return never(
                    IceAnswer.Reason.NOT_ENOUGH_ICE,
                    String.format(Locale.ROOT, "It takes %.2f kg of ice; there are %.2f kg.", total, budget.atHandKg()),
                    "Colder water, vessels chilled before, a lower level of the bath or more ice would help.");
        }
        Set<String> notes = found.notes();
        if (iceKg <= LEAST_ICE_KG) {
            notes.add("the water alone is cold enough: the least ice that is a bath of ice and water is given");
        }
        List<Optional<IceMargin>> margins = margins(iceKg, topUps);
        notes.add("keep mouths of bottles above the melt water, and do not use this ice in drinks");
        return new IceAnswer.Enough(
                iceKg,
                blocks(iceKg),
                budget.shape(),
                budget.room().bathKg() - iceKg,
                withMargins(topUps, margins),
                energy,
                margins.get(0),
                found.iceKg(budget.endS()),
                found.courses(),
                runs,
                List.copyOf(notes));
    }

    private IceAnswer withTopUps(double most, BathRun full) {
        BathRun last = full;
        List<TopUp> topUps = new ArrayList<>();
        double fromS = 0;
        for (int i = 0; i < budget.mostTopUps(); i++) {
            Optional<Added> added = added(most, topUps, last, fromS);
            if (added.isEmpty()) {
                return tooWarmWithIce(last);
            }
            last = added.get().run();
            if (last.tooWarmK() <= 0) {
                return checked(most, leastAddition(most, topUps, added.get().topUp()));
            }
            topUps.add(added.get().topUp());
            fromS = IceBudget.seconds(added.get().topUp().after());
        }
        return isSpent(most, last, fromS) ? spent(most, topUps) : tooWarmWithIce(last);
    }

    /** The latest addition after which all are cold enough, or at least until its ice is spent; empty if it is not for want of ice. */
    private Optional<Added> added(double most, List<TopUp> before, BathRun last, double fromS) {
        for (double part : RESERVE_PARTS) {
            OptionalDouble spentS = spentS(part, most, last, fromS);
            if (spentS.isPresent()) {
                Duration after = Duration.ofMinutes(Math.max(1, (long) Math.floor(spentS.getAsDouble() / S_PER_MIN)));
                double afterS = IceBudget.seconds(after);
                double kg = most - last.iceKg(afterS);
                if (kg >= LEAST_ICE_KG && afterS > fromS && afterS < budget.endS()) {
                    TopUp topUp = topUp(after, kg);
                    BathRun run = run(most, joined(before, topUp));
                    if (run.tooWarmK() <= 0 || isSpent(most, run, afterS)) {
                        return Optional.of(new Added(topUp, run));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** When only a part of a full bucket's ice is left, with all still cold enough, or not yet ready. */
    private OptionalDouble spentS(double part, double most, BathRun last, double fromS) {
        OptionalDouble spent = last.iceDownTo(part * most, fromS, budget.endS());
        boolean earlier = part > RESERVE_PARTS[0];
        boolean inTime = spent.isPresent() && spent.getAsDouble() <= last.firstTooWarmS();
        // What is not ready in time with a quarter of the ice left does not want for ice.
        return inTime && !(earlier && last.firstTooWarmS() <= budget.readyS()) ? spent : OptionalDouble.empty();
    }

    private boolean isSpent(double most, BathRun last, double fromS) {
        return Arrays.stream(RESERVE_PARTS)
                .anyMatch(part -> spentS(part, most, last, fromS).isPresent());
    }

    private IceAnswer spent(double most, List<TopUp> topUps) {
        return never(
                IceAnswer.Reason.ICE_RUNS_OUT,
                String.format(
                        Locale.ROOT,
                        "A full bucket takes %.2f kg of ice, and that and %d additions are spent before the end.",
                        most,
                        topUps.size()),
                "More additions, a larger or better insulated bucket, shade, or a shorter service would help.");
    }

    private List<TopUp> leastAddition(double most, List<TopUp> before, TopUp enough) {
        double least = halve(
                LEAST_ICE_KG,
                enough.iceKg(),
                LAST_HALVINGS,
                mass -> run(most, joined(before, topUp(enough.after(), mass))).tooWarmK() <= 0);
        return joined(before, topUp(enough.after(), least));
    }

    private IceAnswer tooWarmWithIce(BathRun last) {
        if (last.tooWarmAtEndK() <= 0) {
            return never(
                    IceAnswer.Reason.TIME_TOO_SHORT,
                    String.format(
                            Locale.ROOT,
                            "With all the ice that the bucket takes, one is still %.1f K too warm when it must be ready.",
                            last.tooWarmK()),
                    "More time, stirring, smaller vessels, or chilling them before would help.");
        }
        return never(
                IceAnswer.Reason.COLDER_THAN_THE_BATH,
                String.format(
                        Locale.ROOT,
                        "With all the ice that the bucket takes, and %.2f kg of it left, one is above its range after %d min.",
                        last.iceKg(last.firstTooWarmS()),
                        Math.round(last.firstTooWarmS() / S_PER_MIN)),
                "More time or stirring would help; without it the water below the ice stays several degrees above 0 °C.");
    }

    private IceAnswer.Never never(IceAnswer.Reason reason, String why, String help) {
        return new IceAnswer.Never(reason, why, help, Optional.of(energy), runs);
    }

    private int blocks(double kg) {
        return (int)
                Math.ceil(kg / (Ice.density(ZERO_CELSIUS_K) * budget.shape().volumeM3()) - 1e-9);
    }

    private TopUp topUp(Duration after, double kg) {
        return new TopUp(after, kg, kg, blocks(kg), Optional.empty());
    }

    /** Mass between two, one that is too little and one that is enough, to the accuracy or the number of halvings. */
    private static double halve(double tooLittle, double enough, int halvings, DoublePredicate does) {
        double low = tooLittle;
        double high = enough;
        for (int i = 0; i < halvings && high - low > Math.max(ACCURACY_KG, ACCURACY_PART * high); i++) {
            double middle = 0.5 * (low + high);
            if (does.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** Ice that is added, and what becomes of it. */
    private record Added(TopUp topUp, BathRun run) {}

    private static List<TopUp> joined(List<TopUp> before, TopUp last) {
        List<TopUp> all = new ArrayList<>(before);
        all.add(last);
        return List.copyOf(all);
    }

    private static List<TopUp> withMargins(List<TopUp> topUps, List<Optional<IceMargin>> margins) {
        List<TopUp> all = new ArrayList<>();
        for (int i = 0; i < topUps.size(); i++) {
            all.add(topUps.get(i).with(margins.get(i + 1)));
        }
        return List.copyOf(all);
    }

    /** Of the ice at the start and of each addition; none is searched where a vessel need not be ready before the next. */
    private List<Optional<IceMargin>> margins(double iceKg, List<TopUp> topUps) {
        List<List<Double>> drawn = budget.ensemble()
                .map(draws -> draws.run(
                        LawScatter.all(),
                        draw -> leastKg(budget.solver().withMultipliers(draw.values()), iceKg, topUps)))
                .orElse(List.of());
        List<Optional<IceMargin>> margins = new ArrayList<>();
        for (int i = 0; i <= topUps.size(); i++) {
            int piece = i;
            margins.add(
                    drawn.isEmpty() || IceBudget.seconds(until(topUps, i)) < budget.readyS()
                            ? Optional.empty()
                            : Optional.of(IceMargin.of(drawn.stream()
                                    .mapToDouble(least -> least.get(piece))
                                    .toArray())));
        }
        return margins;
    }

    /** How long the ice has to last that is put in at the start, or by an addition. */
    private Duration until(List<TopUp> topUps, int piece) {
        return piece < topUps.size() ? topUps.get(piece).after() : budget.end();
    }

    /** Least ice at the start and of each addition under a solver's laws, infinite where none is enough. */
    private List<Double> leastKg(NetworkSolver solver, double iceKg, List<TopUp> topUps) {
        List<Double> least = new ArrayList<>();
        Duration first = until(topUps, 0);
        double most = budget.room().mostIceKg();
        least.add(least(
                kg -> budget.run(kg, List.of(), solver, budget.readyS(), first).tooWarmK() <= 0, iceKg, most));
        List<TopUp> before = List.of();
        for (int i = 0; i < topUps.size(); i++) {
            TopUp planned = topUps.get(i);
            List<TopUp> earlier = before;
            double afterS = IceBudget.seconds(planned.after());
            Duration until = until(topUps, i + 1);
            double room = most
                    - budget.run(iceKg, earlier, solver, afterS, planned.after())
                            .iceKg(afterS);
            if (room < LEAST_ICE_KG) {
                least.add(LEAST_ICE_KG);
                continue;
            }
            double kg = Math.min(room, planned.iceKg());
            least.add(least(
                    mass -> budget.run(
                                            iceKg,
                                            joined(earlier, topUp(planned.after(), mass)),
                                            solver,
                                            Math.max(budget.readyS(), afterS),
                                            until)
                                    .tooWarmK()
                            <= 0,
                    kg,
                    room));
            before = joined(earlier, topUp(planned.after(), kg));
        }
        return least;
    }

    /** Least mass that does it, looked for from a near one on; infinite if not even the most does. */
    private static double least(DoublePredicate does, double nearKg, double mostKg) {
        if (does.test(nearKg)) {
            return nearKg <= LEAST_ICE_KG || does.test(LEAST_ICE_KG)
                    ? LEAST_ICE_KG
                    : halve(LEAST_ICE_KG, nearKg, MARGIN_HALVINGS, does);
        }
        return nearKg < mostKg && does.test(mostKg)
                ? halve(nearKg, mostKg, MARGIN_HALVINGS, does)
                : Double.POSITIVE_INFINITY;
    }
}
