/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Two or more ends that meet at a surface without heat capacity.
 *
 * <p>The surface temperature makes the flows of all links balance; it is solved inside the path to 1e-12 of the
 * temperature, far below any step tolerance, or as well as a run asks for. The first link's end is booked as the giver of every flow, so that the
 * balance of the whole path does not depend on how well the surface temperature is found. A link whose heat does not
 * depend on the surface, such as sunlight, may carry it beyond the temperatures of all ends. A link far better
 * conducting than the others together takes what they bring, because a rounding error of the surface temperature would
 * drown its own law. A weight that all links share is a share of the whole surface: it scales what the links carry and leaves
 * the surface temperature alone, also where it is 0.
 *
 * <p>Immutable and thread-safe if its laws are.
 *
 * <p>Theory manual, equations (1.3), (1.4), (7.6).
 */
public final class JunctionPath implements Path {

    private static final int MAX_ITERATIONS = 100;
    private static final double RELATIVE_ACCURACY = 1e-12;
    /** A guess is given up for a search after so many evaluations. */
    private static final int MOST_GUESSES = 6;
    /** What is expected to be left behind is less than the accuracy wanted by this factor. */
    private static final double CAUTION = 4;
    /** Below this a conductance is read from the slope of its law [K]. */
    private static final double SMALL_DIFFERENCE_K = 1e-6;
    /** Bounds of the search when the surface lies beyond the temperatures of all ends [K]. */
    private static final double COLDEST_K = 1;

    private static final double HOTTEST_K = 1e4;
    /** From this multiple of all other conductances on, a link's flow is what the others bring. */
    private static final double SHORT_CIRCUIT = 100;

    /**
     * One link from an end to the surface.
     *
     * @param end the end
     * @param mechanism ledger account of the link
     * @param law heat from the end to the surface
     * @param multiplier name of the factor on the law, or null
     * @param weight factor that depends on an amount, or null
     * @param strength factor that depends on time, or null
     */
    public record Link(
            End end,
            String mechanism,
            HeatLaw law,
            @Nullable String multiplier,
            @Nullable AmountWeight weight,
            @Nullable TimeFunction strength) {

        /** One watt, whatever the temperatures. */
        private static final HeatLaw ONE_WATT = (fromK, toK, out) -> {
            out.watts = 1;
            out.perFromKelvin = 0;
            out.perToKelvin = 0;
        };

        /**
         * Checks the parts.
         *
         * @param end the end
         * @param mechanism ledger account of the link
         * @param law heat from the end to the surface
         * @param multiplier name of the factor on the law, or null
         * @param weight factor that depends on an amount, or null
         * @param strength factor that depends on time, or null
         */
        public Link {
            Objects.requireNonNull(end, "end");
            Objects.requireNonNull(law, "law");
        }

        /**
         * A link that does not depend on time.
         *
         * @param end the end
         * @param mechanism ledger account of the link
         * @param law heat from the end to the surface
         * @param multiplier name of the factor on the law, or null
         * @param weight factor that depends on an amount, or null
         */
        public Link(
                End end, String mechanism, HeatLaw law, @Nullable String multiplier, @Nullable AmountWeight weight) {
            this(end, mechanism, law, multiplier, weight, null);
        }

        /**
         * A link that brings heat of its own, such as sunlight: it depends on time and on no temperature.
         *
         * @param end whom the ledger names as the giver; its temperature does not matter, but if it lies between those of the
         *     other ends the surface is found sooner
         * @param mechanism ledger account of the link
         * @param watts heat to the surface as a function of time [W], of either sign
         * @return the link
         */
        public static Link bringing(End end, String mechanism, TimeFunction watts) {
            return new Link(end, mechanism, ONE_WATT, null, null, Objects.requireNonNull(watts, "watts"));
        }

        /**
         * A link without factors.
         *
         * @param end the end
         * @param mechanism ledger account of the link
         * @param law heat from the end to the surface
         * @return the link
         */
        public static Link of(End end, String mechanism, HeatLaw law) {
            return new Link(end, mechanism, law, null, null);
        }

        /**
         * The same link with its law scaled by a named multiplier.
         *
         * @param name name of the factor
         * @return a new link
         */
        public Link scaledBy(String name) {
            return new Link(end, mechanism, law, name, weight, strength);
        }

        /**
         * The same link with a factor that depends on an amount.
         *
         * @param newWeight the factor
         * @return a new link
         */
        public Link weightedBy(AmountWeight newWeight) {
            return new Link(end, mechanism, law, multiplier, newWeight, strength);
        }
    }

