/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class SvgChartTest {

    private static final Figure LINE = Figure.of(
            "f",
            "A < B & \"C\"",
            "x [1]",
            "y [1]",
            List.of(
                    new Curve("", List.of(0.0, 10.0), List.of(0.0, 100.0)),
                    new Curve("a", List.of(0.0, 10.0), List.of(0.0, 50.0))));

    private static Document parsed(Figure figure) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(SvgChart.draw(figure))));
    }

    private static double[] points(Document svg, int curve) {
        String points = ((Element) svg.getElementsByTagName("polyline").item(curve)).getAttribute("points");
        return java.util.Arrays.stream(points.split("[ ,]"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    @Test
    void isWellFormedAndLinearFromFrameToFrame() throws Exception {
        Document svg = parsed(LINE);
        Element frame = (Element) svg.getElementsByTagName("rect").item(1);
        double left = Double.parseDouble(frame.getAttribute("x"));
        double top = Double.parseDouble(frame.getAttribute("y"));
        double width = Double.parseDouble(frame.getAttribute("width"));
        double height = Double.parseDouble(frame.getAttribute("height"));

        assertThat(points(svg, 0)).containsExactly(new double[] {left, top + height, left + width, top}, within(0.11));
        assertThat(points(svg, 1))
                .containsExactly(new double[] {left, top + height, left + width, top + height / 2}, within(0.11));
    }

    @Test
    void equalRatiosTakeEqualLengthsOnALogarithmicScale() throws Exception {
        Figure powers = Figure.of(
                        "f", "t", "x", "y", List.of(new Curve("a", List.of(0.0, 1.0, 2.0), List.of(1.0, 10.0, 100.0))))
                .onLogarithmicScale();
        double[] points = points(parsed(powers), 0);
        assertThat(points[1] - points[3]).isCloseTo(points[3] - points[5], within(0.11));
    }

    @Test
    void aFigureToScaleHasOneScale() throws Exception {
        Figure square = Figure.of("f", "t", "x", "y", List.of(new Curve("a", List.of(-1.0, 1.0), List.of(0.0, 2.0))))
                .toScale();
        double[] points = points(parsed(square), 0);
        assertThat(points[2] - points[0]).isCloseTo(points[1] - points[3], within(0.2));
    }

    @Test
    void marksAreRoundNumbersInsideTheAxis() {
        assertThat(Axis.linear(-19.7, 78).ticks())
                .extracting(BigDecimal::intValueExact)
                .containsExactly(-20, 0, 20, 40, 60, 80);
        assertThat(Axis.logarithmic(0.3, 13).ticks())
                .extracting(BigDecimal::doubleValue)
                .containsExactly(0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0);
        assertThat(Axis.logarithmic(0.3, 1300).ticks())
                .extracting(BigDecimal::doubleValue)
                .containsExactly(1.0, 10.0, 100.0, 1000.0);
        assertThat(Axis.linear(5, 5).ticks()).isNotEmpty();
    }

    @Test
    void numbersKeepFourDigits() {
        assertThat(Html.number(0.14403)).isEqualTo("0.1440");
        assertThat(Html.number(-20)).isEqualTo("-20");
        assertThat(Html.number(998.2067)).isEqualTo("998.2");
        assertThat(Html.number(333426.5)).isEqualTo("333400");
        assertThat(Html.number(1.4e-7)).isEqualTo("1.400 × 10^-07");
        assertThat(Html.number(0)).isEqualTo("0");
    }
}
