/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.List;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;

/**
 * Ice at 0 °C in stirred water, without losses: heat flows to the ice in proportion to what is left of it, and melt joins
 * the water. All numbers are our own invention but the enthalpy of fusion.
 *
 * @param ice a node with its mass [kg] as amount
 * @param water a node with its mass [kg] as amount
 */
record MeltingProblem(Node ice, Node water) {

    static final double ICE_POINT_K = 273.15;
    /** Enthalpy of fusion of water, 333.4 kJ/kg: R. Feistel and W. Wagner, J. Phys. Chem. Ref. Data 35, 2006 (from memory). */
    static final double FUSION_J_PER_KG = 333_400;

    static final double WATER_J_PER_KG_K = 4200;
    static final double ICE_J_PER_KG_K = 2100;
    static final double CONDUCTANCE = 10;

    static MeltingProblem of(double iceKg, double waterKg, double waterK) {
        return new MeltingProblem(
                Node.of("ice", new IceStore(iceKg, waterKg), ICE_POINT_K, iceKg),
                Node.of("water", new WaterStore(waterKg), waterK, waterKg));
    }

    Network network() {
        return Network.of(List.of(ice, water), List.of(melting()));
    }

    Path melting() {
        return new MeltingPath(ice, water, ice.amounts()[0]);
    }

    /** H = −L m + C (T − 273.15 K); the capacity is that of the ice at the start, so nothing is singular as it goes. */
    private record IceStore(double startKg, double waterKg) implements Store {

        @Override
        public int amountCount() {
            return 1;
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            double capacity = startKg * ICE_J_PER_KG_K;
            out.temperatureK = ICE_POINT_K + (enthalpyJ + FUSION_J_PER_KG * amounts[offset]) / capacity;
            out.temperaturePerJoule = 1 / capacity;
            out.temperaturePerAmount[0] = FUSION_J_PER_KG / capacity;
            out.kelvinPerJoule = 1 / capacity;
            out.kelvinPerAmount[0] = FUSION_J_PER_KG / (waterKg * WATER_J_PER_KG_K);
        }

        @Override
        public double enthalpyJ(double temperatureK, double... amounts) {
            return startKg * ICE_J_PER_KG_K * (temperatureK - ICE_POINT_K) - FUSION_J_PER_KG * amounts[0];
        }
    }

    /** H = c m (T − 273.15 K). */
    private record WaterStore(double startKg) implements Store {

        @Override
        public int amountCount() {
            return 1;
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            double capacity = Math.max(amounts[offset], 0.1 * startKg) * WATER_J_PER_KG_K;
            out.temperatureK = ICE_POINT_K + enthalpyJ / capacity;
            out.temperaturePerJoule = 1 / capacity;
            out.temperaturePerAmount[0] = -enthalpyJ / capacity / amounts[offset];
            out.kelvinPerJoule = 1 / capacity;
            out.kelvinPerAmount[0] = Math.abs(out.temperaturePerAmount[0]);
        }

        @Override
        public double enthalpyJ(double temperatureK, double... amounts) {
            return amounts[0] * WATER_J_PER_KG_K * (temperatureK - ICE_POINT_K);
        }
    }

    /** Heat to the ice, and as much melt as it pays for; melt at 0 °C carries no enthalpy. */
    private record MeltingPath(Node ice, Node water, double startKg) implements Path {

        @Override
        public String name() {
            return "melting";
        }

        @Override
        public List<End> ends() {
            return List.of(water, ice);
        }

        @Override
        public List<Account> accounts() {
            return List.of(Account.heat("melting", 0, 1), Account.amount("melt", 1, 0, 0, 0));
        }

        @Override
        public void evaluate(PathEvaluation e) {
            double left = e.amount(1, 0) / startKg;
            double drive = e.temperatureK(0) - e.temperatureK(1);
            double[] perFlow = {1, 1 / FUSION_J_PER_KG};
            for (int account = 0; account < 2; account++) {
                double conductance = CONDUCTANCE * perFlow[account];
                e.flow(account, conductance * left * drive);
                e.flowByTemperature(account, 0, conductance * left);
                e.flowByTemperature(account, 1, -conductance * left);
                e.flowByAmount(account, 0, 0, 0);
                e.flowByAmount(account, 1, 0, conductance * drive / startKg);
            }
        }
    }
}
