/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.DocumentParts;
import org.junit.jupiter.api.Test;

/** Asks how much ice a table of bottles takes, and leaves the answers for the page of questions. Tub and room are of our own invention. */
class IceQuestionsTest {

    private static final FilledVessel WHITE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(18));
    private static final Air ROOM = Air.at(celsius(24)).withRelativeHumidity(percent(50));

    private static IceAnswer.Enough sixBottles(double sideMm) {
        return (IceAnswer.Enough) IceBudget.of(Bucket.of(millimetres(420), millimetres(300)), ROOM)
                .vessels(WHITE, 6, Wanted.between(celsius(0), celsius(9)))
                .from(Duration.ofHours(1), Duration.ofHours(3))
                .blocks(IceBlock.cube(millimetres(sideMm)), celsius(-12))
                .waterAt(celsius(15))
                .build()
                .answer();
    }

    private static List<String> row(String asked, IceAnswer.Enough answer) {
        return List.of(asked, "`IceBudget.answer`", answer.explain(), Integer.toString(answer.runs()));
    }

    @Test
    void sixBottlesForThreeHours() {
        IceAnswer.Enough small = sixBottles(25);
        IceAnswer.Enough large = sixBottles(60);
        List<List<String>> rows = new ArrayList<>();
        rows.add(row(
                "How much ice for six whites of 18 °C in a tub at 24 °C, at 9 °C or below from one hour on until three, in cubes of 25 mm?",
                small));
        rows.add(row("And in blocks of 60 mm?", large));
        for (IceAnswer.Enough answer : List.of(small, large)) {
            assertThat(answer.explain())
                    .contains("kg of ice", "by energy alone")
                    .doesNotContain("NaN");
            assertThat(answer.iceKg()).isGreaterThan(answer.energy().drinksKg());
            assertThat(answer.vessels()).hasSize(6);
        }
        DocumentParts.leaveTable(
                "questions-ice", List.of("Question", "Asked of", "Answer", "Cost, runs of the bath"), rows);
    }
}
