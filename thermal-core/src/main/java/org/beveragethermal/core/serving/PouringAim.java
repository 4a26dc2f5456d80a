/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;

/**
 * The pouring temperature that keeps a drink in a range as long as possible while it is drunk, with its mean over that time inside.
 *
 * <p><b>The mean</b> is over the time from pouring to the last mouthful. Drinking is even, so equal times are equal sips: it is the mean of what
 * is drunk as well, and nothing is to be chosen between the two.
 *
 * <p><b>One-sided.</b> In warm surroundings slightly too cold is cured by waiting and too warm is not; in cold surroundings slightly too warm
 * is, and too cold is not. So a minute on the side that waiting cures counts as half a minute outside the range (own judgement), and a drink
 * may be poured beyond the range on that side: for warm surroundings to {@value #BELOW_K} K below it (own judgement) or to {@link
 * #notBelow}, never below its freezing point; for cold surroundings only to a limit against scalding that you give with {@link #notAbove}.
 * Among equals the one with most reserve against the fault that stays is taken: the cold end in warm surroundings. Which fault waiting cures is
 * told by a run, whose second part shows whether the drink warms; {@link #curedByWaiting} overrides that.
 *
 * <p>For a body in a linear exchange with its surroundings the passage from one end of the range to the other takes a fixed time wherever it
 * begins. If that is longer than the drinking, the aim is the cold end; if it is shorter, colder pouring moves the passage to the end of the
 * drinking, and the mean follows. That is why a white is served colder on a hot evening.
 *
 * <p><b>Cost.</b> One run for the side, 5 spread over the allowed temperatures and up to 5 about the best; 3 per draw; where nothing holds, up
 * to 5 about the longest and up to 4 remedies of 3 runs. A run is that of one glass. The aim is found to 0.01 K, or to a 1500th of
 * allowed temperatures that span more than 15 K.
 *
 * <p>Immutable and thread-safe.
 */
public final class PouringAim {

    /** How far below the range a drink may be poured in warm surroundings unless said otherwise [K]; own judgement of "slightly". */
    public static final double BELOW_K = 3;

    private static final int FIRST_RUNS = 5;
    private static final int RUNS_PER_DRAW = 3;
    private static final int DRAWS = 20;
    private static final ValidityRange DRAWS_ALLOWED = new ValidityRange("draws", 2, 1000, "1");
    private static final long SEED = 20260101L;
    private static final double COVERAGE = 0.9;
    private static final double LEAST_SPAN_K = 0.05;
    private static final double SAME_K = 1e-9;

    private final Serving serving;
    private final Optional<CuredByWaiting> stated;
    private final OptionalDouble notBelowK;
    private final OptionalDouble notAboveK;
    private final int draws;
    private final long seed;

    private PouringAim(
            Serving serving,
            Optional<CuredByWaiting> stated,
            OptionalDouble notBelowK,
            OptionalDouble notAboveK,
            int draws,
            long seed) {
        this.serving = serving;
        this.stated = stated;
        this.notBelowK = notBelowK;
        this.notAboveK = notAboveK;
        this.draws = draws;
        this.seed = seed;
    }

    /**
     * Asks about a serving.
     *
     * @param serving what is poured into what, and where
     * @return the question, without limits of its own, with 20 draws for the scatter of the laws
     */
    public static PouringAim of(Serving serving) {
        return new PouringAim(
                Objects.requireNonNull(serving, "serving"),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                DRAWS,
                SEED);
    }

    /**
     * The same question with a stated preference.
     *
     * @param cured which fault waiting cures
     * @return a new question
     */
    public PouringAim curedByWaiting(CuredByWaiting cured) {
        return new PouringAim(serving, Optional.of(cured), notBelowK, notAboveK, draws, seed);
    }

