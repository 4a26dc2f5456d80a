/* SPDX-License-Identifier: Apache-2.0 */
/**
 * The property book: what thermal-materials knows, as pages to look at.
 *
 * <p>{@link org.beveragethermal.examples.propertybook.PropertyBook} writes a folder of HTML pages with a figure for each property,
 * all from the code of thermal-materials, so that the book and the library cannot differ. A reader sees each value with the
 * range in which it was published, how sure it is and where it comes from.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  thermal-materials: properties, sources, ranges → PropertyBook → folder of pages with figures
 * </pre>
 *
 * <p><b>Use.</b> {@code PropertyBook.write(folder)} writes all pages; the build compares them with the committed ones.
 */
@NullMarked
package org.beveragethermal.examples.propertybook;

import org.jspecify.annotations.NullMarked;
