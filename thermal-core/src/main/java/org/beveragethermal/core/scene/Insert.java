/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.correlation.Sphere;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.SensibleStore;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.store.LatentConduction;
import org.beveragethermal.core.store.LatentStore;
import org.beveragethermal.core.store.MeltingBlocks;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.solid.LatentSolid;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.units.SiValues;

/**
 * Something cold, or warm, that is put into a drink: ice that melts into it, or pieces that stay what they are, such as stones, steel
 * balls, sealed balls of gel, or a frozen rod in a decanter. See {@link Scene.Builder#addToDrink}.
 *
 * <p><b>What passes heat.</b> The film of a plate as high as a piece (Churchill and Chu, free convection) over its whole surface, then
 * conduction from the surface to the piece's mean temperature in the slowest mode of its shape. Ice melts as {@link
 * org.beveragethermal.core.store.IceInDrinkPath} says; its water joins the drink.
 *
 * <p><b>What is simplified.</b> Equal pieces of one temperature, all of their surface wetted, also of what floats and sticks out or lies on
 * the floor; the drink is one node, which pieces that float keep well mixed when they cool it, and those on the floor do not; its level
 * and its films stay those of the drink alone; shells of filled balls are left out.
 *
 * <p><b>What is not known.</b> Hardly any drink is quite still: one that was just poured, or is drunk from, exchanges up to several times
 * more, which {@link #stirred} and the factor {@link org.beveragethermal.core.surroundings.Multipliers#INSERT_FILM} show. In water and
 * soft drinks below about 10 °C little drives the film, because the densities beside the ice and in the drink lie on both sides of the
 * density maximum. How cold a drink gets before it warms again depends on it less than when.
 *
 * <p><b>Cautions.</b> Only ice made of drinking water belongs in a drink, never ice in which a bucket or salt has stood. Pieces straight
 * from a freezer freeze skin and lips that touch them; heavy ones break glasses, and very cold ones in hot drinks, or hot ones, may
 * crack them. A sealed piece that leaks spoils the drink.
 *
 * <p>Immutable.
 */
public final class Insert {

    private static final int MOST_PIECES = 1000;
    private static final double SMALLEST_M = 0.003;
    private static final double LARGEST_M = 0.3;
    private static final double LEAST_ICE_KG = 1e-4;
    private static final double MOST_ICE_KG = 100;
    private static final double COLDEST_ICE_K = 243.15;
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double WATER_DENSITY = Water.liquid().density(293.15);
    /** Slowest modes of ball and cylinder: first zeros, π and that of the Bessel function J₀ (closed forms). */
    private static final double MODE_OF_BALL = Math.PI;

    private static final double MODE_OF_CYLINDER = 2.404826;

    /** Empty for ice. */
    private final Optional<Filling> filling;

    private final Shape shape;
    private final double count;
    private final double temperatureK;
    private final double speedMPerS;

    /** What a piece that does not melt into the drink is made of. */
    sealed interface Filling {
        /** Density [kg/m³]. */
        double density();

        /** From enthalpy to temperature. */
        Store store(double massKg);

        /** From the mean of the pieces (giving side) to their surface, whose conductance over conductivity is given. */
        HeatLaw inside(double shapeM);

        /** A solid that stays what it is. */
        record Inert(Solid solid) implements Filling {
            @Override
            public double density() {
                return solid.density().value();
            }

            @Override
            public Store store(double massKg) {
                return new SensibleStore(massKg * solid.specificHeatCapacity().value());
            }

            @Override
            public HeatLaw inside(double shapeM) {
                return HeatLaw.conductance(shapeM * solid.thermalConductivity().value());
            }
        }

        /** Sealed in: melts and freezes in its shell. */
        record Sealed(LatentSolid solid) implements Filling {
            @Override
            public double density() {
                return solid.frozen().density().value();
            }

            @Override
            public Store store(double massKg) {
                return LatentStore.ofMass(solid, massKg);
            }

            @Override
            public HeatLaw inside(double shapeM) {
                return LatentConduction.of(solid, shapeM, 0);
            }
        }
    }

    /**
     * The shape of a piece.
     *
     * @param volumeM3 volume [m³]
     * @param areaM2 surface [m²]
     * @param heightM length of its film [m]
     * @param widthM what must pass through the mouth [m]
     * @param insideM conductance from mean to surface over conductivity [m]
     */
    record Shape(double volumeM3, double areaM2, double heightM, double widthM, double insideM) {
        static Shape cube(double sideM) {
            double area = 6 * sideM * sideM;
            return new Shape(sideM * sideM * sideM, area, sideM, sideM, MeltingBlocks.innerConductance(1, sideM, 1));
        }

