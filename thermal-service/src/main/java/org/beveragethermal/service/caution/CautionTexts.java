/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.text.MessageFormat;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.beveragethermal.service.internal.Wording;

/**
 * Words for cautions, from a resource bundle.
 *
 * <p>The English texts are the root bundle {@value #BUNDLE}, in UTF-8. Whoever translates puts a file of the same keys beside it, with the
 * language in its name, or hands in a bundle of his own. Patterns are those of {@link MessageFormat}; the figures of each are listed as
 * comments in the root bundle. The default locale has no influence.
 *
 * <p>Immutable and thread-safe.
 */
public final class CautionTexts {

    /** Base name of the bundle. */
    public static final String BUNDLE = "org.beveragethermal.service.caution.cautions";

    private final ResourceBundle bundle;
    private final Locale locale;

    private CautionTexts(ResourceBundle bundle, Locale locale) {
        this.bundle = bundle;
        this.locale = locale;
    }

    /**
     * The texts in a language, or in English where there is no translation.
     *
     * @param locale language, and notation of numbers where the language was found
     * @return the texts
     */
    public static CautionTexts in(Locale locale) {
        Wording wording = Wording.of(BUNDLE, locale);
        return new CautionTexts(wording.bundle(), wording.locale());
    }

    /**
     * Texts of one's own.
     *
     * @param bundle a bundle with the keys of {@value #BUNDLE}
     * @param locale notation of numbers
     * @return the texts
     * @throws java.util.MissingResourceException later, when a text is asked for that the bundle lacks
     */
    public static CautionTexts of(ResourceBundle bundle, Locale locale) {
        return new CautionTexts(bundle, locale);
    }

    /**
     * A caution in words: signal word, what it is about, when, and to whom it defers; of a limit that is kept what is kept, and by how much.
     *
     * @param caution the caution
     * @return some sentences
     */
    public String of(Caution caution) {
        return caution.isCrossed() ? body(caution) + " " + deference() : body(caution);
    }

    /**
     * A caution in words, without to whom it defers: for a list of cautions that says it once, by {@link #deference}.
     *
     * @param caution the caution
     * @return some sentences
     */
    public String body(Caution caution) {
        if (!caution.isCrossed()) {
            return format(caution.code() + ".kept", caution.arguments());
        }
        String what = format(key(caution.rule(), caution.signal()), caution.arguments());
        return Stream.of(signal(caution.signal()) + ": " + what, when(caution))
                .filter(sentence -> !sentence.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /**
     * To whom every caution defers. Whoever shows {@linkplain #body bodies} shows it beside them.
     *
     * @return one sentence
     */
    public String deference() {
        return plain("defer");
    }

    /**
     * The signal word.
     *
     * @param signal which
     * @return for example {@code WARNING}
     */
    public String signal(SignalWord signal) {
        return plain("signal." + lower(signal));
    }

    /**
     * The name of a quantity.
     *
     * @param quantity which
     * @return for example {@code temperature of the drink}
     */
    public String quantity(CautionQuantity quantity) {
        return plain("quantity." + lower(quantity));
    }

    /** What a rule's limit is, for tables. */
    String limit(CautionRule rule, List<Argument> arguments) {
        return format(rule.code() + ".limit", arguments);
    }

    /** Key of the text of a rule with a signal word. */
    static String key(CautionRule rule, SignalWord signal) {
        return rule.code() + "." + lower(signal);
    }

    private String when(Caution caution) {
        if (caution.crossing() instanceof Crossing.After later) {
            List<Argument> from = List.of(minutes("after", later.after()));
            return later.until()
                    .map(end -> format("when.after-until", List.of(from.get(0), minutes("until", end))))
                    .orElseGet(() -> format("when.after", from));
        }
        Optional<Duration> until =
                caution.crossing() instanceof Crossing.Already already ? already.until() : Optional.empty();
        return until.map(end -> format("when.already-until", List.of(minutes("until", end))))
                .orElse(caution.crossing() instanceof Crossing.Already ? plain("when.already") : "");
    }

    private static Argument minutes(String name, Duration time) {
        return new Argument(name, Times.seconds(time), Argument.Shown.MINUTES);
    }

    private String plain(String key) {
        return format(key, List.of());
    }

    private String format(String key, List<Argument> arguments) {
        Object[] figures = arguments.stream().map(Argument::inShownUnit).toArray();
        return new MessageFormat(bundle.getString(key), locale).format(figures);
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
