/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.calibration.Band;
import org.beveragethermal.core.calibration.Fit;
import org.beveragethermal.core.calibration.FitResult;
import org.beveragethermal.core.calibration.Observations;
import org.beveragethermal.core.calibration.Parameter;
import org.beveragethermal.core.calibration.Sensed;
import org.beveragethermal.core.calibration.TemperatureModel;
import org.beveragethermal.core.prediction.HeatAccount;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.Tornado;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Each kind of plot, of real results: whole SVG, the same each time, PNG of the size it says. Readings are simulated, with our own noise. */
class PlotTest {

    private static final Duration LASTS = Duration.ofHours(4);
    private static final double NOISE_K = 0.1;

    private static final double[] TIMES_S = times();
    private static final FitResult FIT = fit();
    private static final Map<String, Plot> PLOTS = plots();

    private static double[] times() {
        double[] times = new double[24];
        for (int i = 0; i < times.length; i++) {
            times[i] = 600.0 * i;
        }
        return times;
    }

    private static Prediction chilling(double startK, NetworkSolver solver) {
        return Lumped.of(Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), kelvins(startK)))
                .with(solver)
                .expose(in(Refrigerator.at(celsius(5)), LASTS));
    }

    private static NetworkSolver faster(double airFilm) {
        return NetworkSolver.standard().withMultipliers(Map.of(Multipliers.AIR_FILM, airFilm));
    }

    private static Observations readings() {
        SplittableRandom random = new SplittableRandom(11);
        double[] truth = chilling(295, faster(1.2)).meanTemperaturesK(TIMES_S);
        double[] read = new double[truth.length];
        for (int i = 0; i < read.length; i++) {
            read[i] = truth[i] + NOISE_K * random.nextGaussian();
        }
        return Observations.of(TIMES_S, read);
    }

    private static FitResult fit() {
        TemperatureModel model = TemperatureModel.of(
                        TIMES_S,
                        (values, solver) -> Sensed.in(chilling(Objects.requireNonNull(values.get("start")), solver)))
                .multipliers(Multipliers.AIR_FILM)
                .inputs("start");
        return Fit.builder()
                .parameter(Parameter.of(Multipliers.AIR_FILM, 1).between(0.1, 10))
                .parameter(Parameter.of("start", 294))
                .run("run", model, readings())
                .build()
                .run();
    }

    private static Tornado tornado() {
        return Tornado.of(
                List.of(
                        UncertainInput.factor("film in the air", Uncertainty.normalRelative(0.15)),
                        new UncertainInput("start [K]", 295, Uncertainty.normal(0.3))),
                0.9,
                values -> chilling(
                                        Objects.requireNonNull(values.get("start [K]")),
                                        faster(Objects.requireNonNull(values.get("film in the air"))))
                                .meanTemperatureK(3600)
                        - 273.15);
    }

    private static Map<String, Plot> plots() {
        Map<String, Plot> plots = new LinkedHashMap<>();
        plots.put("prediction", Plot.prediction("Chilling & fitting", TIMES_S, FIT.band("run", 0.95), readings()));
        List<Interval> intervals = new ArrayList<>();
        for (double time : TIMES_S) {
            double mean = FIT.band("run", 0.9).points().get(0).value() - time / 3600;
            intervals.add(new Interval(mean - 1, mean, mean + 1, 0.9));
        }
        plots.put("spread", Plot.prediction("An interval", TIMES_S, intervals));
        plots.put("residuals", Plot.residuals("Residuals", FIT.residuals()));
        plots.put("profile", Plot.profile("Profile of the air film", FIT.profile(Multipliers.AIR_FILM, 0.95)));
        plots.put("tornado", Plot.tornado("After an hour", "°C", tornado()));
        plots.put(
                "account",
                Plot.account(
                        "The first half hour",
                        chilling(295, NetworkSolver.standard())
                                .explainAt(Duration.ofMinutes(30))
                                .account()));
        return plots;
    }

    @Test
    void isWholeSvgAndTheSameEachTime() throws Exception {
        Path folder = Files.createDirectories(Path.of("target", "plots"));
        for (Map.Entry<String, Plot> entry : PLOTS.entrySet()) {
            String svg = entry.getValue().svg();
            Files.writeString(folder.resolve(entry.getKey() + ".svg"), svg);
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            String root = factory.newDocumentBuilder()
                    .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                    .getDocumentElement()
                    .getTagName();
            assertThat(root).isEqualTo("svg");
            assertThat(svg).containsOnlyOnce("<title>");
            assertThat(entry.getValue().svg()).as(entry.getKey()).isEqualTo(svg);
            assertThat(Pattern.compile("\\b20\\d\\d-\\d\\d").matcher(svg).find())
                    .as("a date in " + entry.getKey())
                    .isFalse();
        }
    }

    @Test
    void isTitledForThoseWhoDoNotSeeIt() {
        assertThat(Objects.requireNonNull(PLOTS.get("prediction")).svg())
                .contains("<title>Chilling &amp; fitting</title>");
    }

    @Test
    void isTheSameInAnyLocale() {
        Map<String, String> before = new LinkedHashMap<>();
        PLOTS.forEach((name, plot) -> before.put(name, plot.svg()));
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            plots().forEach((name, plot) -> assertThat(plot.svg()).as(name).isEqualTo(before.get(name)));
        } finally {
            Locale.setDefault(locale);
        }
    }

    @Test
    void isAPictureOfItsSize() throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "plots"));
        for (Map.Entry<String, Plot> entry : PLOTS.entrySet()) {
            byte[] png = entry.getValue().png();
            Files.write(folder.resolve(entry.getKey() + ".png"), png);
            var image = ImageIO.read(new ByteArrayInputStream(png));
            assertThat(image.getWidth()).isEqualTo(800);
            assertThat(image.getHeight()).isEqualTo(500);
            assertThat(java.util.Arrays.stream(image.getRGB(0, 0, 800, 500, null, 0, 800))
                            .distinct()
                            .count())
                    .as("something is drawn")
                    .isGreaterThan(10);
        }
    }

    @Test
    void refusesWhatCannotBeDrawn() {
        Band band = FIT.band("run", 0.95);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Plot.prediction("short", new double[] {0}, band, readings()))
                .withMessageContaining("1 values")
                .withMessageContaining("24");
        List<ThrowingCallable> nothing = List.of(
                () -> Plot.prediction("none", new double[0], List.of()),
                () -> Plot.tornado("none", "K", new Tornado(1, List.of())),
                () -> Plot.account("none", HeatAccount.none()));
        nothing.forEach(
                make -> assertThatIllegalArgumentException().isThrownBy(make).withMessageContaining("at least"));
    }
}
