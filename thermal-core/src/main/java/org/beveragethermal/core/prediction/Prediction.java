/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.solver.Ledger;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.DilutedStore;
import org.beveragethermal.materials.units.SiValues;

/**
 * The course of one vessel's temperature through a run.
 *
 * <p>Immutable and thread-safe. Times are counted from the start of the run.
 */
public final class Prediction {

    private static final double SENSITIVITY_STEP_K = 0.01;
    private static final int RANGE_SAMPLES = 24;
    /** Rounding of the map from enthalpy to temperature [K]. */
    private static final double ALREADY_THERE_K = 1e-6;

    private final Trajectory trajectory;
    private final Contents contents;
    private final double heatCapacityJPerK;
    private final List<WallBand> bands;
    private final List<String> modelNotes;
    private final Optional<Described> described;
    /** When there is something in the vessel, in order; empty if it is throughout. */
    private final Optional<List<FilledInterval>> held;

    private Prediction(
            Trajectory trajectory,
            Contents contents,
            double heatCapacityJPerK,
            List<WallBand> bands,
            List<String> notes,
            Optional<Described> described,
            Optional<List<FilledInterval>> held) {
        this.trajectory = Objects.requireNonNull(trajectory, "trajectory");
        this.contents = Objects.requireNonNull(contents, "contents");
        this.heatCapacityJPerK = heatCapacityJPerK;
        this.bands = List.copyOf(bands);
        this.modelNotes = List.copyOf(notes);
        this.described = described;
        this.held = held.map(List::copyOf);
    }

    /**
     * A prediction from a run; called by scenes.
     *
     * @param trajectory the run
     * @param contents nodes of the vessel's contents
     * @param heatCapacityJPerK heat capacity of contents and wall [J/K]
     * @param bands bands of the vessel's wall
     * @param notes what a user should know
     * @return the prediction
     */
    public static Prediction of(
            Trajectory trajectory,
            Contents contents,
            double heatCapacityJPerK,
            List<WallBand> bands,
            List<String> notes) {
        return new Prediction(
                trajectory, contents, heatCapacityJPerK, bands, notes, Optional.empty(), Optional.empty());
    }

    /**
     * A prediction that can say whether another description is warranted; called by scenes.
     *
     * @param trajectory the run
     * @param contents nodes of the vessel's contents
     * @param heatCapacityJPerK heat capacity of contents and wall [J/K]
     * @param bands bands of the vessel's wall
     * @param notes what a user should know
     * @param described how the vessel is described and where it is
     * @return the prediction
     */
    public static Prediction of(
            Trajectory trajectory,
            Contents contents,
            double heatCapacityJPerK,
            List<WallBand> bands,
            List<String> notes,
            Described described) {
        return new Prediction(
                trajectory, contents, heatCapacityJPerK, bands, notes, Optional.of(described), Optional.empty());
    }

    /**
     * The prediction for a vessel that is empty at times; called by scenes.
     *
     * @param times when there is something in it, in order; none if it is empty throughout
     * @return a prediction that has temperatures of the drink at these times alone
     */
    public Prediction heldOnly(List<FilledInterval> times) {
        return new Prediction(
                trajectory, contents, heatCapacityJPerK, bands, modelNotes, described, Optional.of(times));
    }

    /**
     * Whether there is a drink in the vessel.
     *
     * @param timeS time since the start [s]
     * @return false before a vessel is filled and after it is emptied
     * @throws IllegalArgumentException if the time is not in the run
     */
    public boolean isFilled(double timeS) {
        if (!(timeS >= 0 && timeS <= trajectory.endS())) {
            throw new IllegalArgumentException(
                    "time " + timeS + " s: expected a time of the run, 0 to " + trajectory.endS() + " s");
        }
        return held.map(all -> all.stream().anyMatch(times -> times.includes(timeS)))
                .orElse(true);
    }

