/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;
import org.jspecify.annotations.Nullable;

/**
 * An empty vessel: shape, wall material and nominal volume, with the source of its dimensions and how far a real one
 * may differ. Thermal expansion of the vessel itself is neglected (about 0.03 % of the volume per 10 K for glass).
 * Immutable; equal by parts.
 */
public final class Vessel {
    private static final double DRAWN_AT_K = 293.15;
    private static final ValidityRange WALL_TEMPERATURES =
            new ValidityRange("temperature of a vessel's wall", 200, 400, "K");
    private static final Source USER = new Source("user", "handed in by the user", Source.Kind.OWN_ASSUMPTION);

    private final String name;
    private final VesselShape shape;
    private final Profile profile;
    private final Solid wall;
    private final double nominalVolumeM3;
    private final Source dimensionsSource;
    private final Uncertainty diameterUncertainty;
    private final Uncertainty massUncertainty;
    private final boolean open;
    private final @Nullable OuterParts outerParts;
    private final Closure closure;

    private Vessel(Builder builder, Profile profile, VesselShape shape) {
        this.name = builder.name;
        this.shape = shape;
        this.profile = profile;
        this.wall = builder.wall;
        this.nominalVolumeM3 = builder.nominalVolumeM3;
        this.dimensionsSource = builder.dimensionsSource;
        this.diameterUncertainty = builder.diameterUncertainty;
        this.massUncertainty = builder.massUncertainty;
        Boolean givenOpen = builder.open;
        this.open = givenOpen == null ? shape.isUsuallyOpen() : givenOpen;
        this.outerParts = builder.outerParts;
        this.closure = Closure.usual(shape);
    }

    private Vessel(Vessel that, Closure closure) {
        this.name = that.name;
        this.shape = that.shape;
        this.profile = that.profile;
        this.wall = that.wall;
        this.nominalVolumeM3 = that.nominalVolumeM3;
        this.dimensionsSource = that.dimensionsSource;
        this.diameterUncertainty = that.diameterUncertainty;
        this.massUncertainty = that.massUncertainty;
        this.open = false;
        this.outerParts = that.outerParts;
        this.closure = closure;
    }

    /**
     * An empty builder.
     *
     * @param name what the vessel is called; not blank
     * @return the builder
     * @throws IllegalArgumentException if the name is blank
     */
    public static Builder builder(String name) {
        return new Builder(name);
    }

    /**
     * Collects the parts of a vessel. Profile, shape and nominal volume are required; the wall is soda-lime glass and
     * the dimensions are taken as exact and handed in by the user, unless set otherwise. Not thread-safe.
     */
    public static final class Builder {
        private final String name;
        private @Nullable Profile profile;
        private @Nullable VesselShape shape;
        private Solid wall = Solids.sodaLimeGlass();
        private double nominalVolumeM3;
        private Source dimensionsSource = USER;
        private Uncertainty diameterUncertainty = Uncertainty.exact();
        private Uncertainty massUncertainty = Uncertainty.exact();
        private @Nullable Boolean open;
        private @Nullable OuterParts outerParts;

        private Builder(String name) {
            if (name.isBlank()) {
                throw new IllegalArgumentException("vessel: expected a name, got a blank one");
            }
            this.name = name;
        }

        /**
         * Sets the generic shape.
         *
         * @param value the shape
         * @return this builder
         */
        public Builder shape(VesselShape value) {
            shape = value;
            return this;
        }

        /**
         * Sets the dimensions.
         *
         * @param value the profile
         * @return this builder
         */
        public Builder profile(Profile value) {
            profile = value;
            return this;
        }

        /**
         * Sets the wall material.
         *
         * @param value the solid
         * @return this builder
         */
        public Builder wall(Solid value) {
            wall = value;
            return this;
        }

        /**
         * Sets the nominal volume, at 20 °C.
         *
         * @param value the volume, greater than 0
         * @return this builder
         * @throws OutOfRangeException if the volume is not greater than 0
         * @throws IllegalArgumentException if the quantity is null, not a volume or not finite
         */
        public Builder nominalVolume(Quantity<Volume> value) {
            nominalVolumeM3 = SiValues.volumeM3(value, "nominal volume", Double.MIN_VALUE, Double.MAX_VALUE);
            return this;
        }

