/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.Objects;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.beveragethermal.materials.units.SiValues;

/**
 * How a vessel is put into a piece of gear: its posture and, in a bath, how deep.
 *
 * <p>A vessel goes to the floor of a bath unless it is {@linkplain #immersedTo immersed to a height}; then something holds it, such as
 * a hand, a grid or its shoulders on the ice, so that no more of it is wetted, and water reaches its lower end. Where the bath is not
 * that deep the vessel stands on the floor. Immutable.
 */
public final class Placement {

    private static final double LEAST_M = 0.001;
    private static final double MOST_M = 2;

    private static final Placement UPRIGHT = new Placement(Posture.UPRIGHT, Double.POSITIVE_INFINITY);

    private final Posture posture;
    private final double immersionM;

    private Placement(Posture posture, double immersionM) {
        this.posture = posture;
        this.immersionM = immersionM;
    }

    /**
     * Upright, as deep as the gear lets it.
     *
     * @return the placement
     */
    public static Placement upright() {
        return UPRIGHT;
    }

    /**
     * In a posture, as deep as the gear lets it.
     *
     * @param posture how it stands or lies
     * @return the placement
     */
    public static Placement of(Posture posture) {
        return new Placement(Objects.requireNonNull(posture, "posture"), Double.POSITIVE_INFINITY);
    }

    /**
     * The same placement, held so that water wets the vessel up to a height and no higher.
     *
     * @param height height of the waterline above the vessel's lowest point, 1 mm to 2 m; a scene refuses more than the vessel is high
     * @return a new placement
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the height is outside its range
     */
    public Placement immersedTo(Quantity<Length> height) {
        return new Placement(posture, SiValues.lengthM(height, "immersion", LEAST_M, MOST_M));
    }

    /**
     * The same depth in another posture.
     *
     * @param other how the vessel stands or lies
     * @return a new placement
     */
    public Placement with(Posture other) {
        return new Placement(Objects.requireNonNull(other, "posture"), immersionM);
    }

    /**
     * How the vessel stands or lies.
     *
     * @return the posture
     */
    public Posture posture() {
        return posture;
    }

    /**
     * Where the waterline was asked for.
     *
     * @return height above the vessel's lowest point [m]; empty if it goes as deep as the gear lets it
     */
    public OptionalDouble immersionM() {
        return Double.isInfinite(immersionM) ? OptionalDouble.empty() : OptionalDouble.of(immersionM);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Placement that
                && posture == that.posture
                && Double.compare(immersionM, that.immersionM) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(posture, immersionM);
    }

    @Override
    public String toString() {
        return posture + (Double.isInfinite(immersionM) ? "" : ", immersed to " + immersionM + " m");
    }
}
