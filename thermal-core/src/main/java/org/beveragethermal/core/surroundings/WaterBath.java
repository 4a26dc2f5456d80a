/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.VolumetricFlowRate;
import org.jspecify.annotations.Nullable;

/**
 * A finite bath of cold or warm water, well mixed, in a bucket in a room.
 *
 * <p>The bath warms or cools with the vessels in it and with its room (bucket wall, open surface). In a
 * room whose humidity is stated its surface evaporates or takes up dew; the mass of that water is not counted. Where no humidity is
 * stated nothing evaporates, and above about 40 °C a real bath cools faster. Under a {@linkplain #withInflow tap that runs into it} it is renewed.
 *
 * <p>Water from 0.5 °C to 70 °C. Predictions carry cautions: water above about 50 °C scalds, and glass some 40 K colder than the water
 * may crack. Immutable.
 *
 * <p>Theory manual, equation (4.5).
 */
public final class WaterBath implements Surroundings {

    static final double COLDEST_K = 273.65;
    private static final double WARMEST_K = 343.15;
    private static final double EVAPORATION_MATTERS_K = 313.15;

    private final Bucket bucket;
    private final double volumeM3;
    private final double temperatureK;
    private final Air room;
    private final Agitation agitation;
    private final Footing footing;
    private final @Nullable Inflow inflow;

    /** Water that runs into the bath while as much runs off. */
    private record Inflow(double flowM3PerS, double temperatureK) {

        double kgPerS() {
            return flowM3PerS * Water.liquid().density(temperatureK);
        }
    }

    private WaterBath(
            Bucket bucket,
            double volumeM3,
            double temperatureK,
            Air room,
            Agitation agitation,
            Footing footing,
            @Nullable Inflow inflow) {
        this.inflow = inflow;
        this.bucket = bucket;
        this.volumeM3 = volumeM3;
        this.temperatureK = temperatureK;
        this.room = room;
        this.agitation = agitation;
        this.footing = footing;
    }

    /**
     * A bath of still but well-mixed water.
     *
     * @param bucket what holds it
     * @param volume volume of water, 0.1 L to the bucket's volume
     * @param temperature temperature at the start, 0.5 °C to 70 °C
     * @param room where it stands
     * @return the bath
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static WaterBath of(Bucket bucket, Quantity<Volume> volume, Quantity<Temperature> temperature, Air room) {
        return new WaterBath(
                bucket,
                SiValues.volumeM3(volume, "volume of bath water", 1e-4, bucket.volumeM3()),
                SiValues.temperatureK(temperature, "bath temperature", COLDEST_K, WARMEST_K),
                room,
                Agitation.STILL,
                Footing.insulating(),
                null);
    }

    /**
     * The same bath, moved.
     *
     * @param newAgitation how the water is moved
     * @return a new value
     */
    public WaterBath with(Agitation newAgitation) {
        return new WaterBath(bucket, volumeM3, temperatureK, room, newAgitation, footing, inflow);
    }

    /**
     * The same bath with something else under the vessels.
     *
     * @param newFooting what they stand on; insulating unless said otherwise
     * @return a new value
     */
    public WaterBath on(Footing newFooting) {
        return new WaterBath(
                bucket, volumeM3, temperatureK, room, agitation, Objects.requireNonNull(newFooting, "footing"), inflow);
    }

    /**
     * The same bath under a tap that runs into it, while as much water runs off, over the rim or through an outlet at its level.
     *
     * <p>What runs in is mixed with the bath at once, and what runs off has the bath's temperature: a real jet beside a bottle is
     * sooner felt there, and the bath follows the sooner the more of it the tap renews. The tap stirs too; say so by {@link #with(Agitation)}.
     * The ledger has a mechanism "inflow" for the enthalpy that runs in less that which runs off.
     *
     * @param flow 0.5 L/min to 20 L/min
     * @param inflowTemperature temperature of what runs in, 0.5 °C to 70 °C
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public WaterBath withInflow(Quantity<VolumetricFlowRate> flow, Quantity<Temperature> inflowTemperature) {
        return new WaterBath(
                bucket,
                volumeM3,
                temperatureK,
                room,
                agitation,
                footing,
                new Inflow(RunningTap.flowM3PerS(flow), RunningTap.temperatureK(inflowTemperature)));
    }

    /**
     * The same bath begun at another temperature.
     *
     * @param newTemperature temperature at the start, 0.5 °C to 70 °C
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public WaterBath startingAt(Quantity<Temperature> newTemperature) {
        return new WaterBath(
                bucket,
                volumeM3,
                SiValues.temperatureK(newTemperature, "bath temperature", COLDEST_K, WARMEST_K),
                room,
                agitation,
                footing,
                inflow);
    }

    /**
     * Temperature at the start.
     *
     * @return temperature [K]
     */
    public double temperatureK() {
        return temperatureK;
    }

