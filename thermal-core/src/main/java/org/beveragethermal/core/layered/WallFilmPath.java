/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.FilmState;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.surroundings.Multipliers;

/**
 * The film along the whole wall of a stratified liquid: one path with an end for each slice and each piece of wall.
 *
 * <p>Where the liquid at the wall is heavier than its slice the film runs down, elsewhere up. Films are followed from where they
 * start; the deficit of heat they carry is left in the last slice that runs their way, or in the next one if that runs against
 * them. Where hardly anything drives it, a part of the circumference runs down and the rest up, so that the turn is smooth.
 *
 * <p>Theory manual, equation (5.3).
 */
final class WallFilmPath implements Path, SliceFilms {

    /** The wall's surface lies about half-way between liquid and backing; only the direction of the film depends on this. */
    private static final double SURFACE_GUESS = 0.5;

    private final String name;
    private final List<Slice> slices;
    private final List<End> ends;
    private final List<Account> accounts;
    private final LiquidFit liquid;
    private final double densestK;

    WallFilmPath(String name, List<Node> liquidNodes, List<Slice> slices, LiquidFit liquid, double densestK) {
        this.name = name;
        this.slices = List.copyOf(slices);
        this.liquid = liquid;
        this.densestK = densestK;
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
        return List.of(Multipliers.INSIDE_FILM);
    }

    @Override
    public void evaluate(PathEvaluation e) {
        for (int account = 0; account < accounts.size(); account++) {
            e.flow(account, 0);
            clear(e, account);
        }
        Workspace workspace = e.workspace(Workspace.class, this::newWorkspace);
        Arrays.fill(workspace.byFactor, 0);
        march(e, workspace, true);
        march(e, workspace, false);
        if (e.wantsDerivatives()) {
            for (int account = 0; account < accounts.size(); account++) {
                e.flowByMultiplier(account, 0, workspace.byFactor[account]);
            }
        }
    }

    @Override
    public List<SliceFilm> describe(PathEvaluation e, End wall) {
        List<SliceFilm> films = new ArrayList<>();
        for (int i = 0; i < slices.size(); i++) {
            if (slices.get(i).wall().equals(wall)) {
                films.add(film(e, i));
            }
        }
        return films;
    }

    /** From the heat of the slice back to the temperature of the surface, and from there to the numbers. */
    private SliceFilm film(PathEvaluation e, int i) {
        Slice slice = slices.get(i);
        double core = e.temperatureK(i);
        double backing = e.temperatureK(slices.size() + i);
        double heat = e.flowOf(i);
        double behind = slice.wallCoefficient() * slice.sideAreaM2();
        double surface = backing + heat / behind;
        double drive = core - surface;
        double height = slices.get(slices.size() - 1).highM() - slices.get(0).lowM();
        double filmK = 0.5 * (core + surface);
        double k = liquid.conductivity().at(filmK);
        double prandtl = liquid.prandtl().at(filmK);
        if (!(Math.abs(core - backing) > NO_DRIVE_K && drive * heat > 0)) {
            double thickness = WallFilm.THICKEST_PART * slice.run().radiusM();
            return new SliceFilm(
                    SliceFilm.Direction.NONE,
                    0,
                    backing,
                    thickness,
                    thickness / (k * slice.sideAreaM2()),
                    1 / behind,
                    new FilmState(k / thickness, height / thickness, 0, prandtl, LAW_AT_REST, Optional.empty()));
        }
        double coefficient = heat / (slice.sideAreaM2() * drive);
        WallBuoyancy buoyancy = new WallBuoyancy(liquid.density(), densestK);
        buoyancy.evaluateDrive(core, surface);
        double rayleigh = ConvectiveFilm.GRAVITY
                * buoyancy.drive
                * height
                * height
                * height
                * liquid.inverseDiffusion().at(filmK);
        direct(buoyancy, e, i);
        double down = buoyancy.downPart;
        SliceFilm.Direction direction =
                down == 1 ? SliceFilm.Direction.DOWN : down == 0 ? SliceFilm.Direction.UP : SliceFilm.Direction.TURNING;
        return new SliceFilm(
                direction,
                heat,
                surface,
                k / coefficient,
                drive / heat,
                1 / behind,
                new FilmState(coefficient, coefficient * height / k, rayleigh, prandtl, LAW, Optional.empty()));
    }

    private static final String LAW = "laminar film along the wall, after Squire and Eckert";
    private static final String LAW_AT_REST = "no drive: conduction over a third of the radius";
    /** Below this the film is described as at rest [K]: a hundred times the accuracy of temperatures from enthalpies. */
    private static final double NO_DRIVE_K = 1e-6;

    private Workspace newWorkspace() {
        WallBuoyancy buoyancy = new WallBuoyancy(liquid.density(), densestK);
        return new Workspace(
                buoyancy, new WallFilm(liquid.conductivity(), buoyancy, liquid.inverseDiffusion()), slices.size());
    }

