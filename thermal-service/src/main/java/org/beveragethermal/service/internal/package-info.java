/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Helpers shared by the packages of this module; not for users and not part of the API.
 */
@NullMarked
package org.beveragethermal.service.internal;

import org.jspecify.annotations.NullMarked;
