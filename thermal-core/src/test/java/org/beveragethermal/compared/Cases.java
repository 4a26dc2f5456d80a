/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.compared;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.degrees;
import static org.beveragethermal.materials.units.Measures.fraction;
import static org.beveragethermal.materials.units.Measures.grams;
import static org.beveragethermal.materials.units.Measures.joulesPerKelvin;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.litresPerMinute;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.squareMetres;
import static org.beveragethermal.materials.units.Measures.wattsPerKelvin;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetre;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.beveragethermal.compared.Case.Looking;
import org.beveragethermal.compared.Case.Task;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.BareIce;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.DoorOpenings;
import org.beveragethermal.core.surroundings.Earth;
import org.beveragethermal.core.surroundings.FoamBox;
import org.beveragethermal.core.surroundings.Freezer;
import org.beveragethermal.core.surroundings.GelPacks;
import org.beveragethermal.core.surroundings.Hand;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.ParkedCar;
import org.beveragethermal.core.surroundings.PorousPot;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.RunningTap;
import org.beveragethermal.core.surroundings.SaltedIce;
import org.beveragethermal.core.surroundings.Sleeve;
import org.beveragethermal.core.surroundings.SolarIrradiance;
import org.beveragethermal.core.surroundings.Stream;
import org.beveragethermal.core.surroundings.Sunlight;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WalledCooler;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.core.surroundings.WetWrap;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.Vessels;

/** The settings of the table: typical ones of our own choice, none of them measured. */
final class Cases {

    private static final Air ROOM = Air.at(celsius(22));
    private static final Refrigerator FRIDGE = Refrigerator.at(celsius(5));
    private static final Agitation STIRRED = Agitation.stirred(metresPerSecond(0.1));
    /** Wide as an ice bucket and so deep that everything is under water. */
    private static final Bucket DEEP = Bucket.of(millimetres(200), millimetres(420));

    private static final Bucket LOW = Bucket.of(millimetres(200), millimetres(240));
    private static final Bucket TUB = Bucket.of(millimetres(300), millimetres(420));

    private static final Sunlight SUN =
            Sunlight.constant(SolarIrradiance.of(wattsPerSquareMetre(800), wattsPerSquareMetre(100), degrees(50)));

    private Cases() {}

