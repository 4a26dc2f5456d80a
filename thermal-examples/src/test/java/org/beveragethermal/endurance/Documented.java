/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What may come back of any input: finite numbers, or a refusal that the library itself wrote. */
public final class Documented {
    private static final String OURS = "org.beveragethermal.";

    private Documented() {}

    /**
     * Whether an exception is a refusal as documented: an {@link IllegalArgumentException}, or a kind of the project's own, thrown by the
     * project with a message. What the JDK threw at input that nobody looked at is none.
     *
     * @param e an exception
     * @param kinds kinds of the project that are documented beside {@link IllegalArgumentException}
     * @return false, as an answer to whether the input was accepted
     */
    @SafeVarargs
    public static boolean refusal(RuntimeException e, Class<? extends RuntimeException>... kinds) {
        boolean known = e instanceof IllegalArgumentException;
        for (Class<? extends RuntimeException> kind : kinds) {
            known |= kind.isInstance(e);
        }
        boolean ours = e.getClass() == IllegalArgumentException.class
                || e.getClass().getName().startsWith(OURS);
        StackTraceElement[] trace = e.getStackTrace();
        boolean thrownHere = trace.length > 0 && trace[0].getClassName().startsWith(OURS);
        String message = e.getMessage();
        if (!known || !ours || !thrownHere || message == null || message.isBlank()) {
            throw new AssertionError("not documented: " + e, e);
        }
        return false;
    }

    /**
     * Refuses numbers that are not finite.
     *
     * @param what what they are
     * @param values numbers
     */
    public static void finite(String what, double... values) {
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new AssertionError(what + ": " + value);
            }
        }
    }

    /**
     * Looks for numbers that are not finite in records, collections and optionals of them.
     *
     * @param what what it is
     * @param value any value
     */
    public static void finiteThroughout(String what, Object value) {
        if (value instanceof Double number) {
            finite(what, number);
        } else if (value instanceof OptionalDouble number) {
            number.ifPresent(it -> finite(what, it));
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(it -> finiteThroughout(what, it));
        } else if (value instanceof Iterable<?> many && !(value instanceof java.nio.file.Path)) {
            many.forEach(it -> finiteThroughout(what, it));
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((key, it) -> finiteThroughout(what + "." + key, it));
        } else if (value instanceof Record && value.getClass().getName().startsWith(OURS)) {
            components(what, value);
        }
    }

    private static void components(String what, Object value) {
        for (RecordComponent component : value.getClass().getRecordComponents()) {
            try {
                component.getAccessor().setAccessible(true);
                finiteThroughout(
                        what + "." + component.getName(),
                        component.getAccessor().invoke(value));
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new LinkageError(what + "." + component.getName(), e);
            }
        }
    }
}
