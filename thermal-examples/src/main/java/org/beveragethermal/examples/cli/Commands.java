/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.LongSupplier;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.core.solver.SolverException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The sub-commands: reads the command line, asks, and shows the answer. Never ends the virtual machine. */
@Command(
        name = "beverage-thermal",
        description = "Temperatures of drinks: what they do, when they are right, what it takes.",
        subcommands = {PlanCommand.class, PredictCommand.class, IceCommand.class, FitCommand.class, ListCommand.class})
final class Commands {
    private static final List<String> NAMES = List.of("plan", "predict", "ice", "fit", "list");

    private final PrintStream out;
    private final PrintStream err;
    private final Optional<String> columns;
    private final LongSupplier nanoTime;

    Commands(PrintStream out, PrintStream err, Optional<String> columns, LongSupplier nanoTime) {
        this.out = out;
        this.err = err;
        this.columns = columns;
        this.nanoTime = nanoTime;
    }

    /** The names of all commands. */
    static List<String> names() {
        return NAMES;
    }

    /** Runs a command line that begins with one of the names. */
    ExitStatus run(String[] args) {
        try {
            return parseAndAnswer(args);
        } catch (Refusal e) {
            return refused(e.status(), String.valueOf(e.getMessage()));
        } catch (RunCancelledException | CancellationException e) {
            return refused(ExitStatus.CANCELLED, args[0] + ": given up as --limit asked, before it was done");
        } catch (SolverException | ArithmeticException | IllegalStateException e) {
            return refused(ExitStatus.INTERNAL, args[0] + ": could not be computed: " + e.getMessage());
        } catch (IllegalArgumentException e) {
            return refused(ExitStatus.USAGE, args[0] + ": " + e.getMessage());
        }
    }

    private ExitStatus refused(ExitStatus status, String message) {
        err.println(Refusal.oneLine(message));
        return status;
    }

    private ExitStatus parseAndAnswer(String[] args) {
        CommandLine line = new CommandLine(this).setExpandAtFiles(false);
        ParseResult parsed;
        try {
            parsed = line.parseArgs(args);
        } catch (ParameterException e) {
            throw new Refusal(
                    ExitStatus.USAGE,
                    args[0] + ": " + e.getMessage() + " (\"" + args[0] + " --help\" shows what is allowed)");
        }
        CommandLine asked = parsed.subcommand().commandSpec().commandLine();
        Question question = (Question) asked.getCommandSpec().userObject();
        OutputOptions output = question.output();
        if (output.help) {
            return print(help(asked, output.width(columns)), ExitStatus.DONE);
        }
        output.check();
        Session session = new Session(err, nanoTime, output.limit());
        Answer answer = question.answer(session);
        return show(question, answer);
    }

    private ExitStatus show(Question question, Answer answer) {
        OutputOptions output = question.output();
        String text = output.form(answer, output.width(columns));
        Optional<Path> page = output.page();
        Optional<Path> file = output.file();
        page.ifPresent(target -> SafeFile.check("--html", target));
        file.ifPresent(target -> SafeFile.check("--to", target));
        if (page.isPresent()) {
            SafeFile.write("--html", page.get(), answer.page().orElseGet(() -> Forms.page(answer)));
        }
        if (file.isPresent()) {
            SafeFile.write("--to", file.get(), text);
            return answer.status();
        }
        return print(text, answer.status());
    }

    private ExitStatus print(String text, ExitStatus status) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.write(bytes, 0, bytes.length);
        out.flush();
        if (out.checkError()) {
            return refused(ExitStatus.NOT_WRITABLE, "standard output: cannot be written");
        }
        return status;
    }

    private static String help(CommandLine asked, int width) {
        StringWriter text = new StringWriter();
        asked.setUsageHelpWidth(Math.max(width, 55));
        asked.usage(new PrintWriter(text), Ansi.OFF);
        StringBuilder statuses = new StringBuilder("Exit status:\n");
        for (ExitStatus status : ExitStatus.values()) {
            statuses.append("  ")
                    .append(status.number())
                    .append("  ")
                    .append(status.label())
                    .append('\n');
        }
        return text.toString().replace("\r\n", "\n") + statuses;
    }
}
