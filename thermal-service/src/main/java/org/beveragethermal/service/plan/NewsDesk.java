/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.beveragethermal.materials.units.Measures.kelvins;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.beveragethermal.materials.vessel.FilledVessel;

/** Works news into a request that is resumed, and remembers which news concerns which bottle. Used inside one call. */
final class NewsDesk {

    private static final Duration AT_ONCE = Duration.ofMinutes(1);
    /** A reading that moves a temperature by less is none worth telling [K]. */
    private static final double TOLD_K = 0.05;

    private final ServicePlan plan;
    private final Instant from;
    private final Resumption resumption;
    private final RequestDraft draft;
    private final Map<String, Phrase> bottleNews = new LinkedHashMap<>();
    private final Map<String, Phrase> siteNews = new LinkedHashMap<>();
    private final List<Trust> readings = new ArrayList<>();
    private Optional<Phrase> iceNews = Optional.empty();

    NewsDesk(ServicePlan plan, Instant from, Resumption resumption) {
        this.plan = plan;
        this.from = from;
        this.resumption = resumption;
        this.draft = resumption.draft();
    }

    List<Trust> readings() {
        return readings;
    }

    /**
     * Takes in a piece of news.
     *
     * @throws IllegalArgumentException if it names what is not there
     */
    void take(News news) {
        if (news instanceof News.LateGuests late) {
            shift(late.bottleIds(), late.by(), Phrase.of(Sentence.NEWS_LATE_GUESTS, new Argument.Span(late.by())));
        } else if (news instanceof News.EarlierGuests early) {
            Phrase phrase = Phrase.of(Sentence.NEWS_EARLIER_GUESTS, new Argument.Span(early.by()));
            shift(early.bottleIds(), early.by().negated(), phrase);
        } else if (news instanceof News.BottleSwapped swapped) {
            BottleOrder order = waiting(swapped.bottleId());
            draft.bottles.put(order.id(), order.standing(swapped.instead(), swapped.where()));
            bottleNews.put(order.id(), Phrase.of(Sentence.NEWS_SWAPPED));
        } else if (news instanceof News.BottleAdded added) {
            requireNew(added.order().id());
            draft.bottles.put(added.order().id(), added.order());
            bottleNews.put(
                    added.order().id(),
                    Phrase.of(
                            Sentence.NEWS_ADDED,
                            new Argument.Bottle(added.order().id())));
        } else if (news instanceof News.BottleRemoved removed) {
            BottleOrder order = known(removed.bottleId());
            draft.bottles.remove(order.id());
            bottleNews.put(order.id(), Phrase.of(Sentence.NEWS_REMOVED, new Argument.Bottle(order.id())));
        } else if (news instanceof News.GearLost lost) {
            lose(lost);
        } else if (news instanceof News.IceLeft ice) {
            resumption.stock(ice.massKg());
            iceNews = Optional.of(Phrase.of(Sentence.NEWS_ICE_LEFT, new Argument.Mass(ice.massKg())));
        } else if (news instanceof News.Reading reading) {
            read(reading);
        } else if (news instanceof News.PlaceChanged changed) {
            String id = changed.place().id();
            requirePlace(id);
            draft.places.put(id, changed.place());
            siteNews.put(id, Phrase.of(Sentence.NEWS_PLACE_CHANGED, new Argument.Where(id)));
        }
    }

    private void shift(List<String> bottleIds, Duration by, Phrase phrase) {
        bottleIds.forEach(this::waiting);
        for (BottleOrder order : List.copyOf(draft.bottles.values())) {
            boolean named = bottleIds.isEmpty() || bottleIds.contains(order.id());
            if (named && isWaiting(order.id())) {
                Duration least = Duration.between(order.readyAt(), from.plus(AT_ONCE));
                Duration shift = by.isNegative() && by.compareTo(least) < 0 ? least : by;
                draft.bottles.put(order.id(), order.shifted(shift));
                bottleNews.put(order.id(), phrase);
            }
        }
    }

