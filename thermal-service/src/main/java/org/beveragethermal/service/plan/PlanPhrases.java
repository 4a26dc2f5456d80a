/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a plan asks for and what comes of it, as phrases. */
public final class PlanPhrases {

    /** A kilogram of cold water fills a litre, to the figures that are shown. */
    private static final double KG_PER_LITRE = 1;

    private final ServicePlan plan;

    private PlanPhrases(ServicePlan plan) {
        this.plan = plan;
    }

    /**
     * The phrases of a plan.
     *
     * @param plan the plan
     * @return its phrases
     */
    public static PlanPhrases of(ServicePlan plan) {
        return new PlanPhrases(plan);
    }

    /**
     * What is to be done.
     *
     * @param instruction an instruction of the plan
     * @return the action
     */
    public Phrase action(Instruction instruction) {
        return switch (instruction.action()) {
            case FILL -> fill(instruction.where());
            case ADD_ICE -> Phrase.of(Sentence.ADD_ICE, where(instruction.where()), added(instruction));
            case TAKE_OUT ->
                Phrase.of(
                        Sentence.TAKE_OUT,
                        bottles(instruction),
                        where(instruction.from().orElse(instruction.where())),
                        where(instruction.where()));
            case MOVE -> Phrase.of(Sentence.MOVE, bottles(instruction), where(instruction.where()));
            case DECANT -> Phrase.of(Sentence.DECANT, bottles(instruction), where(instruction.where()));
            case OPEN -> Phrase.of(Sentence.OPEN, bottles(instruction), where(instruction.where()));
            case SERVE -> serve(instruction);
            case POUR -> Phrase.of(Sentence.POUR, bottles(instruction), where(servedIn(instruction)));
        };
    }

    /**
     * When it is to be done at the latest.
     *
     * @param instruction an instruction
     * @return the latest moment; empty if it is the moment itself
     */
    public static Optional<Phrase> latest(Instruction instruction) {
        return instruction
                .latest()
                .filter(latest -> latest.isAfter(instruction.at()))
                .map(latest -> Phrase.of(Sentence.LATEST, new Argument.Moment(latest)));
    }

    /**
     * What the drink is then expected to be when poured, and how far that is from the nearer end of its range.
     *
     * @param instruction an instruction
     * @return none for gear, else one phrase or two
     */
    public static List<Phrase> outlook(Instruction instruction) {
        List<Phrase> phrases = new ArrayList<>();
        instruction.expected().ifPresent(expected -> phrases.add(expected(expected)));
        instruction.marginK().ifPresent(marginK -> phrases.add(margin(marginK)));
        return phrases;
    }

    static Phrase expected(Expected expected) {
        boolean known = expected.high90K() > expected.low90K();
        return known
                ? Phrase.of(
                        Sentence.EXPECTED,
                        new Argument.Temperature(expected.meanK()),
                        new Argument.Temperature(expected.low90K()),
                        new Argument.Temperature(expected.high90K()))
                : Phrase.of(Sentence.EXPECTED_ALONE, new Argument.Temperature(expected.meanK()));
    }

    static Phrase margin(double marginK) {
        return marginK >= 0
                ? Phrase.of(Sentence.MARGIN_SPARE, new Argument.Difference(marginK))
                : Phrase.of(Sentence.MARGIN_SHORT, new Argument.Difference(-marginK));
    }

    /**
     * The verdict on a bottle.
     *
     * @param bottle the bottle's plan
     * @return the verdict
     */
    public static Phrase verdict(BottlePlan bottle) {
        return switch (bottle.verdict()) {
            case VERIFIED -> Phrase.of(Sentence.VERDICT_VERIFIED);
            case REPAIRED -> Phrase.of(Sentence.VERDICT_REPAIRED);
            case LEAVES_RANGE ->
                Phrase.of(
                        Sentence.VERDICT_LEAVES_RANGE,
                        new Argument.Moment(
                                bottle.leavesRangeAt().orElse(bottle.order().finishedAt())));
            case NOT_REACHED -> Phrase.of(Sentence.VERDICT_NOT_REACHED, new Argument.Temperature(bottle.pouredAtK()));
        };
    }

    private Phrase fill(String gearId) {
        GearUse use = plan.gearUses().stream()
                .filter(u -> u.gearId().equals(gearId))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("gear " + gearId + ": expected one that the plan fills"));
        Argument water = new Argument.Volume(use.waterKg() / KG_PER_LITRE);
        return use.iceKg() > 0
                ? Phrase.of(Sentence.FILL_ICE, where(gearId), new Argument.Mass(use.iceKg()), water)
                : Phrase.of(Sentence.FILL_WATER, where(gearId), water);
    }

    private Argument added(Instruction instruction) {
        double kg = plan.gearUses().stream()
                .filter(use -> use.gearId().equals(instruction.where()))
                .flatMap(use -> use.added().stream())
                .filter(added -> added.at().equals(instruction.at()))
                .mapToDouble(GearUse.Added::iceKg)
                .sum();
        return new Argument.Mass(kg);
    }

    private Phrase serve(Instruction instruction) {
        String place = servedIn(instruction);
        return instruction.where().equals(place)
                ? Phrase.of(Sentence.SERVE, bottles(instruction), where(place))
                : Phrase.of(Sentence.SERVE_KEPT, bottles(instruction), where(place), where(instruction.where()));
    }

    private String servedIn(Instruction instruction) {
        return plan.bottles().stream()
                .map(BottlePlan::order)
                .filter(order -> instruction.bottleIds().contains(order.id()))
                .map(BottleOrder::servedIn)
                .findFirst()
                .orElse(instruction.where());
    }

    private static Argument bottles(Instruction instruction) {
        return new Argument.Bottles(instruction.bottleIds());
    }

    private static Argument where(String id) {
        return new Argument.Where(id);
    }
}
