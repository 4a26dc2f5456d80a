/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.provenance;

/**
 * Provenance of one property formula of a material.
 *
 * @param property name of the property, for example {@code density}; not blank
 * @param unit SI unit of the property as text; not blank
 * @param validity range in which the formula holds as published
 * @param uncertainty how well the formula gives the property inside that range
 * @param source where the formula comes from
 */
public record PropertyRecord(
        String property, String unit, ValidityRange validity, Uncertainty uncertainty, Source source) {

    /**
     * Checks the parts.
     *
     * @param property name of the property; not blank
     * @param unit SI unit of the property; not blank
     * @param validity range in which the formula holds
     * @param uncertainty how well the formula gives the property
     * @param source where the formula comes from
     * @throws IllegalArgumentException if the property or the unit is blank
     */
    public PropertyRecord {
        if (property.isBlank() || unit.isBlank()) {
            throw new IllegalArgumentException("property record: expected a property and a unit, got property '"
                    + property + "' and unit '" + unit + "'");
        }
    }
}
