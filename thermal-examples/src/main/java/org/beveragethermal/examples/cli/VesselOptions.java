/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.vessel.FilledVessel;
import picocli.CommandLine.Option;

/** Which vessel with which drink. */
final class VesselOptions {
    @Option(
            names = "--vessel",
            required = true,
            paramLabel = "VESSEL",
            description = "such as \"750 mL\" or \"can 330 mL\"")
    String vessel = "";

    @Option(
            names = "--drink",
            required = true,
            paramLabel = "DRINK",
            description = "such as \"wine 12.5 %%\" or \"water\"")
    String drink = "";

    FilledVessel filled(String where, String given) {
        return filled(where, given, Quantities.temperature(where, given));
    }

    /** The vessel with its drink at a temperature that was read from something else than words. */
    FilledVessel filled(String where, String given, Quantity<Temperature> temperature) {
        try {
            return VesselWords.vessel("--vessel", vessel).filledWith(DrinkWords.drink("--drink", drink), temperature);
        } catch (IllegalArgumentException e) {
            throw Refusal.usage(
                    where, given, "a temperature that this drink can have in this vessel; " + e.getMessage());
        }
    }
}
