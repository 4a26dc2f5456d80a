/* SPDX-License-Identifier: Apache-2.0 */
/**
 * The packaged libraries as a modular application meets them: on the module path, by their module names.
 *
 * <p>The build's own tests run on the class path, where a package that is not exported, a missing {@code requires} or a
 * split package goes unseen.
 */
@NullMarked
package org.beveragethermal.modulepath;

import org.jspecify.annotations.NullMarked;
