/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Numerical helpers shared by the packages of this module; not for users and not part of the API.
 */
@NullMarked
package org.beveragethermal.core.internal;

import org.jspecify.annotations.NullMarked;
