/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BudgetTest {
    private long now;
    private boolean cancelled;
    private final List<Long> heard = new ArrayList<>();

    private final ChoiceMonitor monitor = new ChoiceMonitor() {
        @Override
        public void progress(int level, long nodes, int openNodes) {
            assertThat(level).isEqualTo(3);
            assertThat(openNodes).isEqualTo(7);
            heard.add(nodes);
        }

        @Override
        public boolean cancelled() {
            return cancelled;
        }
    };

    private Budget budget(long nanos, long nodes) {
        return new Budget(ChoiceLimits.within(Duration.ofNanos(nanos)).withNodes(nodes), monitor, () -> now);
    }

    private static long nodes(Budget budget) {
        long nodes = 0;
        while (budget.node(3, 7)) {
            nodes++;
        }
        return nodes;
    }

    @Test
    void asManyNodesAsAllowedAndNewsOfEverySixtyFourth() {
        Budget budget = budget(1000, 200);
        assertThat(budget.reason()).isEmpty();
        assertThat(nodes(budget)).isEqualTo(200);
        assertThat(heard).containsExactly(1L, 65L, 129L, 193L);
        assertThat(budget.reason()).isEqualTo("the node limit was reached");
        assertThat(budget.spent()).isTrue();
    }

    @Test
    void theTimeLimitIsOverWhenItIsPassed() {
        now = Long.MAX_VALUE - 50;
        Budget budget = budget(100, 10);
        now += 100;
        assertThat(budget.spent()).isFalse();
        now += 1;
        assertThat(budget.spent()).isTrue();
        assertThat(budget.reason()).isEqualTo("the time limit was reached");
        now -= 50;
        assertThat(budget.spent()).as("once spent it stays spent").isTrue();
        assertThat(budget.node(3, 7)).isFalse();
    }

    @Test
    void theFirstReasonIsTheOneThatIsGiven() {
        Budget budget = budget(100, 10);
        cancelled = true;
        assertThat(budget.spent()).isTrue();
        budget.end("another");
        assertThat(budget.reason()).isEqualTo("the search was cancelled");
        Budget ended = budget(100, 10);
        ended.end("too large");
        assertThat(ended.spent()).isTrue();
        assertThat(ended.reason()).isEqualTo("too large");
    }

    @Test
    void aShareIsAPartOfTheTimeAndNodesThatAreLeft() {
        now = 500;
        Budget budget = budget(100, 30);
        now = 520;
        Budget share = budget.share(4);
        now = 540;
        assertThat(share.spent()).isFalse();
        now = 541;
        assertThat(share.spent()).isTrue();
        assertThat(budget.spent()).isFalse();
        assertThat(nodes(budget.share(4))).isEqualTo(7);
        assertThat(nodes(budget(100, 2).share(4))).as("at least one").isEqualTo(1);
    }

    @Test
    void whatAShareUsedIsTakenOutOfTheWhole() {
        Budget budget = budget(100, 30);
        Budget share = budget.share(3);
        assertThat(nodes(share)).isEqualTo(10);
        budget.charge(share);
        assertThat(nodes(budget.share(1))).isEqualTo(20);
        Budget few = budget(100, 1);
        Budget one = few.share(2);
        nodes(one);
        few.charge(one);
        few.charge(one);
        assertThat(nodes(few)).isZero();
        heard.clear();
        Budget whole = budget(100, 200);
        Budget part = whole.share(2);
        nodes(part);
        whole.charge(part);
        nodes(whole);
        assertThat(heard).as("counted on").containsExactly(1L, 65L, 129L, 193L);
    }

    @Test
    void atMostSoManyButNotMoreThanAreLeft() {
        assertThat(nodes(budget(100, 30).atMost(5))).isEqualTo(5);
        assertThat(nodes(budget(100, 30).atMost(50))).isEqualTo(30);
        Budget within = budget(100, 30).atMost(5);
        now += 101;
        assertThat(within.spent()).isTrue();
    }
}
