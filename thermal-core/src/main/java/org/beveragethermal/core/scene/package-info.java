/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Vessels and gear that take part in one run, and when which vessel is moved where.
 *
 * <p><b>Problem.</b> Gear is shared: two bottles in one bucket melt the same ice, and an empty bucket goes on melting. So what
 * takes part in a run has an identity, while descriptions (a bottle, a bath) are values.
 *
 * <p><b>Use.</b>
 *
 * <pre>{@code
 * Scene scene = Scene.builder()
 *         .gear("terrace", terrace)
 *         .gear("bucket", ice)
 *         .vessel("sparkling", bottle, "terrace")
 *         .move("sparkling", Duration.ofMinutes(20), "bucket")
 *         .build();
 * ScenePrediction run = scene.predict(Duration.ofHours(2));
 * Prediction sparkling = run.vessel("sparkling");
 * }</pre>
 *
 * <p>For a single vessel there is a short form, {@link org.beveragethermal.core.scene.Lumped}: a list of exposures;
 * {@link org.beveragethermal.core.scene.Layered} is the same for layered contents.
 *
 * <p><b>Tending a bath.</b> Ice and water may be added to a bath of ice and water in the course of a run, water poured off, and the bath
 * stirred: each is a change of state at a moment that mixes the bath's water. The ledger has an account of the enthalpy that it brings
 * or takes; more than the bucket holds runs off.
 *
 * <pre>{@code
 * Scene evening = Scene.builder()
 *         .gear("terrace", terrace)
 *         .gear("bucket", ice)
 *         .vessel("sparkling", bottle, "bucket")
 *         .stir("bucket", Duration.ofMinutes(10))
 *         .pourOff("bucket", Duration.ofMinutes(40), kilograms(1))
 *         .topUpIce("bucket", Duration.ofMinutes(40), kilograms(1), celsius(-8))
 *         .build();
 * }</pre>
 *
 * <p><b>Depth.</b> A vessel that is to be immersed deeper than the water stands, with all vessels that are in it then, is refused; where
 * the water falls later, because another vessel is taken out or water is poured off, the prediction says so and the vessel stands on
 * the floor.
 *
 * <p><b>Lumped vessels.</b> Contents are one node at their mean temperature; the wall is one node per band, with bands divided
 * at every waterline that occurs in the run. A vessel that is only partly immersed stratifies, and one node cannot show that:
 * the prediction then carries a note.
 *
 * <p><b>Layered vessels.</b> Axial contents are slices along the height and stratify; radial contents are shells about the axis,
 * at rest, and only conduct. As the resistance inside vanishes beside that outside, all descriptions give one curve. {@link
 * org.beveragethermal.core.scene.Comparison} runs all of them and {@link org.beveragethermal.core.prediction.ModelAdvice} says, from Biot
 * numbers and a filling-box number, which is warranted.
 *
 * <p><b>Freezing.</b> A {@link org.beveragethermal.materials.liquid.Beverage} freezes and thaws in every description, at its
 * liquidus, slice by slice or shell by shell. Ice stays in the part where it forms, spread evenly. The unfrozen drink is taken to
 * flow as if all of it were liquid of its temperature, and mixing and turning over share out enthalpy, which conserves energy; that
 * ice rises, that slush hardly flows and that ice conducts better than water is left out, as is supercooling. The prediction
 * notes when and where freezing begins; {@code Prediction.iceFraction} tells how much is ice.
 *
 * <p><b>Pieces in the drink.</b> {@link org.beveragethermal.core.scene.Scene.Builder#addToDrink} puts ice, stones, steel or sealed pieces into
 * lumped contents at a time. They are nodes from the start on, at the temperature they start with, and joined to the drink from then on.
 * Ice melts at a surface between 0 °C and the drink's freezing point; its water joins the drink, so that the prediction tells how much
 * water it took up and how strong it still is. What would make the vessel overflow is refused.
 *
 * <pre>{@code
 * Scene glass = Scene.builder()
 *         .gear("terrace", terrace)
 *         .vessel("glass", tumbler, "terrace")
 *         .addToDrink("glass", Duration.ofMinutes(1), Insert.ice(grams(40), millimetres(25), celsius(-10)))
 *         .build();
 * double water = glass.predict(Duration.ofMinutes(20)).vessel("glass").waterAddedKg(600);
 * }</pre>
 *
 * <p><b>Forgotten in a bath.</b> {@link org.beveragethermal.core.scene.BathGuard} finds how warm a bath may be at the start so that a drink
 * never passes a limit in it; {@code Prediction.timeInRange} tells when a drink that is left must be taken out.
 *
 * <p><b>Tending.</b> Ice and water are added to baths, water is poured off and baths are stirred at stated times: {@code topUpIce}, {@code
 * topUpWater}, {@code pourOff} and {@code stir} of the builder. The ledger books what that brings and takes.
 *
 * <p><b>Radial contents that move a little.</b> {@link org.beveragethermal.core.scene.VesselModel#withConductivityFactor} lets
 * shells conduct better than the liquid at rest, {@link org.beveragethermal.core.scene.VesselModel#mixed} takes contents as one
 * node up to the wall.
 *
 * <p><b>Layers around the wall.</b> A label, a sleeve or foam are {@link org.beveragethermal.core.conduction.Layer}s of a {@link
 * org.beveragethermal.core.scene.VesselModel}, whatever its contents: {@code VesselModel.lumped().wrappedIn(label, foam)}. Every band
 * of wall carries them as coaxial cylinders with the contact resistances between them; the surroundings meet the area, the
 * diameter and the emissivity of the outermost one. The resistances of wall and layers are the
 * closed forms of a cylinder.
 *
 * <p><b>Ends.</b> An axial vessel passes heat through its base and its closure, and between them and the liquid through the gas of the
 * headspace: films on liquid, end and dry wall, and radiation from the liquid, which between the flat surfaces of a thin gas is more
 * than its conduction. Upright the gas lies under the closure; on its mouth under the base, and the liquid on the closure. An open
 * vessel gives its surface to the air. The gas of a headspace is dry air: evaporation in it is left out. Lumped contents lose heat through
 * their base only where the surroundings were put {@linkplain org.beveragethermal.core.surroundings.Footing on} something that lets
 * them reach it, and then through the glass of the lowest band; radial contents not at all.
 *
 * <p><b>Colours.</b> Where the sun falls on a bare wall of glass, its tint and that of the drink decide how much is taken up and where: {@code
 * VesselModel.lumped().tinted(GlassTint.GREEN, DrinkTint.DARK)}. A wall in layers is as opaque as the outermost of them.
 *
 * <p><b>The surface of a drink.</b> In an open vessel, lumped or axial, the surface of the drink convects, radiates (emissivity 0.96) and
 * evaporates, or takes up what condenses, through a film of moist air on a level disc; from warm drinks evaporation takes about as much
 * heat as all the rest. Where air has no humidity, 50 % is taken and said. The water that goes is taken from the mass of lumped contents.
 * Left out: that the rim shelters the surface and that ethanol evaporates too. By Raoult's law, with activity coefficients of 5 in wine and
 * 2.5 in a spirit of 40 % vol. and the slower diffusion of ethanol, that takes a third of the heat that its water alone would take in dry
 * air, or for the spirit about as much: up to 1 K in an hour for a glass of wine, up to 1 K in half an hour for a cocktail in a wide glass
 * (own estimate, figures from memory).
 *
 * <p><b>Pouring.</b> {@code pour}, {@code pourAll}, {@code drink} and {@code drinkEvenly} of the builder move drink from vessel to vessel
 * or out of the scene at stated times; {@code emptyVessel} adds a glass or decanter that is filled later. Drink comes over at the mean
 * temperature of what it is taken from, with its mass and its enthalpy; wetted wall, film and surface follow the level. The wall keeps its own
 * temperature: what a cold or a warm glass does to the drink follows from its mass. Volumes count at 20 °C. While a vessel is empty its
 * prediction has no temperature of a drink ({@link org.beveragethermal.core.prediction.Prediction#drinkTemperatureK}), and its wall meets the
 * air outside only. Contents are lumped and upright; one vessel takes one drink; no pieces are put into it. {@link
 * org.beveragethermal.core.scene.FallingStream} tells how little a falling stream gives to the air.
 *
 * <pre>{@code
 * Scene table = Scene.builder()
 *         .gear("terrace", terrace)
 *         .vessel("bottle", bottle, "terrace")
 *         .emptyVessel("glass", Vessels.tastingGlass(), celsius(24), "terrace")
 *         .pour("bottle", Duration.ofMinutes(25), millilitres(100), "glass")
 *         .drinkEvenly("glass", Duration.ofMinutes(26), Duration.ofMinutes(40), millilitres(20))
 *         .build();
 * ScenePrediction run = table.predict(Duration.ofHours(1));
 * double left = run.drinkKg("glass", Duration.ofMinutes(45));
 * }</pre>
 *
 * <p>Hot drinks scald, and crack cold glasses: predictions say so. Serve by the rules of the place.
 *
 * <p><b>Postures.</b> A vessel stands, stands on its closure, or lies with its axis level; its nodes stay, its connections change.
 * Turning mixes contents in slices; the wall keeps its temperatures node by node. Lying slices become level layers of their volumes,
 * so that a profile then runs from the lowest to the highest layer. A vessel in a bath needs a bucket at least as wide as
 * it is, and one that lies as it is long. Outside a lying wall has the law of a level cylinder on its largest diameter; inside, laws for upright walls are carried
 * over to the round wall by assumptions of our own. The gas of a lying vessel lies under the roof of the round wall; layers around the
 * wall keep the areas that they have when the vessel stands.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  FilledVessel → VesselModel (lumped, axial, radial) ┐
 *  Surroundings → gear with an id                     ├→ Scene → phases of a Network → solver → ScenePrediction
 *  moves, pours, ice added, at times                  ┘                                          └→ Prediction per vessel
 *  Lumped, Layered: the same for one vessel and a list of Exposures
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.scene;

import org.jspecify.annotations.NullMarked;
