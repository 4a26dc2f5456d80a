/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;
import org.jspecify.annotations.Nullable;

/**
 * A bucket of ice and water in a room.
 *
 * <p><b>What is in it.</b> Ice floats. The water among the ice and the clear water below it are two nodes: the clear water
 * is cooled from above, and because water is densest at 4 °C it stalls between 4 °C and 8 °C, depending on the heat it
 * receives, unless somebody stirs. Where the ice reaches the floor there is no clear water and the whole bath is near 0 °C.
 * How deep the ice goes follows from its mass, how loosely it is packed, and the free cross-section of the bucket.
 *
 * <p><b>Blocks</b> are equal {@linkplain IceBlock cubes, bricks, cylinders or spheres} that melt evenly from all sides.
 *
 * <p><b>What is simplified.</b> Three quarters of the blocks' surface are wetted, whatever their shape; the film on a block
 * is that of a vertical plate of its mean extent (or, stirred, of a sphere); bricks that lie flat on each other and hide their
 * faces are left out, as is a packing of their own ({@linkplain Builder#solidFraction say so} if it is known); vessels stand or lie on the floor, which insulates the end on which they stand unless {@linkplain #on told
 * otherwise}; condensation on the bucket is left out.
 *
 * <p>Immutable. Keep the mouths of bottles above the melt water, and do not use this ice in drinks.
 *
 * <p>Theory manual, equation (4.12).
 */
public final class IceWaterBath implements Surroundings {

    private static final Source FROM_MEMORY =
            new Source("packing-of-cubes", "packing of ice cubes in a bucket, from memory", Source.Kind.FROM_MEMORY);

    /** Part of the pack's volume that is ice, the rest being water. */
    public static final Constant PACK_SOLID_FRACTION = new Constant(
            "solid fraction of a pack of ice cubes", 0.57, "1", Uncertainty.rectangular(0.08), FROM_MEMORY);

    /** Part of a block's surface that water touches. */
    public static final Constant WETTED_ICE_FRACTION =
            new Constant("wetted fraction of ice in a pack", 0.75, "1", Uncertainty.rectangular(0.15), FROM_MEMORY);

    private static final ValidityRange FRACTION = new ValidityRange("solid fraction of the pack", 0.2, 0.9, "1");
    static final double LEAST_ICE_KG = 0.01;
    static final double MOST_KG = 2000;
    private static final double SMALLEST_BLOCK_M = 0.003;
    private static final double LARGEST_BLOCK_M = 0.3;
    private static final double MOST_BLOCKS = 1e6;
    private static final double COLDEST_ICE_K = 243.15;
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double WARMEST_WATER_K = 333.15;
    static final String OWN_CHOICE = "own choice of what is described";
    static final ValidityRange ICE_TEMPERATURE =
            new ValidityRange("temperature of ice added", COLDEST_ICE_K, ZERO_CELSIUS_K, "K");
    static final ValidityRange WATER_TEMPERATURE =
            new ValidityRange("temperature of water added", ZERO_CELSIUS_K, WARMEST_WATER_K, "K");
    private static final double ICE_DENSITY = Ice.density(273.15);
    private static final double WATER_DENSITY = 1000;
    /** Less water than this, relative to the ice, cannot be called a bath. */
    static final double LEAST_WATER_PER_ICE = 0.1;
    /** A bath that would freeze until less of it than this is liquid is none; what is described ends there. */
    private static final double LEAST_LIQUID_PART = 0.04;

    private final Bucket bucket;
    private final Air room;
    private final double iceKg;
    private final IceBlock block;
    private final double iceK;
    private final double waterKg;
    private final double waterK;
    private final Agitation agitation;
    private final double solidFraction;
    private final Footing footing;

    private IceWaterBath(Builder builder, IceBlock block, double iceK, double waterK) {
        this.bucket = builder.bucket;
        this.room = builder.room;
        this.iceKg = builder.iceKg;
        this.block = block;
        this.iceK = iceK;
        this.waterKg = builder.waterKg;
        this.waterK = waterK;
        this.agitation = builder.agitation;
        this.solidFraction = builder.solidFraction;
        this.footing = Footing.insulating();
    }

    private IceWaterBath(IceWaterBath that, Footing footing) {
        this.bucket = that.bucket;
        this.room = that.room;
        this.iceKg = that.iceKg;
        this.block = that.block;
        this.iceK = that.iceK;
        this.waterKg = that.waterKg;
        this.waterK = that.waterK;
        this.agitation = that.agitation;
        this.solidFraction = that.solidFraction;
        this.footing = footing;
    }

    /**
     * The same bath with something else under the vessels.
     *
     * @param newFooting what they stand on; insulating unless said otherwise
     * @return a new value
     */
    public IceWaterBath on(Footing newFooting) {
        return new IceWaterBath(this, Objects.requireNonNull(newFooting, "footing"));
    }

