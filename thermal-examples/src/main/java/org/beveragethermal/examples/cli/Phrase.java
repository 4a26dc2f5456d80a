/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A few words with quantities: a head, then words each with the quantity after it. In "ice-water ice 3kg stirred 0.1m/s" the head is
 * "ice-water"; in "wine 12.5 %" the head is "wine" and the quantity 12.5 % stands directly behind it.
 *
 * @param where what it was given for
 * @param given all of it
 * @param head the words before the first quantity or key
 * @param bare quantities that directly follow the head
 * @param keyed quantities by the word before them; empty for a word alone
 */
record Phrase(String where, String given, String head, List<String> bare, Map<String, String> keyed) {
    private static final int LONGEST = 200;
    private static final Pattern TOKEN = Pattern.compile(
            "\\s*(?:([+-]?[0-9][0-9.]*\\s*(?:%(?:\\s*vol)?|°?[a-z]+(?:/[a-z]+)?))(?![a-z0-9])|([a-z][a-z0-9-]*))");

    /** Reads words; those among {@code keys} begin a pair, others belong to the head. */
    static Phrase of(String where, String given, List<String> keys, String allowed) {
        String text = given.strip().toLowerCase(Locale.ROOT).replace((char) 0x2212, '-');
        if (text.isEmpty() || text.length() > LONGEST) {
            throw Refusal.usage(where, given, allowed);
        }
        StringBuilder head = new StringBuilder();
        List<String> bare = new ArrayList<>();
        Map<String, String> keyed = new LinkedHashMap<>();
        Optional<String> key = Optional.empty();
        Matcher token = TOKEN.matcher(text);
        for (int at = 0; at < text.length(); at = token.end()) {
            token.region(at, text.length());
            if (!token.lookingAt()) {
                throw Refusal.usage(
                        where, given, allowed + "; not understood from " + Refusal.quoted(text.substring(at)));
            }
            String quantity = token.group(1);
            String word = token.group(2);
            if (word != null) {
                if (keys.contains(word)) {
                    if (keyed.putIfAbsent(word, "") != null) {
                        throw Refusal.usage(where, given, "\"" + word + "\" once only");
                    }
                    key = Optional.of(word);
                } else if (bare.isEmpty() && keyed.isEmpty()) {
                    head.append(head.isEmpty() ? "" : " ").append(word);
                } else {
                    throw Refusal.usage(where, given, allowed + "; not understood: " + Refusal.quoted(word));
                }
            } else if (quantity != null && key.isPresent()) {
                keyed.put(key.get(), quantity);
                key = Optional.empty();
            } else if (quantity != null && keyed.isEmpty()) {
                bare.add(quantity);
            } else {
                throw Refusal.usage(
                        where, given, allowed + "; not understood: " + Refusal.quoted(String.valueOf(quantity)));
            }
        }
        return new Phrase(where, given, head.toString(), bare, keyed);
    }

    Optional<String> key(String key) {
        return Optional.ofNullable(keyed.get(key));
    }

    boolean flag(String key) {
        return keyed.containsKey(key);
    }
}
