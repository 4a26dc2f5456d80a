/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.beveragethermal.benchmarks.Row.Figure;

/**
 * Jobs that are measured together, and the rows that come of them.
 *
 * @param name name in the first column and on the command line
 * @param labels what each job is, by key, in order
 * @param rows what is made of them
 */
record Group(String name, Map<String, String> labels, List<Row> rows) {

    /** Key of what is no time: the size of the jars. */
    static final String JARS = "jars/size";

    private static final String STEPS =
            "a solve takes some ten exponential steps of three evaluations, and what surrounds the laws costs half as much as they do; explicit methods need some 700 evaluations and little else";
    private static final String STACK =
            "some two dozen steps of three evaluations of 78 paths, a factorisation and four solutions";

    private static final String COMMONS = "Commons Math DP853";

    /** All groups, in the order of the page. */
    static List<Group> all() {
        return List.of(p1(), p1b(), p2(), p3(), p4(), p5(), p6(), real(), growth(), plan(), jobs(), first(), jars());
    }

    /** Whether a job is one of the C program. */
    boolean isNative(String job) {
        return job.contains("/cvode") || job.contains("/arkode") || job.contains("/floor");
    }

    /** Whether any is. */
    boolean hasNative() {
        return labels.keySet().stream().anyMatch(this::isNative);
    }

    private static Row faster(
            String group,
            String what,
            String beside,
            String own,
            String other,
            double floor,
            double stretch,
            String why) {
        return new Row(group, what, beside, own, other, Figure.TIMES_FASTER, floor, stretch, why);
    }

    private static Group p1() {
        String what = "two nodes, time to 9 °C";
        return new Group(
                "P1",
                labels(
                        "p1/own", "project, fitted films",
                        "p1/own-plain", "project, formulas as they stand",
                        "p1/commons-dp853", COMMONS,
                        "p1/commons-dp54", "Commons Math DP54",
                        "p1/hipparchus-dp853", "Hipparchus DP853",
                        "p1/hipparchus-dp54", "Hipparchus DP54",
                        "p1/cvode-bdf", "CVODE BDF",
                        "p1/arkode-erk5", "ARKODE ERK5"),
                List.of(
                        faster("P1", what, COMMONS, "p1/own", "p1/commons-dp853", 25, 80, STEPS),
                        faster("P1", what, "Hipparchus DP54", "p1/own", "p1/hipparchus-dp54", 20, 0, STEPS),
                        faster("P1", what, "CVODE BDF", "p1/own", "p1/cvode-bdf", 8, 25, STEPS),
                        new Row("P1", "memory of one public call", "–", "p1/own", "", Figure.BYTES, 1000, 0, "")));
    }

    private static Group p1b() {
        String what = "one node, time to 9 °C";
        return new Group(
                "P1b",
                labels(
                        "p1b/quadrature", "project, any pair, unprepared",
                        "p1b/prepared", "project, any pair, prepared curve",
                        "p1b/prepared-chained", "project, prepared curve, each query waits for the last",
                        "p1b/temperature-after", "project, prepared curve, temperature after a time",
                        "p1b/preparing", "project, preparing the curve",
                        "p1b/engine", "project, engine",
                        "p1b/commons-dp853", COMMONS,
                        "p1b/arkode-erk5", "ARKODE ERK5",
                        "p1b/cvode-adams", "CVODE Adams",
                        "p1b/floor", "C, table, any pair",
                        "p1b/floor-chained", "C, table, each query waits for the last"),
                List.of(
                        faster(
                                "P1b",
                                what + ", unprepared",
                                "ARKODE ERK5",
                                "p1b/quadrature",
                                "p1b/arkode-erk5",
                                60,
                                0,
                                "five nodes of the film, with their exponentials and an estimate of the error, take 0.11 µs"),
                        new Row(
                                "P1b",
                                "any pair, prepared",
                                "a table in C",
                                "p1b/prepared",
                                "p1b/floor",
                                Figure.TIMES_AS_LONG,
                                2,
                                1.2,
                                ""),
                        new Row(
                                "P1b",
                                "any pair, prepared, each query waits for the last",
                                "a table in C",
                                "p1b/prepared-chained",
                                "p1b/floor-chained",
                                Figure.TIMES_AS_LONG,
                                2,
                                1.2,
                                "")));
    }

    private static Group p2() {
        String what = "radial, 100 cells, temperatures after 1 h";
        return new Group(
                "P2",
                labels(
                        "p2/own", "project",
                        "p2/own-swing", "project, edge swings",
                        "p2/commons-dp54", "Commons Math DP54",
                        "p2/arkode-dirk4", "ARKODE DIRK4",
                        "p2/cvode-bdf", "CVODE BDF",
                        "p2/arkode-dirk4-swing", "ARKODE DIRK4, edge swings",
                        "p2/cvode-bdf-swing", "CVODE BDF, edge swings"),
                List.of(
                        faster("P2", what, "ARKODE DIRK4", "p2/own", "p2/arkode-dirk4", 8, 20, ""),
                        faster(
                                "P2",
                                what + ", edge swings",
                                "ARKODE DIRK4",
                                "p2/own-swing",
                                "p2/arkode-dirk4-swing",
                                8,
                                20,
                                ""),
                        faster(
                                "P2",
                                what + ", edge swings",
                                "CVODE BDF",
                                "p2/own-swing",
                                "p2/cvode-bdf-swing",
                                8,
                                20,
                                "CVODE's higher orders pay where the edge swings smoothly")));
    }

