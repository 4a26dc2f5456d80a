/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Cautions as data: what may hurt someone or spoil a drink, by which limit, when it is predicted to be crossed, and from what source.
 *
 * <p><b>Problem.</b> Cooling and warming drinks can burst bottles, crack glass, scald and freeze skin, and spoil milk. A host has to be
 * told in time and in words; a planner has to keep away from it without being told. Whatever is said here defers to local codes and
 * licensed practice.
 *
 * <p><b>Use.</b> A {@link org.beveragethermal.service.caution.CautionSubject} says what is known of the drink. {@link
 * org.beveragethermal.service.caution.Cautions} looks at it along a prediction or a log, at a plunge into another medium, or without any
 * temperature. The {@link org.beveragethermal.service.caution.CautionReport} has the cautions, the gravest first, and the limits that are kept
 * with their margins.
 *
 * <pre>{@code
 * CautionSubject subject = CautionSubject.of(bottle).in(Jurisdiction.US_FOOD_CODE);
 * CautionReport report = Cautions.of(prediction, subject);
 * for (Caution caution : report.cautions()) {
 *     caution.code();  caution.signal();  caution.limit();  caution.crossing();  caution.text(Locale.ENGLISH);
 * }
 * CautionReport glass = Cautions.ofPlunge(CautionSubject.of(tea).withGlass(GlassKind.SODA_LIME), celsius(5), celsius(90));
 *
 * DangerLimits limits = DangerLimits.of(subject);                  // once for each drink
 * boolean allowed = limits.firstBreach(timesS, coldestK, meanK, warmestK).isEmpty();   // each course
 * }</pre>
 *
 * <p><b>Method.</b> Signal words are those of ANSI Z535.4 and ISO 3864-2. {@link
 * org.beveragethermal.service.caution.SignalWord#DANGER} marks limits that no plan may cross. Moments of crossing are the prediction's own.
 * Drinks that spoil have a {@link org.beveragethermal.service.caution.HoldingClock} by the rules of a {@link
 * org.beveragethermal.service.caution.Jurisdiction}. Texts come from a resource bundle ({@link
 * org.beveragethermal.service.caution.CautionTexts}), their figures beside them, so that others can translate; {@link
 * org.beveragethermal.service.caution.Cautions#table()} lists every rule for documents.
 *
 * <p><b>Left out.</b> Growth of germs in figures, contact with hot and cold surfaces by material, flammable vapour of warm spirits,
 * allergens, and everything that a label says.
 *
 * <p><b>Data flow.</b>
 *
 * <pre>
 *  CautionSubject + prediction, log or plunge → Cautions → CautionReport (code, signal, limit, figures) → CautionTexts
 *  readings of a drink that spoils → HoldingClock → time left, or over
 * </pre>
 *
 * @since 0.1
 */
@NullMarked
package org.beveragethermal.service.caution;

import org.jspecify.annotations.NullMarked;
