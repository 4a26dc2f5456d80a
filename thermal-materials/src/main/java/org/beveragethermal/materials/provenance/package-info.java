/* SPDX-License-Identifier: Apache-2.0 */

/**
 * Where a figure comes from and how well it is known.
 *
 * <p>Problem solved: a prediction is worth as much as the constants in it, so every constant of this library carries
 * its {@link org.beveragethermal.materials.provenance.Source source}, its
 * {@link org.beveragethermal.materials.provenance.Uncertainty uncertainty} and the
 * {@link org.beveragethermal.materials.provenance.ValidityRange range} it holds in. A
 * {@link org.beveragethermal.materials.provenance.Constant} is one number with its provenance, a
 * {@link org.beveragethermal.materials.provenance.PropertyRecord} the provenance of a property formula.
 *
 * <p>Use: read {@code constant.value()} for the number, {@code constant.uncertainty().quantile(value, p)} to draw a
 * sample of it, and {@code constant.source().citation()} to print where it was taken from.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Source, Uncertainty, ValidityRange → Constant (one number)          → value, quantile, citation
 *                                     → PropertyRecord (one formula)   → what Liquid.properties() lists
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.materials.provenance;

import org.jspecify.annotations.NullMarked;
