/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;

/** A data set of NIST's Statistical Reference Datasets with its model; slopes by automatic differentiation (Commons Math). */
record Strd(
        String name,
        List<double[]> parameters,
        double sumOfSquares,
        double standardDeviation,
        int degreesOfFreedom,
        List<double[]> data) {

    static final List<String> NAMES = List.of(
            "Misra1a",
            "Misra1b",
            "Chwirut2",
            "Gauss1",
            "DanWood",
            "Lanczos3",
            "Hahn1",
            "Roszman1",
            "ENSO",
            "Thurber",
            "Rat42",
            "Nelson",
            "MGH17");

    static Strd read(String name) {
        List<double[]> parameters = new ArrayList<>();
        List<double[]> data = new ArrayList<>();
        double[] certified = new double[3];
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                java.util.Objects.requireNonNull(Strd.class.getResourceAsStream("strd/" + name + ".csv")),
                StandardCharsets.UTF_8))) {
            for (String line : lines.lines().toList()) {
                if (line.startsWith("#")) {
                    continue;
                }
                List<String> fields = List.of(line.split(",", -1));
                double[] numbers =
                        fields.stream().skip(1).mapToDouble(Double::parseDouble).toArray();
                switch (fields.get(0).charAt(0)) {
                    case 'b' -> parameters.add(numbers);
                    case 'c' -> certified = numbers;
                    default -> data.add(numbers);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Strd(name, parameters, certified[0], certified[1], (int) certified[2], data);
    }

    List<String> names() {
        return IntStream.rangeClosed(1, parameters.size())
                .mapToObj(k -> "b" + k)
                .toList();
    }

    Observations observations() {
        double[] at = IntStream.range(0, data.size()).asDoubleStream().toArray();
        return Observations.of(
                at,
                data.stream()
                        .mapToDouble(row -> name.equals("Nelson") ? Math.log(row[0]) : row[0])
                        .toArray());
    }

    Model model() {
        double[] at = IntStream.range(0, data.size()).asDoubleStream().toArray();
        return Model.of(names(), at, (i, values, slopes) -> {
            DerivativeStructure[] b = new DerivativeStructure[values.length];
            for (int k = 0; k < b.length; k++) {
                b[k] = new DerivativeStructure(b.length, 1, k, values[k]);
            }
            double[] row = data.get((int) i);
            DerivativeStructure y = formula(b, row[1], row.length > 2 ? row[2] : 0);
            for (int k = 0; k < b.length; k++) {
                int[] orders = new int[b.length];
                orders[k] = 1;
                slopes[k] = y.getPartialDerivative(orders);
            }
            return y.getValue();
        });
    }

    /** A fit from start 0 or 1. */
    FitResult fit(int start) {
        Fit.Builder builder = Fit.builder();
        for (int k = 0; k < parameters.size(); k++) {
            builder.parameter(Parameter.of(names().get(k), parameters.get(k)[start]));
        }
        return builder.run(name, model(), observations()).build().run();
    }

    /** The model as the data set states it. */
    private DerivativeStructure formula(DerivativeStructure[] b, double x, double x2) {
        return switch (name) {
            case "Misra1a" -> b[0].multiply(b[1].multiply(-x).exp().negate().add(1));
            case "Misra1b" ->
                b[0].multiply(b[1].multiply(x / 2).add(1).pow(-2).negate().add(1));
            case "Chwirut2" -> b[0].multiply(-x).exp().divide(b[1].add(b[2].multiply(x)));
            case "Gauss1" ->
                b[0].multiply(b[1].multiply(-x).exp())
                        .add(bell(b[2], b[3], b[4], x))
                        .add(bell(b[5], b[6], b[7], x));
            case "DanWood" -> b[0].multiply(b[1].multiply(Math.log(x)).exp());
            case "Lanczos3" -> decay(b[0], b[1], x).add(decay(b[2], b[3], x)).add(decay(b[4], b[5], x));
            case "Hahn1", "Thurber" ->
                b[0].add(b[1].multiply(x))
                        .add(b[2].multiply(x * x))
                        .add(b[3].multiply(x * x * x))
                        .divide(b[4].multiply(x)
                                .add(b[5].multiply(x * x))
                                .add(b[6].multiply(x * x * x))
                                .add(1));
            case "Roszman1" ->
                b[0].subtract(b[1].multiply(x))
                        .subtract(b[2].divide(b[3].negate().add(x)).atan().divide(Math.PI));
            case "ENSO" ->
                b[0].add(b[1].multiply(Math.cos(2 * Math.PI * x / 12)))
                        .add(b[2].multiply(Math.sin(2 * Math.PI * x / 12)))
                        .add(wave(b[4], b[5], b[3], x))
                        .add(wave(b[7], b[8], b[6], x));
            case "Rat42" -> b[0].divide(b[1].subtract(b[2].multiply(x)).exp().add(1));
            case "Nelson" ->
                b[0].subtract(b[1].multiply(x).multiply(b[2].multiply(-x2).exp()));
            case "MGH17" -> b[0].add(decay(b[1], b[3], x)).add(decay(b[2], b[4], x));
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static DerivativeStructure decay(DerivativeStructure size, DerivativeStructure rate, double x) {
        return size.multiply(rate.multiply(-x).exp());
    }

    private static DerivativeStructure bell(
            DerivativeStructure size, DerivativeStructure place, DerivativeStructure width, double x) {
        return size.multiply(place.negate().add(x).divide(width).pow(2).negate().exp());
    }

    private static DerivativeStructure wave(
            DerivativeStructure cosine, DerivativeStructure sine, DerivativeStructure period, double x) {
        DerivativeStructure angle = period.reciprocal().multiply(2 * Math.PI * x);
        return cosine.multiply(angle.cos()).add(sine.multiply(angle.sin()));
    }
}
