/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

/**
 * Which description is warranted in one stay.
 *
 * @param stay where, from when to when
 * @param advice the advice that asks for most while something drives heat there
 */
public record StayAdvice(Stay stay, ModelAdvice advice) {}
