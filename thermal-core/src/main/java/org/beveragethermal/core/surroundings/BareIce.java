/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;
import org.jspecify.annotations.Nullable;

/**
 * A bucket of ice around a vessel, without added water: cubes, blocks or crushed ice.
 *
 * <p><b>What is in it.</b> Ice touches only a part of the wall beside it; there heat is conducted through a thin film of melt
 * water. The rest of the wall sees ice across gaps of air, which conduct, and radiation. Cold ice is first warmed to 0 °C. Melt
 * water {@linkplain Builder#drained() drains away}, or gathers on the floor, wets the vessel from below up and in the end
 * carries the ice. Room heat enters through the side of the bucket and the top of the ice. Where the ice is gone there is
 * the air of the room. Crushed ice is ice in small blocks, which touch more.
 *
 * <p><b>What is not known.</b> The contact fraction (estimated from the blocks unless it is given) and the {@linkplain #assumptions
 * thickness of the melt film} are assumptions of ours; times to a temperature are good to a factor of two. The factor {@link
 * Multipliers#ICE_CONTACT} shows what the film does to a prediction, a {@linkplain Builder#contact stated contact} what the
 * fraction does, which is more. A vessel {@linkplain Placement#immersedTo immersed} to a
 * height has ice beside it up to there, and under it; it does not follow ice that sinks, and as a higher pile sinks further, more ice may
 * then bare it sooner.
 *
 * <p><b>What is simplified.</b> Blocks are equal cubes, all ice has one temperature, and no block melts before the mean of the
 * ice is at 0 °C; until then contact, frozen on or dry, conducts as the film will; the pile sinks evenly and follows up, so that no cavity melts around the vessel; water that runs down a wall
 * and heat along the vessel's wall to where ice touches it are left out; what condenses from the moist air of a room gives its heat
 * but not its water; melt water that gathers is one
 * mixed node, so that the clear water that stalls above 4 °C under floating ice is that of {@link IceWaterBath} alone; vessels
 * stand on the floor, which insulates; air above the ice is that of the room, and reaches the four sides of drained blocks that
 * lie apart as well, as far as none lie beside them (own assumption).
 *
 * <p>In a scene ice may be added and gathered melt water poured off ({@link Tending}).
 *
 * <p>Immutable. Ice straight from a freezer is colder than 0 °C and freezes skin that touches it for long; do not use this ice
 * in drinks.
 *
 * <p>Theory manual, equation (4.11).
 */
public final class BareIce implements Surroundings {

    private static final Source ASKED =
            new Source("bare-ice", "own choice of what is described", Source.Kind.OWN_ASSUMPTION);
    private static final ValidityRange SOLID_FRACTION = new ValidityRange("solid fraction of the pile", 0.2, 0.9, "1");
    private static final double LEAST_ICE_KG = 0.01;
    private static final double MOST_KG = 2000;
    private static final double SMALLEST_BLOCK_M = 0.003;
    private static final double LARGEST_BLOCK_M = 0.3;
    private static final double COLDEST_ICE_K = 243.15;
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double LEAST_CONTACT = 0.001;
    private static final double THINNEST_FILM_M = 1e-5;
    private static final double THICKEST_FILM_M = 5e-3;
    private static final double WATER_DENSITY = 1000;
    private static final double CUBE_MM = 25;
    private static final double CRUSHED_MM = 6;
    private static final double FREEZER_CELSIUS = -10;

    private final Bucket bucket;
    private final Air room;
    private final double iceKg;
    private final double blockSideM;
    private final double iceK;
    private final double contactFraction;
    private final double meltFilmM;
    private final double solidFraction;
    private final boolean drained;

    private BareIce(Builder builder, double blockSideM, double iceK) {
        this.bucket = builder.bucket;
        this.room = builder.room;
        this.iceKg = builder.iceKg;
        this.blockSideM = blockSideM;
        this.iceK = iceK;
        this.contactFraction = builder.contactFraction;
        this.meltFilmM = builder.meltFilmM;
        this.solidFraction = builder.solidFraction;
        this.drained = builder.drained;
    }

    /**
     * Begins the description of a bucket of ice.
     *
     * @param bucket what holds it
     * @param room where it stands
     * @return a builder that still wants ice
     */
    public static Builder in(Bucket bucket, Air room) {
        return new Builder(bucket, room);
    }

    /**
     * Cubes with common assumptions: 25 mm, −10 °C; melt water gathers.
     *
     * @param bucket what holds them
     * @param ice mass of ice, 10 g to 2000 kg
     * @param room where the bucket stands
     * @return the bucket of ice
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the mass is outside its range or the ice does not fit
     *     into the bucket
     */
    public static BareIce of(Bucket bucket, Quantity<Mass> ice, Air room) {
        return in(bucket, room)
                .ice(ice, Measures.millimetres(CUBE_MM), Measures.celsius(FREEZER_CELSIUS))
                .build();
    }

    /**
     * Crushed ice with common assumptions: pieces of 6 mm, at 0 °C because crushing wets them; melt water gathers.
     *
     * @param bucket what holds it
     * @param ice mass of ice, 10 g to 2000 kg
     * @param room where the bucket stands
     * @return the bucket of ice
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the mass is outside its range or the ice does not fit
     *     into the bucket
     */
    public static BareIce crushed(Bucket bucket, Quantity<Mass> ice, Air room) {
        return in(bucket, room)
                .ice(ice, Measures.millimetres(CRUSHED_MM), Measures.celsius(0))
                .build();
    }

    @Override
    public boolean isBath() {
        return true;
    }