    static List<Case> all() {
        return List.of(
                warmed("air-still", Air.class, "room of 22 °C, still air", Looking.AIR, ROOM),
                warmed(
                        "air-moving",
                        Air.class,
                        "air of 22 °C moving at 2 m/s",
                        Looking.AIR,
                        ROOM.withSpeed(metresPerSecond(2))),
                warmed(
                        "air-humid",
                        Air.class,
                        "room of 22 °C, still, 80 % humidity",
                        Looking.AIR,
                        ROOM.withRelativeHumidity(percent(80))),
                cooled("air-outdoors", Air.class, "outdoors, 4 °C, 2 m/s, sea level", Looking.AIR, outdoors(0)),
                cooled("air-altitude", Air.class, "outdoors, 4 °C, 2 m/s, 2500 m up", Looking.AIR, outdoors(2500)),
                cooled(
                        "air-cellar",
                        Air.class,
                        "cellar, 12 ± 3 °C over the year, at its mean and falling",
                        Looking.AIR,
                        Air.periodic(celsius(12), kelvinDifference(3), Duration.ofDays(365), Duration.ofDays(-91))),
                warmed(
                        "sun-clear",
                        Air.class,
                        "terrace of 22 °C, still, sun of 800 W/m² at 50°; white wine in clear glass",
                        Looking.AIR,
                        ROOM.withSun(SUN)),
                warmed("sun-dark", Air.class, "the same sun; red wine in green glass", Looking.DARK, ROOM.withSun(SUN)),
                warmed("sun-label", Air.class, "the same sun; paper all round", Looking.LABELLED, ROOM.withSun(SUN)),
                warmed(
                        "sun-then-shade",
                        Air.class,
                        "the same sun, shade with half the diffuse light from minute 5; white wine in clear glass",
                        Looking.AIR,
                        ROOM.withSun(SUN.withShadeFrom(Duration.ofMinutes(5), percent(50)))),
                cooled(
                        "sky-night",
                        Air.class,
                        "clear night of 8 °C, still, 70 % humidity",
                        Looking.AIR,
                        Air.at(celsius(8)).withRelativeHumidity(percent(70)).withClearSky()),
                cooled("fridge-still", Refrigerator.class, "refrigerator, 5 °C, still air", Looking.AIR, FRIDGE),
                cooled(
                        "fridge-fan",
                        Refrigerator.class,
                        "refrigerator, 5 °C, fan 0.5 m/s",
                        Looking.AIR,
                        FRIDGE.withFan(metresPerSecond(0.5))),
                cooled(
                        "fridge-cycling",
                        Refrigerator.class,
                        "refrigerator, 5 ± 2 °C every 40 min",
                        Looking.AIR,
                        Refrigerator.cycling(celsius(5), kelvinDifference(2), Duration.ofMinutes(40))),
                cooled(
                        "fridge-loaded",
                        Refrigerator.class,
                        "refrigerator, 5 °C, that feels its load: 10 kJ/K, 2 W/K",
                        Looking.AIR,
                        FRIDGE.withLoad(joulesPerKelvin(10_000), wattsPerKelvin(2))),
                cooled(
                        "fridge-door",
                        Refrigerator.class,
                        "refrigerator, 5 °C, door opened half-way every 20 min",
                        Looking.AIR,
                        FRIDGE.withDoorOpenings(DoorOpenings.of(
                                celsius(22),
                                percent(50),
                                Duration.ofMinutes(5),
                                IntStream.range(1, 36)
                                        .mapToObj(i -> Duration.ofMinutes(20L * i))
                                        .toList()))),
                cooled("freezer", Freezer.class, "freezer, −18 °C, still air", Looking.AIR, Freezer.at(celsius(-18))),
                cooled("water-cold", WaterBath.class, "15 L of water of 8 °C, still", Looking.BATH, water(8)),
                cooled(
                        "water-cold-stirred",
                        WaterBath.class,
                        "15 L of water of 8 °C, stirred at 0.1 m/s",
                        Looking.BATH,
                        water(8).with(STIRRED)),
                cooled(
                        "water-inflow",
                        WaterBath.class,
                        "15 L of water of 8 °C, still, 2 L/min of 8 °C running in",
                        Looking.BATH,
                        water(8).withInflow(litresPerMinute(2), celsius(8))),
                warmed("water-warm", WaterBath.class, "15 L of water of 21 °C, still", Looking.BATH, water(21)),
                new Case(
                        "tap",
                        RunningTap.class,
                        "tap of 8 °C running over it, 6 L/min",
                        Task.COOL,
                        Looking.BATH,
                        doubts -> RunningTap.at(celsius(8), litresPerMinute(6), ROOM)
                                .withWettedShare(fraction(doubts.wettedShare())),
                        Case.Added.NOTHING),
                cooled(
                        "stream",
                        Stream.class,
                        "stream of 8 °C, 0.3 m/s, 0.5 m deep",
                        Looking.BATH,
                        Stream.at(celsius(8), metresPerSecond(0.3), metres(0.5), ROOM)),
                cooled(
                        "lake",
                        Stream.class,
                        "lake of 8 °C, still, 0.5 m deep",
                        Looking.BATH,
                        Stream.at(celsius(8), metresPerSecond(0), metres(0.5), ROOM)),
                iced(
                        "ice-water",
                        IceWaterBath.class,
                        "4 kg of ice of 25 mm, 4 kg of water of 10 °C, still",
                        doubts -> iceAndWater(DEEP, 4, 25, 4, Agitation.STILL, doubts)),
                iced(
                        "ice-water-stirred",
                        IceWaterBath.class,
                        "4 kg of ice of 25 mm, 4 kg of water of 10 °C, stirred at 0.1 m/s",
                        doubts -> iceAndWater(DEEP, 4, 25, 4, STIRRED, doubts)),
                iced(
                        "ice-water-neck",
                        IceWaterBath.class,
                        "2 kg of ice of 25 mm, 2.5 kg of water of 10 °C, still, neck dry",
                        doubts -> iceAndWater(LOW, 2, 25, 2.5, Agitation.STILL, doubts)),
                iced(
                        "ice-water-blocks",
                        IceWaterBath.class,
                        "4 kg of ice in blocks of 80 mm, 4 kg of water of 10 °C, still",
                        doubts -> iceAndWater(DEEP, 4, 80, 4, Agitation.STILL, doubts)),
                new Case(
                        "ice-water-added",
                        IceWaterBath.class,
                        "1 kg of ice of 25 mm, 4 kg of water of 10 °C, still, 2 kg of ice added after 5 min",
                        Task.COOL,
                        Looking.ICE,
                        doubts -> iceAndWater(DEEP, 1, 25, 4, Agitation.STILL, doubts),
                        new Case.Added(Duration.ofMinutes(5), 2)),
                alone(
                        "ice-alone",
                        "4 kg of ice of 25 mm alone, melt water gathers",
                        doubts -> alone(25, -5, doubts).build()),
                alone(
                        "ice-alone-drained",
                        "4 kg of ice of 25 mm alone, drained",
                        doubts -> alone(25, -5, doubts).drained().build()),
                alone(
                        "ice-crushed",
                        "4 kg of crushed ice of 6 mm alone",
                        doubts -> alone(6, 0, doubts).build()),
                new Case(
                        "ice-salted",
                        SaltedIce.class,
                        "3 kg of ice of 25 mm, 2.5 kg of water of 10 °C, 0.6 kg of salt mixed in",
                        Task.COOL,
                        Looking.SALT,
                        doubts -> salted(SaltedIce.SaltEffect.MIXED, doubts),
                        Case.Added.NOTHING),
                iced(
                        "ice-salted-ineffective",
                        SaltedIce.class,
                        "the same, salt on the floor",
                        doubts -> salted(SaltedIce.SaltEffect.INEFFECTIVE, doubts)),
                cooled(
                        "gel-packs",
                        GelPacks.class,
                        "4 gel packs of 400 g and 25 mm from −18 °C around it, room of 22 °C",
                        Looking.AIR,
                        GelPacks.of(4, grams(400), millimetres(25), celsius(-18), ROOM)),
                buried("earth-clay", "under 100 mm of damp clay of 12 °C, air of 22 °C", covered(Solids.dampClay())),
                buried("sand-damp", "under 100 mm of damp sand of 12 °C, air of 22 °C", covered(Solids.dampSand())),
                buried("sand-dry", "under 100 mm of dry sand of 12 °C, air of 22 °C", covered(Solids.drySand())),
                buried(
                        "sand-neck",
                        "200 mm deep in damp sand of 12 °C, the neck in air of 22 °C",
                        Earth.hole(millimetres(110), millimetres(200), Solids.dampSand(), celsius(12), ROOM)),
                cooled(
                        "wet-wrap-still",
                        WetWrap.class,
                        "cloth of 60 g with 150 g of water around it, room of 22 °C, 40 % humidity, still",
                        Looking.AIR,
                        wetTowel(ROOM.withRelativeHumidity(percent(40)))),
                cooled(
                        "wet-wrap-draught",
                        WetWrap.class,
                        "the same in a draught of 2 m/s",
                        Looking.AIR,
                        wetTowel(ROOM.withRelativeHumidity(percent(40)).withSpeed(metresPerSecond(2)))),
                cooled(
                        "wet-wrap-freezer",
                        WetWrap.class,
                        "the same in a freezer, −18 °C, 70 % humidity, still air",
                        Looking.AIR,
                        wetTowel(Freezer.of(Refrigerator.at(celsius(-18)).withRelativeHumidity(percent(70))))),
                cooled(
                        "porous-pot",
                        PorousPot.class,
                        "in a soaked pot of clay, 110 mm wide, 220 mm high, 10 mm thick, room of 22 °C, 40 % humidity, still",
                        Looking.AIR,
                        PorousPot.soaked(
                                millimetres(110),
                                millimetres(220),
                                millimetres(10),
                                celsius(22),
                                ROOM.withRelativeHumidity(percent(40)))),
                cooled(
                        "gel-wrap",
                        GelPacks.class,
                        "gel wrap of 600 g and 12 mm from −18 °C around it, room of 22 °C",
                        Looking.AIR,
                        GelPacks.wrap(grams(600), millimetres(12), celsius(-18), ROOM)),
                warmed(
                        "sleeve",
                        Sleeve.class,
                        "sleeve of 4 mm of neoprene foam up to 200 mm, room of 22 °C",
                        Looking.AIR,
                        Sleeve.around(
                                Vessels.highShouldered750(),
                                millimetres(200),
                                celsius(22),
                                ROOM,
                                Layer.of(Solids.neopreneFoam(), millimetres(4)))),
                warmed(
                        "cooler-walled",
                        WalledCooler.class,
                        "double-walled plastic cooler, 100 mm by 210 mm, room of 22 °C",
                        Looking.AIR,
                        WalledCooler.doubleWalled(
                                millimetres(100),
                                millimetres(210),
                                Solids.polypropylene(),
                                millimetres(2),
                                wattsPerSquareMetreKelvin(6),
                                celsius(22),
                                ROOM)),
                warmed(
                        "cooler-chilled",
                        WalledCooler.class,
                        "aluminium cooler, 100 mm by 210 mm, wall of 10 mm from −18 °C, room of 22 °C",
                        Looking.AIR,
                        WalledCooler.of(
                                millimetres(100),
                                millimetres(210),
                                celsius(-18),
                                ROOM,
                                Layer.of(Solids.aluminium(), millimetres(10)))),
                warmed(
                        "foam-box",
                        FoamBox.class,
                        "box of 30 mm of polystyrene foam, 20 L, alone in it, room of 22 °C",
                        Looking.AIR,
                        foamBox()),
                warmed(
                        "foam-box-packs",
                        FoamBox.class,
                        "the same with a gel pack of 250 g from −18 °C",
                        Looking.AIR,
                        foamBox().withPacks(1, grams(250), millimetres(20), celsius(-18))),
                warmed(
                        "hand",
                        Hand.class,
                        "held in a hand, 80 cm² of its wall, room of 22 °C",
                        Looking.AIR,
                        Hand.holding(squareMetres(0.008), millimetres(60), millimetres(150), ROOM)),
                warmed(
                        "car",
                        Air.class,
                        "cabin of a car just parked in the sun, 25 °C outdoors",
                        Looking.AIR,
                        ParkedCar.cabin(celsius(25), Duration.ZERO)));
    }

