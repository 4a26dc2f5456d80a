/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * How much ice a bath needs so that all vessels in it are ready in time and stay so until the end of the service.
 *
 * <p>All vessels go into the fresh bath at the start and stay in it. Asked is that each is at most as warm as the top of its range from
 * the moment it must be ready to the end, and not colder than its bottom: what is only to be cold enough is wanted from 0 °C upwards.
 * The level of the bath is given, or the mass of ice and water together, so that more ice means less water.
 *
 * <p><b>More vessels may take less ice.</b> At a given level they displace water that has to be cooled too; at a given mass they lift the
 * level of a still bath and narrow it, so that its ice reaches deeper. In a stirred bath of given mass more vessels take more ice.
 *
 * <p><b>Search.</b> More ice never makes it warmer, so the least is found by halving between 10 g and what the bucket takes, to 2 % or 10
 * g, in at most 16 runs of the whole scene. Where a full bucket is not enough because its ice is spent, ice is added when a quarter is left
 * (a half or three quarters where a vessel would be too warm before that) and as much water poured off before, as often as allowed, and the
 * last addition is cut down to what is needed: few additions, which need not be the least ice. At most 48 runs with additions.
 *
 * <p>Sun in the room falls on what stands out of the bath; on bucket and ice it is not described: keep them in the shade. Immutable.
 */
public final class IceBudget {

    private static final double ZERO_CELSIUS_K = 273.15;
    static final double LEAST_ICE_KG = 0.01;
    private static final double MOST_KG = 2000;
    private static final double COLDEST_ICE_K = 243.15;
    private static final double WARMEST_WATER_K = 333.15;
    private static final int MOST_VESSELS = 10_000;
    /** More in one bath make runs of minutes. */
    private static final int MOST_FOLLOWED = 24;

    private static final int MOST_TOP_UPS = 12;
    private static final Duration LONGEST = Duration.ofDays(2);
    /** Vessels that leave less of the bucket than this leave no bath; a judgement. */
    private static final double LEAST_FREE_PART = 0.2;
    /** The bath stands to this part of the bucket unless the drinks stand lower, so that it can be carried. */
    private static final double FILL_PART = 0.9;

    private static final String GEAR = "bucket";

    private final Builder asked;
    private final List<FilledVessel> vessels;
    private final List<Wanted> wanted;
    private final BathRoom room;

    private IceBudget(Builder builder) {
        this.asked = builder;
        this.vessels = List.copyOf(builder.vessels);
        this.wanted = List.copyOf(builder.wanted);
        this.room = Double.isNaN(builder.bathKg)
                ? BathRoom.of(builder.bucket, vessels, builder.depthM(vessels))
                : BathRoom.ofMass(builder.bucket, vessels, builder.bathKg);
    }

    /**
     * Begins a question.
     *
     * @param bucket what holds the bath
     * @param room where it stands
     * @return a builder that still wants vessels and times
     */
    public static Builder of(Bucket bucket, Air room) {
        return new Builder(bucket, room);
    }

    /** Collects a question; each setting is checked at once, the whole in {@link #build}. */
    public static final class Builder {

        private final Bucket bucket;
        private final Air air;
        private final List<FilledVessel> vessels = new ArrayList<>();
        private final List<Wanted> wanted = new ArrayList<>();
        private Duration ready = Duration.ZERO;
        private Duration end = Duration.ZERO;
        private Duration origin = Duration.ZERO;
        private IceBlock shape = IceBlock.cube(Measures.millimetres(25));
        private double iceK = ZERO_CELSIUS_K - 10;
        private double waterK = ZERO_CELSIUS_K + 15;
        private double levelM = Double.NaN;
        private double bathKg = Double.NaN;
        private double atHandKg = MOST_KG;
        private Agitation agitation = Agitation.STILL;
        private VesselModel model = VesselModel.lumped();
        private NetworkSolver solver = NetworkSolver.standard().withToleranceK(0.02);
        private int topUps = 3;
        private Optional<Ensemble> ensemble = Optional.empty();

        private Builder(Bucket bucket, Air air) {
            this.bucket = Objects.requireNonNull(bucket, "bucket");
            this.air = Objects.requireNonNull(air, "room");
        }

