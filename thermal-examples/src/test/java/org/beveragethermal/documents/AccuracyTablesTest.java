/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class AccuracyTablesTest {
    private static final String HEADER = "id,source,what,expected,actual,tolerance,unit,kind,passed\r\n";

    @Test
    void sourcesComeInTheOrderOfTheirFirstIds() {
        String rows = HEADER
                + "c,Table A,x,10,10.5,1,K,published,true\r\n"
                + "a,Table B,x,1..3,2.5,,1,published,true\r\n"
                + "b,Table A,x,10,8.5,1,K,published,false\r\n";

        assertThat(AccuracyTables.bySource(CheckRow.parse(rows))).isEqualTo("""
                        | Source | Kind | Checks | Worst deviation ÷ allowed | All passed |
                        |---|---|---|---|---|
                        | Table B | published | 1 | 0.50 | yes |
                        | Table A | published | 2 | 1.50 | **no** |""");
    }

    @Test
    void everyCheckHasItsLine() {
        String rows = HEADER + "a,Table A,x | y,10,10,0,1,published,true\r\n";

        assertThat(AccuracyTables.all(CheckRow.parse(rows)))
                .endsWith("\n| x \\| y | 10 ± 0 | 10 | 0.00 | Table A | yes |");
    }

    @Test
    void onlyFactsOfTheTradeAreCommonPractice() {
        String rows = HEADER
                + "a,common practice,bucket,20..25,22,,min,common practice,true\r\n"
                + "b,Table A,x,1,1,1,K,published,true\r\n";

        assertThat(AccuracyTables.commonPractice(CheckRow.parse(rows)))
                .endsWith("|---|---|---|---|\n| bucket | 20 to 25 min | 22 min | yes |");
        assertThat(AccuracyTables.commonPractice(CheckRow.parse(HEADER))).isEqualTo("None so far.");
    }

    @Test
    void rulesOfThumbStandBesideTheModel() {
        String rows = "id,what,custom_says,model_says,unit,note\r\nr,\"cooling, in air\",60,90,min,still air\r\n";

        assertThat(AccuracyTables.rulesOfThumb(RuleRow.parse(rows)))
                .endsWith("| cooling, in air | 60 min | 90 min | still air |");
    }

    @Test
    void foreignFilesAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> CheckRow.parse("a,b\r\n"));
        assertThatIllegalArgumentException().isThrownBy(() -> CheckRow.parse(""));
        assertThatIllegalArgumentException().isThrownBy(() -> CheckRow.parse(HEADER + "a,b\r\n"));
    }
}
