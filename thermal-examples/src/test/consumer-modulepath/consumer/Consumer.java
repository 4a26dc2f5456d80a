/* SPDX-License-Identifier: Apache-2.0 */
package consumer;

import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.service.target.Targets;

/** Calls each library once and prints what came back, one line per library. */
public final class Consumer {
    private Consumer() {}

    /**
     * Prints three lines.
     *
     * @param arguments not used
     */
    public static void main(String[] arguments) {
        System.out.println("density " + Water.liquid().density(293.15));
        System.out.println("value " + TimeFunction.constant(280.0).at(60.0) + " " + module(TimeFunction.class));
        System.out.println("styles " + !Targets.styles().isEmpty() + " " + module(Targets.class));
    }

    private static String module(Class<?> type) {
        return type.getModule().getName();
    }
}