        private Builder(Builder that) {
            this(that.bucket, that.air);
            vessels.addAll(that.vessels);
            wanted.addAll(that.wanted);
            ready = that.ready;
            end = that.end;
            origin = that.origin;
            shape = that.shape;
            iceK = that.iceK;
            waterK = that.waterK;
            levelM = that.levelM;
            bathKg = that.bathKg;
            atHandKg = that.atHandKg;
            agitation = that.agitation;
            model = that.model;
            solver = that.solver;
            topUps = that.topUps;
            ensemble = that.ensemble;
        }

        /**
         * Adds equal vessels that stand in the bath.
         *
         * @param vessel the vessel with its contents at their temperature at the start
         * @param count how many, 1 to 10,000 of all kinds together; more than 24 in one bath are answered without a run
         * @param range in which they are wanted; from 0 °C where they are only to be cold enough
         * @return this builder
         * @throws IllegalArgumentException if the count is outside its range
         */
        public Builder vessels(FilledVessel vessel, int count, Wanted range) {
            Objects.requireNonNull(vessel, "vessel");
            Objects.requireNonNull(range, "range");
            if (count < 1 || count > MOST_VESSELS - vessels.size()) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "number of vessels %d, beside %d: expected at least 1, and %d in all at most",
                        count,
                        vessels.size(),
                        MOST_VESSELS));
            }
            for (int i = 0; i < count; i++) {
                vessels.add(vessel);
                wanted.add(range);
            }
            return this;
        }

        /**
         * When the vessels must be ready, and until when they must stay so.
         *
         * @param newReady time since the bath is made, > 0
         * @param newEnd end of the service, not before, at most 2 days
         * @return this builder
         * @throws IllegalArgumentException if a time is outside its range
         */
        public Builder from(Duration newReady, Duration newEnd) {
            if (newReady.isNegative()
                    || newReady.isZero()
                    || newEnd.compareTo(newReady) < 0
                    || newEnd.compareTo(LONGEST) > 0) {
                throw new IllegalArgumentException("ready after " + newReady + ", until " + newEnd
                        + ": expected more than nothing, an end that is not before it, and at most " + LONGEST);
            }
            ready = newReady;
            end = newEnd;
            return this;
        }

        /**
         * When the bath is made on the clock of a room whose temperature or sun changes.
         *
         * @param newOrigin time on that clock, ≥ 0; 0 unless said otherwise
         * @return this builder
         * @throws IllegalArgumentException if the time is negative
         */
        public Builder startingAfter(Duration newOrigin) {
            if (newOrigin.isNegative()) {
                throw new IllegalArgumentException("start after " + newOrigin + ": expected at least 0");
            }
            origin = newOrigin;
            return this;
        }

        /**
         * The ice.
         *
         * @param newShape shape of its blocks; cubes of 25 mm unless said otherwise
         * @param temperature its temperature, −30 °C to 0 °C; −10 °C unless said otherwise
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
         */
        public Builder blocks(IceBlock newShape, Quantity<Temperature> temperature) {
            shape = Objects.requireNonNull(newShape, "shape of a block");
            iceK = SiValues.temperatureK(temperature, "ice temperature", COLDEST_ICE_K, ZERO_CELSIUS_K);
            return this;
        }

        /**
         * How much ice there is; no limit unless said otherwise.
         *
         * @param mass 0 to 2000 kg
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the mass is outside its range
         */
        public Builder iceAtHand(Quantity<Mass> mass) {
            atHandKg = SiValues.massKg(mass, "mass of ice at hand", 0, MOST_KG);
            return this;
        }

        /**
         * The water.
         *
         * @param temperature its temperature, 0 °C to 60 °C; 15 °C unless said otherwise
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
         */
        public Builder waterAt(Quantity<Temperature> temperature) {
            waterK = SiValues.temperatureK(
                    temperature, "temperature of the bath water", ZERO_CELSIUS_K, WARMEST_WATER_K);
            return this;
        }

        /**
         * The level of the bath with the vessels in it; unless said otherwise that of the highest drink, at most 0.9 of the bucket.
         *
         * @param depth depth of the water, 20 mm to 0.95 of the bucket's height
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the depth is outside its range
         */
        public Builder filledTo(Quantity<Length> depth) {
            levelM = SiValues.lengthM(depth, "depth of the bath", 0.02, 0.95 * bucket.innerHeightM());
            bathKg = Double.NaN;
            return this;
        }

        /**
         * Ice and water together, in place of a level.
         *
         * @param iceAndWater 0.1 kg to 2000 kg
         * @return this builder
         * @throws org.beveragethermal.materials.units.OutOfRangeException if the mass is outside its range
         */
        public Builder holding(Quantity<Mass> iceAndWater) {
            bathKg = SiValues.massKg(iceAndWater, "mass of ice and water", 0.1, MOST_KG);
            levelM = Double.NaN;
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
         * How finely the contents of the vessels are described; lumped unless said otherwise.
         *
         * @param newModel the description
         * @return this builder
         */
        public Builder describedAs(VesselModel newModel) {
            model = Objects.requireNonNull(newModel, "model");
            return this;
        }

        /**
         * How often ice may be added.
         *
         * @param most 0 to 12; 3 unless said otherwise
         * @return this builder
         * @throws IllegalArgumentException if the number is outside its range
         */
        public Builder topUps(int most) {
            if (most < 0 || most > MOST_TOP_UPS) {
                throw new IllegalArgumentException("additions of ice " + most + ": expected 0 to " + MOST_TOP_UPS);
            }
            topUps = most;
            return this;
        }

        /**
         * Asks for the margins too, at the start and of each addition: each draw of the laws' scatter costs up to nine runs, and up to ten more
         * for each addition.
         *
         * @param newEnsemble how many draws, under which seed; at least 20 for 95 %
         * @return this builder
         */
        public Builder withMargin(Ensemble newEnsemble) {
            ensemble = Optional.of(newEnsemble);
            return this;
        }

        /**
         * The solver of the runs.
         *
         * @param newSolver tolerance; 0.02 K unless said otherwise
         * @return this builder
         */
        public Builder solver(NetworkSolver newSolver) {
            solver = Objects.requireNonNull(newSolver, "solver");
            return this;
        }

        private double depthM(List<FilledVessel> all) {
            double highest =
                    all.stream().mapToDouble(FilledVessel::liquidHeightM).max().orElse(0);
            return Double.isNaN(levelM) ? Math.min(FILL_PART * bucket.innerHeightM(), highest) : levelM;
        }

        /**
         * Checks the whole and makes the question.
         *
         * @return the question
         * @throws IllegalArgumentException if there is no vessel, no time was said, or a block is wider than the bucket
         */
        public IceBudget build() {
            if (vessels.isEmpty()) {
                throw new IllegalArgumentException("number of vessels 0: expected at least one: call vessels(…)");
            }
            if (ready.isZero()) {
                throw new IllegalArgumentException("no time to be ready: expected one: call from(…)");
            }
            if (shape.passesM() > bucket.innerDiameterM()) {
                throw new IllegalArgumentException("blocks of ice (" + shape + ") in a bucket of "
                        + bucket.innerDiameterM() + " m: expected blocks that pass its mouth");
            }
            return new IceBudget(new Builder(this));
        }
    }

    List<FilledVessel> vessels() {
        return vessels;
    }

    List<Wanted> wanted() {
        return wanted;
    }

    double readyS() {
        return seconds(asked.ready);
    }

    Duration end() {
        return asked.end;
    }

    double endS() {
        return seconds(asked.end);
    }

    static String id(int number) {
        return "vessel " + (number + 1);
    }

    /**
     * What it takes by energy alone.
     *
     * @return the bounds
     */
    public IceEnergy energy() {
        return IceEnergy.of(
                vessels,
                wanted.stream().map(Wanted::highK).toList(),
                Math.max(0, room.bathKg()),
                asked.waterK,
                asked.iceK);
    }

    /**
     * The least ice.
     *
     * @return that and what goes with it, or why no ice does it
     */
    public IceAnswer answer() {
        double coldestK = wanted.stream().mapToDouble(Wanted::highK).min().orElseThrow();
        if (coldestK <= ZERO_CELSIUS_K) {
            return new IceAnswer.Never(
                    IceAnswer.Reason.COLDER_THAN_THE_BATH,
                    "Ice in water is not colder than 0 °C.",
                    "Salt on the ice or a freezer gets there; mind what freezes.",
                    Optional.empty(),
                    0);
        }
        boolean stand = BathRoom.stand(asked.bucket, vessels);
        if (!stand || room.freePart() < LEAST_FREE_PART || room.mostIceKg() < LEAST_ICE_KG) {
            return new IceAnswer.Never(
                    IceAnswer.Reason.BUCKET_TOO_SMALL,
                    !stand
                            ? "The vessels do not stand beside each other in the bucket."
                            : room.freePart() >= LEAST_FREE_PART
                                    ? String.format(
                                            Locale.ROOT,
                                            "Beside the vessels the bucket does not hold %.2f kg of ice and water.",
                                            room.bathKg())
                                    : String.format(
                                            Locale.ROOT,
                                            "The vessels leave %.0f %% of the bucket to ice and water.",
                                            100 * Math.max(0, room.freePart())),
                    roomFor(),
                    Optional.empty(),
                    0);
        }
        if (vessels.size() > MOST_FOLLOWED) {
            return new IceAnswer.Never(
                    IceAnswer.Reason.TOO_MANY_VESSELS,
                    String.format(
                            Locale.ROOT,
                            "%d vessels go into the bucket, but in one bath not more than %d are followed.",
                            vessels.size(),
                            MOST_FOLLOWED),
                    "Divide bath and vessels into equal parts, each in a bucket of as much less area, and ask for one of them.",
                    Optional.of(energy()),
                    0);
        }
        return new IceSearch(this).answer();
    }

    private String roomFor() {
        double depth = Double.isNaN(asked.bathKg) ? asked.depthM(vessels) : asked.bucket.innerHeightM();
        int fit = BathRoom.fit(asked.bucket, vessels, depth, LEAST_FREE_PART);
        String help = fit == 0 || fit == vessels.size()
                ? "A wider bucket or less in it would help."
                : String.format(
                        Locale.ROOT,
                        "%d of them at a time leave room for a bath: %d such buckets, one bucket %d times, or a wider one would help.",
                        fit,
                        (vessels.size() + fit - 1) / fit,
                        (vessels.size() + fit - 1) / fit);
        List<Double> highs = wanted.stream().map(Wanted::highK).toList();
        return String.format(
                Locale.ROOT,
                "%s By energy alone all drinks together take %.2f kg of ice.",
                help,
                IceEnergy.ofDrinksKg(vessels, highs, asked.iceK));
    }

    BathRoom room() {
        return room;
    }

    double atHandKg() {
        return asked.atHandKg;
    }

    int mostTopUps() {
        return asked.topUps;
    }

    IceBlock shape() {
        return asked.shape;
    }

    NetworkSolver solver() {
        return asked.solver;
    }

    Optional<Ensemble> ensemble() {
        return asked.ensemble;
    }

    /** One run of the whole scene, judged from when all must be ready to the end. */
    BathRun run(double iceKg, List<TopUp> topUps, NetworkSolver solver) {
        return run(iceKg, topUps, solver, readyS(), asked.end);
    }

    /** One run of the scene up to a time, judged from another time on. */
    BathRun run(double iceKg, List<TopUp> topUps, NetworkSolver solver, double fromS, Duration until) {
        IceWaterBath bath = IceWaterBath.in(asked.bucket, asked.air)
                .ice(Measures.kilograms(iceKg), asked.shape, Measures.kelvins(asked.iceK))
                .water(Measures.kilograms(room.bathKg() - iceKg), Measures.kelvins(asked.waterK))
                .agitation(asked.agitation)
                .build();
        Scene.Builder scene = Scene.builder().startingAfter(asked.origin).gear(GEAR, bath);
        for (int i = 0; i < vessels.size(); i++) {
            scene.vessel(id(i), vessels.get(i), GEAR, asked.model, Posture.UPRIGHT);
        }
        for (TopUp topUp : topUps) {
            scene.pourOff(GEAR, topUp.after(), Measures.kilograms(topUp.pourOffKg()))
                    .topUpIce(GEAR, topUp.after(), Measures.kilograms(topUp.iceKg()), Measures.kelvins(asked.iceK));
        }
        return new BathRun(scene.build().predict(until, solver), this, fromS, seconds(until));
    }

    static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }
}
