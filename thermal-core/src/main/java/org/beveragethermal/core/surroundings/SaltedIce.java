/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.materials.liquid.Brine;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;
import org.jspecify.annotations.Nullable;

/**
 * A bucket of ice, water and common salt (NaCl) in a room: colder than 0 °C, down to −21.1 °C at most.
 *
 * <p><b>Caution.</b> Salted ice freezes skin and drinks: keep it away from bare hands and from children; bottles in it may
 * freeze and burst, so watch them and take them out; do not use this ice, or this brine, in drinks. Local rules come first.
 *
 * <p><b>Two limits.</b> How cold the bath gets depends on how well the salt is mixed in, which nobody measures. {@linkplain
 * SaltEffect#MIXED Mixed}: all salt that dissolves is spread evenly through the water. {@linkplain SaltEffect#INEFFECTIVE Ineffective}: nobody
 * stirs, the salt lies on the floor and the bath is one of ice and water. A prediction says in its notes which of the two it
 * is; what happens lies between the second and the first with the water stirred. Mixed but {@linkplain Agitation#STILL still} is some
 * kelvins warmer than that, because plumes of fresh melt water, which stir, are left out.
 *
 * <p><b>What is in it, mixed.</b> Salt dissolves, which takes heat, and lowers the freezing point of the brine; ice melts at the
 * liquidus of the brine that touches it, which its own melt dilutes, and so the brine stays some kelvins warmer than its own
 * liquidus; melt water dilutes the brine. Salt beyond 23.3 % of the brine stays undissolved; the strongest brine above 0 °C,
 * 26 %, is not described. Ice that rises above the brine touches vessels as in {@link BareIce}; as the ice melts, the brine
 * rises. Brine is not below the eutectic unless ice or surroundings are.
 *
 * <p><b>Without salt.</b> Stirred, it follows {@link IceWaterBath} to some hundredths of a kelvin. Still, it does not: one mixed
 * node has no clear water that stalls above 4 °C under the ice.
 *
 * <p><b>What is simplified.</b> One temperature for all brine and one for all ice; films are those of a brine of mean strength,
 * driven by temperature alone: plumes of fresh melt water, which stir, and a cap of fresh water under the ice, which shields it, are
 * both left out; three quarters of the ice below the level are wetted; nothing freezes onto vessels; the course of dissolving is
 * that of grains stirred in ({@linkplain Builder#dissolvingOver time}); salt with water of crystallisation is left out.
 *
 * <p>Immutable.
 */
public final class SaltedIce implements Surroundings {

    /** What becomes of the salt. */
    public enum SaltEffect {
        /** All that dissolves is spread evenly; the coldest that this bath can be where it is stirred too. */
        MIXED,
        /** It lies on the floor: a bath of ice and water. */
        INEFFECTIVE
    }

    static final String CAUTION =
            "salted ice freezes skin and drinks: keep it away from bare hands and children; bottles may freeze and burst; do not"
                    + " use this ice in drinks; local rules come first";

    private static final Source OWN =
            new Source("salted-ice", "own assumption for table salt stirred in", Source.Kind.OWN_ASSUMPTION);

    /**
     * Time in which salt that is stirred in dissolves to a third in plenty of water: grains of 0.5 mm with a Sherwood number of
     * about 5 take one to two minutes (own estimate).
     */
    public static final Constant DISSOLVING_TIME =
            new Constant("time constant of dissolving salt", 120, "s", Uncertainty.rectangular(80), OWN);

    private static final ValidityRange DISSOLVING = new ValidityRange("time of dissolving", 5, 36_000, "s");
    private static final double HOTTEST_ROOM_K = 353.15;
    private static final double MOST_KG = 2000;
    private static final double MOST_SALT_PER_ICE = 2;
    private static final double WARMEST_WATER_K = 313.15;
    private static final double ZERO_CELSIUS_K = 273.15;

    private final IceWaterBath plain;
    private final Air room;
    private final double saltKg;
    private final double dissolvingS;
    private final SaltEffect effect;