    @Override
    public boolean allows(Tending tending) {
        return tending instanceof Tending.AddIce || (tending instanceof Tending.PourOff && !drained);
    }

    @Override
    public Medium open(String id, double originS) {
        return new BareIceMedium(id, this, originS);
    }

    /**
     * The bucket.
     *
     * @return what holds the ice
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
     * Whether melt water drains away.
     *
     * @return false if it gathers in the bucket
     */
    public boolean isDrained() {
        return drained;
    }

    /**
     * Part of a wall beside the ice that the ice touches.
     *
     * @param wallDiameterM outer diameter of the vessel [m], finite, > 0
     * @return the fraction given, or the estimate for these blocks [-]
     * @throws IllegalArgumentException if the diameter is not finite and positive
     */
    public double contactFraction(double wallDiameterM) {
        if (!(wallDiameterM > 0) || Double.isInfinite(wallDiameterM)) {
            throw new IllegalArgumentException(
                    "diameter of a wall " + wallDiameterM + " m: expected a finite value above 0");
        }
        return contact().fraction(0.5 * wallDiameterM);
    }

    Air room() {
        return room;
    }

    double blockSideM() {
        return blockSideM;
    }

    IceBlock block() {
        return IceBlock.cube(Measures.metres(blockSideM));
    }

    double iceK() {
        return iceK;
    }

    double solidFraction() {
        return solidFraction;
    }

    IceContact contact() {
        return new IceContact(contactFraction, meltFilmM, blockSideM, solidFraction);
    }

    /**
     * Sources of what the description of ice without water assumes.
     *
     * @return constants with their uncertainty
     */
    public static List<Constant> assumptions() {
        return Stream.concat(IceContact.assumptions().stream(), IceWaterBath.assumptions().stream())
                .toList();
    }

    /** Collects the description; each setting is checked at once, the whole in {@link #build}. */
    public static final class Builder {

        private final Bucket bucket;
        private final Air room;
        private double iceKg = Double.NaN;
        private @Nullable Double blockSideM;
        private @Nullable Double iceK;
        private double contactFraction = Double.NaN;
        private double meltFilmM = IceContact.MELT_FILM.value();
        private double solidFraction = IceWaterBath.PACK_SOLID_FRACTION.value();
        private boolean drained;

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
            iceKg = SiValues.massKg(mass, "mass of ice", LEAST_ICE_KG, MOST_KG);
            blockSideM = SiValues.lengthM(blockSide, "side of an ice block", SMALLEST_BLOCK_M, LARGEST_BLOCK_M);
            iceK = SiValues.temperatureK(temperature, "ice temperature", COLDEST_ICE_K, ZERO_CELSIUS_K);
            return this;
        }

        /**
         * The ice, counted: its mass is that of so many cubes of ice at 0 °C without air in it.
         *
         * @param count number of cubes, 1 to 1,000,000; together 10 g to 2000 kg
         * @param blockSide side of a cube, 3 mm to 300 mm
         * @param temperature temperature at the start, −30 °C to 0 °C
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if a number is outside its range
         */
        public Builder cubes(int count, Quantity<Length> blockSide, Quantity<Temperature> temperature) {
            return ice(IceWaterBath.counted(count, IceBlock.cube(blockSide)), blockSide, temperature);
        }

        /**
         * How much of a wall the ice touches; estimated from the side of the blocks unless said otherwise.
         *
         * @param fraction part of the wall beside the ice, 0.001 to 1
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside its range
         */
        public Builder contact(Quantity<Dimensionless> fraction) {
            contactFraction = SiValues.fraction(fraction, "contact fraction of ice", LEAST_CONTACT, 1);
            return this;
        }

        /**
         * How thick the film of melt water is where ice touches a wall; 0.5 mm unless said otherwise.
         *
         * @param thickness mean thickness, 0.01 mm to 5 mm
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the thickness is outside its range
         */
        public Builder meltFilm(Quantity<Length> thickness) {
            meltFilmM = SiValues.lengthM(thickness, "thickness of the melt film", THINNEST_FILM_M, THICKEST_FILM_M);
            return this;
        }

        /**
         * How densely the ice lies; {@link IceWaterBath#PACK_SOLID_FRACTION} unless said otherwise.
         *
         * @param fraction part of the pile's volume that is ice, 0.2 to 0.9
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside its range
         */
        public Builder solidFraction(double fraction) {
            solidFraction = SOLID_FRACTION.require(fraction, ASKED);
            return this;
        }

        /**
         * Lets melt water drain away instead of gathering in the bucket.
         *
         * @return this builder
         */
        public Builder drained() {
            drained = true;
            return this;
        }

        /**
         * Checks the whole and makes the bucket of ice.
         *
         * @return the bucket of ice
         * @throws IllegalStateException if no ice was given
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the pile does not fit into the bucket or a block is
         *     larger than the bucket is wide
         */
        public BareIce build() {
            Double side = blockSideM;
            Double coldness = iceK;
            if (side == null || coldness == null) {
                throw new IllegalStateException("a bucket of ice needs ice: call ice(…)");
            }
            new ValidityRange("diagonal of a side of an ice block", 0, bucket.innerDiameterM(), "m")
                    .require(Math.hypot(side, side), "inner diameter of the bucket");
            double volume = PileGeometry.volumeM3(iceKg, 0, WATER_DENSITY, solidFraction, !drained);
            new ValidityRange("volume of the pile of ice", 0, bucket.volumeM3(), "m³")
                    .require(volume, "what the bucket holds");
            return new BareIce(this, side, coldness);
        }
    }
}
