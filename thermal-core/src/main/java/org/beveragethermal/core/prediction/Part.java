/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

/** Which temperature of the contents a question is about; all the same for lumped contents. */
public enum Part {
    /** The mean, as after shaking or pouring. */
    MEAN,
    /** The warmest slice or shell: what is spoiled first while the drink is warmed. */
    WARMEST,
    /** The coldest slice or shell: what freezes first while the drink is cooled. */
    COLDEST
}
