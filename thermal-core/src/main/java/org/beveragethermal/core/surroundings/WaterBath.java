/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.SiValues;

/**
 * A finite bath of cold or warm water, well mixed, in a bucket in a room.
 *
 * <p>The bath warms or cools with the vessels in it and with its room (bucket wall, open surface). Evaporation is not modelled
 * yet: above about 40 °C a real bath cools faster. Water from 0.5 °C to 70 °C; mind scalding above about 50 °C. Immutable.
 */
public final class WaterBath implements Surroundings {

    private static final double COLDEST_K = 273.65;
    private static final double WARMEST_K = 343.15;
    private static final double EVAPORATION_MATTERS_K = 313.15;

    private final Bucket bucket;
    private final double volumeM3;
    private final double temperatureK;
    private final Air room;
    private final Agitation agitation;
    private final Footing footing;

    private WaterBath(
            Bucket bucket, double volumeM3, double temperatureK, Air room, Agitation agitation, Footing footing) {
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
                Footing.insulating());
    }

    /**
     * The same bath, moved.
     *
     * @param newAgitation how the water is moved
     * @return a new value
     */
    public WaterBath with(Agitation newAgitation) {
        return new WaterBath(bucket, volumeM3, temperatureK, room, newAgitation, footing);
    }

    /**
     * The same bath with something else under the vessels.
     *
     * @param newFooting what they stand on; insulating unless said otherwise
     * @return a new value
     */
    public WaterBath on(Footing newFooting) {
        return new WaterBath(
                bucket, volumeM3, temperatureK, room, agitation, Objects.requireNonNull(newFooting, "footing"));
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
            return List.of(
                    BathWalls.side(id + " side wall", water, bath.bucket, level, air, null),
                    BathWalls.surface(id + " surface", water, bath.bucket, level, air, null));
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
            if (bath.temperatureK > EVAPORATION_MATTERS_K) {
                notes.add("bath " + id + ": evaporation is not modelled; a bath this warm cools faster than predicted");
            }
            return notes;
        }
    }
}