        static Shape ball(double diameterM) {
            double radius = 0.5 * diameterM;
            double volume = 4.0 / 3 * Math.PI * radius * radius * radius;
            return new Shape(
                    volume,
                    Math.PI * diameterM * diameterM,
                    diameterM,
                    diameterM,
                    MODE_OF_BALL * MODE_OF_BALL * volume / (radius * radius));
        }

        static Shape rod(double diameterM, double lengthM) {
            double radius = 0.5 * diameterM;
            double volume = Math.PI * radius * radius * lengthM;
            return new Shape(
                    volume,
                    Math.PI * diameterM * (lengthM + radius),
                    lengthM,
                    diameterM,
                    MODE_OF_CYLINDER * MODE_OF_CYLINDER * volume / (radius * radius));
        }
    }

    private Insert(Optional<Filling> filling, Shape shape, double count, double temperatureK, double speedMPerS) {
        this.filling = filling;
        this.shape = shape;
        this.count = count;
        this.temperatureK = temperatureK;
        this.speedMPerS = speedMPerS;
    }

    /**
     * Ice in cubes, which melts into the drink.
     *
     * @param mass mass of all cubes, 0.1 g to 100 kg
     * @param side side of a cube, 3 mm to 300 mm
     * @param temperature temperature at the start, −30 °C to 0 °C
     * @return the ice
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Insert ice(Quantity<Mass> mass, Quantity<Length> side, Quantity<Temperature> temperature) {
        double kg = SiValues.massKg(mass, "mass of ice in a drink", LEAST_ICE_KG, MOST_ICE_KG);
        Shape cube = Shape.cube(sizeM(side, "side of an ice cube"));
        double kelvin = SiValues.temperatureK(temperature, "temperature of ice", COLDEST_ICE_K, ZERO_CELSIUS_K);
        return new Insert(Optional.empty(), cube, kg / (Ice.density(ZERO_CELSIUS_K) * cube.volumeM3()), kelvin, 0);
    }

    /**
     * Cubes of a solid, such as stones.
     *
     * @param count how many, 1 to 1000
     * @param side side of a cube, 3 mm to 300 mm
     * @param solid what they are made of
     * @param temperature temperature at the start, in the range of the solid
     * @return the pieces
     * @throws IllegalArgumentException if the count is outside its range
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Insert cubes(int count, Quantity<Length> side, Solid solid, Quantity<Temperature> temperature) {
        return inert(count, Shape.cube(sizeM(side, "side of a cube")), solid, temperature);
    }

    /**
     * Balls of a solid, such as steel.
     *
     * @param count how many, 1 to 1000
     * @param diameter diameter of a ball, 3 mm to 300 mm
     * @param solid what they are made of
     * @param temperature temperature at the start, in the range of the solid
     * @return the pieces
     * @throws IllegalArgumentException if the count is outside its range
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Insert balls(int count, Quantity<Length> diameter, Solid solid, Quantity<Temperature> temperature) {
        return inert(count, Shape.ball(sizeM(diameter, "diameter of a ball")), solid, temperature);
    }

    /**
     * Sealed balls filled with something that melts.
     *
     * @param count how many, 1 to 1000
     * @param diameter diameter of a ball, 3 mm to 300 mm; its shell is left out
     * @param solid what they are filled with
     * @param temperature temperature at the start, in the range of the filling
     * @return the pieces
     * @throws IllegalArgumentException if the count is outside its range
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Insert sealedBalls(
            int count, Quantity<Length> diameter, LatentSolid solid, Quantity<Temperature> temperature) {
        return sealed(count, Shape.ball(sizeM(diameter, "diameter of a ball")), solid, temperature);
    }

    /**
     * Rods of a solid.
     *
     * @param count how many, 1 to 1000
     * @param diameter diameter of a rod, 3 mm to 300 mm
     * @param length length of a rod, 3 mm to 300 mm
     * @param solid what they are made of
     * @param temperature temperature at the start, in the range of the solid
     * @return the pieces
     * @throws IllegalArgumentException if the count is outside its range
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Insert rods(
            int count,
            Quantity<Length> diameter,
            Quantity<Length> length,
            Solid solid,
            Quantity<Temperature> temperature) {
        return inert(count, rod(diameter, length), solid, temperature);
    }

    /**
     * Sealed rods filled with something that melts, such as a frozen insert of a decanter.
     *
     * @param count how many, 1 to 1000
     * @param diameter diameter of a rod, 3 mm to 300 mm; its shell is left out
     * @param length length of a rod, 3 mm to 300 mm
     * @param solid what they are filled with
     * @param temperature temperature at the start, in the range of the filling
     * @return the pieces
     * @throws IllegalArgumentException if the count is outside its range
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     */
    public static Insert sealedRods(
            int count,
            Quantity<Length> diameter,
            Quantity<Length> length,
            LatentSolid solid,
            Quantity<Temperature> temperature) {
        return sealed(count, rod(diameter, length), solid, temperature);
    }