    /**
     * Where the bath stands.
     *
     * @return the room
     */
    public Air room() {
        return room;
    }

    /**
     * Mass of water.
     *
     * @return mass [kg]
     */
    public double waterKg() {
        return Water.liquid().density(temperatureK) * volumeM3;
    }

    @Override
    public boolean isBath() {
        return true;
    }

    @Override
    public Medium open(String id, double originS) {
        return new Live(id, this, originS);
    }

    /** The bath in one run. */
    private static final class Live implements Medium {

        private final String id;
        private final WaterBath bath;
        private final Node water;
        private final AirMedium air;
        private final Fluid fluid;

        Live(String id, WaterBath bath, double originS) {
            this.id = id;
            this.bath = bath;
            Water liquid = Water.liquid();
            water = Node.of(id + " water", LiquidStore.ofMass(liquid, bath.waterKg()), bath.temperatureK);
            air = new AirMedium(id + " room", bath.room, originS);
            fluid = Fluid.of(liquid);
        }

        private FillLevel level(List<Occupant> occupants) {
            return FillLevel.of(bath.bucket, bath.volumeM3, occupants);
        }

        @Override
        public List<Node> nodes() {
            return List.of(water);
        }

        @Override
        public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
            return vessel.wettedM(level(occupants).depthM());
        }

        @Override
        public List<Path> paths(List<Occupant> occupants) {
            FillLevel level = level(occupants);
            List<Path> paths = new ArrayList<>();
            paths.add(BathWalls.side(id + " side wall", water, bath.bucket, level, air, null));
            paths.add(BathWalls.surface(id + " surface", water, bath.bucket, level, air, null));
            Inflow inflow = bath.inflow;
            if (inflow != null) {
                Boundary tap = Boundary.constant(id + " tap", inflow.temperatureK());
                paths.add(DirectPath.of(id + " inflow", tap, water, "inflow", renewal(inflow.kgPerS())));
            }
            return List.copyOf(paths);
        }

        /** Enthalpy that water brings at one temperature less that which as much water takes away at the other. */
        private static HeatLaw renewal(double kgPerS) {
            SmoothFunction enthalpy = LiquidFit.of(Water.liquid()).specificEnthalpy();
            return (fromK, toK, out) -> {
                out.watts = kgPerS * (enthalpy.at(fromK) - enthalpy.at(toK));
                out.perFromKelvin = kgPerS * enthalpy.slope(fromK);
                out.perToKelvin = -kgPerS * enthalpy.slope(toK);
            };
        }

        @Override
        public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
            double depth = level(occupants).depthM();
            Footing footing = EndFaces.footing(vessel, depth, bath.footing);
            if (EndFaces.isCovered(patch, footing)) {
                return List.of();
            }
            double wetted = vessel.wettedM(depth);
            if (patch.middleM() > wetted) {
                return air.faces(patch, vessel, occupants);
            }
            if (EndFaces.isEnd(patch)) {
                Link end = EndFaces.inWater(water, patch, vessel, footing, fluid, bath.agitation);
                return List.of(Face.whole("water", List.of(end)));
            }
            Link film = Link.of(water, "convection", BathWalls.film(patch, wetted, fluid, bath.agitation))
                    .scaledBy(Multipliers.WATER_FILM);
            return List.of(Face.whole("water", List.of(film)));
        }

        @Override
        public List<String> notes(List<Occupant> occupants) {
            List<String> notes = new ArrayList<>();
            if (level(occupants).overflows()) {
                notes.add("bath " + id + ": the vessels push water over the rim; the level is taken at the rim and the"
                        + " water that ran over is still counted");
            }
            if (bath.temperatureK > EVAPORATION_MATTERS_K && bath.room.relativeHumidity() == 0) {
                notes.add("bath " + id
                        + ": no humidity is stated, so that evaporation is left out; a bath this warm cools faster"
                        + " than predicted");
            }
            Inflow inflow = bath.inflow;
            notes.addAll(HotWater.notes(
                    "bath " + id,
                    inflow == null ? bath.temperatureK : Math.max(bath.temperatureK, inflow.temperatureK())));
            return notes;
        }
    }
}