        /**
         * Sets where the dimensions come from and how far a real vessel may differ from them.
         *
         * @param source source of the dimensions
         * @param diameter uncertainty of the outer diameter
         * @param mass uncertainty of the empty mass
         * @return this builder
         */
        public Builder dimensions(Source source, Uncertainty diameter, Uncertainty mass) {
            dimensionsSource = source;
            diameterUncertainty = diameter;
            massUncertainty = mass;
            return this;
        }

        /**
         * Sets whether the vessel stands open; as its shape usually does, unless set.
         *
         * @param value false if it is closed
         * @return this builder
         */
        public Builder open(boolean value) {
            open = value;
            return this;
        }

        /**
         * Sets what belongs to the vessel but not to its thermal wall; none, unless set.
         *
         * @param value stem and foot, chimes or handle
         * @return this builder
         */
        public Builder outerParts(OuterParts value) {
            outerParts = value;
            return this;
        }

        /**
         * Makes the vessel.
         *
         * @return the vessel
         * @throws OutOfRangeException if the nominal volume was not set or exceeds the brimful volume
         * @throws IllegalArgumentException if the profile or the shape was not set
         */
        public Vessel build() {
            Profile givenProfile = profile;
            VesselShape givenShape = shape;
            if (givenProfile == null || givenShape == null) {
                throw new IllegalArgumentException(name + ": expected a profile and a shape, got profile "
                        + (givenProfile == null ? "none" : "given") + " and shape " + givenShape);
            }
            double brimful = givenProfile.brimfulVolumeM3();
            if (!(nominalVolumeM3 > 0 && nominalVolumeM3 <= brimful)) {
                throw OutOfRangeException.refusal(
                        "nominal volume", nominalVolumeM3, Double.MIN_VALUE, brimful, "m³", "brimful volume");
            }
            return new Vessel(this, givenProfile, givenShape);
        }
    }

    /**
     * What the vessel is called.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Generic shape.
     *
     * @return the shape
     */
    public VesselShape shape() {
        return shape;
    }

    /**
     * Dimensions.
     *
     * @return the profile
     */
    public Profile profile() {
        return profile;
    }

    /**
     * Wall material.
     *
     * @return the solid
     */
    public Solid wall() {
        return wall;
    }

    /**
     * Nominal volume of the contents, at 20 °C: what the label says or, for a vessel to drink from, a usual serving.
     *
     * @return volume in m³
     */
    public double nominalVolumeM3() {
        return nominalVolumeM3;
    }

    /**
     * Volume filled to the brim.
     *
     * @return volume in m³, at least the nominal volume
     */
    public double brimfulVolumeM3() {
        return profile.brimfulVolumeM3();
    }

    /**
     * Mass of the empty vessel: density times volume of side wall and base, {@linkplain #outerParts() outer parts} not in it.
     *
     * @return mass in kg
     */
    public double emptyMassKg() {
        return wallMassKg(0, profile.heightM()) + baseMassKg();
    }

    /**
     * Mass of the empty vessel as a scale shows it: {@link #emptyMassKg()} and the outer parts.
     *
     * @return mass in kg
     */
    public double totalMassKg() {
        return emptyMassKg() + outerParts().map(OuterParts::massKg).orElse(0.0);
    }

    /**
     * Whether the vessel stands open, so that its contents meet the air and it can only stand upright.
     *
     * @return false if it is closed
     */
    public boolean isOpen() {
        return open;
    }

    /**
     * What closes the vessel: what its shape {@linkplain Closure#usual(VesselShape) usually has}, unless set by {@link #closedBy}.
     *
     * @return the closure; empty if the vessel stands open
     */
    public Optional<Closure> closure() {
        return open ? Optional.empty() : Optional.of(closure);
    }

    /**
     * The same vessel with a closure on it.
     *
     * @param newClosure what closes it
     * @return a closed vessel
     */
    public Vessel closedBy(Closure newClosure) {
        return new Vessel(this, Objects.requireNonNull(newClosure, "closure"));
    }

    /**
     * What belongs to the vessel but is no part of its thermal wall.
     *
     * @return stem and foot, chimes or handle; empty if there is none
     */
    public Optional<OuterParts> outerParts() {
        return Optional.ofNullable(outerParts);
    }

