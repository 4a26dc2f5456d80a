/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.DilutedStore;
import org.beveragethermal.core.store.IceInDrinkPath;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;

/** What is put into a vessel's contents in one run: nodes from the start on, and paths from when it is in the drink. */
final class Inserts {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double DRINK_HEAT_CAPACITY = 4000;
    /** A drink this far below its freezing point is told [K]; beside ice it comes to it from above, but for rounding. */
    private static final double BELOW_FREEZING_K = 0.2;

    private final FilledVessel filled;
    private final Node contents;
    private final List<Part> parts = new ArrayList<>();

    /**
     * What is added at one time.
     *
     * @param from time since the start
     * @param insert what is added
     */
    record Added(Duration from, Insert insert) {}

    private record Part(Added added, Node node, Path path) {}

    Inserts(String vesselId, FilledVessel filled, Fluid drink, Node contents, List<Added> all) {
        this.filled = filled;
        this.contents = contents;
        for (Added added : all) {
            String name = vesselId + " insert " + (parts.size() + 1);
            parts.add(part(name, added, drink));
        }
    }

    private Part part(String name, Added added, Fluid fluid) {
        Insert insert = added.insert();
        ConvectiveFilm film = insert.film(fluid);
        return insert.filling()
                .map(filling -> whole(name, added, film, filling))
                .orElseGet(() -> melting(name, added, film));
    }

    private Part whole(String name, Added added, ConvectiveFilm film, Insert.Filling filling) {
        Insert insert = added.insert();
        Node node = Node.of(name, filling.store(insert.massKg()), insert.temperatureK());
        HeatLaw inside = filling.inside(insert.count() * insert.shape().insideM());
        Path path = JunctionPath.of(
                name + " surface",
                Link.of(node, "conduction", inside),
                Link.of(contents, "convection", film).scaledBy(Multipliers.INSERT_FILM));
        return new Part(added, node, path);
    }

    private Part melting(String name, Added added, ConvectiveFilm film) {
        Insert insert = added.insert();
        double side = insert.shape().heightM();
        Node ice = Node.of(
                name,
                IceStore.of(insert.massKg(), side, DRINK_HEAT_CAPACITY * filled.liquidMassKg()),
                insert.temperatureK(),
                insert.massKg(),
                side);
        return new Part(
                added,
                ice,
                IceInDrinkPath.of(name + " melting", contents, ice, insert.count(), film, Multipliers.INSERT_FILM));
    }

    /** Refuses what does not pass the mouth, or makes the drink overflow with all that was put in before. */
    static void requireRoom(String vesselId, FilledVessel filled, List<Added> before, Insert insert) {
        Profile profile = filled.vessel().profile();
        new ValidityRange(
                        "width of a piece for vessel " + vesselId, 0, 2 * profile.innerRadiusM(profile.heightM()), "m")
                .require(insert.shape().widthM(), "mouth of " + filled.vessel().name());
        double density = filled.liquid().density(filled.temperatureK());
        double displaced = insert.displacedM3(density);
        for (Added added : before) {
            displaced += added.insert().displacedM3(density);
        }
        new ValidityRange("volume of pieces in the drink of vessel " + vesselId, 0, filled.headspaceM3(), "m³")
                .require(
                        displaced,
                        "space between drink and brim of " + filled.vessel().name());
    }

    static boolean melt(List<Added> all) {
        return all.stream().anyMatch(added -> added.insert().isIce());
    }

    List<Node> nodes() {
        return parts.stream().map(Part::node).toList();
    }

    /** Paths of what is in the drink by a time. */
    List<Path> paths(Duration start) {
        return parts.stream()
                .filter(part -> part.added().from().compareTo(start) <= 0)
                .map(Part::path)
                .toList();
    }

    /** What a user should know of what happened in a run. */
    List<String> notes(Trajectory run) {
        List<String> notes = new ArrayList<>();
        if (!parts.isEmpty()) {
            notes.add(
                    "pieces in the drink: it is taken as mixed, and as still unless said otherwise, its level as that without them");
        }
        if (contents.store() instanceof DilutedStore store) {
            double end = run.endS();
            double added = store.addedKg(run.amount(contents, DilutedStore.MASS, end));
            String strength = store.diluted(added)
                    .map(Beverage::strengthByVolume)
                    .filter(part -> part > 0)
                    .map(part -> String.format(Locale.ROOT, ", which leaves it %.1f %% vol", 100 * part))
                    .orElse("");
            notes.add(String.format(
                    Locale.ROOT,
                    "ice thins the drink: %.0f g of water by the end%s; only ice made of drinking water belongs in it, never"
                            + " ice from a bucket",
                    1000 * added,
                    strength));
            if (run.firstCrossing(0, t -> aboveFreezingK(run, store, t) + BELOW_FREEZING_K)
                    .isPresent()) {
                notes.add(
                        "the drink gets colder than its freezing point; ice is taken to grow on the ice in it only, and before"
                                + " that or without any it is taken to stay liquid");
            }
        }
        return notes;
    }

    private double aboveFreezingK(Trajectory run, DilutedStore store, double timeS) {
        double depression = store.freezingDepressionK(store.addedKg(run.amount(contents, DilutedStore.MASS, timeS)));
        return run.temperatureK(contents, timeS) - (ZERO_CELSIUS_K - depression);
    }
}
