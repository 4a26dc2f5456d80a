/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.target.DrinkStyle;
import org.beveragethermal.service.target.ServingRange;
import org.beveragethermal.service.target.Targets;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the library knows of, and from where. */
@Command(name = "list", description = "Lists vessels, drinks, styles or materials with their sources")
final class ListCommand implements Question {
    private static final double MILLILITRES = 1e6;
    private static final double GRAMS = 1000;
    private static final double MILLIMETRES = 1000;

    @Mixin
    private final OutputOptions output = new OutputOptions();

    @Parameters(paramLabel = "WHAT", description = "vessels, drinks, styles or materials")
    String what = "";

    @Option(names = "--like", paramLabel = "TEXT", description = "only rows with this text; status 1 if there is none")
    @Nullable
    String like;

    @Override
    public OutputOptions output() {
        return output;
    }

    @Override
    public Answer answer(Session session) {
        List<Answer.Table> tables = switch (what) {
            case "vessels" -> List.of(vessels());
            case "drinks" -> List.of(drinks(), contents());
            case "styles" -> List.of(styles(output.scale()));
            case "materials" -> List.of(materials());
            default -> throw Refusal.usage("WHAT", what, "one of vessels, drinks, styles, materials");
        };
        List<Answer.Table> shown = tables.stream().map(this::filtered).toList();
        int rows = shown.stream().mapToInt(table -> table.rows().size()).sum();
        return new Answer(
                "list",
                rows > 0 ? ExitStatus.DONE : ExitStatus.NO,
                what + ": " + rows + (rows == 1 ? " row" : " rows")
                        + (like == null ? "" : " with " + Refusal.quoted(like)) + ".",
                shown,
                List.of());
    }

    private Answer.Table filtered(Answer.Table table) {
        if (like == null) {
            return table;
        }
        String wanted = like.toLowerCase(Locale.ROOT);
        return new Answer.Table(
                table.name(),
                table.columns(),
                table.rows().stream()
                        .filter(row -> row.stream()
                                .anyMatch(cell ->
                                        cell.text().toLowerCase(Locale.ROOT).contains(wanted)))
                        .toList());
    }

    private static Answer.Table vessels() {
        List<List<Answer.Cell>> rows = new ArrayList<>();
        for (Vessel vessel : Vessels.all()) {
            rows.add(List.of(
                    Answer.Cell.of(vessel.name()),
                    Answer.Cell.of(vessel.nominalVolumeM3() * MILLILITRES, 0),
                    Answer.Cell.of(vessel.profile().heightM() * MILLIMETRES, 0),
                    Answer.Cell.of(vessel.emptyMassKg() * GRAMS, 0),
                    Answer.Cell.of(vessel.wall().name()),
                    source(vessel.dimensionsSource())));
        }
        return new Answer.Table(
                "Vessels",
                List.of(
                        Answer.Column.words("vessel"),
                        new Answer.Column("volume", "mL"),
                        new Answer.Column("height", "mm"),
                        new Answer.Column("empty", "g"),
                        Answer.Column.words("wall"),
                        Answer.Column.words("source of dimensions")),
                rows);
    }

    private static Answer.Table drinks() {
        List<List<Answer.Cell>> rows = new ArrayList<>();
        for (Map.Entry<String, String> kind : DrinkWords.needs().entrySet()) {
            rows.add(List.of(Answer.Cell.of(kind.getKey()), Answer.Cell.of(kind.getValue())));
        }
        return new Answer.Table(
                "Drinks that can be named", List.of(Answer.Column.words("drink"), Answer.Column.words("needs")), rows);
    }

    private static Answer.Table contents() {
        List<List<Answer.Cell>> rows = new ArrayList<>();
        Beverage.usualContents().forEach(constant -> rows.add(constant("usual contents", constant)));
        return constants("What they usually hold besides", rows);
    }

    private static Answer.Table styles(Scale scale) {
        List<List<Answer.Cell>> rows = new ArrayList<>();
        for (DrinkStyle style : Targets.styles()) {
            for (ServingRange range : Targets.rangesOf(style)) {
                rows.add(List.of(
                        Answer.Cell.of(style.id()),
                        Answer.Cell.of(style.name()),
                        Answer.Cell.of(style.family().label()),
                        scale.cell(range.lowK()),
                        scale.cell(range.highK()),
                        source(range.source())));
            }
        }
        return new Answer.Table(
                "Styles and their serving ranges, a row for each source",
                List.of(
                        Answer.Column.words("style"),
                        Answer.Column.words("name"),
                        Answer.Column.words("family"),
                        new Answer.Column("low", scale.symbol()),
                        new Answer.Column("high", scale.symbol()),
                        Answer.Column.words("source")),
                rows);
    }

    private static Answer.Table materials() {
        List<List<Answer.Cell>> rows = new ArrayList<>();
        for (Solid solid : Solids.all()) {
            List<Optional<Constant>> constants = List.of(
                    Optional.of(solid.density()),
                    Optional.of(solid.thermalConductivity()),
                    Optional.of(solid.specificHeatCapacity()),
                    Optional.of(solid.emissivity()),
                    solid.solarAbsorptance());
            constants.forEach(constant -> constant.ifPresent(known -> rows.add(constant(solid.name(), known))));
        }
        return constants("Materials", rows);
    }

    private static List<Answer.Cell> constant(String of, Constant constant) {
        return List.of(
                Answer.Cell.of(of),
                Answer.Cell.of(constant.name()),
                Answer.Cell.of(constant.value(), decimals(constant.value())),
                Answer.Cell.of(constant.unit()),
                Answer.Cell.of(constant.uncertainty().toString()),
                source(constant.source()));
    }

    private static int decimals(double value) {
        return Math.max(
                0, java.math.BigDecimal.valueOf(value).stripTrailingZeros().scale());
    }

    private static Answer.Table constants(String name, List<List<Answer.Cell>> rows) {
        return new Answer.Table(
                name,
                List.of(
                        Answer.Column.words("of"),
                        Answer.Column.words("property"),
                        Answer.Column.words("value"),
                        Answer.Column.words("unit"),
                        Answer.Column.words("uncertainty"),
                        Answer.Column.words("source")),
                rows);
    }

    private static Answer.Cell source(Source source) {
        return Answer.Cell.of(source.citation() + " ("
                + source.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ")");
    }
}
