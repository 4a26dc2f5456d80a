/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import javax.measure.Quantity;
import javax.measure.Unit;

/** A quantity of someone else's making: it holds any double, which the reference implementation would refuse. */
record BareQuantity<Q extends Quantity<Q>>(double number, Unit<Q> unit) implements Quantity<Q> {

    @Override
    public Number getValue() {
        return number;
    }

    @Override
    public Unit<Q> getUnit() {
        return unit;
    }

    @Override
    public Scale getScale() {
        return Scale.ABSOLUTE;
    }

    @Override
    public Quantity<Q> add(Quantity<Q> addend) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<Q> subtract(Quantity<Q> subtrahend) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<?> divide(Quantity<?> divisor) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<Q> divide(Number divisor) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<?> multiply(Quantity<?> multiplicand) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<Q> multiply(Number multiplicand) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<Q> to(Unit<Q> target) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<?> inverse() {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<Q> negate() {
        throw new UnsupportedOperationException();
    }

    @Override
    public <T extends Quantity<T>> Quantity<T> asType(Class<T> type) {
        throw new UnsupportedOperationException();
    }

    @Override
    public boolean isEquivalentTo(Quantity<Q> that) {
        return equals(that);
    }
}