    /**
     * Mass of the side wall between two heights; the base is not in it.
     *
     * @param fromM lower height in m
     * @param toM upper height in m, at least {@code fromM}
     * @return mass in kg
     * @throws OutOfRangeException if a height is outside the vessel or the two are out of order
     */
    public double wallMassKg(double fromM, double toM) {
        return wall.density().value() * profile.wallVolumeM3(fromM, toM);
    }

    /**
     * Mass of the base inside the side wall.
     *
     * @return mass in kg
     */
    public double baseMassKg() {
        return wall.density().value() * profile.baseWallVolumeM3();
    }

    /**
     * Linear thermal expansion of the wall around 20 °C, by its solid: remembered handbook values, or that of glass with full
     * doubt for a solid that the library does not know.
     *
     * @return the coefficient in 1/K
     */
    public Constant linearExpansion() {
        return WallExpansion.of(wall);
    }

    /**
     * Volume of liquid that fills the vessel to the brim at a temperature: that of the profile, which is at 20 °C, expanded with
     * the wall.
     *
     * @param temperatureK temperature of the wall in K, 200 to 400
     * @return volume in m³
     * @throws OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double brimfulVolumeM3(double temperatureK) {
        WALL_TEMPERATURES.require(temperatureK, "Vessel");
        return brimfulVolumeM3() * (1 + 3 * linearExpansion().value() * (temperatureK - DRAWN_AT_K));
    }

    /**
     * Where the dimensions come from.
     *
     * @return the source
     */
    public Source dimensionsSource() {
        return dimensionsSource;
    }

    /**
     * How far the outer diameter of a real vessel may differ.
     *
     * @return uncertainty of the outer diameter
     */
    public Uncertainty diameterUncertainty() {
        return diameterUncertainty;
    }

    /**
     * How far the empty mass of a real vessel, and with it the wall thickness, may differ.
     *
     * @return uncertainty of the empty mass
     */
    public Uncertainty massUncertainty() {
        return massUncertainty;
    }

    /**
     * The vessel with its nominal volume of a liquid in it: the mass that has that volume at 20 °C, as bottlers measure.
     *
     * @param liquid what is in it; its range must include 20 °C
     * @param temperature temperature of vessel and contents, within the liquid's range
     * @return the filled vessel
     * @throws OutOfRangeException if the temperature is outside the liquid's range, or the liquid, expanded, is larger
     *     than the vessel
     * @throws IllegalArgumentException if the temperature is null, a difference or not finite
     */
    public FilledVessel filledWith(Liquid liquid, Quantity<Temperature> temperature) {
        return FilledVessel.withVolumeAt20(this, liquid, nominalVolumeM3, temperature);
    }

    /**
     * The vessel with a volume of liquid in it, measured at 20 °C.
     *
     * @param liquid what is in it; its range must include 20 °C
     * @param volume volume of the liquid at 20 °C, greater than 0, at most brimful
     * @param temperature temperature of vessel and contents, within the liquid's range
     * @return the filled vessel
     * @throws OutOfRangeException if the volume is outside its range, the temperature outside the liquid's range, or the
     *     liquid, expanded, is larger than the vessel
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite, or the temperature is
     *     a difference
     */
    public FilledVessel filledWith(Liquid liquid, Quantity<Volume> volume, Quantity<Temperature> temperature) {
        double volumeM3 = SiValues.volumeM3(volume, "volume of liquid", Double.MIN_VALUE, brimfulVolumeM3());
        return FilledVessel.withVolumeAt20(this, liquid, volumeM3, temperature);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Vessel that
                && name.equals(that.name)
                && shape == that.shape
                && profile.equals(that.profile)
                && wall.equals(that.wall)
                && Double.compare(nominalVolumeM3, that.nominalVolumeM3) == 0
                && dimensionsSource.equals(that.dimensionsSource)
                && diameterUncertainty.equals(that.diameterUncertainty)
                && massUncertainty.equals(that.massUncertainty)
                && open == that.open
                && closure().equals(that.closure())
                && Objects.equals(outerParts, that.outerParts);
    }

    @Override
    public int hashCode() {
        return name.hashCode() * 31 + profile.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
