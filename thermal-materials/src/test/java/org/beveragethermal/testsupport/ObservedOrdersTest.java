/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ObservedOrdersTest {
    @TempDir
    Path directory;

    @Test
    void anOrderOutsideWhatIsAcceptedFailsAndIsRecordedAllTheSame() throws IOException {
        RowFile file = RowFile.startedIn(
                directory,
                "orders.csv",
                List.of("family", "quantity", "refined", "theory", "observed", "lowest", "highest", "passed"));

        ObservedOrders.of(() -> file, "wall", "mean", "cells").check(2, 1.9876, 1.9, 2.1);
        assertThatThrownBy(() ->
                        ObservedOrders.of(() -> file, "wall", "mean", "cells").check(2, 1.5, 1.9, 2.1))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("1.9 to 2.1");
        assertThatThrownBy(() ->
                        ObservedOrders.of(() -> file, "wall", "mean", "cells").check(2, Double.NaN, 1.9, 2.1))
                .isInstanceOf(AssertionError.class);

        List<List<String>> rows = Csv.parse(Files.readString(directory.resolve("orders.csv"), StandardCharsets.UTF_8));
        assertThat(rows.subList(1, rows.size()))
                .containsExactly(
                        List.of("wall", "mean", "cells", "2", "1.99", "1.9", "2.1", "true"),
                        List.of("wall", "mean", "cells", "2", "1.5", "1.9", "2.1", "false"),
                        List.of("wall", "mean", "cells", "2", "NaN", "1.9", "2.1", "false"));
    }

    @Test
    void anErrorThatFallsToAQuarterWithTwiceTheCellsIsOfOrderTwo() {
        assertThat(ObservedOrders.order(4e-3, 1e-3, 2)).isCloseTo(2, within(1e-12));
        assertThat(ObservedOrders.order(27, 1, 3)).isCloseTo(3, within(1e-12));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> ObservedOrders.of(" ", "mean", "cells"));
        RowFile file = RowFile.startedIn(directory, "rows.csv", List.of("a", "b"));
        assertThatIllegalArgumentException().isThrownBy(() -> file.add(List.of("only one")));
    }

    @Test
    void namesOfMethodsBecomeSentences() {
        assertThat(PropertyRuns.words("ledgerCloses")).isEqualTo("ledger closes");
        assertThat(PropertyRuns.words("lessHeatIsNeverWarmer")).isEqualTo("less heat is never warmer");
    }
}
