/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.solver.NetworkSolver;

/**
 * A thermal prediction as a model to be fitted: readings [K] of a thermometer at a place, from multipliers on laws and inputs such as
 * the temperature at the start or of the room.
 *
 * <p>Slopes are differences of second order between runs along one frozen sequence of steps, that of the run itself ({@link
 * NetworkSolver#alongStepsOf}): slopes of what is computed, to some eight digits, for anything that goes in. Two runs per parameter.
 *
 * <p>Immutable and thread-safe if its setting is.
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

    private static final double TOLERANCE_K = 1e-5;

    private final Setting setting;
    private final List<String> multipliers;
    private final List<String> inputs;
    private final Sensor sensor;
    private final String place;
    private final double[] timesS;
    private final NetworkSolver solver;

    private TemperatureModel(
            Setting setting,
            List<String> multipliers,
            List<String> inputs,
            Sensor sensor,
            String place,
            double[] timesS,
            NetworkSolver solver) {
        this.setting = setting;
        this.multipliers = multipliers;
        this.inputs = inputs;
        this.sensor = sensor;
        this.place = place;
        this.timesS = timesS;
        this.solver = solver;
    }

    /**
     * A model of readings of the first place of a setting, without parameters yet, with a tolerance of 1e-5 K per step.
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
                NetworkSolver.standard().withToleranceK(TOLERANCE_K));
    }

    /**
     * The same model with multipliers as parameters; the solver handed to the setting has them.
     *
     * @param names names of multipliers, such as those of {@code Multipliers}
     * @return a new model
     */
    public TemperatureModel multipliers(String... names) {
        return new TemperatureModel(setting, List.of(names), inputs, sensor, place, timesS, solver);
    }

    /**
     * The same model with inputs as parameters, which the setting takes from its values.
     *
     * @param names names of inputs
     * @return a new model
     */
    public TemperatureModel inputs(String... names) {
        return new TemperatureModel(setting, multipliers, List.of(names), sensor, place, timesS, solver);
    }

    /**
     * The same model read by a thermometer.
     *
     * @param newSensor the thermometer
     * @return a new model
     */
    public TemperatureModel readBy(Sensor newSensor) {
        return new TemperatureModel(setting, multipliers, inputs, newSensor, place, timesS, solver);
    }

    /**
     * The same model read at another place.
     *
     * @param newPlace name of a place of the setting
     * @return a new model
     */
    public TemperatureModel readAt(String newPlace) {
        return new TemperatureModel(setting, multipliers, inputs, sensor, newPlace, timesS, solver);
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
                setting, other.multipliers, other.inputs, other.sensor, other.place, timesS, other.solver);
    }

    /**
     * The same model run by another solver.
     *
     * @param newSolver tolerance and budget; its multipliers are replaced
     * @return a new model
     */
    public TemperatureModel with(NetworkSolver newSolver) {
        return new TemperatureModel(setting, multipliers, inputs, sensor, place, timesS, newSolver);
    }

    @Override
    public List<String> parameters() {
        List<String> names = new ArrayList<>(multipliers);
        names.addAll(inputs);
        names.addAll(sensor.parameters());
        return names;
    }

    @Override
    public Predicted at(double[] parameters) {
        int outside = multipliers.size() + inputs.size();
        double[] looks = sensor.looks(timesS);
        NetworkSolver own = solver.withMultipliers(factors(parameters));
        Sensed sensed = setting.run(values(parameters), own);
        double[] temperatures = temperatures(sensed, looks);
        double[][] slopes = new double[looks.length][outside];
        for (int k = 0; k < outside; k++) {
            double step = STEP * (parameters[k] == 0 ? 1 : Math.abs(parameters[k]));
            boolean twoSided = k >= multipliers.size() || parameters[k] >= step;
            double[] up = moved(sensed, parameters, k, twoSided ? step : 2 * step, looks);
            double[] other = moved(sensed, parameters, k, twoSided ? -step : step, looks);
            for (int i = 0; i < looks.length; i++) {
                slopes[i][k] = twoSided
                        ? (up[i] - other[i]) / (2 * step)
                        : (4 * other[i] - 3 * temperatures[i] - up[i]) / (2 * step);
            }
        }
        double[] ofSensor = java.util.Arrays.copyOfRange(parameters, outside, parameters.length);
        return sensor.read(timesS, looks, Predicted.of(temperatures, slopes), ofSensor, outside);
    }

    private double[] moved(Sensed sensed, double[] parameters, int k, double step, double[] looks) {
        double[] moved = parameters.clone();
        moved[k] += step;
        NetworkSolver along = solver.withMultipliers(factors(moved)).alongStepsOf(sensed.run());
        return temperatures(setting.run(values(moved), along), looks);
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

    private double[] temperatures(Sensed sensed, double[] looks) {
        DoubleUnaryOperator read = place.isEmpty()
                ? sensed.placesK().values().iterator().next()
                : sensed.placesK().get(place);
        if (read == null) {
            throw new FitException(
                    "place " + place + ": expected one of " + sensed.placesK().keySet());
        }
        double[] temperatures = new double[looks.length];
        for (int i = 0; i < looks.length; i++) {
            temperatures[i] = read.applyAsDouble(looks[i]);
        }
        return temperatures;
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
