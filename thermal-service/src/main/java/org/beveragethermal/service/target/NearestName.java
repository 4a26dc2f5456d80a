/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds the known name that someone most likely meant. */
final class NearestName {
    private static final Pattern SEPARATORS = Pattern.compile("[\\s_,-]+");
    private static final int LONGEST_COMPARED = 64;
    private static final int MOST_LISTED = 30;

    private NearestName() {}

    /**
     * What to say about an unknown name: the nearest known one if there is one near; else those that hold all its words, such
     * as all lagers for "lager"; else those that hold one of them, such as all reds for "red wine"; else all names, or how
     * they begin if they are many.
     */
    static String advice(String given, List<String> known) {
        return nearest(given, known)
                .map(name -> "did you mean \"" + name + "\"?")
                .orElseGet(() -> adviceByWords(holding(given, known), known));
    }

    private static String adviceByWords(List<String> holding, List<String> known) {
        return switch (holding.size()) {
            case 0 -> "expected one of " + all(known);
            case 1 -> "did you mean \"" + holding.get(0) + "\"?";
            default -> "did you mean one of " + String.join(", ", holding) + "?";
        };
    }

    /** All names, or how they begin if they are too many to read. */
    private static String all(List<String> known) {
        if (known.size() <= MOST_LISTED) {
            return String.join(", ", known);
        }
        return "those that begin with "
                + known.stream().map(name -> words(name)[0]).distinct().collect(Collectors.joining(", "));
    }

    /** The known names that hold every word of the given one, or else one of them, with one letter in four wrong at most. */
    private static List<String> holding(String given, List<String> known) {
        if (given.isBlank() || given.length() > LONGEST_COMPARED) {
            return List.of();
        }
        List<String> all = known.stream()
                .filter(name -> Arrays.stream(words(given)).allMatch(word -> holds(name, word)))
                .toList();
        return all.isEmpty()
                ? known.stream()
                        .filter(name -> Arrays.stream(words(given)).anyMatch(word -> holds(name, word)))
                        .toList()
                : all;
    }

    private static boolean holds(String name, String word) {
        return Arrays.stream(words(name)).anyMatch(own -> editDistance(own, word) <= word.length() / 4);
    }

    /** The nearest known name, if no more than a third of its letters differ; the first of those equally near. */
    static Optional<String> nearest(String given, List<String> known) {
        if (given.length() > LONGEST_COMPARED) {
            return Optional.empty();
        }
        return known.stream()
                .filter(name -> difference(given, name) <= Math.max(2, name.length() / 3))
                .min(Comparator.comparingInt(name -> difference(given, name)));
    }

    /** Edits between the names, or one more than between their words in alphabetical order if that is less. */
    private static int difference(String given, String known) {
        String[] a = words(given);
        String[] b = words(known);
        int inOrder = editDistance(String.join("-", a), String.join("-", b));
        Arrays.sort(a);
        Arrays.sort(b);
        return Math.min(inOrder, 1 + editDistance(String.join("-", a), String.join("-", b)));
    }

    private static String[] words(String name) {
        return SEPARATORS.split(name.strip().toLowerCase(Locale.ROOT));
    }

    /**
     * Least number of letters inserted, left out, replaced, or swapped with their neighbour that turns one text into
     * the other, no letter being touched twice (optimal string alignment distance).
     */
    static int editDistance(String a, String b) {
        int[][] distance = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                distance[i][j] = i == 0 || j == 0 ? i + j : step(distance, a, b, i, j);
            }
        }
        return distance[a.length()][b.length()];
    }

    private static int step(int[][] distance, String a, String b, int i, int j) {
        int replaced = distance[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(replaced, 1 + Math.min(distance[i - 1][j], distance[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, 1 + distance[i - 2][j - 2]) : best;
    }
}
