/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.provenance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

class UncertaintyTest {

    @Test
    void standardUncertaintiesFollowTheGuide() {
        // JCGM 100:2008, 4.3.7 and 4.3.9.
        assertThat(Uncertainty.rectangular(3).standardUncertainty(10)).isCloseTo(3 / Math.sqrt(3), within(1e-15));
        assertThat(Uncertainty.triangular(3).standardUncertainty(10)).isCloseTo(3 / Math.sqrt(6), within(1e-15));
        assertThat(Uncertainty.normal(3).standardUncertainty(10)).isEqualTo(3);
        assertThat(Uncertainty.exact().standardUncertainty(10)).isZero();
        assertThat(Uncertainty.normalRelative(0.1).standardUncertainty(-10)).isEqualTo(1);
        assertThat(Uncertainty.rectangularRelative(0.1).standardUncertainty(10))
                .isCloseTo(1 / Math.sqrt(3), within(1e-15));
        assertThat(Uncertainty.triangularRelative(0.1).standardUncertainty(10))
                .isCloseTo(1 / Math.sqrt(6), within(1e-15));
    }

    /** The three branches of the algorithm: centre, near tails, far tail. */
    @Test
    void normalQuantilesAgreeWithAReference() {
        double[][] table = {
            {1e-20, -9.262340089798409},
            {0.001, -3.090232306167813},
            {0.05, -1.6448536269514729},
            {0.25, -0.6744897501960817},
            {0.6, 0.2533471031357997},
            {0.9, 1.2815515655446004},
            {0.975, 1.959963984540054},
            {0.999999999, 5.997807019601637}
        };
        for (double[] row : table) {
            OutsideChecks.referenceLibrary("normal-quantile-" + row[0], "SciPy 1.17.1, scipy.stats.norm.ppf")
                    .what("standard normal quantile at " + row[0])
                    .unit("1")
                    .expected(row[1])
                    .withinRelative(1e-14)
                    .check(Uncertainty.normal(1).quantile(0, row[0]));
        }
    }

    @Test
    void quantilesOfBoundedShapesStayInside() {
        assertThat(Uncertainty.rectangular(2).quantile(10, 0.25)).isEqualTo(9);
        assertThat(Uncertainty.triangular(2).quantile(10, 0.125)).isCloseTo(9, within(1e-12));
        assertThat(Uncertainty.triangular(2).quantile(10, 0.875)).isCloseTo(11, within(1e-12));
        assertThat(Uncertainty.exact().quantile(10, 0.01)).isEqualTo(10);
    }

    @Property(seed = "201")
    void quantilesAreSymmetricAndMonotonic(
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.499) double p,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 100) double width) {
        for (Uncertainty u : new Uncertainty[] {
            Uncertainty.normal(width), Uncertainty.rectangular(width), Uncertainty.triangular(width)
        }) {
            double below = u.quantile(0, p);
            assertThat(below).isNegative();
            assertThat(u.quantile(0, 1 - p)).isCloseTo(-below, within(1e-9 * width));
            assertThat(u.quantile(0, p + 0.0005)).isGreaterThan(below);
            assertThat(u.quantile(0, 0.5)).isZero();
        }
    }

    /** The mean square of evenly spaced quantiles is the variance. */
    @Test
    void quantilesReproduceTheStandardUncertainty() {
        for (Uncertainty u : new Uncertainty[] {
            Uncertainty.normal(2), Uncertainty.rectangular(2), Uncertainty.triangularRelative(0.2)
        }) {
            int n = 20_000;
            double sum = 0;
            for (int i = 0; i < n; i++) {
                double deviation = u.quantile(10, (i + 0.5) / n) - 10;
                sum += deviation * deviation;
            }
            assertThat(Math.sqrt(sum / n)).isCloseTo(u.standardUncertainty(10), within(1e-3));
        }
    }

    @Test
    void scopeIsSharedUntilSaidOtherwise() {
        Uncertainty shared = Uncertainty.rectangular(1);
        assertThat(shared.scope()).isEqualTo(Uncertainty.Scope.SHARED);
        assertThat(shared.perVessel().scope()).isEqualTo(Uncertainty.Scope.PER_VESSEL);
        assertThat(shared.perVessel())
                .isNotEqualTo(shared)
                .isEqualTo(Uncertainty.rectangular(1).perVessel());
        assertThat(shared.perVessel().hashCode())
                .isEqualTo(Uncertainty.rectangular(1).perVessel().hashCode());
        assertThat(shared.isRelative()).isFalse();
        assertThat(Uncertainty.rectangularRelative(0.1).isRelative()).isTrue();
        assertThat(shared.shape()).isEqualTo(Uncertainty.Shape.RECTANGULAR);
        assertThat(shared.perVessel()).hasToString("rectangular half-width 1 per vessel");
        assertThat(Uncertainty.exact()).hasToString("exact");
    }

    @Test
    void noWidthIsAWidthAndEachPartTellsUncertaintiesApart() {
        assertThat(Uncertainty.rectangular(0).quantile(5, 0.9)).isEqualTo(5);
        List<Uncertainty> different = List.of(
                Uncertainty.exact(),
                Uncertainty.normal(1),
                Uncertainty.normal(2),
                Uncertainty.normalRelative(1),
                Uncertainty.rectangular(1),
                Uncertainty.triangular(1));
        assertThat(different.stream().map(Uncertainty::hashCode)).doesNotHaveDuplicates();
        assertThat(different).doesNotHaveDuplicates();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> Uncertainty.normal(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uncertainty.normalRelative(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uncertainty.rectangular(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uncertainty.rectangularRelative(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uncertainty.triangular(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uncertainty.triangularRelative(-1)).isInstanceOf(IllegalArgumentException.class);
        Uncertainty u = Uncertainty.normal(1);
        for (double p : new double[] {0, 1, -0.1, 1.1, Double.NaN}) {
            assertThatThrownBy(() -> u.quantile(0, p)).isInstanceOf(IllegalArgumentException.class);
        }
        for (double p : new double[] {0, 1}) {
            assertThatThrownBy(() -> Uncertainty.rectangular(1).quantile(0, p))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("strictly between");
        }
        assertThatThrownBy(() -> u.quantile(Double.NaN, 0.5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> u.standardUncertainty(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uncertainty.normalRelative(2).standardUncertainty(Double.MAX_VALUE))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Uncertainty.normalRelative(1).quantile(Double.MAX_VALUE, 0.99))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