    /**
     * Mean temperature of the contents, if there are any.
     *
     * @param timeS time since the start [s]
     * @return temperature [K]; empty while the vessel is
     * @throws IllegalArgumentException if the time is not in the run
     */
    public OptionalDouble drinkTemperatureK(double timeS) {
        return isFilled(timeS) ? OptionalDouble.of(meanTemperatureK(timeS)) : OptionalDouble.empty();
    }

    /** The nearest time before at which there is something in the vessel, or else the first. */
    private double filledS(double timeS) {
        if (isFilled(timeS)) {
            return timeS;
        }
        List<FilledInterval> all = held.orElse(List.of());
        double best = all.isEmpty() ? timeS : all.get(0).fromS();
        for (FilledInterval times : all) {
            best = times.untilS() <= timeS ? Math.nextDown(times.untilS()) : best;
        }
        return best;
    }

    private double shownK(double timeS) {
        return contents.meanK(trajectory, filledS(timeS));
    }

    private double requireFilled(double timeS) {
        if (!isFilled(timeS)) {
            throw new IllegalArgumentException("temperature of the drink at " + timeS
                    + " s: the vessel is empty then, it holds a drink " + held.orElse(List.of())
                    + "; ask isFilled or drinkTemperatureK");
        }
        return timeS;
    }

    /**
     * The run behind the prediction.
     *
     * @return nodes, states and ledger at any time
     */
    public Trajectory trajectory() {
        return trajectory;
    }

    /**
     * The nodes that hold the contents.
     *
     * @return nodes and the part of the contents in each
     */
    public Contents contents() {
        return contents;
    }

    /**
     * End of the run.
     *
     * @return time since the start
     */
    public Duration end() {
        return duration(trajectory.endS());
    }

    /**
     * Mean temperature of the contents.
     *
     * @param time time since the start, 0 to {@link #end}
     * @return temperature in °C
     * @throws IllegalArgumentException if the time is not in the run
     */
    public Quantity<Temperature> meanTemperatureAt(Duration time) {
        return SiValues.celsiusOf(meanTemperatureK(seconds(time)));
    }

    /**
     * Mean temperature of the contents.
     *
     * @param timeS time since the start [s]
     * @return temperature [K]
     * @throws IllegalArgumentException if the time is not in the run, or the vessel is {@linkplain #isFilled empty} then
     */
    public double meanTemperatureK(double timeS) {
        return contents.meanK(trajectory, requireFilled(timeS));
    }

    /**
     * Mean temperatures of the contents at several times.
     *
     * @param timesS times since the start [s], not modified
     * @return temperature [K] at each time
     * @throws IllegalArgumentException if a time is not in the run
     */
    public double[] meanTemperaturesK(double... timesS) {
        double[] temperatures = new double[timesS.length];
        for (int i = 0; i < timesS.length; i++) {
            temperatures[i] = meanTemperatureK(timesS[i]);
        }
        return temperatures;
    }

    /**
     * Temperatures of the contents along the height or, for contents at rest, along the radius.
     *
     * @param timeS time since the start [s]
     * @return temperature [K] of each slice from the base of the vessel upwards or of each shell from the axis outwards; one
     *     for lumped contents
     * @throws IllegalArgumentException if the time is not in the run
     */
    public double[] profileK(double timeS) {
        requireFilled(timeS);
        return contents.nodes().stream()
                .mapToDouble(node -> trajectory.temperatureK(node, timeS))
                .toArray();
    }

    /**
     * Temperatures along the height or radius at several times.
     *
     * @param timesS times since the start [s], not modified
     * @return temperature [K], first by time and then in the order of {@link #profileK}
     * @throws IllegalArgumentException if a time is not in the run
     */
    public double[][] profilesK(double... timesS) {
        return Arrays.stream(timesS).mapToObj(this::profileK).toArray(double[][]::new);
    }

