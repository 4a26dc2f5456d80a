/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.RunReadings;
import org.jspecify.annotations.Nullable;

/**
 * A thermal prediction as a model to be fitted: readings [K] of a thermometer at a place, from multipliers on laws and inputs such as
 * the temperature at the start or of the room.
 *
 * <p>Slopes are differences of second order between runs of the setting along one frozen sequence of steps, that of the run itself
 * ({@link NetworkSolver#alongStepsOf}): two runs of the setting per parameter. A model of which its maker says that multipliers act {@link
 * #throughLawsAlone} is many times faster: slopes in multipliers come with the run, as the variational equations are integrated along its
 * steps with the derivatives that its paths state ({@link RunReadings}), which costs a third of a run for all of them together and agrees with
 * differences to some 1e-4; and if there are no inputs, the setting is run once and its networks again for all other multipliers. Slopes in the
 * parameters of the thermometer are exact.
 *
 * <p>Immutable, and thread-safe if its setting is.
 *
 * <p>Theory manual, equation (8.1).
 */
public final class TemperatureModel implements Model {

    /** What happens, for given values. */
    @FunctionalInterface
    public interface Setting {

        /**
         * Runs the prediction.
         *
         * @param values value of each multiplier and input by name
         * @param solver the solver to use; it has the multipliers and, for slopes, the steps to take
         * @return the run with its places
         */
        Sensed run(Map<String, Double> values, NetworkSolver solver);
    }

    /** Part of a parameter by which it is moved for a slope. */
    private static final double STEP = 1e-4;

    private static final double TOLERANCE_K = 1e-4;

    private final Setting setting;
    private final List<String> multipliers;
    private final List<String> inputs;
    private final Sensor sensor;
    private final String place;
    private final double[] timesS;
    private final Sensor.Looks looks;
    private final NetworkSolver solver;
    private final boolean throughLaws;
    /** A run of the setting whose networks are run again; null until there is one. */
    private volatile @Nullable Sensed again;

    private TemperatureModel(
            Setting setting,
            List<String> multipliers,
            List<String> inputs,
            Sensor sensor,
            String place,
            double[] timesS,
            NetworkSolver solver,
            boolean throughLaws) {
        this.throughLaws = throughLaws;
        this.setting = setting;
        this.multipliers = multipliers;
        this.inputs = inputs;
        this.sensor = sensor;
        this.place = place;
        this.timesS = timesS;
        this.looks = sensor.looks(timesS);
        this.solver = solver;
    }

    /**
     * A model of readings of the first place of a setting, without parameters yet, with a tolerance of 1e-4 K per step.
     *
     * @param timesS times of the readings since the start [s], ascending, ≥ 0, not modified
     * @param setting what happens
     * @return the model
     * @throws IllegalArgumentException if there is no time or they do not ascend
     */
    public static TemperatureModel of(double[] timesS, Setting setting) {
        for (int i = 0; i < timesS.length; i++) {
            if (!(timesS[i] >= 0) || Double.isInfinite(timesS[i]) || (i > 0 && timesS[i] < timesS[i - 1])) {
                throw new IllegalArgumentException(
                        "time of reading " + i + ": " + timesS[i] + " s: expected ascending times from 0 s");
            }
        }
        if (timesS.length == 0) {
            throw new IllegalArgumentException("no times: expected at least one");
        }
        return new TemperatureModel(
                Objects.requireNonNull(setting, "setting"),
                List.of(),
                List.of(),
                Sensor.IDEAL,
                "",
                timesS.clone(),
                NetworkSolver.standard().withToleranceK(TOLERANCE_K),
                false);
    }

    /**
     * The same model with multipliers as parameters; the solver handed to the setting has them.
     *
     * @param names names of multipliers, such as those of {@code Multipliers}
     * @return a new model
     */
    public TemperatureModel multipliers(String... names) {
        return new TemperatureModel(setting, List.of(names), inputs, sensor, place, timesS, solver, throughLaws);
    }

    /**
     * The same model, of whose setting it is said that multipliers act through the laws of its networks alone: it hands its solver on and
     * does nothing else with the multipliers, neither with their values nor with the outcome of one run in setting up another. So it is where a
     * setting makes a scene, or an exposure of one vessel, from its inputs and runs it. Nobody makes sure of it.
     *
     * @return a new model, whose setting is asked once for each set of inputs of a fit
     */
    public TemperatureModel throughLawsAlone() {
        return new TemperatureModel(setting, multipliers, inputs, sensor, place, timesS, solver, true);
    }

    /**
     * The same model with inputs as parameters, which the setting takes from its values.
     *
     * @param names names of inputs
     * @return a new model
     */
    public TemperatureModel inputs(String... names) {
        return new TemperatureModel(setting, multipliers, List.of(names), sensor, place, timesS, solver, throughLaws);
    }

    /**
     * The same model read by a thermometer.
     *
     * @param newSensor the thermometer
     * @return a new model
     */
    public TemperatureModel readBy(Sensor newSensor) {
        return new TemperatureModel(setting, multipliers, inputs, newSensor, place, timesS, solver, throughLaws);
    }

    /**
     * The same model read at another place.
     *
     * @param newPlace name of a place of the setting
     * @return a new model
     */
    public TemperatureModel readAt(String newPlace) {
        return new TemperatureModel(setting, multipliers, inputs, sensor, newPlace, timesS, solver, throughLaws);
    }

    /**
     * The same model at other times, such as for a band.
     *
     * @param newTimesS times of readings since the start [s], ascending, ≥ 0, not modified
     * @return a new model
     * @throws IllegalArgumentException if there is no time or they do not ascend
     */
    public TemperatureModel atTimes(double... newTimesS) {
        return of(newTimesS, setting).with(this);
    }

