/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.service.caution.Jurisdiction;

/** The places and the gear of a request by their ids, and the plan's clock [s since its start]. */
final class Site {

    /** A bath is filled this long before its first bottle goes in, so that its water is cold by then. */
    static final double FILLED_BEFORE_S = 15 * 60;

    private static final double NANOS_PER_SECOND = 1e9;

    private final PlanRequest request;
    private final Map<String, Place> places;
    private final Map<String, Gear> gear;
    private final Map<String, Boolean> remembers = new LinkedHashMap<>();

    Site(PlanRequest request) {
        this.request = request;
        this.places = request.places();
        this.gear = request.gear();
        places.forEach((id, place) -> remembers.put(id, remembers(place.air())));
        gear.forEach((id, item) -> remembers.put(id, remembers(item.surroundings())));
    }

    private static boolean remembers(Surroundings surroundings) {
        return !surroundings.open("probe", 0).nodes().isEmpty();
    }

    List<String> placeIds() {
        return List.copyOf(places.keySet());
    }

    List<Gear> gear() {
        return List.copyOf(gear.values());
    }

    Optional<Gear> gear(String id) {
        return Optional.ofNullable(gear.get(id));
    }

    Surroundings surroundings(String id) {
        Place place = places.get(id);
        return place != null
                ? place.air()
                : Objects.requireNonNull(gear.get(id)).surroundings();
    }

    /** Temperature of the air in a place at a time. */
    double airK(String placeId, double timeS) {
        return Objects.requireNonNull(places.get(placeId)).air().airK().at(seconds(weather(timeS)));
    }

    /** A time on the clock of what varies. */
    Duration weather(double timeS) {
        return Duration.between(request.weatherSince(), request.startsAt()).plus(duration(timeS));
    }

    boolean isFilled(String id) {
        return gear(id).filter(item -> item.kind().isFilled()).isPresent();
    }

    /** Whether a bath stands there filled when the plan starts. */
    boolean isFilledAtStart(String id) {
        return request.filled().contains(id);
    }

    /** Ice that a bath is filled with, or was when it was filled [kg]. */
    double fullIceKg(String id) {
        return request.fullIceKg(id);
    }

    boolean isIceBath(String id) {
        return gear(id).filter(item -> item.kind() == GearKind.ICE_BATH).isPresent();
    }

    /** Whether what bottles do to it comes back to them and to others in it; in others each is as good as alone. */
    boolean remembers(String id) {
        return Objects.requireNonNull(remembers.get(id));
    }

    /** Windows of gear on the plan's clock, those that end before its start left out; all the time for places. */
    List<double[]> windowsS(String id) {
        List<Window> windows = gear(id).map(Gear::windows).orElse(List.of());
        if (windows.isEmpty()) {
            return List.of(new double[] {0, Double.POSITIVE_INFINITY});
        }
        List<double[]> spans = new ArrayList<>();
        for (Window window : windows) {
            if (window.to().isAfter(request.startsAt())) {
                spans.add(new double[] {Math.max(0, seconds(window.from())), seconds(window.to())});
            }
        }
        return spans;
    }

    boolean isThere(String id, double fromS, double toS) {
        return windowsS(id).stream().anyMatch(window -> window[0] <= fromS && toS <= window[1]);
    }

    Jurisdiction jurisdiction() {
        return request.jurisdiction();
    }

    double seconds(Instant instant) {
        return seconds(Duration.between(request.startsAt(), instant));
    }

    Instant instant(double seconds) {
        return request.startsAt().plus(duration(seconds));
    }

    /** Also of windows that begin at the first of all instants or end at the last. */
    static double seconds(Duration duration) {
        return duration.getSeconds() + duration.getNano() / NANOS_PER_SECOND;
    }

    static Duration duration(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }
}
