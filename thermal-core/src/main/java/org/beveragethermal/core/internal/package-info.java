/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Numerical helpers shared by the packages of this module; not for users and not part of the API.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  properties and laws that are slow → fits (Chebyshev, pieces) with an error → SmoothFunction with slopes
 * </pre>
 *
 * <p><b>Use.</b> By packages of this library only; nothing here is kept for others.
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.core.internal;

import org.jspecify.annotations.NullMarked;