    private static FoamBox foamBox() {
        return FoamBox.of(
                millimetres(250),
                millimetres(250),
                millimetres(320),
                Layer.of(Solids.expandedPolystyrene(), millimetres(30)),
                celsius(22),
                ROOM);
    }

    private static Case warmed(
            String id, Class<? extends Surroundings> kind, String words, Looking looking, Surroundings gear) {
        return new Case(id, kind, words, Task.WARM, looking, doubts -> gear, Case.Added.NOTHING);
    }

    private static Case cooled(
            String id, Class<? extends Surroundings> kind, String words, Looking looking, Surroundings gear) {
        return new Case(id, kind, words, Task.COOL, looking, doubts -> gear, Case.Added.NOTHING);
    }

    private static Case iced(
            String id, Class<? extends Surroundings> kind, String words, Function<Doubts, Surroundings> gear) {
        return new Case(id, kind, words, Task.COOL, Looking.ICE, gear, Case.Added.NOTHING);
    }

    private static Case buried(String id, String words, Earth hole) {
        return new Case(id, Earth.class, words, Task.TEMPER, Looking.GROUND, doubts -> hole, Case.Added.NOTHING);
    }

    private static Earth covered(Solid earth) {
        return Earth.hole(millimetres(110), millimetres(450), earth, celsius(12), ROOM)
                .coveredBy(millimetres(100));
    }