    /**
     * What a bath has become, as a bath that begins anew: its water mixed, its blocks as large as they were and fewer. Where no ice is
     * left it is a bath of water, moved as little as a bath of water is unless said otherwise; water below 0.5 °C is raised to that, the
     * coldest that a bath of water can be.
     *
     * @param iceLeft ice that is left, ≥ 0
     * @param water water that is there
     * @param waterTemperature temperature of all the water, 0 °C to 60 °C
     * @return the bath; of water if less than 10 g of ice are left
     * @throws org.beveragethermal.materials.units.OutOfRangeException if it is no bath any more, or does not fit into the bucket
     */
    public Surroundings leaving(Quantity<Mass> iceLeft, Quantity<Mass> water, Quantity<Temperature> waterTemperature) {
        double leftKg = SiValues.massKg(iceLeft, "ice that is left", 0, MOST_KG);
        if (leftKg >= LEAST_ICE_KG) {
            IceWaterBath left = new Builder(bucket, room)
                    .ice(iceLeft, block, Measures.kelvins(ZERO_CELSIUS_K))
                    .water(water, waterTemperature)
                    .agitation(agitation)
                    .solidFraction(solidFraction)
                    .build();
            return left.on(footing);
        }
        double waterKg = leftKg + SiValues.massKg(water, "water that is there", 0, MOST_KG);
        double temperature = WATER_TEMPERATURE.require(
                SiValues.temperatureK(waterTemperature, "temperature of the water"), "water of a bath");
        return WaterBath.of(
                        bucket,
                        Measures.cubicMetres(waterKg / WATER_DENSITY),
                        Measures.kelvins(Math.max(WaterBath.COLDEST_K, temperature)),
                        room)
                .with(agitation)
                .on(footing);
    }

    /**
     * Begins the description of a bath.
     *
     * @param bucket what holds it
     * @param room where it stands
     * @return a builder that still wants ice and water
     */
    public static Builder in(Bucket bucket, Air room) {
        return new Builder(bucket, room);
    }

    /**
     * A bath with common assumptions: cubes of 25 mm at −10 °C, water at 15 °C, still.
     *
     * @param bucket what holds it
     * @param ice mass of ice, 10 g to 2000 kg
     * @param water mass of water
     * @param room where it stands
     * @return the bath
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     * @throws IllegalArgumentException if ice and water do not fit into the bucket
     */
    public static IceWaterBath of(Bucket bucket, Quantity<Mass> ice, Quantity<Mass> water, Air room) {
        return in(bucket, room)
                .ice(ice, Measures.millimetres(25), Measures.celsius(-10))
                .water(water, Measures.celsius(15))
                .build();
    }

    @Override
    public boolean isBath() {
        return true;
    }

    @Override
    public boolean allows(Tending tending) {
        return true;
    }

    @Override
    public Medium open(String id, double originS) {
        return new IceWaterMedium(id, this, originS);
    }

    /**
     * The bucket.
     *
     * @return what holds the bath
     */
    public Bucket bucket() {
        return bucket;
    }

    /**
     * Mass of ice at the start.
     *
     * @return mass [kg]
     */
    public double iceKg() {
        return iceKg;
    }

    /**
     * Mass of water at the start.
     *
     * @return mass [kg]
     */
    public double waterKg() {
        return waterKg;
    }

    Air room() {
        return room;
    }

    /**
     * The shape of a block at the start.
     *
     * @return the shape
     */
    public IceBlock block() {
        return block;
    }

    /** Number of blocks at the start, not necessarily whole. */
    double blocks() {
        return iceKg / (ICE_DENSITY * block.volumeM3());
    }

    double iceK() {
        return iceK;
    }

    double waterK() {
        return waterK;
    }

    Agitation agitation() {
        return agitation;
    }

    double solidFraction() {
        return solidFraction;
    }

    Footing footing() {
        return footing;
    }

    /** Collects the description of a bath; each setting is checked at once, the whole in {@link #build}. */
    public static final class Builder {

        private final Bucket bucket;
        private final Air room;
        private double iceKg = Double.NaN;
        private @Nullable IceBlock block;
        private @Nullable Double iceK;
        private double waterKg = Double.NaN;
        private @Nullable Double waterK;
        private Agitation agitation = Agitation.STILL;
        private double solidFraction = PACK_SOLID_FRACTION.value();

        private Builder(Bucket bucket, Air room) {
            this.bucket = Objects.requireNonNull(bucket, "bucket");
            this.room = Objects.requireNonNull(room, "room");
        }

        /**
         * The ice.
         *
         * @param mass mass, 10 g to 2000 kg
         * @param blockSide side of a block, taken as a cube, 3 mm to 300 mm
         * @param temperature temperature at the start, −30 °C to 0 °C
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
         */
        public Builder ice(Quantity<Mass> mass, Quantity<Length> blockSide, Quantity<Temperature> temperature) {
            SiValues.lengthM(blockSide, "side of an ice block", SMALLEST_BLOCK_M, LARGEST_BLOCK_M);
            return ice(mass, IceBlock.cube(blockSide), temperature);
        }