    /**
     * Temperatures of the last part of {@link #profileK} at several times: the slice at the top of the upright vessel, the
     * outermost shell of contents at rest, the one temperature of lumped contents. While a vessel stands on its mouth, that slice
     * is the lowest.
     *
     * @param timesS times since the start [s], not modified
     * @return temperature [K] at each time
     * @throws IllegalArgumentException if a time is not in the run
     */
    public double[] topTemperaturesK(double... timesS) {
        return drinkTemperaturesK(contents.nodes().get(contents.nodes().size() - 1), timesS);
    }

    /**
     * Temperatures of the first part of {@link #profileK} at several times: the slice on the base of the vessel, the shell at the
     * axis of contents at rest, the one temperature of lumped contents. While a vessel stands on its mouth, that slice is the
     * highest.
     *
     * @param timesS times since the start [s], not modified
     * @return temperature [K] at each time
     * @throws IllegalArgumentException if a time is not in the run
     */
    public double[] bottomTemperaturesK(double... timesS) {
        return drinkTemperaturesK(contents.nodes().get(0), timesS);
    }

    private double[] drinkTemperaturesK(Node node, double... timesS) {
        for (double timeS : timesS) {
            requireFilled(timeS);
        }
        return temperaturesK(node, timesS);
    }

    /**
     * Temperature of the part that {@link #topTemperaturesK} is about.
     *
     * @param time time since the start, 0 to {@link #end}
     * @return temperature in °C
     * @throws IllegalArgumentException if the time is not in the run
     */
    public Quantity<Temperature> topTemperatureAt(Duration time) {
        return SiValues.celsiusOf(topTemperaturesK(seconds(time))[0]);
    }

    /**
     * Temperature of the part that {@link #bottomTemperaturesK} is about.
     *
     * @param time time since the start, 0 to {@link #end}
     * @return temperature in °C
     * @throws IllegalArgumentException if the time is not in the run
     */
    public Quantity<Temperature> bottomTemperatureAt(Duration time) {
        return SiValues.celsiusOf(bottomTemperaturesK(seconds(time))[0]);
    }

    /**
     * Temperatures of a band of the wall, at mid-thickness, at several times.
     *
     * @param band index into {@link #bands}
     * @param timesS times since the start [s], not modified
     * @return temperature [K] at each time
     * @throws IllegalArgumentException if a time is not in the run
     */
    public double[] wallTemperaturesK(int band, double... timesS) {
        return temperaturesK(bands.get(band).wall(), timesS);
    }

    /**
     * Temperatures of any node of the run at several times.
     *
     * @param node the node
     * @param timesS times since the start [s], not modified
     * @return temperature [K] at each time
     * @throws IllegalArgumentException if a time or the node is not in the run
     */
    public double[] temperaturesK(Node node, double... timesS) {
        return Arrays.stream(timesS)
                .map(timeS -> trajectory.temperatureK(node, timeS))
                .toArray();
    }

    /**
     * How much of the drink is ice.
     *
     * @param timeS time since the start [s]
     * @return mass of ice per mass of drink [-], 0 to 1; 0 for contents of which no freezing curve is known
     * @throws IllegalArgumentException if the time is not in the run
     */
    public double iceFraction(double timeS) {
        double[] parts = iceProfile(timeS);
        double sum = 0;
        for (int i = 0; i < parts.length; i++) {
            sum += contents.shares().get(i) * parts[i];
        }
        return sum;
    }

    /**
     * Water that ice put into the drink has added.
     *
     * @param timeS time since the start [s]
     * @return mass [kg], 0 without ice in the drink; below 0 while water of the drink has frozen onto it
     * @throws IllegalArgumentException if the time is not in the run
     */
    public double waterAddedKg(double timeS) {
        double sum = 0;
        for (Node node : contents.nodes()) {
            if (node.store() instanceof DilutedStore store) {
                sum += store.addedKg(trajectory.amount(node, DilutedStore.MASS, timeS));
            }
        }
        return sum;
    }

