/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** What is refused where a value enters, and in which words. */
final class Checks {
    private Checks() {}

    static String id(String id, String of) {
        if (id.isBlank()) {
            throw new IllegalArgumentException("the id of " + of + " must not be blank");
        }
        return id;
    }

    static <T> void distinct(List<T> list, Function<T, String> id, String kind, String where) {
        Set<String> seen = new HashSet<>();
        for (T one : list) {
            if (!seen.add(id.apply(one))) {
                throw new IllegalArgumentException("two " + kind + " of " + where + " have the id " + id.apply(one));
            }
        }
    }

    static void within(long value, long least, long most, String what) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(what + " must be within [" + least + ", " + most + "], was " + value);
        }
    }
}
