package io.github.bedjoint.app;

import io.github.bedjoint.jobfile.JobSchema;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints the JSON Schema of job files or of results. */
@Command(name = "schema", mixinStandardHelpOptions = true, description = "Prints the JSON Schema (2020-12) of job files or of results.")
final class SchemaCommand implements Callable<Integer> {
    private final PrintWriter out;

    @Parameters(index = "0", paramLabel = "job|result", arity = "0..1", description = "Which schema (default: job).")
    private JobSchema schema = JobSchema.JOB;

    SchemaCommand(PrintWriter out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        out.print(schema.text());
        out.flush();
        return Main.FINE;
    }
}
