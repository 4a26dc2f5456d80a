/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.provenance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;

class ProvenanceTest {
    private static final Source SOURCE = Source.published("key", "citation");
    private static final ValidityRange RANGE = new ValidityRange("temperature", 253.15, 383.15, "K");

    @Test
    void aRangePassesWhatIsInsideAndItsEnds() {
        assertThat(RANGE.require(300, SOURCE)).isEqualTo(300);
        assertThat(RANGE.require(253.15, "key")).isEqualTo(253.15);
        assertThat(RANGE.require(273.15 - 20, "key")).isEqualTo(253.15);
        assertThat(RANGE.contains(383.15)).isTrue();
        assertThat(RANGE.contains(383.16)).isFalse();
        assertThat(RANGE.contains(Double.NaN)).isFalse();
    }

    @Test
    void aRangeRefusesWhatIsOutsideNamingTheSource() {
        assertThatThrownBy(() -> RANGE.require(400, SOURCE)).isInstanceOfSatisfying(OutOfRangeException.class, e -> {
            assertThat(e).hasMessage("temperature 400 K: expected 253.15 K to 383.15 K (key)");
            assertThat(e.high()).isEqualTo(383.15);
        });
        assertThatThrownBy(() -> RANGE.require(Double.NaN, "key"))
                .isInstanceOf(IllegalArgumentException.class)
                .isNotInstanceOf(OutOfRangeException.class);
    }

    @Test
    void incompletePartsAreRefused() {
        assertThatThrownBy(() -> Source.published(" ", "citation")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Source.published("key", "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ValidityRange("", 0, 1, "K")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ValidityRange("t", 1, 0, "K")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ValidityRange("t", Double.NaN, 0, "K"))
                .isInstanceOf(IllegalArgumentException.class);
        Uncertainty u = Uncertainty.exact();
        assertThatThrownBy(() -> new Constant("", 1, "K", u, SOURCE)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Constant("c", 1, "", u, SOURCE)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Constant("c", Double.NaN, "K", u, SOURCE))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PropertyRecord("", "K", RANGE, u, SOURCE))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PropertyRecord("p", " ", RANGE, u, SOURCE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aConstantKnowsItsStandardUncertainty() {
        Constant c = new Constant("c", 10, "K", Uncertainty.normalRelative(0.1), SOURCE);
        assertThat(c.standardUncertainty()).isEqualTo(1);
    }
}
