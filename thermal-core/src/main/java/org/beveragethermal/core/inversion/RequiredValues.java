/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.RunningTap;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.VolumetricFlowRate;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Ready-made questions for a value of the surroundings of one vessel. Each gives a {@link ValueSearch}; ranges that the surroundings
 * refuse are refused there, by name.
 *
 * <pre>{@code
 * ValueAnswer answer = RequiredValues.of(bottle)
 *         .refrigeratorTemperature(celsius(0), celsius(12))
 *         .temperatureAt(Duration.ofHours(3), celsius(9));
 * ValueAnswer ice = RequiredValues.of(bottle)
 *         .iceMass(kilograms(0.3), kilograms(3), mass -> IceWaterBath.of(bucket, mass, kilograms(3), terrace))
 *         .timeTo(celsius(9), Duration.ofMinutes(20));
 * ValueAnswer water = RequiredValues.of(bottle)
 *         .clothWater(grams(20), grams(150), mass -> WetWrap.cloth(millimetres(2), grams(60), mass, celsius(20), terrace))
 *         .temperatureAt(Duration.ofHours(4), celsius(19));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class RequiredValues {

    private static final double PER_MINUTE_PER_LITRE = 60_000;

    private final Runs runs;
    private final Placement placement;

    private RequiredValues(Runs runs, Placement placement) {
        this.runs = runs;
        this.placement = placement;
    }

    /**
     * Asks about an upright vessel with lumped contents.
     *
     * @param vessel the vessel with its contents at their temperature at the start
     * @return the questions
     */
    public static RequiredValues of(FilledVessel vessel) {
        return new RequiredValues(Runs.of(vessel), Placement.upright());
    }

    /**
     * The same questions with contents described otherwise.
     *
     * @param model how finely the contents are described
     * @return new questions
     */
    public RequiredValues with(VesselModel model) {
        return new RequiredValues(runs.with(model), placement);
    }

    /**
     * The same questions run by another solver.
     *
     * @param solver tolerance and multipliers
     * @return new questions
     */
    public RequiredValues with(NetworkSolver solver) {
        return new RequiredValues(runs.with(solver), placement);
    }

    /**
     * The same questions with the vessel in another posture or at another depth.
     *
     * @param newPlacement how it stands or lies
     * @return new questions
     */
    public RequiredValues placed(Placement newPlacement) {
        return new RequiredValues(runs, Objects.requireNonNull(newPlacement, "placement"));
    }

    /**
     * Any value of surroundings.
     *
     * @param asked what the value is
     * @param low lower end of the range [SI], finite
     * @param high upper end [SI], finite, above the lower
     * @param surroundings from a value to surroundings
     * @return the search
     * @throws IllegalArgumentException if the range is empty
     */
    public ValueSearch value(
            AskedValue asked, double low, double high, DoubleFunction<? extends Surroundings> surroundings) {
        Objects.requireNonNull(surroundings, "surroundings");
        return ValueSearch.of(
                asked,
                low,
                high,
                (value, horizon) ->
                        runs.run(Duration.ZERO, List.of(new Exposure(surroundings.apply(value), horizon, placement))));
    }

    /**
     * Temperature of still, dry air and of the walls around it.
     *
     * @param low lower end, −40 °C to 80 °C
     * @param high upper end, above the lower
     * @return the search
     * @throws IllegalArgumentException if the range is empty
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an end is outside the range of air
     */
    public ValueSearch airTemperature(Quantity<Temperature> low, Quantity<Temperature> high) {
        return temperature("temperature of the air", low, high, Air::at);
    }

    /**
     * Temperature of a refrigerator or freezer that holds it.
     *
     * @param low lower end, −30 °C to 20 °C
     * @param high upper end, above the lower
     * @return the search
     * @throws IllegalArgumentException if the range is empty
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an end is outside the range of refrigerators
     */
    public ValueSearch refrigeratorTemperature(Quantity<Temperature> low, Quantity<Temperature> high) {
        return temperature("refrigerator temperature", low, high, Refrigerator::at);
    }

    /**
     * Temperature at the start of a water bath, which then drifts.
     *
     * @param bath the bath; its own temperature does not matter
     * @param low lower end, 0.5 °C to 70 °C
     * @param high upper end, above the lower
     * @return the search
     * @throws IllegalArgumentException if the range is empty
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an end is outside the range of baths
     */
    public ValueSearch bathTemperature(WaterBath bath, Quantity<Temperature> low, Quantity<Temperature> high) {
        return temperature("temperature of the bath", low, high, bath::startingAt);
    }

    private ValueSearch temperature(
            String name,
            Quantity<Temperature> low,
            Quantity<Temperature> high,
            Function<Quantity<Temperature>, Surroundings> surroundings) {
        return checked(
                AskedValue.temperature(name),
                SiValues.temperatureK(low, name),
                SiValues.temperatureK(high, name),
                value -> surroundings.apply(SiValues.celsiusOf(value)));
    }

    /**
     * Mass of ice of a bath, or of anything else that is given by a mass.
     *
     * @param low lower end, ≥ 0
     * @param high upper end, above the lower
     * @param bath from a mass to the bath; refuses what its bucket does not hold
     * @return the search
     * @throws IllegalArgumentException if the range is empty
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a mass is negative or the bath refuses it
     */
    public ValueSearch iceMass(
            Quantity<Mass> low, Quantity<Mass> high, Function<Quantity<Mass>, ? extends Surroundings> bath) {
        return checked(
                AskedValue.of("mass of ice", "kg"),
                SiValues.massKg(low, "mass of ice"),
                SiValues.massKg(high, "mass of ice"),
                value -> bath.apply(Measures.kilograms(value)));
    }

    /**
     * Side of the blocks of ice in a bath.
     *
     * @param low lower end, > 0
     * @param high upper end, above the lower
     * @param bath from a side to the bath
     * @return the search
     * @throws IllegalArgumentException if the range is empty
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a side is not positive or the bath refuses it
     */
    public ValueSearch blockSide(
            Quantity<Length> low, Quantity<Length> high, Function<Quantity<Length>, ? extends Surroundings> bath) {
        return checked(
                new AskedValue("side of a block of ice", "mm", 1000, 0),
                SiValues.lengthM(low, "side of a block of ice", Double.MIN_VALUE, Double.MAX_VALUE),
                SiValues.lengthM(high, "side of a block of ice", Double.MIN_VALUE, Double.MAX_VALUE),
                value -> bath.apply(Measures.metres(value)));
    }

    /**
     * Flow of a tap that runs down the vessel.
     *
     * @param waterTemperature temperature of its water
     * @param room the air around the vessel
     * @param low lower end, 0.5 L/min to 20 L/min
     * @param high upper end, above the lower
     * @return the search
     * @throws IllegalArgumentException if the range is empty
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside the range of taps
     */
    public ValueSearch tapFlow(
            Quantity<Temperature> waterTemperature,
            Air room,
            Quantity<VolumetricFlowRate> low,
            Quantity<VolumetricFlowRate> high) {
        return flow("flow of the tap", low, high, flow -> RunningTap.at(waterTemperature, flow, room));
    }

    /**
     * Flow of what runs into a bath.
     *
     * @param bath the bath
     * @param inflowTemperature temperature of what runs in
     * @param low lower end, 0.5 L/min to 20 L/min
     * @param high upper end, above the lower
     * @return the search
     * @throws IllegalArgumentException if the range is empty
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside the range of baths
     */
    public ValueSearch inflow(
            WaterBath bath,
            Quantity<Temperature> inflowTemperature,
            Quantity<VolumetricFlowRate> low,
            Quantity<VolumetricFlowRate> high) {
        return flow("flow into the bath", low, high, flow -> bath.withInflow(flow, inflowTemperature));
    }

    private ValueSearch flow(
            String name,
            Quantity<VolumetricFlowRate> low,
            Quantity<VolumetricFlowRate> high,
            Function<Quantity<VolumetricFlowRate>, Surroundings> surroundings) {
        return checked(
                new AskedValue(name, "L/min", PER_MINUTE_PER_LITRE, 0),
                SiValues.volumetricFlowM3PerS(low, name, 0, Double.MAX_VALUE),
                SiValues.volumetricFlowM3PerS(high, name, 0, Double.MAX_VALUE),
                value -> surroundings.apply(Measures.litresPerMinute(value * PER_MINUTE_PER_LITRE)));
    }

    /**
     * Speed of the air.
     *
     * @param room the room or terrace; its own speed does not matter
     * @param low lower end, 0 m/s to 20 m/s
     * @param high upper end, above the lower
     * @return the search
     * @throws IllegalArgumentException if the range is empty
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a speed is outside the range of air
     */
    public ValueSearch airSpeed(Air room, Quantity<Speed> low, Quantity<Speed> high) {
        return checked(
                AskedValue.of("air speed", "m/s"),
                SiValues.speedMPerS(low, "air speed"),
                SiValues.speedMPerS(high, "air speed"),
                value -> room.withSpeed(Measures.metresPerSecond(value)));
    }

    /**
     * Water in a wet cloth around the vessel, such as a {@link org.beveragethermal.core.surroundings.WetWrap}. With more water a cloth stays
     * wet longer, and takes longer to cool or warm itself; while it is wet it cools towards a limit above the wet-bulb temperature of the
     * air, which no amount of water passes. A temperature at a late time therefore has an answer where a cloth with too little water has
     * dried by then; a temperature below the limit has none.
     *
     * @param low lower end of the mass of water, ≥ 0
     * @param high upper end, above the lower; what the cloth cannot hold drips off and is not in it
     * @param cloth from a mass of water to the wrap around the vessel
     * @return the search
     * @throws IllegalArgumentException if the range is empty
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a mass is negative or the wrap refuses it
     */
    public ValueSearch clothWater(
            Quantity<Mass> low, Quantity<Mass> high, Function<Quantity<Mass>, ? extends Surroundings> cloth) {
        return checked(
                new AskedValue("mass of water in the cloth", "g", 1000, 0),
                SiValues.massKg(low, "mass of water in the cloth"),
                SiValues.massKg(high, "mass of water in the cloth"),
                value -> cloth.apply(Measures.kilograms(value)));
    }

    /** Makes the surroundings of both ends once, so that a range they refuse is refused before anything is run. */
    private ValueSearch checked(
            AskedValue asked, double low, double high, DoubleFunction<? extends Surroundings> surroundings) {
        Objects.requireNonNull(surroundings.apply(low), "surroundings");
        Objects.requireNonNull(surroundings.apply(high), "surroundings");
        return value(asked, low, high, surroundings);
    }
}
