/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;

/**
 * Warmer bottles, a warmer room, a longer service and, in a stirred bath, more bottles never take less ice, and no bath takes less than energy
 * alone. In a still bath one more bottle lifts the level and leaves the ice less width, so that it reaches deeper and less of the water stays
 * warm below it: that may save a few parts in a hundred, more than the bottle takes.
 */
class IceBudgetProperties {

    private static final Agitation STIRRED = new Agitation(0.02);

    /** Ice in all [kg]; infinite if none does it. */
    private static double leastKg(int bottles, double roomC, double bottleC, int lastMinutes, Agitation agitation) {
        FilledVessel bottle = Vessels.tallSlim750().filledWith(Beverage.wine(percentByVolume(11)), celsius(bottleC));
        IceAnswer answer = IceBudget.of(
                        Bucket.of(millimetres(260), millimetres(330)),
                        Air.at(celsius(roomC)).withRelativeHumidity(percent(50)))
                .vessels(bottle, bottles, Wanted.between(celsius(0), celsius(9)))
                .from(Duration.ofMinutes(50), Duration.ofMinutes(lastMinutes))
                .holding(kilograms(7))
                .agitation(agitation)
                .topUps(0)
                .build()
                .answer();
        if (answer instanceof IceAnswer.Enough enough) {
            assertThat(enough.totalKg()).isGreaterThanOrEqualTo(enough.energy().drinksKg());
            return enough.totalKg();
        }
        return Double.POSITIVE_INFINITY;
    }

    /** The search gives the upper end of what it knows to 2 % or 10 g. */
    private static void assertNotLess(double more, double less) {
        assertThat(more).isGreaterThanOrEqualTo(less - Math.max(0.01, 0.02 * less));
    }

    @Property(tries = 3, seed = "5")
    void moreToCoolAWarmerRoomAndALongerServiceTakeMore(
            @ForAll @IntRange(min = 1, max = 2) int bottles,
            @ForAll @DoubleRange(min = 18, max = 30) double roomC,
            @ForAll @DoubleRange(min = 10, max = 17) double bottleC,
            @ForAll @IntRange(min = 60, max = 150) int lastMinutes) {
        Agitation still = Agitation.STILL;
        double least = leastKg(bottles, roomC, bottleC, lastMinutes, still);
        assertThat(least).isFinite();
        assertNotLess(leastKg(bottles, roomC + 6, bottleC, lastMinutes, still), least);
        assertNotLess(leastKg(bottles, roomC, bottleC, lastMinutes + 90, still), least);
        assertNotLess(leastKg(bottles, roomC, bottleC + 3, lastMinutes, still), least);
        double stirred = leastKg(bottles, roomC, bottleC, lastMinutes, STIRRED);
        assertThat(stirred).isLessThan(least);
        assertNotLess(leastKg(bottles + 1, roomC, bottleC, lastMinutes, STIRRED), stirred);
    }
}
