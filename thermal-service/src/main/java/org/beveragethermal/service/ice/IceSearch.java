/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoublePredicate;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.OutOfRangeException;

/** One search for the least ice, with its count of runs: by halving, and with additions where a full bucket is not enough. */
final class IceSearch {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double LEAST_ICE_KG = IceBudget.LEAST_ICE_KG;
    private static final double ACCURACY_PART = 0.02;
    private static final double ACCURACY_KG = 0.01;
    private static final int MOST_HALVINGS = 12;
    private static final int MARGIN_HALVINGS = 7;
    private static final int LAST_HALVINGS = 6;
    private static final int SMALLER_ADDITIONS = 4;
    /** Ice is added when this part of a full bucket's is left. */
    private static final double RESERVE_PART = 0.25;

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
        if (total > budget.atHandKg()) {
            return never(
                    IceAnswer.Reason.NOT_ENOUGH_ICE,
                    String.format(Locale.ROOT, "It takes %.2f kg of ice; there are %.2f kg.", total, budget.atHandKg()),
                    "Colder water, vessels chilled before, a lower level of the bath or more ice would help.");
        }
        Set<String> notes = found.notes();
        if (iceKg <= LEAST_ICE_KG) {
            notes.add("the water alone is cold enough: the least ice that is a bath of ice and water is given");
        }
        notes.add("keep mouths of bottles above the melt water, and do not use this ice in drinks");
        return new IceAnswer.Enough(
                iceKg,
                blocks(iceKg),
                budget.shape(),
                budget.room().bathKg() - iceKg,
                topUps,
                energy,
                topUps.isEmpty() ? budget.ensemble().map(draws -> margin(draws, iceKg)) : Optional.empty(),
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
            OptionalDouble spentS = last.iceDownTo(RESERVE_PART * most, fromS, budget.endS());
            if (spentS.isEmpty() || spentS.getAsDouble() > last.firstTooWarmS()) {
                return tooWarmWithIce(last);
            }
            long minutes = Math.max(1, (long) Math.floor(spentS.getAsDouble() / S_PER_MIN));
            Duration after = Duration.ofMinutes(minutes);
            double kg = most - last.iceKg(IceBudget.seconds(after));
            if (IceBudget.seconds(after) >= budget.endS() || kg < LEAST_ICE_KG || IceBudget.seconds(after) <= fromS) {
                return tooWarmWithIce(last);
            }
            Optional<Added> added = added(most, topUps, after, kg);
            if (added.isEmpty()) {
                return spent(most, topUps);
            }
            last = added.get().run();
            if (last.tooWarmK() <= 0) {
                return checked(most, leastAddition(most, topUps, added.get().topUp()));
            }
            topUps.add(added.get().topUp());
            fromS = IceBudget.seconds(after);
        }
        return last.iceDownTo(RESERVE_PART * most, fromS, budget.endS()).isPresent()
                ? spent(most, topUps)
                : tooWarmWithIce(last);
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

    /** An addition with its run. A run refuses more than the bucket holds: then half as much is tried. */
    private Optional<Added> added(double most, List<TopUp> before, Duration after, double kg) {
        double mass = kg;
        for (int i = 0; i < SMALLER_ADDITIONS && mass >= LEAST_ICE_KG; i++) {
            TopUp topUp = topUp(after, mass);
            try {
                return Optional.of(new Added(topUp, run(most, joined(before, topUp))));
            } catch (OutOfRangeException refused) {
                mass *= 0.5;
            }
        }
        return Optional.empty();
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
                        "With all the ice that the bucket takes, and some left, one is still %.1f K too warm at the end.",
                        last.tooWarmAtEndK()),
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
        return new TopUp(after, kg, kg, blocks(kg));
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

    private IceMargin margin(Ensemble draws, double nominalKg) {
        List<Double> least = draws.run(LawScatter.all(), draw -> {
            NetworkSolver drawn = budget.solver().withMultipliers(draw.values());
            return least(drawn, nominalKg);
        });
        return IceMargin.of(least.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Least ice under a solver's laws; infinite if none is enough. */
    private double least(NetworkSolver solver, double nearKg) {
        DoublePredicate does = kg -> budget.run(kg, List.of(), solver).tooWarmK() <= 0;
        if (does.test(nearKg)) {
            return nearKg <= LEAST_ICE_KG || does.test(LEAST_ICE_KG)
                    ? LEAST_ICE_KG
                    : halve(LEAST_ICE_KG, nearKg, MARGIN_HALVINGS, does);
        }
        return does.test(budget.room().mostIceKg())
                ? halve(nearKg, budget.room().mostIceKg(), MARGIN_HALVINGS, does)
                : Double.POSITIVE_INFINITY;
    }
}
