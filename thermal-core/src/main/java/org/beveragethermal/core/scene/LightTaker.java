/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import org.beveragethermal.core.network.Node;

/**
 * A part of the contents that takes up light which has passed through a band of wall.
 *
 * @param node the part
 * @param portion portion of the band's outer area behind which it lies [-], above 0
 */
record LightTaker(Node node, double portion) {}
