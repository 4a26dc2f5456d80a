/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.EvaporatingFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.store.PouredStore;
import org.beveragethermal.core.surroundings.Face;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Orientation;
import org.beveragethermal.core.surroundings.SunOptics;
import org.beveragethermal.core.surroundings.WallPatch;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * The free surface of the drink in an open vessel: a junction through which the drink exchanges heat with what is above it, and the mass
 * that goes with the heat of evaporation.
 *
 * <p>The mass is that heat over the {@linkplain EvaporatingFilm#latentHeat latent heat} at the temperature of the surface, below 0 °C that of
 * sublimation, and takes along its part of the drink's enthalpy, so that its leaving changes no temperature by itself. Left out: that
 * what evaporates cools from the drink's temperature to the surface's on its way (about 0.2 % of the latent heat per kelvin), and that
 * it is water alone that leaves, and the drink gets stronger.
 *
 * @param junction the surface
 * @param evaporation its account of evaporation
 * @param enthalpy specific enthalpy of the drink [J/kg] against temperature [K]
 */
record DrinkSurface(JunctionPath junction, int evaporation, SmoothFunction enthalpy) implements Path {

    /** Evaporation fades once less than this part of what was poured is left [-]. */
    private static final double LAST_PART = 0.02;

    /** Nusselt number, on a quarter of the diameter, of conduction from a disc into what lies on one side of it. */
    private static final double CONDUCTION = 2 / Math.PI;

    /** Fades from 1 to 0 as a mass goes from some mass to nothing. */
    private record Fade(double massKg) implements SmoothFunction {
        @Override
        public double at(double x) {
            return SmoothMath.fade(x / massKg);
        }

        @Override
        public double slope(double x) {
            return SmoothMath.fadeSlope(x / massKg) / massKg;
        }
    }

    /** Activity of the water in a drink: its mole fraction; of a liquid whose composition is not known that of water. */
    static double waterActivity(Liquid liquid) {
        return liquid instanceof Beverage drink ? EvaporatingFilm.idealWaterActivity(drink.composition()) : 1;
    }

    /** The patch of a drink's surface, at the rim for what is around it. */
    static WallPatch patch(FilledVessel now, SunOptics optics) {
        double radius = now.vessel().profile().innerRadiusM(now.liquidHeightM());
        double height = now.vessel().profile().heightM();
        return new WallPatch(
                height,
                height,
                Math.PI * radius * radius,
                2 * radius,
                GasSpace.LIQUID_EMISSIVITY,
                Orientation.END_FACING_UP,
                optics,
                waterActivity(now.liquid()));
    }

    /** From the drink to its surface: colder than the drink it sinks and overturns, warmer it lies on it. */
    static Link below(Node contents, WallPatch patch, Fluid drink) {
        ConvectiveFilm film = ConvectiveFilm.free(
                        patch.outerAreaM2(), patch.diameterM() / 4, drink, HorizontalPlate.UNSTABLE_MCADAMS_BOTH)
                .whenColder(HorizontalPlate.STABLE_MCADAMS)
                .atLeast(CONDUCTION);
        return Link.of(contents, "convection", film).scaledBy(Multipliers.INSIDE_FILM);
    }

    /** The paths of a surface with what touches it. */
    static List<Path> of(
            String name, Node contents, WallPatch patch, FilledVessel now, DrinkFit drink, List<Face> faces) {
        Link below = below(contents, patch, drink.fluid());
        List<Path> paths = new ArrayList<>();
        for (Face face : faces) {
            paths.add(
                    contents.store() instanceof PouredStore
                            ? drying(name, contents, below, now, drink.specificEnthalpy(), face)
                            : face.joinedTo(below, name));
        }
        return paths;
    }

    private static Path drying(
            String name, Node contents, Link below, FilledVessel now, SmoothFunction enthalpy, Face face) {
        AmountWeight fade = new AmountWeight(contents, PouredStore.MASS, new Fade(LAST_PART * now.liquidMassKg()));
        List<Link> links = new ArrayList<>();
        links.add(below);
        int evaporation = -1;
        for (Link link : face.links()) {
            if (link.mechanism().equals(EvaporatingFilm.MECHANISM)) {
                evaporation = links.size() - 1;
                links.add(link.weightedBy(fade));
            } else {
                links.add(link);
            }
        }
        JunctionPath junction = JunctionPath.of(name + ", " + face.name(), links);
        return evaporation < 0 ? junction : new DrinkSurface(junction, evaporation, enthalpy);
    }

    @Override
    public String name() {
        return junction.name();
    }

    @Override
    public List<End> ends() {
        return junction.ends();
    }

    @Override
    public List<String> multipliers() {
        return junction.multipliers();
    }

    @Override
    public List<Account> accounts() {
        List<Account> accounts = new ArrayList<>(junction.accounts());
        accounts.add(Account.change("evaporated", 0, PouredStore.MASS));
        accounts.add(Account.heat("vapour", 0, evaporation + 1));
        return accounts;
    }

    @Override
    public double[] knots() {
        return junction.knots();
    }

    @Override
    public void evaluate(PathEvaluation e) {
        double surfaceK = junction.evaluateAtSurface(e);
        int mass = junction.accounts().size();
        double t = e.temperatureK(0);
        double perJoule = 1 / EvaporatingFilm.latentHeat().at(surfaceK);
        double heat = e.flowOf(evaporation);
        double h = enthalpy.at(t);
        e.flow(mass, -heat * perJoule);
        e.flow(mass + 1, heat * perJoule * h);
        if (!e.wantsDerivatives()) {
            return;
        }
        double bySurface =
                -heat * perJoule * perJoule * EvaporatingFilm.latentHeat().slope(surfaceK);
        double byTime = e.timeDerivativeOf(evaporation) * perJoule + bySurface * junction.surfaceByTime(e, surfaceK);
        e.flowByTime(mass, -byTime);
        e.flowByTime(mass + 1, byTime * h);
        int input = ends().size();
        for (int end = 0; end < ends().size(); end++) {
            double slope =
                    e.derivativeOf(evaporation, end) * perJoule + bySurface * junction.surfaceByTemperature(e, end);
            e.flowByTemperature(mass, end, -slope);
            e.flowByTemperature(mass + 1, end, slope * h + (end == 0 ? heat * perJoule * enthalpy.slope(t) : 0));
            for (int k = 0; k < e.amountCount(end); k++) {
                double byAmount = e.derivativeOf(evaporation, input++) * perJoule
                        + bySurface * junction.surfaceByAmount(e, surfaceK, end, k);
                e.flowByAmount(mass, end, k, -byAmount);
                e.flowByAmount(mass + 1, end, k, byAmount * h);
            }
        }
        for (int m = 0; m < multipliers().size(); m++) {
            double slope = e.multiplierDerivativeOf(evaporation, m) * perJoule
                    + bySurface * junction.surfaceByMultiplier(e, surfaceK, m);
            e.flowByMultiplier(mass, m, -slope);
            e.flowByMultiplier(mass + 1, m, slope * h);
        }
    }
}