    private SaltedIce(IceWaterBath plain, Air room, double saltKg, double dissolvingS, SaltEffect effect) {
        this.plain = plain;
        this.room = room;
        this.saltKg = saltKg;
        this.dissolvingS = dissolvingS;
        this.effect = effect;
    }

    /**
     * Begins the description of a bath of salted ice.
     *
     * @param bucket what holds it
     * @param room where it stands
     * @return a builder that still wants ice, water and salt
     */
    public static Builder in(Bucket bucket, Air room) {
        return new Builder(bucket, room);
    }

    /**
     * The same bath in one of its two limits.
     *
     * @param becomes what becomes of the salt
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the salt is ineffective and the ice so cold that the water
     *     would freeze
     */
    public SaltedIce with(SaltEffect becomes) {
        SaltedIce limit =
                new SaltedIce(plain, room, saltKg, dissolvingS, Objects.requireNonNull(becomes, "effect of the salt"));
        limit.requireLiquid();
        return limit;
    }

    @Override
    public boolean isBath() {
        return true;
    }

    @Override
    public Medium open(String id, double originS) {
        return switch (effect) {
            case MIXED -> new SaltedIceMedium(id, this, originS);
            case INEFFECTIVE -> new IneffectiveSaltMedium(id, plain.open(id, originS));
        };
    }

    /**
     * Which limit this is.
     *
     * @return what becomes of the salt
     */
    public SaltEffect effect() {
        return effect;
    }

    /**
     * The bucket.
     *
     * @return what holds the bath
     */
    public Bucket bucket() {
        return plain.bucket();
    }

    /**
     * Mass of ice at the start.
     *
     * @return mass [kg]
     */
    public double iceKg() {
        return plain.iceKg();
    }

    /**
     * Mass of water at the start.
     *
     * @return mass [kg]
     */
    public double waterKg() {
        return plain.waterKg();
    }

    /**
     * Mass of salt.
     *
     * @return mass [kg]
     */
    public double saltKg() {
        return saltKg;
    }

    /**
     * The salt that dissolves once all ice has melted.
     *
     * @return mass [kg], at most {@link #saltKg}
     */
    public double dissolvableKg() {
        double strongest = Brine.EUTECTIC_MASS_FRACTION;
        return Math.min(saltKg, (iceKg() + waterKg()) * strongest / (1 - strongest));
    }

    /** Strength of the brine when half of the ice has melted, by which its films are made. */
    double meanFraction() {
        double halfMelted = waterKg() + 0.5 * iceKg();
        return Math.min(Brine.EUTECTIC_MASS_FRACTION, saltKg / (saltKg + halfMelted));
    }

    static double liquidDensity(double massFraction) {
        return Brine.ofMassFraction(massFraction).density(ZERO_CELSIUS_K);
    }

    Air room() {
        return room;
    }

    double blockSideM() {
        return plain.block().shortestM();
    }

    private void requireLiquid() {
        if (effect == SaltEffect.INEFFECTIVE) {
            plain.requireLiquid();
        }
    }

    double iceK() {
        return plain.iceK();
    }

    double waterK() {
        return plain.waterK();
    }

    double solidFraction() {
        return plain.solidFraction();
    }

    Agitation agitation() {
        return plain.agitation();
    }

    double dissolvingS() {
        return dissolvingS;
    }

    IceContact contact() {
        return new IceContact(Double.NaN, IceContact.MELT_FILM.value(), blockSideM(), solidFraction());
    }

    /**
     * Sources of what this bath assumes.
     *
     * @return constants with their uncertainty
     */
    public static List<Constant> assumptions() {
        return Stream.of(
                        List.of(DISSOLVING_TIME, BrineInterface.LEWIS),
                        IceWaterBath.assumptions(),
                        IceContact.assumptions())
                .flatMap(List::stream)
                .toList();
    }

    /** Collects the description; each setting is checked at once, the whole in {@link #build}. */
    public static final class Builder {

        private final Bucket bucket;
        private final Air room;
        private final IceWaterBath.Builder plain;
        private double iceKg = Double.NaN;
        private double waterKg = Double.NaN;
        private @Nullable Double saltKg;
        private double solidFraction = IceWaterBath.PACK_SOLID_FRACTION.value();
        private double dissolvingS = DISSOLVING_TIME.value();
        private SaltEffect effect = SaltEffect.MIXED;

