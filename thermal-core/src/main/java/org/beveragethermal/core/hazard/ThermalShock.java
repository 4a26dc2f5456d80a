/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.internal.Figures;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.WallBand;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.HeatTransferCoefficient;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Station;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * Thermal shock of a vessel's wall: the difference of temperature <b>through</b> it, against what soda-lime glass bears.
 *
 * <p>What glass bears is measured by dropping it from one bath into another (ASTM C149, ISO 7459) and stated as the difference between
 * the baths, {@link #ALLOWABLE_QUENCH}. A plunge into water is judged by that ({@link #ofPlunge}). What stands through the wall is a part of
 * it that grows with the film and the thickness ({@link #throughWallOfPlunge}); a prediction is judged by what the test itself puts
 * through a wall as thick, with a film of {@link #TEST_FILM} ({@link #ofPrediction}). In a plunge the thickest place counts, base
 * included.
 *
 * <p>Cooling the outside pulls its surface apart and is the dangerous way; warming it is judged alike, which is careful. Bottles that
 * stand under pressure or are scratched bear less.
 *
 * <p>All methods are pure.
 *
 * <p>Theory manual, equation (6.8).
 */
public final class ThermalShock {

    private static final Source MEMORY = new Source(
            "thermal shock of glass containers",
            "40 to 60 K between the baths of ASTM C149 or ISO 7459 for containers of soda-lime glass, from memory; widened downwards for"
                    + " scratched ones",
            Source.Kind.FROM_MEMORY);

    /**
     * Difference between the baths that containers of soda-lime glass bear: 50 K, a third either way, from memory.
     *
     * <p>The doubt, 33 K to 67 K, is that of one container about which nothing is known. What the trade validates new containers to, 42 K,
     * and where the service module's cautions stop, lies inside it and does not contradict it: sound glass mostly bears more than it was
     * validated to, scratched glass less. {@link WallMargin.Doubtful} begins below that stop and {@link WallMargin.Beyond} well above it,
     * so that advice, which stops there, is more careful than what is called beyond here.
     */
    public static final Constant ALLOWABLE_QUENCH = new Constant(
            "difference between baths that soda-lime glass containers bear",
            50,
            "K",
            Uncertainty.rectangular(17),
            MEMORY);

    /** Heat transfer coefficient of the test of containers: a basket plunged into stirred water, known to a factor of two. */
    public static final Constant TEST_FILM = new Constant(
            "heat transfer coefficient of the quench test",
            1500,
            "W/(m² K)",
            Uncertainty.rectangularRelative(0.5),
            new Source("quench test", "a plunge into stirred water, own estimate", Source.Kind.OWN_ASSUMPTION));

    private static final double COLDEST_K = 200;
    private static final double HOTTEST_K = 500;
    private static final double LARGEST_FILM = 1e5;
    /** Ends of the 95 % band of what glass bears. */
    private static final double FEW = 0.025;

    private static final double MOST = 0.975;
    private static final int LOOKS = 600;

    private ThermalShock() {}

    /**
     * The difference through a wall.
     *
     * @param after when it is greatest, time since the start
     * @param band index of the band of wall, into the prediction's bands
     * @param differenceK greatest difference between places through the wall [K], at least 0
     * @param outsideColder whether the outside is the colder side then
     */
    public record ThroughWall(Duration after, int band, double differenceK, boolean outsideColder) implements Answer {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "At most %.1f K stand through the wall, after %.1f min; the %s is the colder side then, and its surface is pulled.",
                    differenceK,
                    after.toMillis() / 60_000.0,
                    outsideColder ? "outside" : "inside");
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "throughWall",
                    Figures.with("afterS", after.toMillis() / 1000.0)
                            .and("band", band)
                            .and("differenceK", differenceK)
                            .and("outsideColder", outsideColder ? 1 : 0)
                            .map());
        }
    }

    /**
     * Judges a plunge of a wall of one temperature into water of another.
     *
     * @param vessel the vessel
     * @param wall temperature of the wall before it, 200 K to 500 K
     * @param water temperature of the water, 200 K to 500 K
     * @return whether the wall bears it
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside its range
     * @throws IllegalArgumentException if a quantity is null, not a temperature or not finite
     */
    public static WallMargin ofPlunge(Vessel vessel, Quantity<Temperature> wall, Quantity<Temperature> water) {
        double difference = Math.abs(SiValues.temperatureK(wall, "temperature of the wall", COLDEST_K, HOTTEST_K)
                - SiValues.temperatureK(water, "temperature of the water", COLDEST_K, HOTTEST_K));
        return judged(vessel.wall(), difference, 1);
    }

    /**
     * What of the difference between wall and water stands through the thickest place of the wall, at the moment when most does: a plane
     * wall with nothing behind it.
     *
     * @param vessel the vessel
     * @param wall temperature of the wall before the plunge, 200 K to 500 K
     * @param water temperature of the water, 200 K to 500 K
     * @param film heat transfer coefficient between them, above 0, at most 100 000 W/(m² K): some 500 in still water, 2000 under a tap
     * @return difference between the two sides [K], at least 0, at most that between wall and water
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public static double throughWallOfPlunge(
            Vessel vessel,
            Quantity<Temperature> wall,
            Quantity<Temperature> water,
            Quantity<HeatTransferCoefficient> film) {
        double difference = SiValues.temperatureK(wall, "temperature of the wall", COLDEST_K, HOTTEST_K)
                - SiValues.temperatureK(water, "temperature of the water", COLDEST_K, HOTTEST_K);
        double coefficient = SiValues.heatTransferCoefficient(
                film, "heat transfer coefficient of the plunge", Double.MIN_NORMAL, LARGEST_FILM);
        return Math.abs(difference) * SlabQuench.share(biot(vessel, thickestM(vessel.profile()), coefficient));
    }

    /**
     * Judges a prediction by the greatest difference through the wall, against what the test of containers puts through a wall as thick as
     * that band is at half its height.
     *
     * @param prediction a run of the vessel
     * @param vessel the vessel
     * @return whether the wall bears it
     */
    public static WallMargin ofPrediction(Prediction prediction, Vessel vessel) {
        ThroughWall greatest = throughWall(prediction);
        double share = shareInTest(vessel, prediction.bands().get(greatest.band()));
        return judged(vessel.wall(), greatest.differenceK(), share);
    }

    /**
     * What part of the difference between the baths the test of containers puts through a wall as thick as a band is at half its height:
     * its film is {@link #TEST_FILM}. A limit that is stated between baths, times this, is one for the difference through that wall.
     *
     * @param vessel the vessel
     * @param band a band of its wall
     * @return greatest difference between the two sides over the difference between the baths [-], 0 to 1
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the band lies outside the vessel
     */
    public static double shareInTest(Vessel vessel, WallBand band) {
        double thicknessM = vessel.profile().wallThicknessM(0.5 * (band.lowM() + band.highM()));
        return SlabQuench.share(biot(vessel, thicknessM, TEST_FILM.value()));
    }

    private static double biot(Vessel vessel, double thicknessM, double coefficient) {
        return coefficient * thicknessM / vessel.wall().thermalConductivity().value();
    }

    private static double thickestM(Profile profile) {
        return DoubleStream.concat(
                        DoubleStream.of(profile.baseThicknessM()),
                        profile.stations().stream()
                                .mapToDouble(Station::heightM)
                                .map(profile::wallThicknessM))
                .max()
                .orElseThrow();
    }

    /** The limits are those of the difference between baths, times the part of it that is compared. */
    private static WallMargin judged(Solid wall, double differenceK, double part) {
        if (!wall.name().equals(Solids.sodaLimeGlass().name())) {
            return new WallMargin.NotJudged(differenceK, "no difference that " + wall.name() + " bears is stated here");
        }
        double least = part * ALLOWABLE_QUENCH.uncertainty().quantile(ALLOWABLE_QUENCH.value(), FEW);
        double most = part * ALLOWABLE_QUENCH.uncertainty().quantile(ALLOWABLE_QUENCH.value(), MOST);
        if (differenceK < least) {
            return new WallMargin.Within(differenceK, least - differenceK);
        }
        return differenceK < most
                ? new WallMargin.Doubtful(differenceK, least, most)
                : new WallMargin.Beyond(differenceK, most);
    }

    /**
     * The greatest difference through the wall along a prediction, between the inner surface, the middle and the outer surface of a band.
     *
     * <p>Surfaces are those of the paths that end on them; a wall in layers is looked at from inside only. The middle of the wall is a
     * node with its capacity, so that a plunge shows as a difference between middle and surface; what happens in the first seconds
     * nearer to the surface is for {@link #throughWallOfPlunge}. The run is looked at at {@value #LOOKS} moments, closer together after
     * the start.
     *
     * @param prediction the run
     * @return the greatest difference, when and where
     */
    public static ThroughWall throughWall(Prediction prediction) {
        List<WallBand> bands = prediction.bands();
        double end = prediction.trajectory().endS();
        ThroughWall greatest = new ThroughWall(Duration.ZERO, 0, 0, false);
        for (double timeS : looks(end)) {
            for (int i = 0; i < bands.size(); i++) {
                ThroughWall here = at(prediction, i, timeS);
                if (here.differenceK() > greatest.differenceK()) {
                    greatest = here;
                }
            }
        }
        return greatest;
    }

    private static double[] looks(double endS) {
        return DoubleStream.concat(
                        DoubleStream.of(0),
                        IntStream.rangeClosed(1, LOOKS).mapToDouble(i -> endS * Math.pow((double) i / LOOKS, 2)))
                .toArray();
    }

    private static ThroughWall at(Prediction prediction, int index, double timeS) {
        WallBand band = prediction.bands().get(index);
        double middle = prediction.wallTemperatureK(index, timeS);
        double low = middle;
        double high = middle;
        double outward = 0;
        for (Path path : prediction.trajectory().paths(timeS)) {
            boolean inside = path.name().equals(band.insidePath());
            boolean outside = band.layers().isEmpty() && path.name().startsWith(band.outsidePath() + ",");
            if (path instanceof JunctionPath junction && (inside || outside)) {
                PathEvaluation here = prediction.trajectory().evaluate(path.name(), timeS);
                double surface = junction.surfaceTemperatureK(here);
                low = Math.min(low, surface);
                high = Math.max(high, surface);
                outward += inside ? surface - middle : middle - surface;
            }
        }
        return new ThroughWall(Duration.ofMillis(Math.round(timeS * 1000)), index, high - low, outward > 0);
    }

    /**
     * A judgement with its reason in sentences.
     *
     * @param vessel the vessel judged
     * @param margin the judgement
     * @return two sentences
     */
    public static String explain(Vessel vessel, WallMargin margin) {
        Objects.requireNonNull(margin, "margin");
        return String.format(
                Locale.ROOT,
                "%s of %s, %.1f mm at the thickest. %s",
                vessel.name(),
                vessel.wall().name(),
                1000 * thickestM(vessel.profile()),
                margin.explain());
    }
}
