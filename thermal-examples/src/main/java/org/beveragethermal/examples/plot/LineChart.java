/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.VectorGraphicsEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Lines, bands, marks and guides on two scales. */
final class LineChart implements Drawing {

    private static final float THIN = 1;
    private static final float THICK = 2;
    private static final BasicStroke DASHED =
            new BasicStroke(THIN, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {7, 4}, 0);

    private final XYChart chart = new XYChart(Look.WIDTH, Look.HEIGHT);
    private int bands;
    private int hidden;

    private LineChart() {}

    static LineChart titled(String title, String x, String y) {
        LineChart lines = new LineChart();
        lines.chart.setTitle(title);
        lines.chart.setXAxisTitle(x);
        lines.chart.setYAxisTitle(y);
        Look.on(lines.chart.getStyler(), x);
        lines.chart.getStyler().setLegendPosition(Styler.LegendPosition.OutsideS);
        return lines;
    }

    @Override
    public String title() {
        return chart.getTitle();
    }

    @Override
    public void writeSvg(OutputStream out) throws IOException {
        VectorGraphicsEncoder.saveVectorGraphic(chart, out, VectorGraphicsEncoder.VectorGraphicsFormat.SVG);
    }

    @Override
    public byte[] png() throws IOException {
        return BitmapEncoder.getBitmapBytes(chart, BitmapEncoder.BitmapFormat.PNG);
    }

    LineChart line(String name, double[] x, double[] y) {
        XYSeries series = add(name, x, y);
        drawn(series, Look.FIRST, new BasicStroke(THICK));
        return this;
    }

    LineChart marks(String name, double[] x, double[] y) {
        if (x.length > 0) {
            XYSeries series = add(name, x, y);
            series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
            series.setMarker(SeriesMarkers.CIRCLE);
            series.setMarkerColor(Look.INK);
        }
        return this;
    }

    /** A dashed straight line; without a name it is not in the legend. */
    LineChart guide(String name, double[] x, double[] y) {
        XYSeries series = add(name, x, y);
        drawn(series, Look.SECOND, DASHED);
        return this;
    }

    /** The ground between two lines. */
    LineChart band(String name, double[] x, double[] low, double[] high) {
        int n = x.length;
        double[] round = Arrays.copyOf(x, 2 * n);
        double[] edge = Arrays.copyOf(high, 2 * n);
        for (int i = 0; i < n; i++) {
            round[n + i] = x[n - 1 - i];
            edge[n + i] = low[n - 1 - i];
        }
        XYSeries series = add(name, round, edge);
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea);
        series.setFillColor(bands == 0 ? Look.PALE : Look.LESS_PALE);
        drawn(series, Look.FIRST, new BasicStroke(THIN / 2));
        bands++;
        return this;
    }

    private static void drawn(XYSeries series, Color colour, BasicStroke stroke) {
        series.setLineColor(colour);
        series.setLineStyle(stroke);
        series.setMarker(SeriesMarkers.NONE);
    }

    private XYSeries add(String name, double[] x, double[] y) {
        XYSeries series = chart.addSeries(name.isEmpty() ? "hidden " + hidden++ : name, x, y);
        series.setShowInLegend(!name.isEmpty());
        return series;
    }
}
