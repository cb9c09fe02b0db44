package io.github.bedjoint.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The example app: {@code bedjoint cost JOB.json}. */
@Command(
        name = "bedjoint",
        subcommands = {CostCommand.class, RollsCommand.class, CalibrateCommand.class, VarianceCommand.class, SchemaCommand.class, GenerateCompletion.class},
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        description = "Costs the application of printed, laminated film from rolls onto rough and flat walls.",
        footer = {
            "",
            "Exit codes: 0 fine, 2 bad input, 3 the job cannot be done as given,",
            "1 a fault of the program or of its output.",
            "Example: bedjoint cost docs/jobs/brick-front.json --units imperial",
            "Completion in bash: source <(bedjoint generate-completion)"
        })
public final class Main {
    static final int FINE = 0;
    static final int FAULT = 1;
    static final int BAD_INPUT = 2;
    static final int IMPOSSIBLE = 3;

    private Main() {}

    /**
     * Runs the app and exits with its code.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        // The streams of the JVM follow the locale's charset; a sheet holds m² and °C under every locale.
        // Java 22 to 24 otherwise have a console where there is no terminal.
        System.setProperty("jdk.console", "java.base");
        System.exit(run(System.in, new FileOutputStream(FileDescriptor.out), new FileOutputStream(FileDescriptor.err), args));
    }

    /** Runs the app on given streams and returns its exit code. */
    static int run(InputStream in, OutputStream out, OutputStream err, String... args) {
        Output output = new Output(out);
        PrintWriter writer = new PrintWriter(output, false, StandardCharsets.UTF_8);
        PrintWriter errors = new PrintWriter(err, true, StandardCharsets.UTF_8);
        CommandLine line = new CommandLine(new Main(), new Commands(in, output, writer, errors));
        line.setOut(writer);
        line.setErr(errors);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setExecutionExceptionHandler((e, failed, parsed) -> {
            errors.println("This is a fault of Bedjoint, not of the job: " + e);
            return FAULT;
        });
        if (args.length == 0) {
            line.usage(errors);
            return BAD_INPUT;
        }
        int code = line.execute(args);
        writer.flush();
        output.complaint().ifPresent(errors::println);
        errors.flush();
        return output.isBroken() ? FAULT : code;
    }

    /** Gives the commands the streams they work on. */
    private record Commands(InputStream in, Output bytes, PrintWriter out, PrintWriter err) implements CommandLine.IFactory {
        @Override
        public <K> K create(Class<K> type) throws Exception {
            Object command = type == CostCommand.class
                    ? new CostCommand(in, bytes, out, err)
                    : type == RollsCommand.class
                            ? new RollsCommand(out, err)
                            : type == CalibrateCommand.class
                                    ? new CalibrateCommand(out, err)
                                    : type == VarianceCommand.class
                                    ? new VarianceCommand(out, err)
                                    : type == SchemaCommand.class ? new SchemaCommand(out) : CommandLine.defaultFactory().create(type);
            return type.cast(command);
        }
    }
}
