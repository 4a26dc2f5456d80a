/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.millimetres;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Sleeve;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What tables read between their lines is what a bottle run by itself comes to. */
class FlowTableTest {

    /** Straight lines between temperatures 8 K apart and hours two apart; our bound for what that may cost. */
    private static final double READ_K = 0.25;

    /** A day of which every hour is warmer than the last. */
    private static final Air RISING =
            Air.varying(Map.of(Duration.ZERO, celsius(10), Duration.ofHours(20), celsius(30)));

    private static final FilledVessel BOTTLE = ReplanEvenings.bottle(20);

    private final BottleOrder order = ReplanEvenings.white("white", 20, "room", 600);
    private final Site site = new Site(ReplanEvenings.room()
            .place(new Place("rising", "rising", RISING))
            .gear(ReplanEvenings.bucket())
            .gear(ReplanEvenings.refrigerator())
            .gear(new Gear("wide", "wide", GearKind.REFRIGERATOR, wide(), 1))
            .bottle(order)
            .build());

    /** Neoprene for bottles twice as large. */
    private static Sleeve wide() {
        return Sleeve.around(
                Vessels.magnum(),
                millimetres(150),
                celsius(20),
                ReplanEvenings.ROOM,
                Layer.of(Solids.neopreneFoam(), millimetres(5)));
    }

    /** By itself, with whatever time has passed on the clock of what varies. */
    private static double alone(Surroundings where, double celsius, double fromS, double lastsS) {
        return Scene.builder()
                .startingAfter(Site.duration(fromS))
                .gear("there", where)
                .vessel("bottle", BOTTLE.atTemperature(celsius(celsius)), "there")
                .build()
                .predict(Site.duration(lastsS))
                .vessel("bottle")
                .meanTemperatureK(lastsS);
    }

    @ParameterizedTest
    @CsvSource({
        // At a line, between lines; within the first hour and later; longer than six hours at once.
        "room, 5, 0, 1830",
        "room, 9, 3000, 3600",
        "room, 29, 0, 9000",
        "cold, 17.3, 0, 5000",
        "cold, 26, 500, 30000"
    })
    void whereItIsAlwaysTheSameItReadsWhatARunGives(String where, double celsius, double fromS, double lastsS) {
        assertThat(new FlowTable(site, BOTTLE, where, true).after(fromS, 273.15 + celsius, lastsS))
                .isCloseTo(alone(site.surroundings(where), celsius, fromS, lastsS), within(READ_K));
    }

    @ParameterizedTest
    @CsvSource({
        "20, 0, 3600",
        "20, 3600, 7200",
        "12.5, 7200, 3600",
        "12.5, 12000, 5400",
        "5, 20000, 21600",
        "5, 9000, 40000"
    })
    void whereAirChangesItReadsWhatARunGives(double celsius, double fromS, double lastsS) {
        assertThat(new FlowTable(site, BOTTLE, "rising", false).after(fromS, 273.15 + celsius, lastsS))
                .isCloseTo(alone(RISING, celsius, fromS, lastsS), within(READ_K));
    }

    /** A bath filled a quarter of an hour before is cold, one that has just been filled is not yet, and between it is between. */
    @Test
    void aBathIsAsColdAsItHasBeenFilledFor() {
        FlowTable bath = new FlowTable(site, BOTTLE, "bucket", true);
        double just = bath.after(0, 293.15, 600);
        double settled = bath.after(900, 293.15, 600);
        assertThat(just).isCloseTo(alone(site.surroundings("bucket"), 20, 0, 600), within(READ_K));
        double waited = Scene.builder()
                .gear("room", ReplanEvenings.ROOM)
                .gear("bath", site.surroundings("bucket"))
                .vessel("bottle", BOTTLE.atTemperature(celsius(22)), "room")
                .move("bottle", Duration.ofMinutes(15), "bath")
                .build()
                .predict(Duration.ofMinutes(25))
                .vessel("bottle")
                .meanTemperatureK(1500);
        assertThat(bath.after(900, 295.15, 600)).isCloseTo(waited, within(READ_K));
        assertThat(bath.after(7200, 293.15, 600)).isEqualTo(settled);
        assertThat(bath.after(450, 293.15, 600)).isCloseTo((just + settled) / 2, within(1e-9));
        assertThat(bath.after(300, 293.15, 600)).isCloseTo(just + (settled - just) / 3, within(1e-9));
    }

    @Test
    void noTimeChangesNothing() {
        FlowTable room = new FlowTable(site, BOTTLE, "room", true);
        assertThat(room.after(0, 280, 0)).isEqualTo(280);
        assertThat(room.after(0, 280, -60)).isEqualTo(280);
    }

    /** A sleeve that is too wide holds none, whatever its temperature; every other place does. */
    @Test
    void aBottleFitsWhereThereIsRoomForIt() {
        assertThat(new FlowTable(site, BOTTLE, "wide", true).fits()).isFalse();
        assertThat(new FlowTable(site, BOTTLE, "wide", true).after(0, 290, 600)).isEqualTo(290);
        for (String where : List.of("room", "rising", "bucket", "cold")) {
            assertThat(new FlowTable(site, BOTTLE, where, false).fits()).isTrue();
        }
    }

    /**
     * Near its freezing point, where the line below cannot be begun on, and near the temperature at which it is full to the brim,
     * where the line above cannot: the nearest lines go on, and a bottle a kelvin on is a kelvin or less on afterwards.
     */
    @Test
    void beyondTheLinesItGoesOnAsNearThem() {
        FlowTable room = new FlowTable(site, BOTTLE, "room", true);
        for (double start = 250; start < 320; start += 5) {
            double after = room.after(0, start, 1200);
            double on = room.after(0, start + 1, 1200);
            // Where it is partly ice at first, melting takes its time; elsewhere a third of a difference is gone at
            // most.
            if (start > 270) {
                assertThat(on - after).as("from %s K", start).isBetween(0.66, 1.0);
            }
            // It goes towards the 295.15 K of the room, and not past it.
            assertThat(Math.signum(after - start)).as("from %s K", start).isEqualTo(Math.signum(295.15 - start));
            assertThat(Math.abs(after - 295.15)).isLessThan(Math.abs(start - 295.15));
        }
    }

    /** Only a place whose air changes makes a difference to when a bottle comes there, and only there does the table ask. */
    @Test
    void tablesKnowWhereItIsAlwaysTheSame() {
        FlowTables tables = new FlowTables(site, List.of(order));
        Kinds.Kind kind = tables.kind(order.bottle());
        for (String where : List.of("room", "cold")) {
            FlowTables.Flow flow = tables.of(kind, where);
            assertThat(flow.after(20_000, 290, 3600)).isEqualTo(flow.after(0, 290, 3600));
        }
        FlowTables.Flow rising = tables.of(kind, "rising");
        assertThat(rising.after(20_000, 293.15, 7200))
                .isCloseTo(alone(RISING, 20, 20_000, 7200), within(READ_K))
                .isGreaterThan(rising.after(0, 293.15, 7200) + 1);
    }
}
