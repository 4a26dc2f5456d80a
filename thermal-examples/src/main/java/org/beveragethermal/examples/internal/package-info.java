/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Charts as SVG and pieces of HTML, shared by the books of this module; not for users and not part of the API.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  courses and bands → SvgChart → SVG        texts → Html → escaped HTML
 * </pre>
 *
 * <p><b>Use.</b> By packages of the examples only.
 */
@NullMarked
package org.beveragethermal.examples.internal;

import org.jspecify.annotations.NullMarked;
