/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.provenance;

/**
 * One number with its unit, its uncertainty and its source.
 *
 * @param name what it is, for example {@code thermal conductivity of soda-lime glass}; not blank
 * @param value the number in {@code unit}; finite
 * @param unit SI unit as text, for example {@code W/(m K)}; {@code 1} for a number
 * @param uncertainty how well it is known
 * @param source where it comes from
 */
public record Constant(String name, double value, String unit, Uncertainty uncertainty, Source source) {

    /**
     * Checks the parts.
     *
     * @param name what it is; not blank
     * @param value the number; finite
     * @param unit SI unit as text; not blank
     * @param uncertainty how well it is known
     * @param source where it comes from
     * @throws IllegalArgumentException if the name or unit is blank or the value not finite
     */
    public Constant {
        if (name.isBlank() || unit.isBlank()) {
            throw new IllegalArgumentException(
                    "constant: expected a name and a unit, got name '" + name + "' and unit '" + unit + "'");
        }
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + ": expected a finite number, got " + value);
        }
    }

    /**
     * Standard uncertainty of the value.
     *
     * @return standard uncertainty in the constant's unit, at least 0
     */
    public double standardUncertainty() {
        return uncertainty.standardUncertainty(value);
    }
}
