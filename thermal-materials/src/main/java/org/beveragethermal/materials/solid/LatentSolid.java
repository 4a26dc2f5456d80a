/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * A solid that stores cold by melting, over a range of temperatures. The melted part grows evenly from the start of
 * melting to its end; the latent heat comes on top of what warms the frozen and the melted part. That evenness is an
 * assumption of ours: real mixtures melt mostly near the end.
 *
 * @param name what it is; not blank
 * @param frozen its properties below the range
 * @param thawed its properties above the range, at rest: it does not flow
 * @param meltingStart temperature in K at which a frozen one begins to melt, inside the range of the frozen one
 * @param meltingEnd temperature in K at which it is thawed, at least 0.01 K above the start, inside the range of the
 *     thawed one
 * @param latentHeat heat of melting over the whole range in J/kg, greater than 0, at most 10 000 000
 */
public record LatentSolid(
        String name, Solid frozen, Solid thawed, Constant meltingStart, Constant meltingEnd, Constant latentHeat) {
    /** Narrower than this, melting is a step and wants a model of its own. */
    private static final double NARROWEST_K = 0.01;

    private static final double LARGEST_LATENT_HEAT = 1e7;

    /**
     * Checks the parts.
     *
     * @param name what it is; not blank
     * @param frozen its properties below the range
     * @param thawed its properties above the range
     * @param meltingStart start of melting in K, inside the range of the frozen one
     * @param meltingEnd end of melting in K, at least 0.01 K above the start, inside the range of the thawed one
     * @param latentHeat heat of melting in J/kg, greater than 0, at most 10 000 000
     * @throws OutOfRangeException if a value is outside its range
     * @throws IllegalArgumentException if the name is blank
     */
    public LatentSolid {
        if (name.isBlank()) {
            throw new IllegalArgumentException("latent solid: expected a name, got a blank one");
        }
        require(meltingStart, frozen.temperatures().low(), frozen.temperatures().high());
        require(meltingEnd, thawed.temperatures().low(), thawed.temperatures().high());
        require(meltingEnd, meltingStart.value() + NARROWEST_K, Double.MAX_VALUE);
        require(latentHeat, Double.MIN_VALUE, LARGEST_LATENT_HEAT);
    }

    private static void require(Constant constant, double low, double high) {
        if (!(constant.value() >= low && constant.value() <= high)) {
            throw OutOfRangeException.refusal(constant.name(), constant.value(), low, high, constant.unit(), "");
        }
    }

    /**
     * Where the functions of temperature hold: from the lowest of the frozen solid to the highest of the thawed one.
     *
     * @return the range in K
     */
    public ValidityRange temperatures() {
        return new ValidityRange(
                "temperature of " + name,
                frozen.temperatures().low(),
                thawed.temperatures().high(),
                "K");
    }

    /**
     * How much of the mass has melted.
     *
     * @param temperatureK temperature in K, inside {@link #temperatures()}
     * @return 0 up to the start of melting, 1 from its end on, in proportion between
     * @throws OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double meltedFraction(double temperatureK) {
        double fraction = (inRange(temperatureK) - meltingStart.value()) / meltingWidthK();
        return Math.min(1, Math.max(0, fraction));
    }

    /**
     * Heat that warms one kilogram by one kelvin, melting included: the slope of {@link #specificEnthalpy}. It jumps at
     * both ends of the range of melting; the ends themselves count as melting.
     *
     * @param temperatureK temperature in K, inside {@link #temperatures()}
     * @return specific heat capacity in J/(kg K)
     * @throws OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double specificHeatCapacity(double temperatureK) {
        double melted = meltedFraction(temperatureK);
        double sensible = (1 - melted) * heatFrozen() + melted * heatThawed();
        boolean melting = temperatureK >= meltingStart.value() && temperatureK <= meltingEnd.value();
        return melting ? sensible + latentHeat.value() / meltingWidthK() : sensible;
    }

    /**
     * Specific enthalpy, counted from the thawed solid at the end of melting. Continuous and growing with temperature.
     *
     * @param temperatureK temperature in K, inside {@link #temperatures()}
     * @return specific enthalpy in J/kg, below 0 while not all is thawed
     * @throws OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double specificEnthalpy(double temperatureK) {
        double aboveEnd = inRange(temperatureK) - meltingEnd.value();
        if (aboveEnd >= 0) {
            return heatThawed() * aboveEnd;
        }
        double width = meltingWidthK();
        if (aboveEnd > -width) {
            double halfSlope = (heatThawed() - heatFrozen()) / (2 * width);
            return (heatThawed() + latentHeat.value() / width + halfSlope * aboveEnd) * aboveEnd;
        }
        return enthalpyAtStart() + heatFrozen() * (aboveEnd + width);
    }

    /**
     * The temperature of one that holds a given enthalpy: the inverse of {@link #specificEnthalpy}.
     *
     * @param enthalpyJPerKg specific enthalpy in J/kg, counted from the thawed solid at the end of melting
     * @return temperature in K
     * @throws OutOfRangeException if the enthalpy is outside what {@link #temperatures()} allow
     * @throws IllegalArgumentException if the enthalpy is NaN or infinite
     */
    public double temperatureK(double enthalpyJPerKg) {
        ValidityRange range = temperatures();
        double enthalpy = new ValidityRange(
                        "specific enthalpy of " + name,
                        specificEnthalpy(range.low()),
                        specificEnthalpy(range.high()),
                        "J/kg")
                .require(enthalpyJPerKg, frozen.name() + " to " + thawed.name());
        if (enthalpy >= 0) {
            return meltingEnd.value() + enthalpy / heatThawed();
        }
        if (enthalpy > enthalpyAtStart()) {
            double width = meltingWidthK();
            double slopeAtEnd = heatThawed() + latentHeat.value() / width;
            double doubleCurvature = 2 * (heatThawed() - heatFrozen()) / width;
            // The root that does not cancel: of the quadratic in specificEnthalpy, the one that is 0 at enthalpy 0.
            return meltingEnd.value()
                    + 2 * enthalpy / (slopeAtEnd + Math.sqrt(slopeAtEnd * slopeAtEnd + doubleCurvature * enthalpy));
        }
        return meltingStart.value() + (enthalpy - enthalpyAtStart()) / heatFrozen();
    }

    private double inRange(double temperatureK) {
        return temperatures().require(temperatureK, frozen.name() + " to " + thawed.name());
    }

    private double meltingWidthK() {
        return meltingEnd.value() - meltingStart.value();
    }

    private double heatFrozen() {
        return frozen.specificHeatCapacity().value();
    }

    private double heatThawed() {
        return thawed.specificHeatCapacity().value();
    }

    private double enthalpyAtStart() {
        return -latentHeat.value() - (heatFrozen() + heatThawed()) / 2 * meltingWidthK();
    }
}
