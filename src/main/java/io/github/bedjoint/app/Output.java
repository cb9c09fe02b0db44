package io.github.bedjoint.app;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Standard output, which remembers why it could no longer be written: a {@code PrintWriter} above it keeps that to itself. */
final class Output extends FilterOutputStream {
    private @Nullable IOException failure;

    Output(OutputStream out) {
        super(out);
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        try {
            out.write(bytes, from, length);
        } catch (IOException e) {
            failure = e;
            throw e;
        }
    }

    @Override
    public void flush() throws IOException {
        try {
            out.flush();
        } catch (IOException e) {
            failure = e;
            throw e;
        }
    }

    boolean isBroken() {
        return failure != null;
    }

    /** What to tell the user; nothing where the program that read the output has simply ended. */
    Optional<String> complaint() {
        return Optional.ofNullable(failure)
                .map(IOException::getMessage)
                .filter(message -> !message.equals("Broken pipe"))
                .map(message -> "The output could not be written: " + message + ". Maybe the disk is full.");
    }
}
