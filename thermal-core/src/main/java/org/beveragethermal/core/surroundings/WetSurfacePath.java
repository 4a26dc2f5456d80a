/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.film.EvaporatingFilm;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;

/**
 * The outer surface of a wet body, at the temperature of the node that is its surface, and everything that reaches it from air and walls:
 * convection, radiation and vapour, which takes its enthalpy and its mass along.
 *
 * <p>While the body dries, evaporation falls as x(2 − x) with the water x over that below which the surface is no longer wet all over. What
 * condenses does so on a dry body too. A body that is fed keeps its water: as much comes from below, at its own temperature, as
 * evaporates, and the heat is the latent heat alone.
 *
 * <p>Theory manual, equation (4.7).
 */
final class WetSurfacePath implements Path {

    private final String name;
    private final List<Link> links;
    private final List<End> ends;
    private final List<Account> accounts;
    private final List<String> multipliers;
    private final int[] multiplierOf;
    private final int surface;
    private final int vapour;
    private final int mass;
    private final double dryingKg;

    private WetSurfacePath(String name, Node node, List<Link> links, double dryingKg, boolean fed) {
        this.name = name;
        this.links = List.copyOf(links);
        this.dryingKg = dryingKg;
        surface = links.size();
        List<End> allEnds = new ArrayList<>();
        List<Account> all = new ArrayList<>();
        List<String> factors = new ArrayList<>();
        multiplierOf = new int[links.size()];
        int found = -1;
        for (int i = 0; i < links.size(); i++) {
            Link link = links.get(i);
            allEnds.add(link.end());
            all.add(Account.heat(link.mechanism(), i, surface));
            String factor = link.multiplier();
            if (factor != null && !factors.contains(factor)) {
                factors.add(factor);
            }
            multiplierOf[i] = factor == null ? -1 : factors.indexOf(factor);
            found = link.law() instanceof EvaporatingFilm ? i : found;
        }
        allEnds.add(node);
        vapour = fed ? -1 : found;
        mass = vapour < 0 ? -1 : all.size();
        if (mass >= 0) {
            all.add(Account.change(EvaporatingFilm.MECHANISM, surface, WetStore.WATER));
        }
        ends = List.copyOf(allEnds);
        accounts = List.copyOf(all);
        multipliers = List.copyOf(factors);
    }

    /** A body that dries; below {@code dryingKg} of water [kg] its surface is no longer wet all over. */
    static WetSurfacePath drying(String name, Node node, List<Link> links, double dryingKg) {
        return new WetSurfacePath(name, node, links, dryingKg, false);
    }

    /** A body that is kept wet from a store of water. */
    static WetSurfacePath fed(String name, Node node, List<Link> links) {
        return new WetSurfacePath(name, node, links, 1, true);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<End> ends() {
        return ends;
    }

    @Override
    public List<Account> accounts() {
        return accounts;
    }

    @Override
    public List<String> multipliers() {
        return multipliers;
    }

    @Override
    public void evaluate(PathEvaluation e) {
        double surfaceK = e.temperatureK(surface);
        HeatFlow flow = e.scratch(0);
        for (int i = 0; i < links.size(); i++) {
            double factor = multiplierOf[i] < 0 ? 1 : e.multiplier(multiplierOf[i]);
            if (i == vapour) {
                vapour(e, factor, flow);
                continue;
            }
            links.get(i).law().evaluate(e.temperatureK(i), surfaceK, flow);
            e.flow(i, factor * flow.watts);
            if (e.wantsDerivatives()) {
                e.flowByTemperature(i, i, factor * flow.perFromKelvin);
                e.flowByTemperature(i, surface, factor * flow.perToKelvin);
                if (multiplierOf[i] >= 0) {
                    e.flowByMultiplier(i, multiplierOf[i], flow.watts);
                }
            }
        }
    }

    private void vapour(PathEvaluation e, double factor, HeatFlow flow) {
        double surfaceK = e.temperatureK(surface);
        ((EvaporatingFilm) links.get(vapour).law()).massFlow(e.temperatureK(vapour), surfaceK, flow);
        double x = e.amount(surface, WetStore.WATER) / dryingKg;
        boolean wet = flow.watts > 0 || x >= 1;
        double part = wet ? 1 : x * (2 - Math.max(0, x));
        double partByAmount = wet ? 0 : 2 * (1 - Math.max(0, x)) / dryingKg;
        double enthalpy = EvaporatingFilm.vapourEnthalpy().at(surfaceK);
        double kilograms = part * flow.watts;
        e.flow(mass, factor * kilograms);
        e.flow(vapour, factor * kilograms * enthalpy);
        if (!e.wantsDerivatives()) {
            return;
        }
        double byAir = part * flow.perFromKelvin;
        double bySurface = part * flow.perToKelvin;
        double byAmount = partByAmount * flow.watts;
        tell(e, mass, factor, byAir, bySurface, byAmount, kilograms);
        tell(
                e,
                vapour,
                factor,
                enthalpy * byAir,
                enthalpy * bySurface
                        + kilograms * EvaporatingFilm.vapourEnthalpy().slope(surfaceK),
                enthalpy * byAmount,
                enthalpy * kilograms);
    }

    private void tell(
            PathEvaluation e,
            int account,
            double factor,
            double byAir,
            double bySurface,
            double byAmount,
            double byFactor) {
        e.flowByTemperature(account, vapour, factor * byAir);
        e.flowByTemperature(account, surface, factor * bySurface);
        e.flowByAmount(account, surface, WetStore.WATER, factor * byAmount);
        if (multiplierOf[vapour] >= 0) {
            e.flowByMultiplier(account, multiplierOf[vapour], byFactor);
        }
    }
}
