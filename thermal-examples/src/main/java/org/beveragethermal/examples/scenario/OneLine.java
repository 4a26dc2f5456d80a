/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

/** Makes text of unknown origin fit to be shown in a message: one line, of bounded length, without control characters. */
final class OneLine {
    private static final int LONGEST = 160;

    private OneLine() {}

    static String of(String text) {
        return text.length() > LONGEST ? plain(text.substring(0, LONGEST)) + "..." : plain(text);
    }

    /** The whole text, however long. */
    static String plain(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().map(OneLine::visible).forEach(shown::appendCodePoint);
        return shown.toString();
    }

    static String quoted(String text) {
        return "\"" + of(text) + "\"";
    }

    /** Whether text can be shown as it stands. */
    static boolean isPlain(String text) {
        return text.codePoints().allMatch(codePoint -> visible(codePoint) == codePoint);
    }

    /** Format characters are hidden too: they can turn the direction of the text that follows. */
    private static int visible(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> '\uFFFD';
            default -> codePoint;
        };
    }
}
