/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Accuracy tables of the documents, written from the rows that outside checks, observed orders and properties leave behind.
 * Here too: what holds README.md, the theory manual and the documentation of packages to the code, and tests that use what no example needs.
 *
 * <p>A table typed by hand goes stale; these are rewritten between marks by {@code mvn verify -Ddocuments.write}, and an
 * ordinary {@code mvn verify} fails when a committed table differs from the rows of that very run.
 */
@NullMarked
package org.beveragethermal.documents;

import org.jspecify.annotations.NullMarked;
