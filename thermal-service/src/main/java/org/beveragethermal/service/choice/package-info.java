/* SPDX-License-Identifier: Apache-2.0 */
/** Chooses one of several routes for each item so that shared gear is never overloaded and the costs are least, with proof. */
@NullMarked
package org.beveragethermal.service.choice;

import org.jspecify.annotations.NullMarked;
