/* SPDX-License-Identifier: Apache-2.0 */
/** Questions that hosts and engineers ask, each answered by one call; the tables of {@code docs/questions.md}. */
@NullMarked
package org.beveragethermal.questions;

import org.jspecify.annotations.NullMarked;
