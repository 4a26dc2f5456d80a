/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Helpers shared by the packages of this module; not for users and not part of the API.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  figures and texts of several packages of the service → one form
 * </pre>
 *
 * <p><b>Use.</b> By packages of this library only; nothing here is kept for others.
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.service.internal;

import org.jspecify.annotations.NullMarked;