    private final String name;
    private final List<Link> links;
    /** Of each link, what evaluations need. */
    private final HeatLaw[] laws;

    private final List<End> ends;
    private final List<Account> accounts;
    private final List<String> multipliers;
    /** For each link, index of its multiplier or -1. */
    private final int[] multiplierOf;
    /** For each link, index of the end whose amount weighs it or -1. */
    private final int[] weightEnd;
    /** The weight of every link, or null if they do not share one. */
    private final @Nullable AmountWeight share;

    /** Whether nothing but multipliers scales the links. */
    private final boolean hasOneFactor;

    private JunctionPath(String name, List<Link> links) {
        this.name = Node.requireName(name);
        if (links.size() < 2) {
            throw new IllegalArgumentException(
                    "junction " + name + " with " + links.size() + " links: expected at least 2");
        }
        this.links = List.copyOf(links);
        this.laws = links.stream().map(Link::law).toArray(HeatLaw[]::new);
        List<End> allEnds = new ArrayList<>();
        List<Account> allAccounts = new ArrayList<>();
        List<String> allMultipliers = new ArrayList<>();
        for (Link link : links) {
            if (!allEnds.isEmpty()) {
                allAccounts.add(Account.heat(link.mechanism(), 0, allEnds.size()));
            }
            allEnds.add(link.end());
        }
        multiplierOf = new int[links.size()];
        weightEnd = new int[links.size()];
        for (int i = 0; i < links.size(); i++) {
            String multiplier = links.get(i).multiplier();
            multiplierOf[i] = multiplier == null ? -1 : indexOrAdd(allMultipliers, multiplier);
            AmountWeight weight = links.get(i).weight();
            weightEnd[i] = weight == null ? -1 : indexOrAdd(allEnds, weight.node());
        }
        AmountWeight first = links.get(0).weight();
        hasOneFactor = links.stream().allMatch(link -> link.weight() == null && link.strength() == null);
        share = first != null && links.stream().allMatch(link -> first.equals(link.weight())) ? first : null;
        this.ends = List.copyOf(allEnds);
        this.accounts = List.copyOf(allAccounts);
        this.multipliers = List.copyOf(allMultipliers);
    }

    /**
     * Joins links at a surface.
     *
     * @param name non-blank name
     * @param links two or more links, not modified
     * @return the path
     * @throws IllegalArgumentException if there are fewer than two links
     */
    public static JunctionPath of(String name, List<Link> links) {
        return new JunctionPath(name, links);
    }

    /**
     * Joins links at a surface.
     *
     * @param name non-blank name
     * @param links two or more links
     * @return the path
     * @throws IllegalArgumentException if there are fewer than two links
     */
    public static JunctionPath of(String name, Link... links) {
        return new JunctionPath(name, List.of(links));
    }

    private static <T> int indexOrAdd(List<T> list, T item) {
        int index = list.indexOf(item);
        if (index >= 0) {
            return index;
        }
        list.add(item);
        return list.size() - 1;
    }

    @Override
    public String name() {
        return name;
    }

    /**
     * The links that meet at the surface.
     *
     * @return links in the order given
     */
    public List<Link> links() {
        return links;
    }

    @Override
    public List<End> ends() {
        return ends;
    }

    @Override
    public List<Account> accounts() {
        return accounts;
    }

    @Override
    public List<String> multipliers() {
        return multipliers;
    }

    @Override
    public double[] knots() {
        return links.stream()
                .map(Link::strength)
                .filter(Objects::nonNull)
                .flatMapToDouble(strength -> Arrays.stream(strength.knots()))
                .sorted()
                .distinct()
                .toArray();
    }

