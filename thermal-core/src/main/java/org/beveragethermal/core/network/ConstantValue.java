/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

/** A value that never changes. */
record ConstantValue(double value) implements TimeFunction {

    @Override
    public double at(double timeS) {
        return value;
    }

    @Override
    public double rate(double timeS) {
        return 0;
    }

    @Override
    public TimeFunction startingAt(double originS) {
        return this;
    }
}
