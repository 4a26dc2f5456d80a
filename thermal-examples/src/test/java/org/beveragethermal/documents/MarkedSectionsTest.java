/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkedSectionsTest {
    @Test
    void onlyTheBodiesChange() {
        String document = "a\n<!-- checks:begin x -->\nold\n<!-- checks:end x -->\nb "
                + "<!-- checks:begin y --><!-- checks:end y -->\n";

        String rewritten = MarkedSections.rewritten(document, name -> "new $1 " + name);

        assertThat(rewritten)
                .isEqualTo("a\n<!-- checks:begin x -->\nnew $1 x\n<!-- checks:end x -->\nb "
                        + "<!-- checks:begin y -->\nnew $1 y\n<!-- checks:end y -->\n");
        assertThat(MarkedSections.body(rewritten, "y")).isEqualTo("new $1 y");
        assertThat(MarkedSections.rewritten(rewritten, name -> "new $1 " + name))
                .isEqualTo(rewritten);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!-- checks:begin x -->",
                "<!-- checks:end x -->",
                "<!-- checks:end x --><!-- checks:begin x -->",
                "<!-- checks:begin x --><!-- checks:end y -->",
                "<!-- checks:begin x --><!-- checks:end x --><!-- checks:begin x --><!-- checks:end x -->",
                "<!-- checks:begin x --><!-- checks:begin y --><!-- checks:end x --><!-- checks:end y -->"
            })
    void marksWithoutTheirPartnerAreRefused(String document) {
        assertThatIllegalArgumentException().isThrownBy(() -> MarkedSections.names(document));
    }
}
