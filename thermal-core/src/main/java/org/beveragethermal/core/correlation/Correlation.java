/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import java.util.Optional;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * A published law with its name, source, range and scatter.
 *
 * @param name result, geometry and published name
 * @param source where it was published
 * @param driveRange range of the Rayleigh or Reynolds number as the source states it
 * @param prandtlRange range of the Prandtl number as the source states it
 * @param scatter uncertainty of the Nusselt number as a factor on it
 * @param law the function and its slopes
 */
public record Correlation(
        String name,
        Source source,
        ValidityRange driveRange,
        ValidityRange prandtlRange,
        Uncertainty scatter,
        NusseltLaw law) {

    /**
     * Says whether a use lies outside the stated range.
     *
     * @param drive Rayleigh or Reynolds number
     * @param pr Prandtl number
     * @return a sentence that names the correlation, the value and its range, or empty inside the range
     */
    public Optional<String> outside(double drive, double pr) {
        if (!driveRange.contains(drive)) {
            return Optional.of(sentence(driveRange, drive));
        }
        if (!prandtlRange.contains(pr)) {
            return Optional.of(sentence(prandtlRange, pr));
        }
        return Optional.empty();
    }

    private String sentence(ValidityRange range, double value) {
        return String.format(
                java.util.Locale.ROOT,
                "%s used at %s %.3g, published for %.3g to %.3g",
                name,
                range.quantity(),
                value,
                range.low(),
                range.high());
    }
}