    private void lose(News.GearLost lost) {
        if (draft.gear.remove(lost.gearId()) == null) {
            throw new IllegalArgumentException(
                    "gear " + lost.gearId() + " lost: expected one of " + draft.gear.keySet());
        }
        requirePlace(lost.bottlesTo());
        Phrase phrase = Phrase.of(Sentence.NEWS_GEAR_LOST, new Argument.Where(lost.gearId()));
        siteNews.put(lost.gearId(), phrase);
        for (BottleOrder order : List.copyOf(draft.bottles.values())) {
            if (order.startsIn().equals(lost.gearId())) {
                draft.bottles.put(order.id(), order.standing(order.bottle(), lost.bottlesTo()));
                bottleNews.put(order.id(), phrase);
            }
        }
    }

    private void read(News.Reading reading) {
        BottleOrder order = known(reading.bottleId());
        double predictedK = order.bottle().temperatureK();
        double sigmaK = old(order.id()).map(resumption.state()::sigmaK).orElse(reading.standardErrorK());
        Trust trust = Trust.of(reading, predictedK, sigmaK);
        readings.add(trust);
        double apart = trust.usedK() - predictedK;
        if (Math.abs(apart) > 0) {
            FilledVessel drink = order.bottle().atTemperature(kelvins(trust.usedK()));
            draft.bottles.put(order.id(), order.standing(drink, order.startsIn()));
        }
        if (Math.abs(apart) > TOLD_K) {
            Sentence sentence = apart > 0 ? Sentence.NEWS_READ_WARMER : Sentence.NEWS_READ_COLDER;
            bottleNews.put(
                    order.id(),
                    Phrase.of(
                            sentence,
                            new Argument.Difference(Math.abs(trust.readK() - predictedK)),
                            new Argument.Temperature(trust.readK())));
        }
    }

    /** Why a bottle's plan is changed: news of its own, of where it was to be, of others, or none. */
    Phrase because(String bottleId) {
        Phrase own = bottleNews.get(bottleId);
        if (own != null) {
            return own;
        }
        List<String> wheres = old(bottleId)
                .map(bottle -> bottle.stays().stream().map(Stay::where).toList())
                .orElse(List.of());
        for (String where : wheres) {
            Phrase phrase = siteNews.get(where);
            if (phrase != null) {
                return phrase;
            }
        }
        boolean onIce = wheres.stream()
                .map(plan.request().gear()::get)
                .anyMatch(gear -> gear != null && gear.kind() == GearKind.ICE_BATH);
        if (onIce && iceNews.isPresent()) {
            return iceNews.get();
        }
        List<String> others =
                draft.bottles.keySet().stream().filter(bottleNews::containsKey).toList();
        return others.isEmpty()
                ? siteNews.values().stream().findFirst().or(() -> iceNews).orElse(Phrase.of(Sentence.NEWS_PRESENT))
                : Phrase.of(Sentence.NEWS_OTHERS, new Argument.Bottles(others));
    }

    /** Whether a bottle was taken out of the plan by news. */
    boolean isRemoved(String bottleId) {
        return bottleNews.containsKey(bottleId) && !draft.bottles.containsKey(bottleId);
    }

    private Optional<BottlePlan> old(String bottleId) {
        return plan.bottles().stream()
                .filter(bottle -> bottle.order().id().equals(bottleId))
                .findFirst();
    }

    private boolean isWaiting(String bottleId) {
        return old(bottleId)
                .map(bottle -> !Resumption.isOpened(bottle.order(), from))
                .orElse(true);
    }

    private BottleOrder known(String bottleId) {
        BottleOrder order = draft.bottles.get(bottleId);
        if (order == null) {
            throw new IllegalArgumentException(
                    "bottle " + bottleId + ": expected one of those that are not finished, " + draft.bottles.keySet());
        }
        return Objects.requireNonNull(order);
    }

    private BottleOrder waiting(String bottleId) {
        BottleOrder order = known(bottleId);
        if (!isWaiting(bottleId)) {
            throw new IllegalArgumentException("bottle " + bottleId + ": expected one that is not poured yet");
        }
        return order;
    }

    private void requireNew(String bottleId) {
        if (draft.bottles.containsKey(bottleId)) {
            throw new IllegalArgumentException("bottle " + bottleId + " added: already in the plan");
        }
    }

    private void requirePlace(String id) {
        if (!draft.places.containsKey(id)) {
            throw new IllegalArgumentException("place " + id + ": expected one of " + draft.places.keySet());
        }
    }
}
