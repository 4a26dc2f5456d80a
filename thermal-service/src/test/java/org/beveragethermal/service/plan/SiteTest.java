/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.service.plan.ReplanEvenings.START;
import static org.beveragethermal.service.plan.ReplanEvenings.after;
import static org.beveragethermal.service.plan.ReplanEvenings.refrigerator;
import static org.beveragethermal.service.plan.ReplanEvenings.room;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.junit.jupiter.api.Test;

/** What is where and when. */
class SiteTest {

    private static final Gear SOME = new Gear(
            "some",
            "some",
            GearKind.REFRIGERATOR,
            Refrigerator.at(celsius(6)),
            6,
            List.of(
                    new Window(START.minus(Duration.ofHours(1)), after(-10)),
                    new Window(after(20), after(60)),
                    new Window(after(90), after(120))));

    private static Site site(BottleOrder order) {
        return new Site(room().gear(SOME).gear(refrigerator()).bottle(order).build());
    }

    /** From the first moment of a window to its last, never over a gap; what has no windows is always there. */
    @Test
    void gearIsThereInItsWindows() {
        Site site = site(white("white", 22, "room", 200));
        assertThat(site.windowsS("some")).containsExactly(new double[] {1200, 3600}, new double[] {5400, 7200});
        assertThat(site.isThere("some", 1200, 3600)).isTrue();
        assertThat(site.isThere("some", 1199, 3600)).isFalse();
        assertThat(site.isThere("some", 1200, 3601)).isFalse();
        assertThat(site.isThere("some", 1800, 6000)).isFalse();
        assertThat(site.isThere("some", 5400, 5460)).isTrue();
        assertThat(site.isThere("some", 0, 60)).isFalse();
        assertThat(site.isThere("cold", 0, 1e6)).isTrue();
        assertThat(site.isThere("room", 0, 1e6)).isTrue();
    }

    /** What starts in gear that is there from the start may stay until it leaves; in what comes only later it cannot start. */
    @Test
    void aBottleMayStayWhereItStartsUntilThatLeaves() {
        Gear leaving = new Gear(
                "leaving",
                "leaving",
                GearKind.REFRIGERATOR,
                Refrigerator.at(celsius(6)),
                6,
                List.of(new Window(START, after(60)), new Window(after(90), after(120))));
        assertThat(limitS(leaving)).isEqualTo(3600);
        assertThatIllegalArgumentException().isThrownBy(() -> limitS(SOME)).withMessageContaining(START.toString());
        assertThat(limitS(refrigerator())).isInfinite();
    }

    private static double limitS(Gear gear) {
        BottleOrder order = white("white", 12, gear.id(), 200);
        Site site = new Site(room().gear(gear).bottle(order).build());
        return new Task(site, new FlowTables(site, List.of(order)), order).startLimitS();
    }
}
