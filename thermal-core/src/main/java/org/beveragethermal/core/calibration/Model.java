/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;
import java.util.Map;

/**
 * What is fitted: predictions of readings from parameters, with exact slopes.
 *
 * <p>Slopes must be those of the values as they are computed: by formula, by the variational equations, or by differences along one
 * frozen sequence of steps. Differences between runs that choose their own steps look smooth and are not: a fit that follows them
 * stops anywhere. A model may be asked from several threads at once.
 */
public interface Model {

    /**
     * The parameters.
     *
     * @return their names, in the order of the slopes
     */
    List<String> parameters();

    /**
     * Predicts.
     *
     * @param parameters value of each parameter, in the order of {@link #parameters}, not modified
     * @return one value with slopes per reading; a value may be infinite where a reading says only that something did not happen
     *     while it was watched
     * @throws IllegalArgumentException if the model has no answer there; a fit then tries a shorter step
     */
    Predicted at(double[] parameters);

    /**
     * Whether values are exact to rounding, as those of a formula are; a fit then goes to the last digits. Else, as where steps in time
     * are cut, it ends where a further step would lower the cost by less than 1e-8 of itself.
     *
     * @return true unless the model says otherwise
     */
    default boolean isExact() {
        return true;
    }

    /**
     * Other readings that could be taken of the same thing, for advice on what to measure next.
     *
     * @param parameters value of each parameter, in the order of {@link #parameters}, not modified
     * @return models of the same parameters, by a name of what would be measured; none unless the model knows some
     */
    default Map<String, Model> otherReadings(double[] parameters) {
        return Map.of();
    }

    /**
     * A model from a formula.
     *
     * @param parameters names of the parameters
     * @param at where the readings were taken, not modified
     * @param curve the formula
     * @return the model
     */
    static Model of(List<String> parameters, double[] at, Curve curve) {
        return new CurveModel(List.copyOf(parameters), at.clone(), curve);
    }
}