        /**
         * The ice, in blocks of any shape.
         *
         * @param mass mass, 10 g to 2000 kg
         * @param shape the shape of every block
         * @param temperature temperature at the start, −30 °C to 0 °C
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
         */
        public Builder ice(Quantity<Mass> mass, IceBlock shape, Quantity<Temperature> temperature) {
            iceKg = SiValues.massKg(mass, "mass of ice", LEAST_ICE_KG, MOST_KG);
            block = Objects.requireNonNull(shape, "shape of a block");
            iceK = SiValues.temperatureK(temperature, "ice temperature", COLDEST_ICE_K, ZERO_CELSIUS_K);
            return this;
        }

        /**
         * The ice, counted: its mass is that of so many blocks of ice at 0 °C without air in it.
         *
         * @param count number of blocks, 1 to 1,000,000; together 10 g to 2000 kg
         * @param shape the shape of every block
         * @param temperature temperature at the start, −30 °C to 0 °C
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the count, their mass or the temperature is outside
         *     its range
         */
        public Builder blocks(int count, IceBlock shape, Quantity<Temperature> temperature) {
            return ice(counted(count, shape), shape, temperature);
        }

        /**
         * The water.
         *
         * @param mass mass, at least a tenth of the ice
         * @param temperature temperature at the start, 0 °C to 60 °C
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
         */
        public Builder water(Quantity<Mass> mass, Quantity<Temperature> temperature) {
            waterKg = SiValues.massKg(mass, "mass of bath water", 0, MOST_KG);
            waterK = SiValues.temperatureK(
                    temperature, "temperature of the bath water", ZERO_CELSIUS_K, WARMEST_WATER_K);
            return this;
        }

        /**
         * How the water is moved; still unless said otherwise.
         *
         * @param newAgitation the agitation
         * @return this builder
         */
        public Builder agitation(Agitation newAgitation) {
            agitation = Objects.requireNonNull(newAgitation, "agitation");
            return this;
        }

        /**
         * How densely the ice is packed; {@link #PACK_SOLID_FRACTION} unless said otherwise.
         *
         * @param fraction part of the pack's volume that is ice, 0.2 to 0.9
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside its range
         */
        public Builder solidFraction(double fraction) {
            solidFraction = FRACTION.require(fraction, FROM_MEMORY);
            return this;
        }

        /**
         * Checks the whole and makes the bath.
         *
         * @return the bath
         * @throws IllegalStateException if ice or water was not given
         * @throws org.beveragethermal.materials.units.OutOfRangeException if there is too little water, ice and water do not fit into
         *     the bucket, a block does not pass through its mouth, or the ice is so cold that the water would freeze
         */
        public IceWaterBath build() {
            IceWaterBath bath = buildThatMayFreeze();
            bath.requireLiquid();
            return bath;
        }

        /** The same for a bath that salt keeps from freezing. */
        IceWaterBath buildThatMayFreeze() {
            IceBlock side = block;
            Double coldness = iceK;
            Double warmth = waterK;
            if (side == null || coldness == null || warmth == null) {
                throw new IllegalStateException("a bath of ice and water needs both: call ice(…) and water(…)");
            }
            new ValidityRange("mass of bath water", LEAST_WATER_PER_ICE * iceKg, MOST_KG, "kg")
                    .require(waterKg, "at least a tenth of the ice");
            double volume = iceKg / ICE_DENSITY + waterKg / WATER_DENSITY;
            new ValidityRange("volume of ice and water", 0, bucket.volumeM3(), "m³")
                    .require(volume, "what the bucket holds");
            new ValidityRange("width of a block of ice (" + side + ")", 0, bucket.innerDiameterM(), "m")
                    .require(side.passesM(), "inner diameter of the bucket");
            return new IceWaterBath(this, side, coldness, warmth);
        }
    }

    /** Mass of so many blocks. */
    static Quantity<Mass> counted(int count, IceBlock block) {
        new ValidityRange("number of ice blocks", 1, MOST_BLOCKS, "1").require(count, OWN_CHOICE);
        return Measures.kilograms(count * ICE_DENSITY * block.volumeM3());
    }

    /** Cold ice freezes water onto itself until it has warmed up; some must stay liquid. */
    void requireLiquid() {
        double coldJ = iceKg * (Ice.specificEnthalpy(ZERO_CELSIUS_K) - Ice.specificEnthalpy(iceK));
        double warmJ = waterKg * Water.liquid().specificEnthalpy(waterK);
        double frozenKg = Math.max(0, coldJ - warmJ) / Ice.latentHeatOfFusion().value();
        double least = frozenKg + LEAST_LIQUID_PART * (iceKg + waterKg);
        new ValidityRange("mass of bath water beside ice of " + iceK + " K", least, Math.max(least, MOST_KG), "kg")
                .require(waterKg, "less would freeze onto ice this cold");
    }

    /**
     * Sources of what this bath assumes.
     *
     * @return constants with their uncertainty
     */
    public static List<Constant> assumptions() {
        return List.of(PACK_SOLID_FRACTION, WETTED_ICE_FRACTION);
    }
}
