/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Makes inputs of a corpus by changing bytes and words; the same seed gives the same inputs. */
final class Mutations implements Inputs {
    private static final int LONGEST = 20_000;
    private static final List<String> NUMBERS = List.of(
            "0",
            "-0",
            "-0.0",
            "1",
            "-1",
            "2",
            "0.1",
            "1e-9",
            "1e9",
            "1e308",
            "-1e308",
            "1e309",
            "4.9e-324",
            "NaN",
            "Infinity",
            "-Infinity",
            "2147483647",
            "2147483648",
            "9223372036854775807",
            "-9223372036854775808",
            "99999999999999999999999999",
            "273.15",
            "-273.15",
            "1e400",
            "00",
            "1.",
            ".5",
            "1e",
            "0x10",
            "\u0661",
            "1,5");
    private static final List<String> CHARACTERS = List.of(
            "\u0000", "\ufeff", "\ud83c\udf77", "\u202e", "\u2028", "\"", "\n", "\r\n", "\t", "\\u0000", "\u2212");

    private final List<byte[]> corpus;
    private final List<byte[]> words = new ArrayList<>();

    Mutations(FuzzTarget target) {
        corpus = target.corpus();
        List.of(target.words(), NUMBERS, CHARACTERS)
                .forEach(list -> list.forEach(word -> words.add(word.getBytes(StandardCharsets.UTF_8))));
    }

    @Override
    public byte[] input(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] input = corpus.get(random.nextInt(corpus.size()));
        // Most inputs differ in little, so that what lies behind the first check is reached.
        boolean keepsForm = random.nextBoolean();
        int changes = 1 << random.nextInt(keepsForm ? 3 : 5);
        for (int i = 0; i < changes; i++) {
            input = keepsForm ? withWordOfItsKind(input, random) : changed(input, random);
        }
        return input.length > LONGEST ? Arrays.copyOf(input, LONGEST) : input;
    }

    private byte[] changed(byte[] input, SplittableRandom random) {
        int length = input.length;
        int from = random.nextInt(length + 1);
        int to = Math.min(length, from + 1 + random.nextInt(1 << random.nextInt(8)));
        return switch (random.nextInt(10)) {
            case 0 -> replaced(input, from, to, new byte[] {(byte) random.nextInt(256)});
            case 1 -> replaced(input, from, to, new byte[0]);
            case 2 -> replaced(input, to, to, Arrays.copyOfRange(input, from, to));
            case 3 -> replaced(input, from, from, word(random));
            case 4 -> spliced(input, from, random);
            case 5 -> flipped(input, from, random);
            case 6 -> moved(input, from, to, random);
            default -> withWord(input, from, random);
        };
    }

    private byte[] word(SplittableRandom random) {
        return words.get(random.nextInt(words.size()));
    }

    private static byte[] flipped(byte[] input, int at, SplittableRandom random) {
        byte[] flipped = input.clone();
        if (at < input.length) {
            flipped[at] ^= (byte) (1 << random.nextInt(8));
        }
        return flipped;
    }

    private byte[] spliced(byte[] input, int from, SplittableRandom random) {
        byte[] other = corpus.get(random.nextInt(corpus.size()));
        int start = random.nextInt(other.length + 1);
        return replaced(
                input,
                from,
                random.nextBoolean() ? input.length : from,
                Arrays.copyOfRange(other, start, other.length));
    }

    private static byte[] moved(byte[] input, int from, int to, SplittableRandom random) {
        byte[] part = Arrays.copyOfRange(input, from, to);
        byte[] rest = replaced(input, from, to, new byte[0]);
        int at = random.nextInt(rest.length + 1);
        return replaced(rest, at, at, part);
    }

    /** Puts a word that means something, or another of the same input, in the place of a word. */
    private byte[] withWord(byte[] input, int at, SplittableRandom random) {
        int from = wordStart(input, at);
        int to = wordEnd(input, from);
        if (random.nextInt(3) == 0) {
            int other = wordStart(input, random.nextInt(input.length + 1));
            return replaced(input, from, to, Arrays.copyOfRange(input, other, wordEnd(input, other)));
        }
        return replaced(input, from, to, word(random));
    }

    /** Puts a number in the place of a number, a name of the same input in the place of a name. */
    private static byte[] withWordOfItsKind(byte[] input, SplittableRandom random) {
        int from = wordStart(input, random.nextInt(input.length + 1));
        int to = wordEnd(input, from);
        int other = wordStart(input, random.nextInt(input.length + 1));
        for (int tries = 0; tries < 20 && isNumber(input, from) != isNumber(input, other); tries++) {
            other = wordStart(input, random.nextInt(input.length + 1));
        }
        byte[] by = Arrays.copyOfRange(input, other, wordEnd(input, other));
        if (isNumber(input, from) && random.nextBoolean()) {
            by = number(random).getBytes(StandardCharsets.UTF_8);
        }
        return replaced(input, from, to, by);
    }

    private static String number(SplittableRandom random) {
        return switch (random.nextInt(4)) {
            case 0 -> NUMBERS.get(random.nextInt(NUMBERS.size()));
            case 1 -> Integer.toString(random.nextInt(100));
            case 2 -> Double.toString(Math.rint(random.nextDouble() * 1e4) / 100);
            default -> Double.toString(Math.scalb(random.nextDouble() - 0.5, random.nextInt(120) - 60));
        };
    }

    private static boolean isNumber(byte[] input, int at) {
        return at < input.length && (input[at] == '-' || (input[at] >= '0' && input[at] <= '9'));
    }

    private static int wordStart(byte[] input, int at) {
        int start = at;
        while (start < input.length && !isOfWord(input[start])) {
            start++;
        }
        while (start > 0 && isOfWord(input[start - 1])) {
            start--;
        }
        return start;
    }

    private static int wordEnd(byte[] input, int from) {
        int end = from;
        while (end < input.length && isOfWord(input[end])) {
            end++;
        }
        return end;
    }

    private static boolean isOfWord(byte b) {
        return b == '.' || b == '-' || b == '+' || b == '_' || b < 0 || Character.isLetterOrDigit(b);
    }

    private static byte[] replaced(byte[] input, int from, int to, byte[] by) {
        byte[] out = new byte[input.length - (to - from) + by.length];
        System.arraycopy(input, 0, out, 0, from);
        System.arraycopy(by, 0, out, from, by.length);
        System.arraycopy(input, to, out, from + by.length, input.length - to);
        return out;
    }
}