    /**
     * Strength of a drink into which ice was put, by volume at 20 °C: the ethanol is that of the start, the volume that of the drink and
     * the water added.
     *
     * @param timeS time since the start [s]
     * @return strength as a fraction; empty if no ice was put into the contents or they are no beverage
     * @throws IllegalArgumentException if the time is not in the run
     */
    public OptionalDouble dilutedStrength(double timeS) {
        for (Node node : contents.nodes()) {
            if (node.store() instanceof DilutedStore store) {
                return store.diluted(store.addedKg(trajectory.amount(node, DilutedStore.MASS, timeS)))
                        .map(drink -> OptionalDouble.of(drink.strengthByVolume()))
                        .orElseGet(OptionalDouble::empty);
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * How much of each slice or shell is ice.
     *
     * @param timeS time since the start [s]
     * @return mass of ice per mass of each part [-], in the order of {@link #profileK}
     * @throws IllegalArgumentException if the time is not in the run
     */
    public double[] iceProfile(double timeS) {
        return contents.iceFractions(trajectory, timeS);
    }

    /**
     * Part of the contents in each slice.
     *
     * @return parts in the order of {@link #profileK}, summing to 1
     */
    public double[] profileShares() {
        return contents.shares().stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * Temperature of a band of the wall, at mid-thickness.
     *
     * @param band index into {@link #bands}
     * @param timeS time since the start [s]
     * @return temperature [K]
     * @throws IllegalArgumentException if the time is not in the run
     */
    public double wallTemperatureK(int band, double timeS) {
        return trajectory.temperatureK(bands.get(band).wall(), timeS);
    }

    /**
     * The bands into which the wall is divided.
     *
     * @return bands from the base upwards
     */
    public List<WallBand> bands() {
        return bands;
    }

    /**
     * When the mean temperature first reaches a target. Of a vessel that is empty at first it is looked from when it is filled; while it is
     * empty later it counts as keeping its last temperature.
     *
     * @param target the wanted temperature
     * @return when, or that it never does in this run
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public TimeToTemperature timeTo(Quantity<Temperature> target) {
        return timeToK(SiValues.temperatureK(target, "target temperature"), 0);
    }

    /**
     * When the mean temperature first reaches a target from a time on.
     *
     * @param targetK the wanted temperature [K]
     * @param timeS where to begin [s]
     * @return when, counted from the start of the run, or that it never does in this run
     * @throws IllegalArgumentException if the time is not in the run
     */
    public TimeToTemperature timeToK(double targetK, double timeS) {
        double fromS = firstFilledS(timeS);
        if (Math.abs(shownK(fromS) - targetK) < ALREADY_THERE_K) {
            return new TimeToTemperature.Reached(duration(fromS), 0);
        }
        OptionalDouble reached = crossing(fromS, targetK);
        if (reached.isEmpty()) {
            return new TimeToTemperature.NeverReached(closest(fromS, targetK), shownK(trajectory.endS()), asymptote());
        }
        double at = reached.getAsDouble();
        double direction = Math.signum(targetK - shownK(fromS));
        double little = Math.min(trajectory.endS(), at + 1);
        OptionalDouble lost = little < trajectory.endS() ? crossing(little, targetK) : OptionalDouble.empty();
        if (lost.isPresent()) {
            return new TimeToTemperature.ReachedThenLost(duration(at), duration(lost.getAsDouble()));
        }
        OptionalDouble further = crossing(at, targetK + direction * SENSITIVITY_STEP_K);
        double sensitivity = further.isPresent() ? (further.getAsDouble() - at) / SENSITIVITY_STEP_K : Double.MAX_VALUE;
        return new TimeToTemperature.Reached(duration(at), sensitivity);
    }

    /**
     * From when until when the mean temperature is within a range if the vessel is left where it is: the drink is ready when it enters, and
     * goes too far when it leaves.
     *
     * @param low lower end of the range
     * @param high upper end, not below the lower
     * @return when it enters and leaves, that it stays, or that it never enters in this run
     * @throws IllegalArgumentException if a quantity is not a temperature or the ends are out of order
     */
    public TimeInRange timeInRange(Quantity<Temperature> low, Quantity<Temperature> high) {
        return timeInRangeK(
                SiValues.temperatureK(low, "lower end of the range"),
                SiValues.temperatureK(high, "upper end of the range"),
                Part.MEAN,
                0);
    }

    /**
     * From when until when a temperature of the contents is within a range, looked at from a time on.
     *
     * @param lowK lower end of the range [K]; 0 for a limit from above alone
     * @param highK upper end [K], not below the lower; infinite for a limit from below alone
     * @param part which temperature
     * @param fromS where to begin [s]
     * @return when it enters and leaves, counted from the start of the run, that it stays, or that it never enters
     * @throws IllegalArgumentException if the ends are out of order, the time is not in the run, or the vessel is empty throughout
     */
    public TimeInRange timeInRangeK(double lowK, double highK, Part part, double fromS) {
        if (!(lowK <= highK)) {
            throw new IllegalArgumentException(
                    "range from " + lowK + " K to " + highK + " K: expected ends in ascending order");
        }
        return new RangeSearch(trajectory, timeS -> temperatureK(part, filledS(timeS)), lowK, highK)
                .from(firstFilledS(fromS));
    }

    /**
     * A temperature of the contents.
     *
     * @param part which one
     * @param timeS time since the start [s]
     * @return temperature [K]
     * @throws IllegalArgumentException if the time is not in the run
     */
    public double temperatureK(Part part, double timeS) {
        return switch (part) {
            case MEAN -> meanTemperatureK(timeS);
            case WARMEST -> Arrays.stream(profileK(timeS)).max().orElseThrow();
            case COLDEST -> Arrays.stream(profileK(timeS)).min().orElseThrow();
        };
    }

    /** A time, or if the vessel is empty then and was before, when it is first filled. */
    private double firstFilledS(double timeS) {
        if (held.isPresent() && held.get().isEmpty()) {
            throw new IllegalArgumentException(
                    "temperature of the drink: the vessel is empty throughout; ask isFilled");
        }
        return held.map(all -> Math.max(timeS, all.get(0).fromS())).orElse(timeS);
    }

    private OptionalDouble crossing(double fromS, double targetK) {
        return trajectory.firstCrossing(fromS, t -> shownK(t) - targetK);
    }

    private double closest(double fromS, double targetK) {
        return shownK(trajectory.timeOfLargest(fromS, timeS -> -Math.abs(shownK(timeS) - targetK)));
    }

    /**
     * Where the mean temperature tends to, as far as this run shows; no further run is made. While the vessel is empty it counts as keeping
     * its last temperature.
     *
     * @return that it levels off, swings or is still moving at the end
     * @throws IllegalArgumentException if the vessel is empty throughout
     */
    public Asymptote asymptote() {
        double stayS = described
                .map(known ->
                        seconds(known.stays().get(known.stays().size() - 1).from()))
                .orElse(0.0);
        double fromS = Math.min(trajectory.endS(), Math.max(stayS, firstFilledS(0)));
        return new AsymptoteSearch(trajectory, this::shownK, this::iceFraction, fromS).found();
    }

    private double[] samples(double fromS) {
        double[] times = new double[RANGE_SAMPLES + 1];
        for (int i = 0; i <= RANGE_SAMPLES; i++) {
            times[i] = fromS + (trajectory.endS() - fromS) * i / RANGE_SAMPLES;
        }
        return times;
    }

    /**
     * The heat balance of the whole run, this vessel and all that took part with it, up to the end.
     *
     * @return accounts and closure
     */
    public Ledger ledger() {
        return trajectory.ledger(trajectory.endS());
    }

    /**
     * What a user should know: what the model leaves out here, which laws were used outside their published range, and where
     * another description of the contents is warranted.
     *
     * @return sentences, possibly none
     */
    public List<String> notes() {
        List<String> all = new ArrayList<>(limits());
        for (StayAdvice here : stayAdvice()) {
            described
                    .flatMap(Described::model)
                    .filter(used -> used != here.advice().model())
                    .ifPresent(used -> all.add(String.format(
                            Locale.ROOT,
                            "from %.0f min, in %s: the description used is %s, the one that is warranted is %s",
                            here.stay().from().toMillis() / 60_000.0,
                            here.stay().place(),
                            used.name().toLowerCase(Locale.ROOT),
                            here.advice().text())));
        }
        return List.copyOf(all);
    }

    /**
     * What the model used leaves out here, and which laws were used outside their published range: {@link #notes} without the
     * advice on another description.
     *
     * @return sentences, possibly none
     */
    public List<String> limits() {
        Set<String> all = new LinkedHashSet<>(modelNotes);
        for (double timeS : samples(0)) {
            for (WallBand band : bands) {
                for (JunctionPath path : explainer().junctions(band, timeS)) {
                    filmsOutsideRange(path, timeS, all);
                }
            }
        }
        return List.copyOf(all);
    }

    private void filmsOutsideRange(JunctionPath path, double timeS, Set<String> out) {
        PathEvaluation evaluation = trajectory.evaluate(path.name(), timeS);
        double surface = path.surfaceTemperatureK(evaluation);
        for (int i = 0; i < path.links().size(); i++) {
            double drive = Math.abs(evaluation.temperatureK(i) - surface);
            if (drive > NOTE_DRIVE_K && path.links().get(i).law() instanceof Film film) {
                film.describe(evaluation.temperatureK(i), surface)
                        .outsideRange()
                        .ifPresent(text -> out.add(withoutNumbers(text)));
            }
        }
    }

    /** A law out of range matters only while something drives it [K]. */
    private static final double NOTE_DRIVE_K = 0.5;

    /** One note per law and kind of excess, not one per moment. */
    private static String withoutNumbers(String text) {
        return text.replaceFirst(" used at (\\w+ number) [0-9.e+-]+, published for ", " used outside its range: $1 ");
    }

    /**
     * Which description of the contents is warranted, of all stays the advice that asks for most.
     *
     * @return the advice, judged from the films of this prediction, or by the lumped law if its contents have none; empty if it
     *     was made without knowing the vessel
     */
    public Optional<ModelAdvice> advice() {
        return stayAdvice().stream().map(StayAdvice::advice).max(Comparator.comparingDouble(ModelAdvice::severity));
    }

    /**
     * Which description is warranted in each stay, judged while something drives heat.
     *
     * @return one for each stay, in order; empty if the prediction was made without knowing the vessel
     */
    public List<StayAdvice> stayAdvice() {
        return described
                .map(known -> known.stays().stream()
                        .flatMap(stay -> filledPart(stay).stream())
                        .map(stay -> explainer().advice(known, stay))
                        .toList())
                .orElse(List.of());
    }

    /** A stay from when there is something in the vessel; none if there never is. */
    private Optional<Stay> filledPart(Stay stay) {
        if (held.isEmpty()) {
            return Optional.of(stay);
        }
        double from = seconds(stay.from());
        return held.get().stream()
                .filter(times -> times.untilS() > from && times.fromS() < seconds(stay.to()))
                .findFirst()
                .map(times -> new Stay(
                        stay.place(),
                        times.fromS() > from ? duration(times.fromS()) : stay.from(),
                        stay.to(),
                        stay.wettedPart()));
    }

    private Explainer explainer() {
        return new Explainer(trajectory, contents, heatCapacityJPerK, bands);
    }

    /**
     * Why it cools or warms as fast as it does at a moment.
     *
     * @param time time since the start, 0 to {@link #end}
     * @return resistances in series, band by band, and the heat account up to then
     * @throws IllegalArgumentException if the time is not in the run
     */
    public Explanation explainAt(Duration time) {
        double timeS = seconds(time);
        Explainer explainer = explainer();
        return new Explanation(
                time,
                meanTemperatureK(timeS),
                heatCapacityJPerK,
                explainer.explainedBands(timeS),
                explainer.account(timeS));
    }

    private static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }

    private static Duration duration(double timeS) {
        return Duration.ofMillis(Math.round(timeS * 1000));
    }
}
