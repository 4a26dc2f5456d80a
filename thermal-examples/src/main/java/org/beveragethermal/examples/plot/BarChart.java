/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.plot;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.VectorGraphicsEncoder;
import org.knowm.xchart.style.Styler;

/** Bars from zero, up or down, one place for each name. */
final class BarChart implements Drawing {

    private static final int SLANT_DEGREES = 25;
    private static final double FILLED = 0.6;

    private final CategoryChart chart = new CategoryChart(Look.WIDTH, Look.HEIGHT);
    private final List<String> names;

    private BarChart(List<String> names) {
        // The chart library takes two places of one name for one.
        this.names = IntStream.range(0, names.size())
                .mapToObj(i -> names.indexOf(names.get(i)) == i ? names.get(i) : names.get(i) + " (" + (i + 1) + ")")
                .toList();
    }

    static BarChart titled(String title, String axis, List<String> names) {
        BarChart bars = new BarChart(names);
        bars.chart.setTitle(title);
        bars.chart.setYAxisTitle(axis);
        Look.on(bars.chart.getStyler(), "");
        bars.chart
                .getStyler()
                .setOverlapped(true)
                .setAvailableSpaceFill(FILLED)
                .setXAxisLabelRotation(SLANT_DEGREES)
                .setLegendPosition(Styler.LegendPosition.OutsideS);
        return bars;
    }

    @Override
    public String title() {
        return chart.getTitle();
    }

    @Override
    public void writeSvg(OutputStream out) throws IOException {
        chart.getStyler().setLegendVisible(chart.getSeriesMap().size() > 1);
        VectorGraphicsEncoder.saveVectorGraphic(chart, out, VectorGraphicsEncoder.VectorGraphicsFormat.SVG);
    }

    @Override
    public byte[] png() throws IOException {
        chart.getStyler().setLegendVisible(chart.getSeriesMap().size() > 1);
        return BitmapEncoder.getBitmapBytes(chart, BitmapEncoder.BitmapFormat.PNG);
    }

    BarChart bars(String name, double[] values) {
        boolean first = chart.getSeriesMap().isEmpty();
        chart.addSeries(name, names, Arrays.stream(values).boxed().toList())
                .setFillColor(first ? Look.FIRST : Look.LIGHTER);
        return this;
    }
}
