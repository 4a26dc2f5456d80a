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
 * <p>For a single vessel there is a short form, {@link org.beveragethermal.core.scene.Lumped}: a list of exposures.
 *
 * <p><b>Lumped vessels.</b> Contents are one node at their mean temperature; the wall is one node per band, with bands divided
 * at every waterline that occurs in the run. A vessel that is only partly immersed stratifies, and one node cannot show that:
 * the prediction then carries a note.
 */
@NullMarked
package org.beveragethermal.core.scene;

import org.jspecify.annotations.NullMarked;
