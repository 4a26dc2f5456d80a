/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

/** Scales in which sentences give their numbers. */
final class Scale {

    static final double BAR_PA = 1e5;
    static final double ML_PER_M3 = 1e6;

    private Scale() {}
}
