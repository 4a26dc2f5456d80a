/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Inputs of our own invention in the test resources, and numbers written in them. */
public final class Corpus {

    private Corpus() {}

    /**
     * Files beside this class.
     *
     * @param names names of files
     * @return their bytes
     */
    public static List<byte[]> files(String... names) {
        List<byte[]> files = new ArrayList<>();
        for (String name : names) {
            try (InputStream in = Corpus.class.getResourceAsStream(name)) {
                if (in == null) {
                    throw new IllegalStateException("no test resource " + name);
                }
                files.add(in.readAllBytes());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return files;
    }

    /**
     * Lines of a file beside this class.
     *
     * @param name name of the file
     * @return an input for each line
     */
    public static List<byte[]> lines(String name) {
        return new String(files(name).get(0), StandardCharsets.UTF_8)
                .lines()
                .map(line -> line.getBytes(StandardCharsets.UTF_8))
                .toList();
    }

    /** Numbers in any text; what is no number is left out. */
    static double[] numbers(byte[] input) {
        return Arrays.stream(new String(input, StandardCharsets.UTF_8).split("[^0-9A-Za-z.+-]+", -1))
                .mapToDouble(Corpus::number)
                .filter(value -> Double.doubleToRawLongBits(value) != WORD)
                .toArray();
    }

    /** A value of its own among those that are none: it stands for what is no number. */
    private static final long WORD = 0x7ff8_0000_0000_0bedL;

    private static double number(String text) {
        try {
            return text.length() > 40 ? Double.longBitsToDouble(WORD) : Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.longBitsToDouble(WORD);
        }
    }
}
