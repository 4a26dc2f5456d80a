/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/**
 * How a run takes its steps. All are linearly implicit and L-stable: no fast part of a network limits the step.
 *
 * <p>The fewer evaluations a step has, the cheaper it is; the higher the order, the fewer steps a tight tolerance needs where fluxes are smooth.
 * Where they have kinks, as where layers mix, a high order gains nothing.
 *
 * <p>Theory manual, equation (7.2).
 */
public enum Method {

    /** Order 4 with an error estimate of order 3, six evaluations a step. Dense output of order 3, for recorded runs. */
    ORDER_4,

    /** Order 4 with an error estimate of order 3, three evaluations a step. Dense output of order 2. */
    ORDER_4_LIGHT,

    /** Order 3 with an error estimate of order 2, three evaluations a step: for fluxes with kinks and loose tolerances. Dense output of order 2. */
    ORDER_3
}
