/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.beveragethermal.testsupport.Csv;
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
    void tablesLeftWholeStayAsTheyAre() {
        assertThat(AccuracyTables.asTheyAre(Csv.parse("A,B\r\n\"1, 2\",3 | 4\r\n")))
                .isEqualTo("| A | B |\n|---|---|\n| 1, 2 | 3 \\| 4 |");
        assertThat(AccuracyTables.asTheyAre(Csv.parse("A,B\r\n"))).isEqualTo("None so far.");
    }

    @Test
    void casesShowErrorsToAHundredthOfWhatIsAllowed() {
        String rows = HEADER
                + "a,Table A,x,10,10.0123,0.1,K,published,true\r\n"
                + "b,Table A,y,1..3,2.5,,1,published,true\r\n"
                + "c,Table A,z,0,3.3257e-17,1E-9,K,published,true\r\n"
                + "d,Table A,v,5000,5049.2,250,s,published,true\r\n";

        assertThat(AccuracyTables.cases(CheckRow.parse(rows))).isEqualTo("""
                        | Case | What | Expected | Found | Error | Allowed | Unit | Error ÷ allowed | Source |
                        |---|---|---|---|---|---|---|---|---|
                        | a | x | 10 | 10.012 | 0.012 | ± 0.1 | K | 0.12 | Table A |
                        | b | y | 1 to 3 | 2.5 | 0.5 | ± 1 | 1 | 0.50 | Table A |
                        | c | z | 0 | 0 | 0 | ± 1E-9 | K | 0.00 | Table A |
                        | d | v | 5000 | 5049 | 49 | ± 250 | s | 0.20 | Table A |""");
    }

    @Test
    void everyOrderAndEveryPropertyHasItsLine() {
        String orders = """
                family,quantity,refined,theory,observed,lowest,highest,passed
                wall,mean,cells,2,1.99,1.9,2.1,true
                """;
        assertThat(AccuracyTables.orders(OrderRow.parse(orders)))
                .endsWith("\n| wall | mean | cells | 2 | 1.99 | 1.9 to 2.1 | yes |");

        String header = "property,class,asked,cases,held\r\n";
        String usual = header + "b holds,SomeProperties,100,100,true\r\na holds,SomeProperties,100,8,false\r\n";
        assertThat(AccuracyTables.properties(PropertyRow.parse(usual)))
                .endsWith("\n| a holds | SomeProperties | 8 | **no** |\n| b holds | SomeProperties | 100 | yes |");
        assertThat(PropertyRow.areThorough(PropertyRow.parse(usual))).isFalse();
        assertThat(PropertyRow.areThorough(PropertyRow.parse(header + "b holds,SomeProperties,1000,1000,true\r\n")))
                .isTrue();
    }

    @Test
    void foreignFilesAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> CheckRow.parse("a,b\r\n"));
        assertThatIllegalArgumentException().isThrownBy(() -> CheckRow.parse(""));
        assertThatIllegalArgumentException().isThrownBy(() -> CheckRow.parse(HEADER + "a,b\r\n"));
    }
}