        private Builder(Bucket bucket, Air room) {
            this.bucket = Objects.requireNonNull(bucket, "bucket");
            this.room = Objects.requireNonNull(room, "room");
            this.plain = IceWaterBath.in(bucket, room);
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
            plain.ice(mass, blockSide, temperature);
            iceKg = SiValues.massKg(mass, "mass of ice");
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
         * The water in which the salt begins to dissolve.
         *
         * @param mass mass, at least a tenth of the ice
         * @param temperature temperature at the start, 0 °C to 40 °C
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
         */
        public Builder water(Quantity<Mass> mass, Quantity<Temperature> temperature) {
            SiValues.temperatureK(temperature, "temperature of the bath water", ZERO_CELSIUS_K, WARMEST_WATER_K);
            plain.water(mass, temperature);
            waterKg = SiValues.massKg(mass, "mass of bath water");
            return this;
        }

        /**
         * The salt, put in at the temperature of the water.
         *
         * @param mass mass, 0 to twice the ice
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the mass is outside its range
         */
        public Builder salt(Quantity<Mass> mass) {
            saltKg = SiValues.massKg(mass, "mass of salt", 0, MOST_KG);
            return this;
        }

        /**
         * What becomes of the salt; mixed unless said otherwise.
         *
         * @param becomes the limit to predict
         * @return this builder
         */
        public Builder effect(SaltEffect becomes) {
            effect = Objects.requireNonNull(becomes, "effect of the salt");
            return this;
        }

        /**
         * How the brine is moved along vessels and ice; still unless said otherwise. Whether the salt is mixed in is a matter of
         * its own.
         *
         * @param agitation the agitation
         * @return this builder
         */
        public Builder agitation(Agitation agitation) {
            plain.agitation(agitation);
            return this;
        }

        /**
         * How densely the ice is packed; {@link IceWaterBath#PACK_SOLID_FRACTION} unless said otherwise.
         *
         * @param fraction part of the pack's volume that is ice, 0.2 to 0.9
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the fraction is outside its range
         */
        public Builder solidFraction(double fraction) {
            plain.solidFraction(fraction);
            solidFraction = fraction;
            return this;
        }

        /**
         * How fast the salt dissolves; {@link #DISSOLVING_TIME} unless said otherwise.
         *
         * @param timeConstant time in which it dissolves to a third in plenty of water, 5 s to 10 h; coarse salt takes several
         *     times as long as table salt
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the time is outside its range
         */
        public Builder dissolvingOver(Duration timeConstant) {
            dissolvingS = DISSOLVING.require(timeConstant.toMillis() / 1000.0, OWN);
            return this;
        }

        /**
         * Checks the whole and makes the bath.
         *
         * @return the bath
         * @throws IllegalStateException if ice, water or salt was not given
         * @throws org.beveragethermal.materials.units.OutOfRangeException if there is too little water or too much salt, ice,
         *     water and salt do not fit into the bucket, or the room is colder than −21.1 °C
         */
        public SaltedIce build() {
            Double mass = saltKg;
            if (mass == null) {
                throw new IllegalStateException("a bath of salted ice needs salt: call salt(…)");
            }
            SaltedIce bath = new SaltedIce(plain.buildThatMayFreeze(), room, mass, dissolvingS, effect);
            bath.requireLiquid();
            new ValidityRange("temperature of the room of salted ice", Brine.EUTECTIC_K, HOTTEST_ROOM_K, "K")
                    .require(room.coldestK(), "salt that freezes out with the ice is not described");
            new ValidityRange("mass of salt", 0, MOST_SALT_PER_ICE * iceKg, "kg")
                    .require(mass, "at most twice the ice");
            double volume = PileGeometry.volumeM3(
                    iceKg, waterKg + mass, liquidDensity(bath.meanFraction()), solidFraction, true);
            new ValidityRange("volume of salted ice", 0, bucket.volumeM3(), "m³")
                    .require(volume, "what the bucket holds");
            return bath;
        }
    }
}