    private static Group p3() {
        String what = "axial 20 × 2 with mixing, temperatures after 1 h";
        return new Group(
                "P3",
                labels(
                        "p3/own", "project",
                        "p3/commons-dp54", "Commons Math DP54",
                        "p3/cvode-bdf", "CVODE BDF",
                        "p3/arkode-dirk4", "ARKODE DIRK4"),
                List.of(
                        faster("P3", what, "CVODE BDF", "p3/own", "p3/cvode-bdf", 20, 60, STACK),
                        faster("P3", what, "Commons Math DP54", "p3/own", "p3/commons-dp54", 60, 0, STACK)));
    }

    private static Group p4() {
        return new Group(
                "P4",
                labels("p4/own", "project, batch, per sample", "p4/commons-dp853", COMMONS + ", per sample"),
                List.of(faster(
                        "P4",
                        "10 000 samples of P1, time per sample",
                        COMMONS,
                        "p4/own",
                        "p4/commons-dp853",
                        30,
                        250,
                        "")));
    }

    private static Group p5() {
        return new Group(
                "P5",
                labels("p5/own", "project", "p5/commons-fd", "Commons Math Levenberg–Marquardt, finite differences"),
                List.of(
                        faster(
                                "P5",
                                "fit of 3 parameters to 1000 readings",
                                "Commons Math, finite differences",
                                "p5/own",
                                "p5/commons-fd",
                                25,
                                55,
                                "both predict eight points; a point of the project is a recorded run with the slopes of the state along it, a thousand readings of both, and the thermometer")));
    }

    private static Group p6() {
        String what = "°C quantity into a double";
        return new Group(
                "P6",
                labels(
                        "p6/celsius-in", "project, °C in",
                        "p6/millilitres-in", "project, mL in",
                        "p6/celsius-out", "project, °C out",
                        "p6/celsius-indriya", "Indriya, °C to K"),
                List.of(
                        faster("P6", what, "Indriya to(K)", "p6/celsius-in", "p6/celsius-indriya", 100, 0, ""),
                        new Row("P6", what + ", memory", "–", "p6/celsius-in", "", Figure.BYTES, 0, 0, "")));
    }

    private static Group real() {
        return new Group(
                "Real",
                labels("real/own", "project", "real/commons-dp853", COMMONS),
                List.of(
                        faster(
                                "Real",
                                "the library's lumped bottle in a refrigerator, time to 10 °C",
                                COMMONS,
                                "real/own",
                                "real/commons-dp853",
                                20,
                                60,
                                "both evaluate the project's own fast films, and some ten exponential steps of three evaluations stand against some 620 evaluations")));
    }

    private static Group growth() {
        return new Group(
                "Growth",
                labels(
                        "growth/cells-100", "radial, 100 cells",
                        "growth/cells-800", "radial, 800 cells",
                        "growth/samples-1250", "Monte Carlo, 1250 lumped bottles",
                        "growth/samples-10000", "Monte Carlo, 10 000 lumped bottles"),
                List.of(
                        new Row(
                                "Growth",
                                "cells 100 → 800",
                                "itself",
                                "growth/cells-800",
                                "growth/cells-100",
                                Figure.TIMES_AS_LONG,
                                11,
                                8.5,
                                ""),
                        new Row(
                                "Growth",
                                "samples 1250 → 10 000",
                                "itself",
                                "growth/samples-10000",
                                "growth/samples-1250",
                                Figure.TIMES_AS_LONG,
                                9,
                                8.2,
                                "")));
    }

    private static Group plan() {
        return new Group(
                "Plan",
                labels(
                        "plan/bottles-12",
                        "12 bottles, 4 pieces of gear",
                        "plan/bottles-96",
                        "96 bottles, 12 pieces of gear"),
                List.of(new Row(
                        "Plan",
                        "to a gap of 1 %, bottles 12 → 96",
                        "itself",
                        "plan/bottles-96",
                        "plan/bottles-12",
                        Figure.TIMES_AS_LONG,
                        30,
                        0,
                        "")));
    }

    private static Group jobs() {
        return new Group(
                "Jobs",
                labels(
                        "jobs/lumped",
                        "prediction, lumped bottle in a refrigerator, 5 h",
                        "jobs/axial",
                        "prediction, bottle in slices in ice and water, 30 min",
                        "jobs/time-interval",
                        "time to 10 °C with an interval, 400 draws",
                        "jobs/plan-12",
                        "plan with proof, 12 bottles",
                        "jobs/plan-60",
                        "plan with proof, 60 bottles",
                        "jobs/fit-own",
                        "fit of 2 parameters of a lumped bottle to 200 readings",
                        Jobs.TRACKING,
                        "10 000 tracked vessels, per reading"),
                List.of());
    }

    private static Group first() {
        return new Group(
                "First",
                labels("first/prediction", "start and first prediction", "first/empty", "empty start"),
                List.of(
                        new Row(
                                "First",
                                "first prediction in a fresh virtual machine",
                                "an empty start",
                                "first/prediction",
                                "first/empty",
                                Figure.TIMES_AS_LONG,
                                8,
                                0,
                                "some 360 classes are loaded and 400 forms of lambdas spun before the first answer, on a clock that counts what else the machine does")));
    }

    private static Group jars() {
        return new Group(
                "Jars",
                labels(JARS, "three jars of the library"),
                List.of(new Row(
                        "Jars",
                        "size without dependencies",
                        "–",
                        JARS,
                        "",
                        Figure.KILOBYTES,
                        600,
                        0,
                        "a thousand classes with their lines, names and texts")));
    }

    private static Map<String, String> labels(String... pairs) {
        Map<String, String> labels = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            labels.put(pairs[i], pairs[i + 1]);
        }
        return labels;
    }
}