    private static Shape rod(Quantity<Length> diameter, Quantity<Length> length) {
        return Shape.rod(sizeM(diameter, "diameter of a rod"), sizeM(length, "length of a rod"));
    }

    private static double sizeM(Quantity<Length> size, String what) {
        return SiValues.lengthM(size, what, SMALLEST_M, LARGEST_M);
    }

    private static Insert inert(int count, Shape shape, Solid solid, Quantity<Temperature> temperature) {
        Objects.requireNonNull(solid, "solid");
        double kelvin = temperatureK(temperature, solid.temperatures());
        return new Insert(Optional.of(new Filling.Inert(solid)), shape, requireCount(count), kelvin, 0);
    }

    private static Insert sealed(int count, Shape shape, LatentSolid solid, Quantity<Temperature> temperature) {
        Objects.requireNonNull(solid, "solid");
        double kelvin = temperatureK(temperature, solid.temperatures());
        return new Insert(Optional.of(new Filling.Sealed(solid)), shape, requireCount(count), kelvin, 0);
    }

    private static double temperatureK(Quantity<Temperature> temperature, ValidityRange range) {
        return SiValues.temperatureK(temperature, "temperature of an insert", range.low(), range.high());
    }

    private static int requireCount(int count) {
        if (count < 1 || count > MOST_PIECES) {
            throw new IllegalArgumentException(count + " pieces: expected 1 to " + MOST_PIECES);
        }
        return count;
    }

    /**
     * The same pieces in a drink that is stirred or swirled as long as they are in it: the film of a sphere in a stream (Whitaker 1972)
     * beside that of free convection, as the fourth root of the sum of fourth powers.
     *
     * @param speed mean speed of the drink past the pieces, 0 to 1 m/s; 0 unless said otherwise. A glass that is swirled now and then
     *     has some centimetres per second, a spoon stirs at 0.1 m/s to 0.3 m/s (own estimates)
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the speed is outside its range
     */
    public Insert stirred(Quantity<Speed> speed) {
        return new Insert(
                filling, shape, count, temperatureK, SiValues.speedMPerS(speed, "speed past pieces in a drink", 0, 1));
    }

    /** From a drink to the surfaces of all pieces as large as they are at the start. */
    ConvectiveFilm film(Fluid drink) {
        return ConvectiveFilm.free(areaM2(), shape.heightM(), drink, VerticalPlate.CHURCHILL_CHU)
                .withStreamOfDrink(speedMPerS, shape.widthM(), Sphere.WHITAKER);
    }

    /**
     * All pieces together.
     *
     * @return mass [kg]
     */
    public double massKg() {
        return count * shape.volumeM3() * densityKgPerM3();
    }

    /**
     * Surface of all pieces together.
     *
     * @return area [m²]
     */
    public double areaM2() {
        return count * shape.areaM2();
    }

    private double densityKgPerM3() {
        return filling.map(Filling::density).orElse(Ice.density(ZERO_CELSIUS_K));
    }

    /**
     * By how much the drink rises: what floats displaces its own mass, what sinks its volume; ice is never less than its melt water.
     *
     * @param drinkDensity density of the drink [kg/m³]
     * @return volume [m³]
     */
    double displacedM3(double drinkDensity) {
        double floating = Math.max(drinkDensity, densityKgPerM3());
        return massKg() / (isIce() ? Math.min(WATER_DENSITY, floating) : floating);
    }

    /**
     * Whether it melts into the drink.
     *
     * @return true for ice
     */
    public boolean isIce() {
        return filling.isEmpty();
    }

    /** What it is made of; empty for ice. */
    Optional<Filling> filling() {
        return filling;
    }

    Shape shape() {
        return shape;
    }

    double count() {
        return count;
    }

    double temperatureK() {
        return temperatureK;
    }
}