    /**
     * The surface temperature at given inputs.
     *
     * @param e inputs, as in {@link #evaluate}
     * @return temperature [K]
     * @throws IllegalStateException if no temperature from 1 K to 10,000 K balances the links
     */
    public double surfaceTemperatureK(PathEvaluation e) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < links.size(); i++) {
            low = Math.min(low, e.temperatureK(i));
            high = Math.max(high, e.temperatureK(i));
        }
        // The ends enclose the surface unless a link brings heat of its own; looked into only where the search leads
        // outside.
        boolean lowTried = false;
        boolean highTried = false;
        double surface = 0.5 * (low + high);
        HeatFlow flow = e.scratch(0);
        for (int iteration = 0; iteration < MAX_ITERATIONS; iteration++) {
            sum(e, surface, flow);
            double sum = flow.watts;
            // Inflow falls as the surface warms: the root is above if more flows in than out.
            if (sum > 0) {
                low = surface;
                lowTried = true;
            } else if (sum < 0) {
                high = surface;
                highTried = true;
            } else {
                return surface;
            }
            double next = surface - sum / flow.perToKelvin;
            if (!(next > low && next < high)) {
                if (sum > 0 && !highTried) {
                    highTried = true;
                    sum(e, high, flow);
                    if (flow.watts > 0) {
                        low = high;
                        surface = high;
                        high = Math.max(HOTTEST_K, high);
                        continue;
                    }
                } else if (sum < 0 && !lowTried) {
                    lowTried = true;
                    sum(e, low, flow);
                    if (flow.watts < 0) {
                        high = low;
                        surface = low;
                        low = Math.min(COLDEST_K, low);
                        continue;
                    }
                }
                // Also taken where the slope is 0; a Newton step that lands on an end of the bracket stays there.
                next = next == low || next == high ? next : 0.5 * (low + high);
            }
            double change = Math.abs(next - surface);
            surface = next;
            if (change <= RELATIVE_ACCURACY * surface) {
                return inside(surface);
            }
        }
        return inside(surface);
    }

    /** Sum of all flows into the surface and its slope in the surface's temperature. */
    private void sum(PathEvaluation e, double surface, HeatFlow out) {
        double sum = 0;
        double slope = 0;
        for (int i = 0; i < links.size(); i++) {
            double factor = factor(i, e);
            laws[i].evaluate(e.temperatureK(i), surface, out);
            sum += factor * out.watts;
            slope += factor * out.perToKelvin;
        }
        out.watts = sum;
        out.perToKelvin = slope;
    }

    /** A search that ended at a bound found no balance. */
    private double inside(double surface) {
        if (surface <= COLDEST_K * (1 + 1e-9) || surface >= HOTTEST_K * (1 - 1e-9)) {
            throw new IllegalStateException("junction " + name + ": no surface temperature from " + COLDEST_K + " K to "
                    + HOTTEST_K + " K balances its links; let one of them give heat off as the surface warms");
        }
        return surface;
    }

    /**
     * Conductance of a link at the surface temperature of the given inputs.
     *
     * @param e inputs, as in {@link #evaluate}
     * @param link index into {@link #links}
     * @return heat over temperature difference [W/K], with multiplier and weight; without meaning for a link that {@linkplain
     *     #bringsHeatOfItsOwn brings heat of its own}
     */
    public double conductanceWPerK(PathEvaluation e, int link) {
        double surface = surfaceTemperatureK(e);
        double difference = e.temperatureK(link) - surface;
        HeatFlow flow = new HeatFlow();
        links.get(link).law().evaluate(e.temperatureK(link), surface, flow);
        return share(e)
                * factor(link, e)
                * (Math.abs(difference) > SMALL_DIFFERENCE_K ? flow.watts / difference : flow.perFromKelvin);
    }

    /**
     * Heat that a link brings to the surface at the surface temperature of the given inputs.
     *
     * @param e inputs, as in {@link #evaluate}
     * @param link index into {@link #links}
     * @return heat from the link's end to the surface [W], with multiplier and weight
     */
    public double heatW(PathEvaluation e, int link) {
        HeatFlow flow = new HeatFlow();
        links.get(link).law().evaluate(e.temperatureK(link), surfaceTemperatureK(e), flow);
        return share(e) * factor(link, e) * flow.watts;
    }

    /**
     * Whether a link brings heat that depends on no temperature, such as sunlight; a conductance says nothing about it.
     *
     * @param e inputs, as in {@link #evaluate}
     * @param link index into {@link #links}
     * @return true if the law gives heat and both its slopes are 0
     */
    public boolean bringsHeatOfItsOwn(PathEvaluation e, int link) {
        HeatFlow flow = new HeatFlow();
        links.get(link).law().evaluate(e.temperatureK(link), surfaceTemperatureK(e), flow);
        return flow.watts != 0 && flow.perFromKelvin == 0 && flow.perToKelvin == 0;
    }

    /** Multiplier, weight and strength of a link, without the weight that all share. */
    private double factor(int link, PathEvaluation e) {
        double factor = multiplierOf[link] < 0 ? 1 : e.multiplier(multiplierOf[link]);
        if (hasOneFactor) {
            return factor;
        }
        return factor * weight(link, e) * strength(link, e);
    }

    /** What a link's strength is now. */
    private double strength(int link, PathEvaluation e) {
        TimeFunction strength = links.get(link).strength();
        return strength == null ? 1 : strength.at(e.timeS());
    }

    private double weight(int link, PathEvaluation e) {
        AmountWeight weight = links.get(link).weight();
        return weight == null || share != null ? 1 : weight.factor().at(e.amount(weightEnd[link], weight.amount()));
    }

    /** The weight that all links share. */
    private double share(PathEvaluation e) {
        return share == null ? 1 : share.factor().at(e.amount(weightEnd[0], share.amount()));
    }

    @Override
    public void evaluate(PathEvaluation e) {
        evaluateAtSurface(e);
    }

    /**
     * Evaluates the path, for a path around it that needs the surface temperature too.
     *
     * @param e evaluation with the inputs set
     * @return surface temperature [K]
     */
    public double evaluateAtSurface(PathEvaluation e) {
        SurfaceMemory memory = e.surfaceOf(this, laws.length);
        double surface = fromGuess(e, memory);
        if (Double.isNaN(surface)) {
            surface = surfaceTemperatureK(e);
            flowsAt(e, surface);
        }
        memory.keep(e, surface);
        double slope = 0;
        int best = 0;
        for (int i = 0; i < laws.length; i++) {
            HeatFlow flow = e.scratch(i);
            slope += flow.perToKelvin;
            best = flow.perToKelvin < e.scratch(best).perToKelvin ? i : best;
        }
        double others = slope - e.scratch(best).perToKelvin;
        int balancing = e.scratch(best).perToKelvin < SHORT_CIRCUIT * others ? best : 0;
        double rest = 0;
        for (int i = 0; i < links.size(); i++) {
            if (i != balancing) {
                rest += e.scratch(i).watts;
            }
        }
        double share = share(e);
        for (int i = 1; i < links.size(); i++) {
            e.flow(i - 1, share * (i == balancing ? rest : -e.scratch(i).watts));
        }
        if (e.wantsDerivatives()) {
            derivatives(e, slope, surface, balancing, share);
            if (this.share != null) {
                byShare(e, this.share, balancing, rest);
            }
        }
        return surface;
    }

    /** Flows of all links and their slopes, with their factors, into the evaluation. */
    private void flowsAt(PathEvaluation e, double surfaceK) {
        for (int i = 0; i < laws.length; i++) {
            HeatFlow flow = e.scratch(i);
            laws[i].evaluate(e.temperatureK(i), surfaceK, flow);
            double factor = factor(i, e);
            flow.watts *= factor;
            flow.perFromKelvin *= factor;
            flow.perToKelvin *= factor;
        }
    }

    /**
     * Newton's method from where the surface was last, leaving the flows in the evaluation. Two steps in a row show how the sum of the flows
     * bends, and so what a step leaves behind: as soon as that is less than the accuracy wanted, it is taken on the flows' own slopes without
     * evaluating the laws again.
     *
     * @return the surface temperature [K], NaN if it was not found before or the guess leads nowhere
     */
    private double fromGuess(PathEvaluation e, SurfaceMemory memory) {
        double surface = memory.guessK(e);
        double bend = memory.bend();
        double before = Double.NaN;
        double left = e.surfaceAccuracyK() / CAUTION;
        for (int tries = 0; tries < MOST_GUESSES && surface > COLDEST_K && surface < HOTTEST_K; tries++) {
            flowsAt(e, surface);
            double sum = 0;
            double slope = 0;
            for (int i = 0; i < laws.length; i++) {
                sum += e.scratch(i).watts;
                slope += e.scratch(i).perToKelvin;
            }
            double change = -sum / slope;
            double size = Math.abs(change);
            if (!(slope < 0 && (tries == 0 || size < 0.5 * before))) {
                return Double.NaN;
            }
            if (tries > 0) {
                bend = size / (before * before);
            }
            if (bend * size * size <= left) {
                for (int i = 0; i < laws.length; i++) {
                    HeatFlow flow = e.scratch(i);
                    flow.watts += flow.perToKelvin * change;
                }
                memory.keepBend(bend);
                return surface + change;
            }
            before = size;
            surface += change;
        }
        return Double.NaN;
    }

    /**
     * How the surface temperature follows that of an end.
     *
     * @param e evaluation that {@link #evaluateAtSurface} has just gone through
     * @param end index into {@link #ends}
     * @return derivative [K/K]
     */
    public double surfaceByTemperature(PathEvaluation e, int end) {
        return end < links.size() ? -e.scratch(end).perFromKelvin * inverseSlope(e) : 0;
    }

    /**
     * How the surface temperature follows an amount of an end.
     *
     * @param e evaluation that {@link #evaluateAtSurface} has just gone through
     * @param surfaceK what it returned [K]
     * @param end index into {@link #ends}
     * @param amount index of the amount
     * @return derivative [K per unit of the amount]
     */
    public double surfaceByAmount(PathEvaluation e, double surfaceK, int end, int amount) {
        double watts = 0;
        for (int i = 0; i < links.size() && share == null; i++) {
            AmountWeight weight = links.get(i).weight();
            if (weight != null && weightEnd[i] == end && weight.amount() == amount) {
                double multiplier = multiplierOf[i] < 0 ? 1 : e.multiplier(multiplierOf[i]);
                watts += multiplier
                        * weight.factor().slope(e.amount(end, amount))
                        * strength(i, e)
                        * lawWatts(e, i, surfaceK);
            }
        }
        return -watts * inverseSlope(e);
    }

    /**
     * How the surface temperature follows a multiplier.
     *
     * @param e evaluation that {@link #evaluateAtSurface} has just gone through
     * @param surfaceK what it returned [K]
     * @param multiplier index into {@link #multipliers}
     * @return derivative [K]
     */
    public double surfaceByMultiplier(PathEvaluation e, double surfaceK, int multiplier) {
        double watts = 0;
        for (int i = 0; i < links.size(); i++) {
            if (multiplierOf[i] == multiplier) {
                watts += weight(i, e) * strength(i, e) * lawWatts(e, i, surfaceK);
            }
        }
        return -watts * inverseSlope(e);
    }

    /**
     * How the surface temperature follows time itself, through links whose strength depends on it.
     *
     * @param e evaluation that {@link #evaluateAtSurface} has just gone through
     * @param surfaceK what it returned [K]
     * @return derivative [K/s]
     */
    public double surfaceByTime(PathEvaluation e, double surfaceK) {
        double watts = 0;
        for (int i = 0; i < links.size(); i++) {
            TimeFunction strength = links.get(i).strength();
            if (strength != null) {
                double multiplier = multiplierOf[i] < 0 ? 1 : e.multiplier(multiplierOf[i]);
                watts += multiplier * weight(i, e) * strength.rate(e.timeS()) * lawWatts(e, i, surfaceK);
            }
        }
        return -watts * inverseSlope(e);
    }

    private double inverseSlope(PathEvaluation e) {
        double slope = 0;
        for (int i = 0; i < links.size(); i++) {
            slope += e.scratch(i).perToKelvin;
        }
        return slope == 0 ? 0 : 1 / slope;
    }

    /**
     * Implicit function theorem: with F(surface, x) = Σ flows = 0, d surface / dx = −(∂F/∂x) / (∂F/∂surface), and each
     * link's flow follows directly and through the surface.
     */
    private void derivatives(PathEvaluation e, double slope, double surface, int balancing, double share) {
        double inverseSlope = slope == 0 ? 0 : 1 / slope;
        int n = links.size();
        for (int account = 0; account < n - 1; account++) {
            for (int m = 0; m < multipliers.size(); m++) {
                e.flowByMultiplier(account, m, 0);
            }
            for (int i = 0; i < n; i++) {
                if (weightEnd[i] >= 0) {
                    e.flowByAmount(account, weightEnd[i], amountOf(i), 0);
                }
            }
            e.flowByTime(account, 0);
        }
        for (int i = 0; i < n; i++) {
            double bySurface = -e.scratch(i).perFromKelvin * inverseSlope;
            double rest = 0;
            for (int j = 0; j < n; j++) {
                if (j == balancing && j > 0) {
                    continue;
                }
                double direct = i == j ? e.scratch(j).perFromKelvin : 0;
                double change = direct + e.scratch(j).perToKelvin * bySurface;
                rest += change;
                if (j > 0) {
                    e.flowByTemperature(j - 1, i, -share * change);
                }
            }
            if (balancing > 0) {
                e.flowByTemperature(balancing - 1, i, share * rest);
            }
            if (multiplierOf[i] >= 0) {
                byMultiplier(e, i, inverseSlope, surface, share);
            }
            if (weightEnd[i] >= 0 && this.share == null) {
                byWeight(e, i, inverseSlope, surface);
            }
            TimeFunction strength = links.get(i).strength();
            if (strength != null) {
                byTime(e, i, strength, inverseSlope, surface, share);
            }
        }
    }

    private void byTime(
            PathEvaluation e, int i, TimeFunction strength, double inverseSlope, double surface, double share) {
        double multiplier = multiplierOf[i] < 0 ? 1 : e.multiplier(multiplierOf[i]);
        double flowPerSecond = share * multiplier * weight(i, e) * strength.rate(e.timeS()) * lawWatts(e, i, surface);
        for (int j = 1; j < links.size(); j++) {
            double direct = i == j ? flowPerSecond : 0;
            double change = -(direct - e.scratch(j).perToKelvin * flowPerSecond * inverseSlope);
            e.flowByTime(j - 1, e.timeDerivativeOf(j - 1) + change);
        }
    }

    private void byMultiplier(PathEvaluation e, int i, double inverseSlope, double surface, double share) {
        double flowPerFactor = share * weight(i, e) * strength(i, e) * lawWatts(e, i, surface);
        for (int j = 1; j < links.size(); j++) {
            double direct = i == j ? flowPerFactor : 0;
            double change = -(direct - e.scratch(j).perToKelvin * flowPerFactor * inverseSlope);
            e.flowByMultiplier(j - 1, multiplierOf[i], e.multiplierDerivativeOf(j - 1, multiplierOf[i]) + change);
        }
    }

    private void byWeight(PathEvaluation e, int i, double inverseSlope, double surface) {
        AmountWeight weight = Objects.requireNonNull(links.get(i).weight());
        double multiplier = multiplierOf[i] < 0 ? 1 : e.multiplier(multiplierOf[i]);
        double weightSlope = weight.factor().slope(e.amount(weightEnd[i], weight.amount()));
        double flowPerAmount = multiplier * weightSlope * strength(i, e) * lawWatts(e, i, surface);
        for (int j = 1; j < links.size(); j++) {
            double direct = i == j ? flowPerAmount : 0;
            double change = -(direct - e.scratch(j).perToKelvin * flowPerAmount * inverseSlope);
            e.addFlowByAmount(j - 1, weightEnd[i], weight.amount(), change);
        }
    }

    /** What the shared weight scales is the flow of a whole surface. */
    private void byShare(PathEvaluation e, AmountWeight weight, int balancing, double rest) {
        double slope = weight.factor().slope(e.amount(weightEnd[0], weight.amount()));
        for (int i = 1; i < links.size(); i++) {
            double whole = i == balancing ? rest : -e.scratch(i).watts;
            e.flowByAmount(i - 1, weightEnd[0], weight.amount(), slope * whole);
        }
    }

    /** The flow of a link without its factors, also where a factor of 0 has hidden it. */
    private double lawWatts(PathEvaluation e, int i, double surface) {
        HeatFlow flow = e.scratch(i);
        double factor = factor(i, e);
        if (factor != 0) {
            return flow.watts / factor;
        }
        links.get(i).law().evaluate(e.temperatureK(i), surface, flow);
        double watts = flow.watts;
        flow.watts = 0;
        flow.perFromKelvin = 0;
        flow.perToKelvin = 0;
        return watts;
    }

    private int amountOf(int link) {
        return Objects.requireNonNull(links.get(link).weight()).amount();
    }
}
