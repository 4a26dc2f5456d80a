/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Conducting bodies as parts of a thermal network: layers of a plane, cylindrical or spherical wall, and axisymmetric blocks.
 *
 * <p><b>Problem.</b> Glass, insulation, a sleeve or the soil round a bottle have no single temperature. They are cut into
 * finite volumes, each a node; neighbours are joined by the conductance of the two halves between their middles.
 *
 * <p><b>Use.</b> Build a {@link org.beveragethermal.core.conduction.LayerStack} or an {@link
 * org.beveragethermal.core.conduction.AxisymmetricBlock}, take its nodes and inner paths into a network, and join its surface
 * to whatever touches it:
 *
 * <pre>{@code
 * LayerStack wall = LayerStack.cylinder(1.0, 0.035)
 *         .layer("glass", 0.0035, 1.05, 2.1e6, 8)
 *         .layer("foam", 0.005, 0.045, 1.8e5, 10)
 *         .build("wall", 281.15);
 * Path outside = JunctionPath.of(
 *         "outside",
 *         wall.outerSurface(),
 *         JunctionPath.Link.of(air, "convection", HeatLaw.conductance(8 * wall.outerAreaM2())));
 * }</pre>
 *
 * <p>A {@link org.beveragethermal.core.conduction.Layer} is what one says of a layer before it has a place; vessels in scenes are
 * wrapped in such layers.
 *
 * <p><b>Accuracy.</b> Second order in the cell size: halving the cells quarters the error. {@link
 * org.beveragethermal.core.conduction.LayerStack#cellsFor} gives a number of cells for a wanted error.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  Layers (thickness, k, ρ c) → LayerStack        ┐
 *  rings and depths           → AxisymmetricBlock ┴→ nodes + inner paths + surfaces → Network
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.conduction;

import org.jspecify.annotations.NullMarked;