    private static Case alone(String id, String words, Function<Doubts, Surroundings> gear) {
        return new Case(id, BareIce.class, words, Task.COOL, Looking.ALONE, gear, Case.Added.NOTHING);
    }

    private static WetWrap wetTowel(Surroundings around) {
        return WetWrap.cloth(millimetres(2.5), grams(60), grams(150), celsius(15), around);
    }

    private static Air outdoors(double heightM) {
        return Air.at(celsius(4)).withSpeed(metresPerSecond(2)).withAltitude(metres(heightM));
    }

    private static WaterBath water(double temperatureC) {
        return WaterBath.of(TUB, litres(15), celsius(temperatureC), ROOM);
    }

    private static IceWaterBath iceAndWater(
            Bucket bucket, double iceKg, double sideMm, double waterKg, Agitation agitation, Doubts doubts) {
        return IceWaterBath.in(bucket, ROOM)
                .ice(kilograms(iceKg), millimetres(sideMm), celsius(-5))
                .water(kilograms(waterKg), celsius(10))
                .agitation(agitation)
                .solidFraction(doubts.solidFraction())
                .build();
    }

    private static BareIce.Builder alone(double sideMm, double iceC, Doubts doubts) {
        BareIce.Builder estimated = BareIce.in(DEEP, ROOM)
                .ice(kilograms(4), millimetres(sideMm), celsius(iceC))
                .solidFraction(doubts.solidFraction());
        double touched = estimated
                .build()
                .contactFraction(2 * Vessels.highShouldered750().profile().maxOuterRadiusM());
        return doubts.contact() == 1
                ? estimated
                : estimated.contact(percent(100 * Math.min(1, doubts.contact() * touched)));
    }

    private static SaltedIce salted(SaltedIce.SaltEffect effect, Doubts doubts) {
        return SaltedIce.in(DEEP, ROOM)
                .ice(kilograms(3), millimetres(25), celsius(-5))
                .water(kilograms(2.5), celsius(10))
                .salt(kilograms(0.6))
                .effect(effect)
                .solidFraction(doubts.solidFraction())
                .build();
    }
}
