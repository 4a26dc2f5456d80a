/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.service.airing.Airing;

/** Where a bottle can be kept while it is drunk. */
final class Keepers {

    private final Site site;
    private final Task task;
    private final List<String> means;

    Keepers(Site site, Task task, List<String> means) {
        this.site = site;
        this.task = task;
        this.means = means;
    }

    /** At its table, and where it has been before, if that is gear. */
    List<String> with(String before) {
        String table = task.order().servedIn();
        boolean gear = site.gear(before).isPresent() && !task.isDecanted();
        return gear ? List.of(table, before) : List.of(table);
    }

    /** Other gear. */
    List<String> others(String before) {
        List<String> others = new ArrayList<>();
        for (String id : means) {
            if (!task.isDecanted() && !id.equals(before) && site.gear(id).isPresent()) {
                others.add(id);
            }
        }
        return others;
    }

    /** The leg from decanting to serving; without length if it is not decanted. */
    Leg airing() {
        String where =
                task.order().airing().map(Airing::placeId).orElse(task.order().servedIn());
        return new Leg(where, task.readyS(), task.servedS());
    }

    /** Whether all gear on a route is there when it is needed. */
    boolean isThere(Route route) {
        return route.legs().stream().allMatch(leg -> site.isThere(leg.where(), leg.fromS(), leg.toS()));
    }
}
