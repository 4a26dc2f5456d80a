/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.util.List;

/**
 * Where the heat of a drink came from since the start, or where it went. What is poured from vessel to vessel takes its enthalpy along
 * without being listed: {@code storedJ} has it, the entries do not, and after a pour {@link #closure} is no measure of accuracy; the
 * ledger of the whole run closes all the same.
 *
 * @param intoDrink what the drink received, by mechanism and by what gave it: its wall, its base, what lies above it
 * @param intoWall what the outside of the wall received, by mechanism and by what gave it
 * @param storedJ change of the drink's enthalpy [J], from its state alone
 */
public record HeatAccount(List<Entry> intoDrink, List<Entry> intoWall, double storedJ) {

    /**
     * Heat by one mechanism from one end.
     *
     * @param mechanism what carried it, such as {@code convection}
     * @param from name of what gave it
     * @param heatJ heat [J], negative if it went the other way
     */
    public record Entry(String mechanism, String from, double heatJ) {}

    /**
     * Copies the lists.
     *
     * @param intoDrink what the drink received, not modified
     * @param intoWall what the outside of the wall received, not modified
     * @param storedJ change of the drink's enthalpy [J]
     */
    public HeatAccount {
        intoDrink = List.copyOf(intoDrink);
        intoWall = List.copyOf(intoWall);
    }

    /**
     * An account on which nothing has been booked.
     *
     * @return the account
     */
    public static HeatAccount none() {
        return new HeatAccount(List.of(), List.of(), 0);
    }

    /**
     * Sum of what the drink received.
     *
     * @return heat [J], negative if it gave
     */
    public double intoDrinkJ() {
        return sum(intoDrink);
    }

    /**
     * Sum of what the outside of the wall received.
     *
     * @return heat [J], negative if it gave
     */
    public double intoWallJ() {
        return sum(intoWall);
    }

    /**
     * How well the account closes: what the drink received against the change of its enthalpy.
     *
     * @return difference over the sum of the absolute heats [-]; 0 if nothing flowed
     */
    public double closure() {
        double total =
                intoDrink.stream().mapToDouble(entry -> Math.abs(entry.heatJ())).sum();
        return total == 0 ? 0 : Math.abs(intoDrinkJ() - storedJ) / total;
    }

    private static double sum(List<Entry> entries) {
        return entries.stream().mapToDouble(Entry::heatJ).sum();
    }
}
