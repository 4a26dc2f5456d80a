/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What E. Cuthill and J. McKee, Proc. 24th ACM National Conference, 1969, promise of their order. */
final class OrderingProperties {

    private static List<Set<Integer>> unconnected(int size) {
        List<Set<Integer>> neighbours = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            neighbours.add(new TreeSet<>());
        }
        return neighbours;
    }

    private static void join(List<Set<Integer>> neighbours, int i, int j) {
        neighbours.get(i).add(j);
        neighbours.get(j).add(i);
    }

    private static List<Integer> shuffled(int size, long seed) {
        List<Integer> names = new ArrayList<>(IntStream.range(0, size).boxed().toList());
        Collections.shuffle(names, new Random(seed));
        return names;
    }

    private static int bandwidth(List<Set<Integer>> neighbours, int[] position) {
        return IntStream.range(0, neighbours.size())
                .flatMap(i -> neighbours.get(i).stream().mapToInt(j -> Math.abs(position[i] - position[j])))
                .max()
                .orElse(0);
    }

    @Property(seed = "20260104")
    @Label("Ordering: every unknown has a place of its own")
    void everyUnknownHasItsOwnPlace(
            @ForAll @IntRange(min = 1, max = 30) int size, @ForAll @IntRange(max = 60) int links, @ForAll long seed) {
        List<Set<Integer>> neighbours = unconnected(size);
        Random random = new Random(seed);
        for (int k = 0; k < links; k++) {
            int i = random.nextInt(size);
            int j = random.nextInt(size);
            if (i != j) {
                join(neighbours, i, j);
            }
        }
        int[] position = Ordering.reverseCuthillMcKee(neighbours);
        assertThat(IntStream.of(position).sorted().toArray())
                .isEqualTo(IntStream.range(0, size).toArray());
    }

    @Property(seed = "20260105")
    @Label("Ordering: a shuffled chain becomes tridiagonal")
    void shuffledChainBecomesTridiagonal(@ForAll @IntRange(min = 2, max = 40) int size, @ForAll long seed) {
        List<Set<Integer>> neighbours = unconnected(size);
        List<Integer> names = shuffled(size, seed);
        for (int i = 1; i < size; i++) {
            join(neighbours, names.get(i - 1), names.get(i));
        }
        assertThat(bandwidth(neighbours, Ordering.reverseCuthillMcKee(neighbours)))
                .isEqualTo(1);
    }

    @Property(seed = "20260106")
    @Label("Ordering: several shuffled chains become tridiagonal")
    void severalShuffledChainsBecomeTridiagonal(
            @ForAll @IntRange(min = 2, max = 10) int length,
            @ForAll @IntRange(min = 2, max = 4) int chains,
            @ForAll long seed) {
        List<Set<Integer>> neighbours = unconnected(length * chains);
        List<Integer> names = shuffled(length * chains, seed);
        for (int i = 1; i < length * chains; i++) {
            if (i % length != 0) {
                join(neighbours, names.get(i - 1), names.get(i));
            }
        }
        assertThat(bandwidth(neighbours, Ordering.reverseCuthillMcKee(neighbours)))
                .isEqualTo(1);
    }

    @Property(seed = "20260107")
    @Label("Ordering: a shuffled ladder gets a narrow band")
    void shuffledLadderGetsANarrowBand(@ForAll @IntRange(min = 3, max = 20) int rungs, @ForAll long seed) {
        // Liquid and wall side by side, slice on slice: two rails and their rungs have bandwidth 2 at best.
        List<Set<Integer>> neighbours = unconnected(2 * rungs);
        List<Integer> names = shuffled(2 * rungs, seed);
        for (int i = 0; i < rungs; i++) {
            join(neighbours, names.get(2 * i), names.get(2 * i + 1));
            if (i > 0) {
                join(neighbours, names.get(2 * i - 2), names.get(2 * i));
                join(neighbours, names.get(2 * i - 1), names.get(2 * i + 1));
            }
        }
        assertThat(bandwidth(neighbours, Ordering.reverseCuthillMcKee(neighbours)))
                .isBetween(2, 3);
    }
}
