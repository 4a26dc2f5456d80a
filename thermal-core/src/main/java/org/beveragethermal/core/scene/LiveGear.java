/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.StateChange;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Tended;

/** The gear of one run, from the start on and from each time on at which somebody tends it. Mutable while it is put together. */
final class LiveGear {

    private final Map<String, TreeMap<Duration, Medium>> byTime = new LinkedHashMap<>();
    private final Map<Duration, List<StateChange>> changes = new LinkedHashMap<>();

    void open(String id, Medium medium) {
        TreeMap<Duration, Medium> timed = new TreeMap<>();
        timed.put(Duration.ZERO, medium);
        byTime.put(id, timed);
    }

    void tend(String id, Duration time, Tended tended) {
        Objects.requireNonNull(byTime.get(id)).put(time, tended.medium());
        changes.computeIfAbsent(time, when -> new ArrayList<>()).add(tended.change());
    }

    boolean has(String id) {
        return byTime.containsKey(id);
    }

    Set<String> ids() {
        return byTime.keySet();
    }

    Medium at(String id, Duration time) {
        return Objects.requireNonNull(byTime.get(id)).floorEntry(time).getValue();
    }

    List<StateChange> changes(Duration time) {
        return changes.getOrDefault(time, List.of());
    }

    /** Nodes by gear; they live through the whole run. */
    Map<String, List<Node>> nodes() {
        Map<String, List<Node>> nodes = new LinkedHashMap<>();
        byTime.forEach(
                (id, timed) -> nodes.put(id, timed.firstEntry().getValue().nodes()));
        return nodes;
    }
}
