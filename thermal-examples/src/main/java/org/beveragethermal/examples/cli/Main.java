/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.examples.scenario.ScenarioException;
import org.beveragethermal.examples.scenario.ScenarioReader;
import org.beveragethermal.examples.sheet.PlanRequests;
import org.beveragethermal.examples.sheet.ServiceSheet;
import org.beveragethermal.service.plan.Advice;
import org.beveragethermal.service.plan.Adviser;
import org.beveragethermal.service.plan.PlanLimits;
import org.beveragethermal.service.plan.PlanMonitor;
import org.beveragethermal.service.plan.PlanRequest;
import org.beveragethermal.service.plan.Planner;
import org.beveragethermal.service.plan.ServicePlan;

/**
 * The command line. One argument that is no command is a scenario file, whose service sheet is printed; otherwise the first argument is
 * a command: {@code plan}, {@code predict}, {@code ice}, {@code fit} or {@code list}, each with {@code --help}. A scenario file with the
 * name of a command is given as {@code ./plan}. How commands end says {@link ExitStatus}.
 */
public final class Main {
    /** Exit status when all went well. */
    public static final int DONE = 0;

    /** Exit status when the arguments or the scenario were refused. */
    public static final int REFUSED = 2;

    private static final String USAGE =
            "usage: one argument, the path of a scenario file (JSON); or a command with its options: "
                    + String.join(", ", Commands.names()) + " (each with --help)";

    /** Longer than an evening's advice takes by far; where it does not suffice the sheet says so. */
    private static final Duration FOR_ADVICE = Duration.ofSeconds(20);

    private Main() {}

    /**
     * Runs the command and ends the virtual machine with its exit status.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        System.exit(run(args, utf8(FileDescriptor.out), utf8(FileDescriptor.err)));
    }

    /**
     * Runs the command.
     *
     * @param args the command line; not modified
     * @param out where results are written
     * @param err where refusals are written, one line each
     * @return {@link #DONE} or {@link #REFUSED} for a scenario file, the number of an {@link ExitStatus} for a command
     */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        return run(args, out, err, FOR_ADVICE);
    }

    /** The same with so much time for advice. */
    static int run(String[] args, PrintStream out, PrintStream err, Duration forAdvice) {
        if (args.length > 0 && Commands.names().contains(args[0])) {
            Optional<String> columns = Optional.ofNullable(System.getenv("COLUMNS"));
            return new Commands(out, err, columns, System::nanoTime).run(args).number();
        }
        if (args.length != 1) {
            err.println(USAGE);
            return REFUSED;
        }
        if (args[0].equals("--help")) {
            out.println(USAGE);
            return DONE;
        }
        try {
            Scenario scenario = ScenarioReader.read(Path.of(args[0]));
            return plan(scenario, out, err, forAdvice);
        } catch (ScenarioException e) {
            err.println(e.getMessage());
            return REFUSED;
        } catch (InvalidPathException e) {
            err.println("the argument is not a path: " + e.getReason());
            return REFUSED;
        }
    }

    private static int plan(Scenario scenario, PrintStream out, PrintStream err, Duration forAdvice) {
        PlanRequest request;
        try {
            request = PlanRequests.from(scenario);
        } catch (IllegalArgumentException e) {
            err.println("cannot be planned: " + e.getMessage());
            return REFUSED;
        }
        ServicePlan plan = Planner.plan(request);
        Advice advice = Adviser.advise(plan, PlanLimits.within(forAdvice), PlanMonitor.NONE);
        out.print(ServiceSheet.text(scenario, plan, advice));
        out.flush();
        return DONE;
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }
}
