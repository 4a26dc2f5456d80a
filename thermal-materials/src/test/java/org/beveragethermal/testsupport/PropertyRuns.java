/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import net.jqwik.api.Label;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Leaves a row in {@code target/properties.csv} for every jqwik property of a module's test run: what it says, where it
 * stands, how many cases were asked for and how many were tried, and whether it held.
 *
 * <p>Registered for all properties by the service file of jqwik's lifecycle hooks; what a property says is its label, or
 * the name of its method taken apart into words.
 */
public final class PropertyRuns implements AroundPropertyHook {
    /** The parameter of jqwik that says how many cases a property is tried with, unless it says so itself. */
    static final String TRIES_PARAMETER = "jqwik.tries.default";

    private static final String FILE = "properties.csv";
    private static final List<String> HEADER = List.of("property", "class", "asked", "cases", "held");

    /** Made by jqwik. */
    public PropertyRuns() {}

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
        PropertyExecutionResult result = property.execute();
        if (!isExample(context.attributes())) {
            ModuleRows.rows()
                    .add(List.of(
                            sentence(context),
                            context.containerClass().getSimpleName(),
                            asked(context.attributes()),
                            Integer.toString(result.countTries()),
                            Boolean.toString(result.status() == PropertyExecutionResult.Status.SUCCESSFUL)));
        }
        return result;
    }

    /** A single case is an example, not a property. */
    private static boolean isExample(PropertyAttributes attributes) {
        return attributes.tries().filter(tries -> tries == 1).isPresent();
    }

    /** The number the annotation asks for, or else the one this run was told. */
    private static String asked(PropertyAttributes attributes) {
        return attributes
                .tries()
                .map(tries -> Integer.toString(tries))
                .orElseGet(() -> System.getProperty(TRIES_PARAMETER, "usual"));
    }

    private static String sentence(PropertyLifecycleContext context) {
        Label label = context.targetMethod().getAnnotation(Label.class);
        return label == null ? words(context.targetMethod().getName()) : Objects.requireNonNull(label.value());
    }

    /** {@code twiceTheHeat} becomes {@code twice the heat}. */
    static String words(String camelCase) {
        return camelCase.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    /** Begins the module's row file when the first property of this JVM has run. */
    private static final class ModuleRows {
        private static final RowFile ROWS = RowFile.startedIn(RowFile.moduleTarget(), FILE, HEADER);

        static RowFile rows() {
            return ROWS;
        }
    }
}
