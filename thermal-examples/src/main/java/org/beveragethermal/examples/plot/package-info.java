/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Plots for researchers: predictions with bands, residuals, profiles of the likelihood, tornadoes and heat accounts.
 *
 * <p><b>Problem.</b> A fit and a spread are judged by eye before they are believed, and the picture goes into a report.
 *
 * <p><b>Use.</b> One factory of {@link org.beveragethermal.examples.plot.Plot} for each kind of result; what comes out is SVG or PNG.
 *
 * <pre>{@code
 * FitResult result = Fit.builder()...build().run();
 * String svg = Plot.prediction("bottle in our refrigerator", timesS, result.band("Tuesday", 0.95), observations).svg();
 * byte[] png = Plot.residuals("the same", result.residuals()).png();
 * Plot.profile("film outside", result.profile(Multipliers.AIR_FILM, 0.95)).svg();
 * Plot.tornado("minutes to 10 °C", "min", tornado).svg();
 * Plot.account("first half hour", account).svg();
 * }</pre>
 *
 * <p><b>Method.</b> The charts are drawn by XChart, which no signature shows. The same plot is the same SVG at each run on one machine;
 * letters are drawn with its fonts, so that another machine may give another. Series differ by dashes and marks, not by colour alone.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  result of core (bands, residuals, profile, tornado, account) → Plot → svg() or png()
 * </pre>
 */
@NullMarked
package org.beveragethermal.examples.plot;

import org.jspecify.annotations.NullMarked;
