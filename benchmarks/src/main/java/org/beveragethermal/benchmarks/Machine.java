/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** What the benchmarks run on, without names. */
final class Machine {

    private Machine() {}

    /** Processor, memory, system, Java and load in a sentence. */
    static String described() {
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        return String.format(
                Locale.ROOT,
                "%d processors (%s), %.0f GB of memory, %s %s, Java %s (%s), load %.1f at the start",
                system.getAvailableProcessors(),
                processor(),
                system.getTotalMemorySize() / 1e9,
                System.getProperty("os.name"),
                System.getProperty("os.arch"),
                System.getProperty("java.version"),
                System.getProperty("java.vm.name"),
                system.getSystemLoadAverage());
    }

    private static String processor() {
        try (var lines = Files.lines(Path.of("/proc/cpuinfo"))) {
            return lines.filter(line -> line.startsWith("model name"))
                    .findFirst()
                    .map(line -> line.substring(line.indexOf(':') + 1).strip())
                    .orElse("unnamed");
        } catch (IOException unknown) {
            return "unnamed";
        }
    }
}
