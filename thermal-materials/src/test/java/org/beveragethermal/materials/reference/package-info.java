/* SPDX-License-Identifier: Apache-2.0 */

/** Tables of published values, one file per source, and how a formula is held against one. */
@NullMarked
package org.beveragethermal.materials.reference;

import org.jspecify.annotations.NullMarked;
