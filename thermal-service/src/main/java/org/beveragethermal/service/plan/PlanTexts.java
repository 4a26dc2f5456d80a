/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.text.MessageFormat;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Objects;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.function.UnaryOperator;
import org.beveragethermal.service.internal.Wording;

/**
 * Phrases in words. The words come from the bundle {@value #BUNDLE}, whose root is English; whoever adds {@code
 * plan_xx.properties} (UTF-8) beside it on the class path, or hands a bundle in, has them in another language. The places of a
 * sentence are filled with texts that are formatted already, so that a translation orders them as its language wants.
 *
 * <p>Neither the default locale nor the default time zone matters. Immutable.
 */
public final class PlanTexts {

    /** Name of the bundle. */
    public static final String BUNDLE = "org.beveragethermal.service.plan.plan";

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double PERCENT = 100;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final String REASON = "reason.";

    private final ResourceBundle bundle;
    private final Locale locale;
    private final DateTimeFormatter clock;
    private final UnaryOperator<String> names;
    private final Optional<LocalDate> day;

    private PlanTexts(
            ResourceBundle bundle,
            Locale locale,
            DateTimeFormatter clock,
            UnaryOperator<String> names,
            Optional<LocalDate> day) {
        this.bundle = bundle;
        this.locale = locale;
        this.clock = clock;
        this.names = names;
        this.day = day;
    }

    /**
     * Texts in a language, English where there is no bundle for it.
     *
     * @param locale the language, and how its numbers look where there is a bundle for it; {@link Locale#ROOT} for English
     * @param zone the zone whose time of day is shown
     * @return the texts
     */
    public static PlanTexts in(Locale locale, ZoneId zone) {
        Wording wording = Wording.of(BUNDLE, locale);
        return of(wording.bundle(), wording.locale(), zone);
    }

    /**
     * Texts from a bundle that is handed in; a key that it lacks is taken from the English root.
     *
     * @param bundle the words, under the keys of {@link Sentence#key()}
     * @param locale how numbers look
     * @param zone the zone whose time of day is shown
     * @return the texts
     */
    public static PlanTexts of(ResourceBundle bundle, Locale locale, ZoneId zone) {
        return new PlanTexts(
                Objects.requireNonNull(bundle, "bundle"),
                locale,
                DateTimeFormatter.ofPattern("HH:mm", locale).withZone(zone),
                id -> id,
                Optional.empty());
    }

    /**
     * The same texts with the names of a request instead of ids. What it does not know keeps the name that it had, so that gear which
     * is lost can still be called by its own.
     *
     * @param request the request
     * @return new texts
     */
    public PlanTexts naming(PlanRequest request) {
        Map<String, String> known = new HashMap<>();
        request.places().values().forEach(place -> known.put(place.id(), place.name()));
        request.gear().values().forEach(gear -> known.put(gear.id(), gear.name()));
        request.bottles().forEach(bottle -> known.put(bottle.id(), bottle.name()));
        UnaryOperator<String> naming = id -> {
            String name = known.get(id);
            return name == null ? names.apply(id) : name;
        };
        return new PlanTexts(bundle, locale, clock, naming, Optional.of(date(request.startsAt())));
    }

    /**
     * A phrase in words.
     *
     * @param phrase the phrase
     * @return the words
     */
    public String words(Phrase phrase) {
        return filled(phrase.sentence().key(), texts(phrase.arguments()));
    }

    /**
     * A reason in words.
     *
     * @param reason the reason
     * @return the words
     */
    public String words(Reason reason) {
        return filled(key(reason.code()), texts(reason.arguments()));
    }

    /** The key of a reason's words. */
    static String key(Reason.Code code) {
        return REASON + code.name().toLowerCase(Locale.ROOT).replace('_', '.');
    }

    /**
     * A moment as time of day; of another day than that on which a named request begins, with its date.
     *
     * @param at the moment
     * @return hours and minutes, the date before them if need be
     */
    public String clock(Instant at) {
        boolean sameDay = day.map(date(at)::equals).orElse(true);
        return sameDay ? clock.format(at) : date(at) + " " + clock.format(at);
    }

    private LocalDate date(Instant at) {
        return LocalDate.ofInstant(at, clock.getZone());
    }

    /**
     * Bottles by name.
     *
     * @param ids their ids, at least one
     * @return their names
     */
    public String bottles(List<String> ids) {
        return text(new Argument.Bottles(ids));
    }

    /**
     * A place or a piece of gear by name.
     *
     * @param id its id
     * @return its name as it stands in a sentence
     */
    public String where(String id) {
        return text(new Argument.Where(id));
    }

    /**
     * A temperature.
     *
     * @param temperatureK the temperature [K]
     * @return degrees Celsius to a tenth
     */
    public String temperature(double temperatureK) {
        return text(new Argument.Temperature(temperatureK));
    }

    private Object[] texts(List<Argument> arguments) {
        return arguments.stream().map(this::text).toArray();
    }

    private String text(Argument argument) {
        if (argument instanceof Argument.Temperature temperature) {
            return number(Sentence.UNIT_CELSIUS, 1, temperature.kelvins() - ZERO_CELSIUS_K);
        } else if (argument instanceof Argument.Difference difference) {
            return number(Sentence.UNIT_KELVIN, 1, difference.kelvins());
        } else if (argument instanceof Argument.Span span) {
            return number(Sentence.UNIT_MINUTES, 0, (double) span.time().toSeconds() / SECONDS_PER_MINUTE);
        } else if (argument instanceof Argument.Mass mass) {
            return number(Sentence.UNIT_KILOGRAMS, 1, mass.kg());
        } else if (argument instanceof Argument.Volume volume) {
            return number(Sentence.UNIT_LITRES, 1, volume.litres());
        } else if (argument instanceof Argument.Share share) {
            return number(Sentence.UNIT_PERCENT, 0, PERCENT * share.part());
        } else if (argument instanceof Argument.Count count) {
            return String.format(locale, "%d", count.number());
        } else if (argument instanceof Argument.Moment moment) {
            return clock(moment.at());
        } else if (argument instanceof Argument.Where where) {
            return filled(Sentence.NAME_WHERE.key(), names.apply(where.id()));
        } else if (argument instanceof Argument.Bottle bottle) {
            return names.apply(bottle.id());
        } else if (argument instanceof Argument.Bottles bottles) {
            return list(bottles.ids().stream().map(names).toList());
        } else if (argument instanceof Argument.Said said) {
            return words(said.phrase());
        }
        throw new IllegalArgumentException("argument " + argument + ": no words are known for its kind");
    }

    /** A number with its unit; what rounds to nothing is shown without a sign. */
    private String number(Sentence unit, int decimals, double value) {
        double scale = Math.pow(10, decimals);
        double shown = Math.round(value * scale) / scale;
        return filled(unit.key(), String.format(locale, "%." + decimals + "f", shown));
    }

    private String list(List<String> texts) {
        String all = texts.get(0);
        for (int i = 1; i < texts.size(); i++) {
            Sentence sentence = i + 1 == texts.size() ? Sentence.LIST_LAST : Sentence.LIST_NEXT;
            all = filled(sentence.key(), all, texts.get(i));
        }
        return all;
    }

    private String filled(String key, Object... texts) {
        return new MessageFormat(pattern(key), locale).format(texts);
    }

    private String pattern(String key) {
        try {
            return bundle.getString(key);
        } catch (MissingResourceException e) {
            return ResourceBundle.getBundle(BUNDLE, Locale.ROOT).getString(key);
        }
    }
}
