/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.icemaking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.millimetres;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.store.IceBlock;

/** What holds for freezing times whatever the shape: larger takes longer, warmer takes longer, a run longer than Plank. */
class IceMakingProperties {

    private static IceMould mould(int shape, double mm) {
        return switch (shape) {
            case 0 -> IceMould.of(IceBlock.cube(millimetres(mm)));
            case 1 -> IceMould.of(IceBlock.cylinder(millimetres(mm), millimetres(2 * mm)));
            case 2 -> IceMould.of(IceBlock.sphere(millimetres(mm)));
            default -> IceMould.cell(millimetres(mm), millimetres(1.5 * mm), millimetres(mm), IceMould.Faces.TOP);
        };
    }

    @Property(tries = 12, seed = "11")
    void timesGrowWithSizeAndWarmth(
            @ForAll @IntRange(min = 0, max = 3) int shape,
            @ForAll @DoubleRange(min = 10, max = 120) double mm,
            @ForAll @DoubleRange(min = 1.05, max = 2) double factor,
            @ForAll @DoubleRange(min = -30, max = -5) double airC,
            @ForAll @DoubleRange(min = 0, max = 40) double waterC) {
        FreezerAir air = FreezerAir.at(celsius(airC));
        IceMaking small = IceMaking.of(mould(shape, mm), air, celsius(waterC));
        IceMaking large = IceMaking.of(mould(shape, mm * factor), air, celsius(waterC));
        assertThat(large.plank()).isGreaterThan(small.plank());
        assertThat(large.predicted()).isGreaterThan(small.predicted());
        assertThat(small.predicted().toMillis())
                .isGreaterThan((long) (0.99 * small.plank().toMillis()));
        IceMaking warmer = IceMaking.of(mould(shape, mm), air, celsius(waterC + 10));
        assertThat(warmer.predicted()).isGreaterThan(small.predicted());
    }
}
