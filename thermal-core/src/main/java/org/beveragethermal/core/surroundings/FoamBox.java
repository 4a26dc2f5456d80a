/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.Locale;
import java.util.Objects;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;
import org.jspecify.annotations.Nullable;

/**
 * A closed box of foam, cardboard or wood for many vessels, in other surroundings, with or without cold packs.
 *
 * <p><b>What passes heat.</b> The air inside is one store that all vessels share; they exchange heat with it by free convection and with
 * the walls by radiation. The air passes heat to the walls by free convection (upright plate of the box's height, Churchill and Chu, on
 * all faces). Through the walls heat is conducted as through the faces with edges and corners: conductance over conductivity A/δ + 0.54
 * per metre of edge + 0.15 δ per corner (I. Langmuir, E. Q. Adams and G. S. Meikle 1913; as in Incropera, table 4.1, from memory). Walls
 * store heat. Outside, sides and lid are walls in the surroundings; the floor is one only if they reach it: {@link Footing#open()} or a
 * contact.
 *
 * <p><b>Packs</b> hang or lie free in the box: both their faces are in its air and radiate to its walls. For packs against a bottle see
 * {@link GelPacks}.
 *
 * <p><b>What is simplified.</b> All vessels see the same air and the same walls: one in a corner, near two cold or warm walls, follows
 * the outside sooner, one in the middle later. The lid is shut all the time, and tight; nothing condenses inside; vessels stand on a
 * floor that passes nothing to them.
 *
 * <p><b>Cautions.</b> A box without packs does not cool. Drinks below their freezing point outside for long freeze and may burst closed
 * vessels, box or not.
 *
 * <pre>{@code
 * FoamBox box = FoamBox.of(millimetres(500), millimetres(350), millimetres(330),
 *         Layer.of(Solids.expandedPolystyrene(), millimetres(30)), celsius(16), van);
 * }</pre>
 *
 * <p>Immutable.
 *
 * <p>Theory manual, equation (4.8).
 */
public final class FoamBox implements Surroundings {

    private static final ValidityRange START = new ValidityRange("temperature of a box", 233.15, 353.15, "K");
    private static final double SMALLEST_M = 0.05;
    private static final double LARGEST_M = 2;

    private final double lengthM;
    private final double widthM;
    private final double heightM;
    private final Layer wall;
    private final double startK;
    private final Surroundings outside;
    private final @Nullable GelPacks packs;

    private FoamBox(
            double lengthM,
            double widthM,
            double heightM,
            Layer wall,
            double startK,
            Surroundings outside,
            @Nullable GelPacks packs) {
        this.lengthM = lengthM;
        this.widthM = widthM;
        this.heightM = heightM;
        this.wall = wall;
        this.startK = startK;
        this.outside = outside;
        this.packs = packs;
    }

