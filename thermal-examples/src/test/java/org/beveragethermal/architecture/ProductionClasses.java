/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.architecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import java.util.regex.Pattern;

/** Leaves out what only tests use, whether it lies in a directory or, once packaged, in a jar. */
public final class ProductionClasses implements ImportOption {
    private static final Pattern TESTS = Pattern.compile(".*(/test-classes/|-tests\\.jar!).*");

    @Override
    public boolean includes(Location location) {
        return !location.matches(TESTS);
    }
}