    /**
     * The same question with a lowest pouring temperature, below or in the range.
     *
     * @param limit the temperature
     * @return a new question
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public PouringAim notBelow(Quantity<Temperature> limit) {
        return new PouringAim(
                serving,
                stated,
                OptionalDouble.of(SiValues.temperatureK(limit, "lowest pouring temperature")),
                notAboveK,
                draws,
                seed);
    }

    /**
     * The same question with a highest pouring temperature, such as one that does not scald. It must be given for a drink to be poured above
     * the range.
     *
     * @param limit the temperature
     * @return a new question
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public PouringAim notAbove(Quantity<Temperature> limit) {
        return new PouringAim(
                serving,
                stated,
                notBelowK,
                OptionalDouble.of(SiValues.temperatureK(limit, "highest pouring temperature")),
                draws,
                seed);
    }

    /**
     * The same question with other draws.
     *
     * @param newDraws number of draws, 2 to 1000
     * @param newSeed the seed
     * @return a new question
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the number is outside its range
     */
    public PouringAim withDraws(int newDraws, long newSeed) {
        DRAWS_ALLOWED.require(newDraws, "pouring aim");
        return new PouringAim(serving, stated, notBelowK, notAboveK, newDraws, newSeed);
    }

    /**
     * Answers.
     *
     * @param wanted the range, not one temperature
     * @return the aim, or that none holds and what would help
     * @throws IllegalArgumentException if what is wanted is one temperature, or less than 0.05 K of pouring temperatures are allowed by the limits, by the freezing
     *     point and by the range of the drink
     */
    public AimAnswer aim(Wanted wanted) {
        if (wanted.lowK() >= wanted.highK()) {
            throw new IllegalArgumentException("wanted at " + wanted.lowK()
                    + " K alone: expected a range with some width; a drink passes one temperature in an instant");
        }
        CuredByWaiting cured = stated.orElseGet(() -> trend(wanted));
        int before = stated.isPresent() ? 0 : 1;
        Limits limits = limits(wanted, cured);
        AimSearch search = search(limits, serving, Map.of(), FIRST_RUNS);
        Optional<AimSearch.Choice> choice = search.aim();
        if (choice.isPresent()) {
            AimSearch.Choice best = choice.get();
            return new AimAnswer.Aim(
                    wanted,
                    cured,
                    AimAnswer.Glass.of(wanted, best.pouringK(), best.course()),
                    scatter(limits, best),
                    before + search.runs() + draws * RUNS_PER_DRAW);
        }
        AimSearch.Choice longest = search.longest();
        List<Remedy> remedies = new ArrayList<>();
        int tried = remedies(limits, search, remedies);
        return new AimAnswer.CannotHold(
                wanted,
                cured,
                AimAnswer.Glass.of(wanted, longest.pouringK(), longest.course()),
                remedies,
                before + search.runs() + tried);
    }

    /** What is asked, and between what the drink may be poured [K]. */
    private record Limits(Wanted wanted, CuredByWaiting cured, double lowK, double highK) {}

    private CuredByWaiting trend(Wanted wanted) {
        double middleK = 0.5 * (wanted.lowK() + wanted.highK());
        double pouringK = Math.max(serving.coldestK(), Math.min(hottestK(), middleK));
        return serving.run(pouringK, Map.of()).trendK() >= 0 ? CuredByWaiting.TOO_COLD : CuredByWaiting.TOO_WARM;
    }

    private double hottestK() {
        return serving.drink().temperatureRange().high();
    }

    private Limits limits(Wanted wanted, CuredByWaiting cured) {
        double beyondK = cured == CuredByWaiting.TOO_COLD ? BELOW_K : 0;
        double lowK = Math.max(serving.coldestK(), notBelowK.orElse(wanted.lowK() - beyondK));
        double highK = Math.min(hottestK(), notAboveK.orElse(wanted.highK()));
        if (cured != CuredByWaiting.TOO_WARM) {
            highK = Math.min(highK, wanted.highK());
        }
        if (cured != CuredByWaiting.TOO_COLD) {
            lowK = Math.max(lowK, wanted.lowK());
        }
        if (highK - lowK < LEAST_SPAN_K) {
            throw new IllegalArgumentException("pouring from " + lowK + " K to " + highK
                    + " K: expected limits, a freezing point and a range that leave something between them, at least "
                    + LEAST_SPAN_K + " K");
        }
        return new Limits(wanted, cured, lowK, highK);
    }

