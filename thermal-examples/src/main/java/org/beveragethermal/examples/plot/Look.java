/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.plot;

import java.awt.Color;
import java.awt.Font;
import java.util.Locale;
import java.util.TimeZone;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.Styler;

/** How all plots look, whatever the machine's locale. */
final class Look {

    static final int WIDTH = 800;
    static final int HEIGHT = 500;
    static final Color INK = new Color(0x1a1f26);
    static final Color FIRST = new Color(0x0b4f91);
    static final Color SECOND = new Color(0x8c3f00);
    /** Of the first colour's hue and far lighter, so that the two differ in grey too. */
    static final Color LIGHTER = new Color(0x6a94c8);

    static final Color PALE = new Color(0xe3edf8);
    static final Color LESS_PALE = new Color(0xb9d1ec);

    private static final Color GRID = new Color(0xd5dae0);
    private static final int SMALL = 12;
    private static final int LARGE = 16;

    private Look() {}

    static void on(AxesChartStyler styler, String x) {
        styler.setLocale(Locale.ROOT);
        styler.setTimezone(TimeZone.getTimeZone("UTC"));
        styler.setAxisTitleFont(new Font(Font.SANS_SERIF, Font.PLAIN, SMALL + 1));
        styler.setAxisTickLabelsFont(new Font(Font.SANS_SERIF, Font.PLAIN, SMALL));
        styler.setPlotGridLinesColor(GRID);
        styler.setXAxisTitleVisible(!x.isEmpty());
        styler.setChartTitleFont(new Font(Font.SANS_SERIF, Font.BOLD, LARGE));
        styler.setLegendFont(new Font(Font.SANS_SERIF, Font.PLAIN, SMALL));
        styler.setLegendLayout(Styler.LegendLayout.Horizontal);
        styler.setLegendBorderColor(Color.WHITE);
        styler.setChartBackgroundColor(Color.WHITE);
        styler.setPlotBackgroundColor(Color.WHITE);
        styler.setChartFontColor(INK);
    }
}
