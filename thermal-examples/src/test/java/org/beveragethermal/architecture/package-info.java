/* SPDX-License-Identifier: Apache-2.0 */
/**
 * What may refer to what: the rules of the module map, checked on the compiled classes.
 *
 * <p>A rule that only stands in a guide erodes; here the build fails, and the message names the class and the line.
 */
@NullMarked
package org.beveragethermal.architecture;

import org.jspecify.annotations.NullMarked;
