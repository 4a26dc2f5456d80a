/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Charts as SVG and pieces of HTML, shared by the books of this module; not for users and not part of the API.
 */
@NullMarked
package org.beveragethermal.examples.internal;

import org.jspecify.annotations.NullMarked;