    private TemperatureModel with(TemperatureModel other) {
        return new TemperatureModel(
                setting,
                other.multipliers,
                other.inputs,
                other.sensor,
                other.place,
                timesS,
                other.solver,
                other.throughLaws);
    }

    /**
     * The same model run by another solver.
     *
     * @param newSolver tolerance and budget; its multipliers are replaced
     * @return a new model
     */
    public TemperatureModel with(NetworkSolver newSolver) {
        return new TemperatureModel(setting, multipliers, inputs, sensor, place, timesS, newSolver, throughLaws);
    }

    @Override
    public List<String> parameters() {
        List<String> names = new ArrayList<>(multipliers);
        names.addAll(inputs);
        names.addAll(sensor.parameters());
        return names;
    }

    @Override
    public boolean isExact() {
        return false;
    }

    @Override
    public Predicted at(double[] parameters) {
        int outside = multipliers.size() + inputs.size();
        double[] ofSensor = Arrays.copyOfRange(parameters, outside, parameters.length);
        Sensed sensed = sensed(parameters);
        double[] temperatures = temperatures(sensed);
        return Predicted.of(
                sensor.read(looks, temperatures, ofSensor),
                () -> sensor.slopes(looks, temperatures, slopes(sensed, parameters, temperatures), ofSensor));
    }

    /** The setting, or where that comes to the same, its networks run again. */
    private Sensed sensed(double[] parameters) {
        Sensed known = again;
        if (known != null) {
            return new Sensed(RunReadings.again(known.run(), solver, factors(parameters)), known.placesK());
        }
        Sensed first = setting.run(values(parameters), solver.withMultipliers(factors(parameters)));
        if (throughLaws
                && inputs.isEmpty()
                && place(first) instanceof NodeMean mean
                && Arrays.stream(looks.atS()).allMatch(mean.filled())) {
            again = first;
        }
        return first;
    }

    /** For each parameter outside the thermometer, slopes of the temperatures. */
    private double[][] slopes(Sensed sensed, double[] parameters, double[] temperatures) {
        double[][] slopes = new double[multipliers.size() + inputs.size()][];
        int known = 0;
        if (place(sensed) instanceof NodeMean mean && throughLaws) {
            for (double[] slope : mean.of(sensed.run()).slopes(multipliers, looks.atS())) {
                slopes[known++] = slope;
            }
        }
        for (int k = known; k < slopes.length; k++) {
            slopes[k] = difference(sensed, parameters, k, temperatures);
        }
        return slopes;
    }

    private double[] difference(Sensed sensed, double[] parameters, int k, double[] temperatures) {
        double step = STEP * (parameters[k] == 0 ? 1 : Math.abs(parameters[k]));
        boolean twoSided = k >= multipliers.size() || parameters[k] >= step;
        double[] up = moved(sensed, parameters, k, twoSided ? step : 2 * step);
        double[] other = moved(sensed, parameters, k, twoSided ? -step : step);
        double[] slopes = new double[looks.atS().length];
        for (int i = 0; i < temperatures.length; i++) {
            slopes[i] = twoSided
                    ? (up[i] - other[i]) / (2 * step)
                    : (4 * other[i] - 3 * temperatures[i] - up[i]) / (2 * step);
        }
        return slopes;
    }

    private double[] moved(Sensed sensed, double[] parameters, int k, double step) {
        double[] moved = parameters.clone();
        moved[k] += step;
        return along(sensed, moved);
    }

    /** The setting at other parameters along the steps of a run. */
    private double[] along(Sensed sensed, double[] parameters) {
        NetworkSolver steps = solver.withMultipliers(factors(parameters)).alongStepsOf(sensed.run());
        return temperatures(setting.run(values(parameters), steps));
    }

    private Map<String, Double> factors(double[] parameters) {
        Map<String, Double> factors = new LinkedHashMap<>();
        for (int k = 0; k < multipliers.size(); k++) {
            factors.put(multipliers.get(k), parameters[k]);
        }
        return factors;
    }

    private Map<String, Double> values(double[] parameters) {
        Map<String, Double> values = factors(parameters);
        for (int k = 0; k < inputs.size(); k++) {
            values.put(inputs.get(k), parameters[multipliers.size() + k]);
        }
        return values;
    }

    private double[] temperatures(Sensed sensed) {
        DoubleUnaryOperator read = place(sensed);
        return read instanceof NodeMean mean
                ? mean.temperaturesK(sensed.run(), looks.atS())
                : Arrays.stream(looks.atS()).map(read).toArray();
    }

    private DoubleUnaryOperator place(Sensed sensed) {
        DoubleUnaryOperator read = place.isEmpty()
                ? sensed.placesK().values().iterator().next()
                : sensed.placesK().get(place);
        if (read == null) {
            throw new FitException(
                    "place " + place + ": expected one of " + sensed.placesK().keySet());
        }
        return read;
    }

    /**
     * The same thermometer at the other places of the setting.
     *
     * @return models by place
     */
    @Override
    public Map<String, Model> otherReadings(double[] parameters) {
        Map<String, Model> others = new LinkedHashMap<>();
        Sensed sensed = setting.run(values(parameters), solver.withMultipliers(factors(parameters)));
        String read = place.isEmpty() ? sensed.placesK().keySet().iterator().next() : place;
        for (String other : sensed.placesK().keySet()) {
            if (!other.equals(read)) {
                others.put(other, readAt(other));
            }
        }
        return others;
    }
}