    private static AimSearch search(Limits limits, Serving glass, Map<String, Double> multipliers, int firstRuns) {
        DoubleFunction<GlassCourse> run = pouringK -> glass.run(pouringK, multipliers);
        return new AimSearch(limits.wanted(), limits.lowK(), limits.highK(), limits.cured(), firstRuns, run);
    }

    private AimAnswer.Scatter scatter(Limits limits, AimSearch.Choice best) {
        List<AimSearch> searches = Ensemble.of(draws, seed)
                .run(LawScatter.all(), draw -> search(limits, serving, draw.values(), RUNS_PER_DRAW));
        double[] aims = searches.stream()
                .flatMap(search -> search.aimAsKnown().stream())
                .mapToDouble(AimSearch.Choice::pouringK)
                .toArray();
        List<GlassCourse> courses =
                searches.stream().map(search -> search.at(best.pouringK())).toList();
        double lowK = limits.wanted().lowK();
        double highK = limits.wanted().highK();
        return new AimAnswer.Scatter(
                aims.length < 2 ? Optional.empty() : Optional.of(Interval.of(aims, COVERAGE)),
                Interval.of(courses.stream().mapToDouble(GlassCourse::meanK).toArray(), COVERAGE),
                Interval.of(
                        courses.stream()
                                .mapToDouble(c -> c.insideS(lowK, highK))
                                .toArray(),
                        COVERAGE),
                (double) aims.length / draws);
    }

    /** Tries changes; returns how many runs that took. */
    private int remedies(Limits limits, AimSearch asItIs, List<Remedy> found) {
        int runs = 0;
        if (serving.canBeHalved()) {
            runs += remedy(limits, Remedy.Change.SMALLER_PORTIONS, serving.halved(), Map.of(), found);
        }
        OptionalDouble glassK = preparedK(limits);
        if (glassK.isPresent()) {
            Serving prepared = serving.withGlassK(glassK.getAsDouble());
            runs += remedy(limits, Remedy.Change.GLASS_PREPARED, prepared, Map.of(), found);
        }
        runs += without(limits, Remedy.Change.SHADE, Multipliers.SUN, asItIs, found);
        return runs + without(limits, Remedy.Change.HELD_BY_THE_STEM, Multipliers.HAND, asItIs, found);
    }

    /** The end of the range to which a glass can be prepared, if it is not there already. */
    private OptionalDouble preparedK(Limits limits) {
        double lowK = limits.wanted().lowK();
        double highK = limits.wanted().highK();
        return switch (limits.cured()) {
            case TOO_COLD -> serving.glassK() > lowK ? OptionalDouble.of(lowK) : OptionalDouble.empty();
            case TOO_WARM -> serving.glassK() < highK ? OptionalDouble.of(highK) : OptionalDouble.empty();
            case NEITHER -> OptionalDouble.of(0.5 * (lowK + highK));
        };
    }

    private static int remedy(
            Limits limits, Remedy.Change change, Serving changed, Map<String, Double> multipliers, List<Remedy> found) {
        AimSearch search = search(limits, changed, multipliers, RUNS_PER_DRAW);
        found.add(remedy(limits, change, search));
        return search.runs();
    }

    private static Remedy remedy(Limits limits, Remedy.Change change, AimSearch search) {
        Optional<AimSearch.Choice> aim = search.aimAsKnown();
        AimSearch.Choice choice = aim.orElseGet(search::longestAsKnown);
        double insideS =
                choice.course().insideS(limits.wanted().lowK(), limits.wanted().highK());
        return new Remedy(
                change,
                aim.isPresent(),
                choice.pouringK(),
                insideS / choice.course().lengthS());
    }

    /** Takes an influence away; where that makes no difference there was none, and it is no remedy. */
    private int without(Limits limits, Remedy.Change change, String multiplier, AimSearch asItIs, List<Remedy> found) {
        AimSearch search = search(limits, serving, Map.of(multiplier, 0.0), RUNS_PER_DRAW);
        double difference =
                search.at(limits.lowK()).lastK() - asItIs.at(limits.lowK()).lastK();
        if (Math.abs(difference) > SAME_K) {
            found.add(remedy(limits, change, search));
        }
        return search.runs();
    }
}
