/* SPDX-License-Identifier: Apache-2.0 */
/**
 * What a vessel can be put into: air, still or moving, dry or moist, in the shade, the sun or under a clear sky; refrigerators and
 * freezers; a parked car; a closed box; a water bath; a stream or a lake; a running tap; ice and water; ice alone; salted ice; gel packs
 * laid around it; a wet wrap or a porous pot; a sleeve; an open cooler; a hand; a hole in the ground.
 *
 * <p><b>Problem.</b> Each means of cooling or warming touches some part of a vessel's wall, has a state of its own (a bath
 * warms up, ice melts) and exchanges heat with its room whether or not a vessel is in it.
 *
 * <p><b>Use.</b> Make a value with its factory, give it an id in a {@code Scene}, and put vessels in it; two vessels in
 * the same gear share it.
 *
 * <pre>{@code
 * Air terrace = Air.at(celsius(27));
 * IceWaterBath ice = IceWaterBath.in(Bucket.of(millimetres(200), millimetres(240)), terrace)
 *         .ice(kilograms(2), millimetres(25), celsius(-10))
 *         .water(kilograms(2.5), celsius(14))
 *         .build();
 * }</pre>
 *
 * <p><b>Ice.</b> {@link org.beveragethermal.core.surroundings.IceWaterBath} has ice that floats and water that stalls under it. {@link
 * org.beveragethermal.core.surroundings.BareIce} has no water but what melts: its heat passes where blocks touch, which is known to a
 * factor of two. {@link org.beveragethermal.core.surroundings.SaltedIce} is given in two limits, salt mixed in or ineffective.
 *
 * <pre>{@code
 * BareIce crushed = BareIce.crushed(bucket, kilograms(3), terrace);
 * SaltedIce cold = SaltedIce.in(bucket, terrace)
 *         .ice(kilograms(3), millimetres(25), celsius(-5))
 *         .water(kilograms(2), celsius(14))
 *         .salt(kilograms(0.5))
 *         .build();
 * SaltedIce unstirred = cold.with(SaltedIce.SaltEffect.INEFFECTIVE);
 * }</pre>
 *
 * <p><b>Gel packs.</b> {@link org.beveragethermal.core.surroundings.GelPacks} lie against a part of a vessel's side across a gap of
 * air, take heat from the room, and melt over a range of temperatures whether or not a vessel is among them. How much of the wall they
 * touch, and how closely, is known to a factor of two.
 *
 * <pre>{@code
 * GelPacks packs = GelPacks.of(3, grams(400), millimetres(25), celsius(-18), terrace)
 *         .withCover(wattsPerSquareMetreKelvin(2));
 * }</pre>
 *
 * <p><b>What goes around one vessel, in other surroundings.</b> A {@link org.beveragethermal.core.surroundings.Sleeve} that is slipped on
 * and off, cold from a freezer if it is said so; a {@link org.beveragethermal.core.surroundings.WalledCooler} with a gap of air, double-walled
 * or of one heavy wall chilled before; a {@link org.beveragethermal.core.surroundings.Hand} that holds it; {@link
 * org.beveragethermal.core.surroundings.GelPacks#wrap} for a gel wrap. Each opens the surroundings outside and hands its own outer surface
 * to them. A second vessel in one is refused, and
 * each opens surroundings of its own: two sleeves in one box are two boxes.
 *
 * <pre>{@code
 * Sleeve sleeve = Sleeve.around(bottle.vessel(), millimetres(200), celsius(22), terrace, Layer.of(Solids.neopreneFoam(), millimetres(4)));
 * WalledCooler cooler = WalledCooler.doubleWalled(
 *         millimetres(100), millimetres(210), Solids.polypropylene(), millimetres(2),
 *         wattsPerSquareMetreKelvin(6), celsius(22), terrace);
 * Hand hand = Hand.holding(squareMetres(0.008), millimetres(60), millimetres(150), terrace);
 * }</pre>
 *
 * <p>Across the gap of a cooler: ElSherbiny, Raithby and Hollands 1982, height over thickness 5 to 110, Ra &lt; 2e7, spread 10 %, with
 * eccentric bottles 25 %; the exchange of its open top is known to a factor of two; the contact of a sleeve to half of it; what a hand gives
 * to 70 %.
 *
 * <p><b>Boxes and cars.</b> A closed {@link org.beveragethermal.core.surroundings.FoamBox} has air and walls that all vessels in it share, and
 * cold packs if wanted; {@link org.beveragethermal.core.surroundings.ParkedCar} gives the air of a car parked in the sun.
 *
 * <pre>{@code
 * Air boot = ParkedCar.boot(celsius(28), Duration.ofMinutes(20));
 * FoamBox box = FoamBox.of(millimetres(400), millimetres(300), millimetres(320),
 *                 Layer.of(Solids.expandedPolystyrene(), millimetres(30)), celsius(16), boot)
 *         .withPacks(4, grams(500), millimetres(30), celsius(-18));
 * }</pre>
 *
 * <p><b>Draughts that come and go.</b> The speed of {@link org.beveragethermal.core.surroundings.Air} is constant. Gusts are two airs of a
 * scene, calm and moving, between which the vessel is moved at stated times.
 *
 * <p><b>Blocks.</b> Ice in water is in cubes, bricks, cylinders or spheres ({@link org.beveragethermal.core.store.IceBlock}), given by
 * mass or counted; bare and salted ice is in cubes. A block must pass through the mouth of its bucket.
 *
 * <pre>{@code
 * IceWaterBath rods = IceWaterBath.in(bucket, terrace)
 *         .blocks(40, IceBlock.cylinder(millimetres(28), millimetres(90)), celsius(-8))
 *         .water(kilograms(2.5), celsius(14))
 *         .build();
 * }</pre>
 *
 * <p><b>Tending.</b> In a scene ice and water may be added to a bath of ice and water, water poured off, and the bath stirred once;
 * ice may be added to bare ice, and its melt water poured off; water may be poured over wet wraps and pots: {@link org.beveragethermal.core.surroundings.Tending}.
 *
 * <p><b>What a vessel stands on.</b> Each is used {@code on} a {@link org.beveragethermal.core.surroundings.Footing}: insulating unless
 * said otherwise, open as a wire shelf, or in contact with a plate or a table top ({@link
 * org.beveragethermal.core.surroundings.Footing#tableTop}). Ends that look up, and those that look down on an open footing, have
 * the films of level discs (McAdams) where the sides have those of upright cylinders; below the waterline density decides which
 * way the water turns over, and a punt holds air.
 *
 * <p><b>Air.</b> {@link org.beveragethermal.core.surroundings.Air} is still and dry unless it is given a speed or a humidity; its temperature
 * is constant, logged or periodic, its pressure stated or that of a height. Baths stand in it and feel all of that too.
 *
 * <pre>{@code
 * Air balcony = Air.at(celsius(31)).withSpeed(metresPerSecond(2)).withRelativeHumidity(percent(65));
 * Air cellar = Air.periodic(celsius(13), kelvinDifference(3), Duration.ofDays(365), Duration.ofDays(210));
 * }</pre>
 *
 * <p><b>Outdoors.</b> {@link org.beveragethermal.core.surroundings.Sunlight}, constant, of a clear day or from a record ({@link
 * org.beveragethermal.core.surroundings.Sunlight#varying}), falls on vessels and on what goes around them by their real outline, and glass and drink share
 * it out by their colours ({@link org.beveragethermal.core.surroundings.SunOptics}); a night sky ({@link org.beveragethermal.core.surroundings.Air#withClearSky}, or
 * {@link org.beveragethermal.core.surroundings.Air#withSky} if its temperature is known) takes the place of half of what a wall sees. The
 * ledger has a mechanism "sun"; what the sky takes is radiation. Buckets and surfaces of baths feel the sky and not the sun.
 *
 * <pre>{@code
 * Air terrace = Air.at(celsius(28)).withSun(Sunlight.clearDay(degrees(45), 196, LocalTime.of(12, 30))
 *         .withShadeFrom(Duration.ofMinutes(45), percent(50)));
 * Air meadow = Air.at(celsius(12)).withRelativeHumidity(percent(80)).withClearSky();
 * }</pre>
 *
 * <table>
 * <caption>Laws of air, their ranges and spread (one standard deviation)</caption>
 * <tr><th>What</th><th>Law</th><th>Range</th><th>Spread</th></tr>
 * <tr><td>side, still</td><td>slender cylinder, Popiel 2007; lying: Churchill and Chu 1975</td><td>as each correlation states</td><td>15 %</td></tr>
 * <tr><td>side, moving</td><td>crossflow, Churchill and Bernstein 1977</td><td>0 to 20 m/s</td><td>20 %</td></tr>
 * <tr><td>ends, still</td><td>level disc, McAdams 1954; upright: Churchill and Chu 1975</td><td>as each correlation states</td><td>25 %</td></tr>
 * <tr><td>ends, moving</td><td>flat plate, Pohlhausen 1921</td><td>Re &lt; 5e5</td><td>25 %</td></tr>
 * <tr><td>both together</td><td>fourth root of the sum of fourth powers</td><td></td><td></td></tr>
 * <tr><td>sun, taken up</td><td>outline; water in five bands, Rabl and Nielsen 1975; tints remembered</td><td>beam to 1100 W/m²</td><td>15 %</td></tr>
 * <tr><td>sun, clear day</td><td>ASHRAE 1985; position by Cooper 1969</td><td>near sea level</td><td>15 %, not drawn</td></tr>
 * <tr><td>clear sky</td><td>Berdahl and Martin 1984; Swinbank 1963</td><td>dew points of −13 to 24 °C</td><td>15 %</td></tr>
 * <tr><td>condensation</td><td>analogy of heat and mass, Colburn and Hougen 1934, Lewis number 0.85</td><td>0 to 100 % relative
 * humidity</td><td>10 % beside the film</td></tr>
 * </table>
 *
 * <p><b>Moist air.</b> Walls, ends, layers around walls, buckets and the surfaces of baths are wetted below the dew point, and frosted below
 * 0 °C; the ledger has a mechanism "condensation" for it and the prediction a note that says how much water that was. It runs off; its
 * film, the frost layer and what evaporates again are left out. Open surfaces of baths, and what is wet by itself, evaporate as well; the
 * ledger has a mechanism "evaporation" for them. Where no humidity is stated nothing condenses or evaporates.
 *
 * <p><b>Wet wraps and pots.</b> A {@link org.beveragethermal.core.surroundings.WetWrap} of cloth, paper or clay and a {@link
 * org.beveragethermal.core.surroundings.PorousPot} are surroundings around one vessel in surroundings of air: they hold water that evaporates
 * with its heat, freezes in a freezer and ends. The law is that of condensation, both ways (Colburn and Hougen, Lewis number 0.85).
 *
 * <pre>{@code
 * Air breeze = Air.at(celsius(30)).withRelativeHumidity(percent(40)).withSpeed(metresPerSecond(2));
 * WetWrap towel = WetWrap.cloth(millimetres(2), grams(60), grams(150), celsius(20), breeze);
 * PorousPot pot = PorousPot.soaked(millimetres(110), millimetres(220), millimetres(10), celsius(20), breeze);
 * }</pre>
 *
 * <p><b>Appliances.</b> A {@link org.beveragethermal.core.surroundings.Refrigerator} holds, cycles or follows a log, has a fan, a door and walls of its
 * own, and can feel its load; a {@link org.beveragethermal.core.surroundings.Freezer} is one below 0 °C that warns of bursting.
 *
 * <pre>{@code
 * Refrigerator busy = Refrigerator.cycling(celsius(5), kelvinDifference(1), Duration.ofMinutes(40))
 *         .withFan(metresPerSecond(0.2))
 *         .withLoad(joulesPerKelvin(10_000), wattsPerKelvin(20))
 *         .withDoorOpenings(DoorOpenings.of(celsius(22), percent(50), Duration.ofMinutes(5), List.of(Duration.ofMinutes(30))));
 * }</pre>
 *
 * <p><b>Water that is renewed.</b> A {@link org.beveragethermal.core.surroundings.Stream} keeps its temperature whatever stands in it (crossflow,
 * spread 20 %); a {@link org.beveragethermal.core.surroundings.RunningTap} runs down a closed vessel as a film (Wilke, spread 20 %) on a stated
 * share of its wall, 0.7 ± 0.3 unless said otherwise, which is what its times depend on; a {@link
 * org.beveragethermal.core.surroundings.WaterBath} may have a tap that runs into it.
 *
 * <pre>{@code
 * Stream brook = Stream.at(celsius(9), metresPerSecond(0.4), centimetres(25), terrace);
 * RunningTap tap = RunningTap.at(celsius(12), litresPerMinute(6), kitchen).withWettedShare(percent(90));
 * WaterBath sink = WaterBath.of(bowl, litres(6), celsius(20), kitchen).withInflow(litresPerMinute(3), celsius(12));
 * }</pre>
 *
 * <p><b>Ground.</b> An {@link org.beveragethermal.core.surroundings.Earth} is a hole for one vessel in damp earth or sand. The ground
 * starts at one temperature or at that of its {@linkplain org.beveragethermal.core.surroundings.GroundTemperature waves} of the year and
 * the day; afterwards the air above warms it. How it conducts is known to a third, how it lies against the wall to a factor of two.
 *
 * <pre>{@code
 * Earth garden = Earth.hole(millimetres(110), millimetres(500), Solids.dampClay(), celsius(12), shade).coveredBy(millimetres(150));
 * Earth beach = Earth.hole(millimetres(110), millimetres(220), Soil.sand().moist(percent(5)), celsius(20), terrace);
 * }</pre>
 *
 * <p>Hot water carries cautions in the notes of a prediction: scalding, and glass that cracks. What a drink does if it is forgotten in a
 * bath is asked of {@code Prediction.timeInRange} and of {@code BathGuard} in the package of scenes.
 *
 * <p><b>How they attach.</b> A surroundings value opens a {@link org.beveragethermal.core.surroundings.Medium} for one run:
 * nodes of its own, paths to its room, and links for each patch of wall that touches it. You may write your own:
 * implement {@link org.beveragethermal.core.surroundings.Surroundings} and {@code Medium}, as the class {@code StoneTrough} of
 * thermal-examples does. The interface is unsettled and may change in the next version.
 *
 * <p><b>Not in here yet.</b> Topping up salted ice and water baths; sun on buckets, packs, the ground and the surfaces of baths.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  description (Air, IceWaterBath, WetWrap, …) → Medium of a run ┬→ nodes, boundaries of the gear
 *                         + WallPatch of each vessel             ├→ links to the outer wall (films, radiation, sun)
 *                                                                └→ notes, assumptions, Multipliers
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.surroundings;

import org.jspecify.annotations.NullMarked;
