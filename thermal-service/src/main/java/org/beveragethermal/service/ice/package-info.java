/* SPDX-License-Identifier: Apache-2.0 */
/**
 * How much ice to have at hand.
 *
 * <p><b>Problem.</b> So many bottles have to be cold by a time and stay cold until the end of the service, in a bucket of ice and water in a
 * warm room. How many kilograms of ice in what blocks, how much water, when is ice added, and how sure is that? Energy alone gives a bound
 * that is always too small; too little ice leaves the drinks lukewarm.
 *
 * <p><b>Use.</b> Describe the bath and what is wanted; read the sealed {@link org.beveragethermal.service.ice.IceAnswer}. How early to begin
 * making that ice tells the package {@code core.icemaking}.
 *
 * <pre>{@code
 * Air terrace = Air.at(celsius(27)).withRelativeHumidity(percent(50));
 * FilledVessel bottle = Vessels.sparkling750().filledWith(Beverage.wine(percentByVolume(12)), celsius(16));
 * IceBudget budget = IceBudget.of(Bucket.of(millimetres(240), millimetres(260)), terrace)
 *         .vessels(bottle, 2, Wanted.between(celsius(0), celsius(8)))
 *         .from(Duration.ofMinutes(60), Duration.ofMinutes(150))
 *         .blocks(IceBlock.cube(millimetres(30)), celsius(-12))
 *         .waterAt(celsius(14))
 *         .build();
 * IceAnswer answer = budget.answer();
 * System.out.println(answer.explain());
 * if (answer instanceof IceAnswer.Enough enough) {
 *     IceMaking making = IceMaking.of(IceMould.of(enough.shape()), FreezerAir.at(celsius(-18)), celsius(15));
 *     IceBatches batches = IceBatches.of(kilograms(enough.totalKg()), making, 60, watts(60));
 *     System.out.println(batches.explain());
 * }
 * }</pre>
 *
 * <p><b>Margin.</b> {@code withMargin(Ensemble.of(40, 7L))} searches the least ice for each draw of the laws' scatter and gives the masses
 * that are enough in 90 % and 95 % of them: sampled, not linear, because drinks that never get there have no spread. Where ice is added in
 * the course of the service the start and each addition carry a margin of their own: what has to go in then to last until the next one.
 *
 * <p><b>Many vessels.</b> Up to 24 in one bath are followed. More than stand beside each other in the bucket are answered at once: how many
 * do, how many buckets that makes, and how much ice all drinks take by energy alone. Sleeves and layers belong to the {@linkplain
 * org.beveragethermal.service.ice.IceBudget.Builder#describedAs description} of the vessels.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  vessels, bath, range, ready and until → IceBudget → runs of the whole scene, halving → IceAnswer
 *                                                                  └→ masses, blocks, additions, margin; or why none is enough
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.service.ice;

import org.jspecify.annotations.NullMarked;
