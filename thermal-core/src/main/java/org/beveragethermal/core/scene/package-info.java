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
 * <p><b>Lumped vessels.</b> Contents are one node at their mean temperature; the wall is one node per band, with bands divided
 * at every waterline that occurs in the run. A vessel that is only partly immersed stratifies, and one node cannot show that:
 * the prediction then carries a note.
 *
 * <p><b>Layered vessels.</b> Axial contents are slices along the height and stratify; radial contents are shells about the axis,
 * at rest, and only conduct. As the resistance inside vanishes beside that outside, all descriptions give one curve. {@link
 * org.beveragethermal.core.scene.Comparison} runs all of them and {@link org.beveragethermal.core.scene.ModelAdvice} says, from Biot
 * numbers and a filling-box number, which is warranted.
 *
 * <p><b>Postures.</b> A vessel stands, stands on its closure, or lies with its axis level; its nodes stay, its connections change.
 * Turning mixes contents in slices; the wall keeps its temperatures node by node. Lying slices become level layers of their volumes,
 * so that a profile then runs from the lowest to the highest layer. A vessel that lies in a bath needs a bucket at least as wide as
 * it is long. Outside a lying wall has the law of a level cylinder on its largest diameter; inside, laws for upright walls are carried
 * over to the round wall by assumptions of our own.
 */
@NullMarked
package org.beveragethermal.core.scene;

import org.jspecify.annotations.NullMarked;