    /**
     * A box without packs.
     *
     * @param length inner length, 50 mm to 2 m
     * @param width inner width, 50 mm to 2 m
     * @param height inner height, 50 mm to 2 m
     * @param wall its walls, all alike; a contact resistance is refused: air is inside them
     * @param temperature temperature of air and walls at the start, −40 °C to 80 °C
     * @param outside what it is in: any surroundings but a bath or a running tap
     * @return the box
     * @throws IllegalArgumentException if the surroundings are a bath or a running tap, or the wall has a contact resistance
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static FoamBox of(
            Quantity<Length> length,
            Quantity<Length> width,
            Quantity<Length> height,
            Layer wall,
            Quantity<Temperature> temperature,
            Surroundings outside) {
        if (Objects.requireNonNull(wall, "wall").contactResistance() != 0) {
            throw new IllegalArgumentException("contact resistance of the wall of a box " + wall.contactResistance()
                    + " m² K/W: expected 0, the air of the box is inside it");
        }
        return new FoamBox(
                SiValues.lengthM(length, "inner length of a box", SMALLEST_M, LARGEST_M),
                SiValues.lengthM(width, "inner width of a box", SMALLEST_M, LARGEST_M),
                SiValues.lengthM(height, "inner height of a box", SMALLEST_M, LARGEST_M),
                wall,
                SiValues.temperatureK(temperature, START.quantity(), START.low(), START.high()),
                DryGear.require("a box", outside),
                null);
    }

    /**
     * The same box with gel packs in it from the start, instead of those it had.
     *
     * @param count how many, 1 to 1000
     * @param each mass of a pack, 10 g to 20 kg
     * @param thickness how thick a pack is, 3 mm to 200 mm and no more than it is wide
     * @param temperature temperature of all packs at the start, −30 °C to 60 °C
     * @return a new value
     * @throws IllegalArgumentException if the count is outside its range, or the packs, taken as square, do not go into the box
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public FoamBox withPacks(
            int count, Quantity<Mass> each, Quantity<Length> thickness, Quantity<Temperature> temperature) {
        // The packs' own room is not used: the box is their room.
        GelPacks newPacks = GelPacks.of(count, each, thickness, temperature, Air.at(SiValues.celsiusOf(startK)));
        requireRoomFor(newPacks);
        return new FoamBox(lengthM, widthM, heightM, wall, startK, outside, newPacks);
    }

    private void requireRoomFor(GelPacks newPacks) {
        double[] sides = DoubleStream.of(lengthM, widthM, heightM).sorted().toArray();
        // A square plate needs two of the three lengths.
        if (newPacks.sideM() > sides[1] || newPacks.thicknessM() > sides[0] || volumeM3(newPacks) > innerVolumeM3()) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "packs of %.0f mm by %.0f mm by %.0f mm, %.1f L together, in a box of %.0f mm by %.0f mm by %.0f mm, %.1f L:"
                            + " expected packs that go into it",
                    1000 * newPacks.sideM(),
                    1000 * newPacks.sideM(),
                    1000 * newPacks.thicknessM(),
                    1000 * volumeM3(newPacks),
                    1000 * lengthM,
                    1000 * widthM,
                    1000 * heightM,
                    1000 * innerVolumeM3()));
        }
    }

    private static double volumeM3(GelPacks somePacks) {
        return somePacks.faceAreaM2() * somePacks.thicknessM();
    }

    /** What the packs leave of the room inside [m³]. */
    double volumeForVesselsM3() {
        return innerVolumeM3() - (packs == null ? 0 : volumeM3(packs));
    }

    @Override
    public Medium open(String id, double originS) {
        return new FoamBoxMedium(id, this, outside.open(id + " room", originS));
    }

    /**
     * Conductance of the walls by which it takes heat, per conductivity of the wall.
     *
     * @param floorPasses whether the floor is one of them
     * @return shape factor [m]: area over thickness, with edges and corners
     */
    double shapeFactorM(boolean floorPasses) {
        double thickness = wall.thicknessM();
        double lidEdges = 2 * (lengthM + widthM);
        double edges = 4 * heightM + (floorPasses ? 2 : 1) * lidEdges;
        int corners = floorPasses ? 8 : 4;
        return innerAreaM2(floorPasses) / thickness + 0.54 * edges + 0.15 * corners * thickness;
    }

    /** Inner area of the walls by which it takes heat [m²]. */
    double innerAreaM2(boolean floorPasses) {
        return 2 * (lengthM + widthM) * heightM + (floorPasses ? 2 : 1) * lengthM * widthM;
    }

    /**
     * Room inside.
     *
     * @return volume [m³]
     */
    public double innerVolumeM3() {
        return lengthM * widthM * heightM;
    }

    double outerSidesM2() {
        return outerGirthM() * outerHeightM();
    }

    double outerGirthM() {
        return 2 * (lengthM + widthM + 4 * wall.thicknessM());
    }

    double outerLidM2() {
        return (lengthM + 2 * wall.thicknessM()) * (widthM + 2 * wall.thicknessM());
    }

    double outerHeightM() {
        return heightM + 2 * wall.thicknessM();
    }

    double lengthM() {
        return Math.max(lengthM, widthM);
    }

    double heightM() {
        return heightM;
    }

    Layer wall() {
        return wall;
    }

    double startK() {
        return startK;
    }

    boolean hasPacks() {
        return packs != null;
    }

    GelPacks packs() {
        return Objects.requireNonNull(packs, "packs");
    }
}