    /** What a march remembers. */
    private static final class Workspace {
        private final WallBuoyancy buoyancy;
        private final WallFilm film;
        /** Derivatives of what the film carries, in all temperatures. */
        private final double[] carriedBy;

        private final double[] next;
        /** Derivative of every account in the factor on the law. */
        private final double[] byFactor;

        Workspace(WallBuoyancy buoyancy, WallFilm film, int slices) {
            this.buoyancy = buoyancy;
            this.film = film;
            carriedBy = new double[2 * slices];
            next = new double[2 * slices];
            byFactor = new double[2 * slices - 1];
        }
    }

    /** Finds on which part of the circumference the film beside a slice runs down. */
    private void direct(WallBuoyancy buoyancy, PathEvaluation e, int i) {
        double core = e.temperatureK(i);
        buoyancy.evaluateDirection(core, core + SURFACE_GUESS * (e.temperatureK(slices.size() + i) - core));
    }

    private void clear(PathEvaluation e, int account) {
        for (int end = 0; end < ends.size(); end++) {
            e.flowByTemperature(account, end, 0);
        }
    }

    /** Follows the films of one direction, with the derivative of what they carry in all temperatures. */
    private void march(PathEvaluation e, Workspace workspace, boolean downwards) {
        int n = slices.size();
        WallFilm film = workspace.film;
        double[] carriedBy = workspace.carriedBy;
        double[] next = workspace.next;
        double carried = 0;
        double carriedByFactor = 0;
        Arrays.fill(carriedBy, 0);
        for (int step = 0; step < n; step++) {
            int i = downwards ? n - 1 - step : step;
            int ahead = downwards ? i - 1 : i + 1;
            boolean last = ahead < 0 || ahead >= n;
            direct(workspace.buoyancy, e, i);
            double down = workspace.buoyancy.downPart;
            double partByCore =
                    workspace.buoyancy.downPartByCore + (1 - SURFACE_GUESS) * workspace.buoyancy.downPartBySurface;
            double partByBacking = SURFACE_GUESS * workspace.buoyancy.downPartBySurface;
            double part = downwards ? down : 1 - down;
            if (part == 0) {
                carried = 0;
                carriedByFactor = 0;
                Arrays.fill(carriedBy, 0);
                continue;
            }
            double turn = downwards ? 1 : -1;
            Slice slice = slices.get(i);
            double circumference = slice.circumferenceM();
            film.evaluate(
                    e.temperatureK(i),
                    last ? e.temperatureK(i) : e.temperatureK(ahead),
                    e.temperatureK(n + i),
                    slice.wallCoefficient(),
                    slice.run().lengthM(),
                    slice.gravityPart(),
                    slice.run().radiusM(),
                    carried / circumference,
                    e.multiplier(0));
            e.flow(i, e.flowOf(i) + part * circumference * film.heat);
            workspace.byFactor[i] += part * (circumference * film.heatByFactor + film.heatByArriving * carriedByFactor);
            if (e.wantsDerivatives()) {
                for (int j = 0; j < 2 * n; j++) {
                    addByTemperature(e, i, j, part * film.heatByArriving * carriedBy[j]);
                }
                double byPart = turn * circumference * film.heat;
                addByTemperature(e, i, i, part * circumference * film.heatByCore + byPart * partByCore);
                addByTemperature(e, i, n + i, part * circumference * film.heatByBacking + byPart * partByBacking);
            }
            if (last) {
                return;
            }
            for (int j = 0; j < 2 * n; j++) {
                next[j] = part * film.deficitByArriving * carriedBy[j];
            }
            double byPart = turn * circumference * film.deficit;
            next[i] += part * circumference * film.deficitByCore + byPart * partByCore;
            next[ahead] += part * circumference * film.deficitByAhead;
            next[n + i] += part * circumference * film.deficitByBacking + byPart * partByBacking;
            carried = part * circumference * film.deficit;
            carriedByFactor = part * (circumference * film.deficitByFactor + film.deficitByArriving * carriedByFactor);
            workspace.byFactor[n + Math.min(i, ahead)] += turn * carriedByFactor;
            System.arraycopy(next, 0, carriedBy, 0, 2 * n);
            flowOn(e, Math.min(i, ahead), turn, carried, carriedBy);
        }
    }

    private static void addByTemperature(PathEvaluation e, int account, int end, double value) {
        e.flowByTemperature(account, end, e.derivativeOf(account, end) + value);
    }

    /** A deficit that runs down is heat that the lower slice gives to the upper one. */
    private void flowOn(PathEvaluation e, int lower, double sign, double carried, double[] carriedBy) {
        int n = slices.size();
        e.flow(n + lower, e.flowOf(n + lower) + sign * carried);
        if (e.wantsDerivatives()) {
            for (int j = 0; j < 2 * n; j++) {
                addByTemperature(e, n + lower, j, sign * carriedBy[j]);
            }
        }
    }
}
