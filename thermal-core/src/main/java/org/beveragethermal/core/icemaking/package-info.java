/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Making ice, and what it is worth.
 *
 * <p><b>Problem.</b> Ice for an evening has to be frozen before: how long does a cube, a slab, a rod or a sphere take in a given freezer,
 * how early must it begin with the trays at hand, and how full may a tray or a bag be? And how much ice does a job need by energy alone?
 *
 * <p><b>Use.</b>
 *
 * <pre>{@code
 * IceMould cell = IceMould.cell(millimetres(35), millimetres(35), millimetres(35), IceMould.Faces.TOP_AND_FLOOR)
 *         .withWall(millimetres(1.5), wattsPerMetreKelvin(0.2));
 * IceMaking making = IceMaking.of(cell, FreezerAir.at(celsius(-18)), celsius(15));
 * Duration byFormula = making.plank();
 * Duration byRun = making.predicted();
 * IceBatches early = IceBatches.of(kilograms(3), making, 24, watts(60));
 * IceFill fill = IceFill.of(litres(2), celsius(15));
 * }</pre>
 *
 * <p><b>How far to trust it.</b> Plank's formula leaves out the heat of cooling the water and the ice; the run has it in. Beside that the two
 * agree within one or two parts in a hundred, and both hang on the film outside, which in a household freezer is known to a quarter.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  IceMould + FreezerAir → IceMaking ┬→ plank(): formula
 *                                    ├→ predicted(): run of shells
 *                                    └→ IceBatches: when to begin         IceBalance, IceFill: by energy, by volume
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.icemaking;

import org.jspecify.annotations.NullMarked;
