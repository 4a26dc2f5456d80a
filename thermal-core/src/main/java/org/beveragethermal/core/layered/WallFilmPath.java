/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;

/**
 * The film along the whole wall of a stratified liquid: one path with an end for each slice and each piece of wall.
 *
 * <p>Where the liquid at the wall is heavier than its slice the film runs down, elsewhere up. Films are followed from where they
 * start; the deficit of heat they carry is left in the last slice that runs their way, or in the next one if that runs against
 * them.
 */
final class WallFilmPath implements Path {

    /** The wall's surface lies about half-way between liquid and backing; only the direction of the film depends on this. */
    private static final double SURFACE_GUESS = 0.5;

    private final String name;
    private final List<Slice> slices;
    private final List<End> ends;
    private final List<Account> accounts;
    private final LiquidFit liquid;

    WallFilmPath(String name, List<Node> liquidNodes, List<Slice> slices, LiquidFit liquid) {
        this.name = name;
        this.slices = List.copyOf(slices);
        this.liquid = liquid;
        List<End> allEnds = new ArrayList<>(liquidNodes);
        slices.forEach(slice -> allEnds.add(slice.wall()));
        this.ends = List.copyOf(allEnds);
        List<Account> all = new ArrayList<>();
        int n = slices.size();
        for (int i = 0; i < n; i++) {
            all.add(Account.heat("convection", i, n + i));
        }
        for (int i = 0; i + 1 < n; i++) {
            all.add(Account.heat("film flow", i, i + 1));
        }
        this.accounts = List.copyOf(all);
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
        return List.of();
    }

    @Override
    public void evaluate(PathEvaluation e) {
        int n = slices.size();
        for (int i = 0; i + 1 < n; i++) {
            e.flow(n + i, 0);
            clear(e, n + i);
        }
        WallFilm film = new WallFilm(liquid.conductivity(), liquid.density(), liquid.inverseDiffusion());
        boolean[] down = new boolean[n];
        for (int i = 0; i < n; i++) {
            double core = e.temperatureK(i);
            double surface = core + SURFACE_GUESS * (e.temperatureK(n + i) - core);
            down[i] = liquid.density().at(surface) >= liquid.density().at(core);
        }
        march(e, film, down, true);
        march(e, film, down, false);
    }

    private void clear(PathEvaluation e, int account) {
        for (int end = 0; end < ends.size(); end++) {
            e.flowByTemperature(account, end, 0);
        }
    }

    /** Follows the films of one direction, with the derivative of what they carry in all temperatures. */
    private void march(PathEvaluation e, WallFilm film, boolean[] down, boolean downwards) {
        int n = slices.size();
        double carried = 0;
        double[] carriedBy = new double[2 * n];
        double[] next = new double[2 * n];
        for (int step = 0; step < n; step++) {
            int i = downwards ? n - 1 - step : step;
            int ahead = downwards ? i - 1 : i + 1;
            boolean last = ahead < 0 || ahead >= n;
            if (down[i] != downwards) {
                carried = 0;
                java.util.Arrays.fill(carriedBy, 0);
                continue;
            }
            Slice slice = slices.get(i);
            double circumference = slice.circumferenceM();
            film.evaluate(
                    e.temperatureK(i),
                    last ? e.temperatureK(i) : e.temperatureK(ahead),
                    e.temperatureK(n + i),
                    slice.wallCoefficient(),
                    slice.heightM(),
                    slice.radiusM(),
                    carried / circumference);
            e.flow(i, circumference * film.heat);
            if (e.wantsDerivatives()) {
                heatDerivatives(e, film, i, circumference, carriedBy);
            }
            if (last) {
                return;
            }
            for (int j = 0; j < 2 * n; j++) {
                next[j] = film.deficitByArriving * carriedBy[j];
            }
            next[i] += circumference * film.deficitByCore;
            next[ahead] += circumference * film.deficitByAhead;
            next[n + i] += circumference * film.deficitByBacking;
            carried = circumference * film.deficit;
            System.arraycopy(next, 0, carriedBy, 0, 2 * n);
            flowOn(e, Math.min(i, ahead), downwards ? 1 : -1, carried, carriedBy);
        }
    }

    private void heatDerivatives(PathEvaluation e, WallFilm film, int i, double circumference, double[] carriedBy) {
        int n = slices.size();
        for (int j = 0; j < 2 * n; j++) {
            e.flowByTemperature(i, j, film.heatByArriving * carriedBy[j]);
        }
        e.flowByTemperature(i, i, film.heatByArriving * carriedBy[i] + circumference * film.heatByCore);
        e.flowByTemperature(i, n + i, film.heatByArriving * carriedBy[n + i] + circumference * film.heatByBacking);
    }

    /** A deficit that runs down is heat that the lower slice gives to the upper one. */
    private void flowOn(PathEvaluation e, int lower, double sign, double carried, double[] carriedBy) {
        int n = slices.size();
        e.flow(n + lower, sign * carried);
        if (e.wantsDerivatives()) {
            for (int j = 0; j < 2 * n; j++) {
                e.flowByTemperature(n + lower, j, sign * carriedBy[j]);
            }
        }
    }
}
