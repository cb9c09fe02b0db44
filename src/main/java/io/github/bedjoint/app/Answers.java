package io.github.bedjoint.app;

import io.github.bedjoint.jobfile.JobLine;
import io.github.bedjoint.units.RefusedException;
import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where the answers of a run go: to a stream, or to a file, which a run that was broken off takes up again. Every answer of the file is held
 * against the job that it answers, by number and checksum; a last one without its line feed is cut off and written anew.
 */
final class Answers implements Closeable {
    private static final int LONGEST = 64 << 20;
    private static final Pattern HEAD = Pattern.compile("\\{\"line\":(\\d{1,18}),\"sha256\":\"([0-9a-f]{64})\",.*\\}", Pattern.DOTALL);

    private final OutputStream out;
    private final @Nullable FileChannel file;

    private Answers(OutputStream stream, @Nullable FileChannel file) {
        this.out = new BufferedOutputStream(stream, 1 << 16);
        this.file = file;
    }

    /** Answers to a stream, which stays open. */
    static Answers to(OutputStream stream) {
        return new Answers(stream, null);
    }

    /**
     * Opens a file of answers, or begins one, and reads the jobs that it already answers.
     *
     * @param path the file
     * @param jobs the jobs from the first on; afterwards it stands at the first without an answer
     * @return the answers, which go on behind those of the file
     * @throws RefusedException if the file is of another kind, in use, or answers other jobs
     */
    static Answers in(Path path, Lines jobs) throws IOException {
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw new RefusedException("--answers", "'" + path + "', a folder or device", "must be a file", "Maybe leave it away: answers go to standard output.");
        }
        FileChannel file = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        try {
            lock(file, path);
            long whole = answered(file, path, jobs);
            file.truncate(whole).position(whole);
        } catch (IOException | RuntimeException e) {
            file.close();
            throw e;
        }
        return new Answers(Channels.newOutputStream(file), file);
    }

    private static void lock(FileChannel file, Path path) throws IOException {
        boolean isFree;
        try {
            isFree = file.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            isFree = false;
        }
        if (!isFree) {
            throw new RefusedException("--answers", "'" + path + "', in use", "must not be written by two runs", "Maybe the run before has not ended.");
        }
    }

    /**
     * How many bytes of the file are whole answers. It is read through its own channel: on POSIX systems a lock is lost as soon as any other
     * stream of the same file is closed.
     */
    private static long answered(FileChannel file, Path path, Lines jobs) throws IOException {
        long bytes = 0;
        Lines answers = new Lines(Channels.newInputStream(file), LONGEST);
        for (Lines.Line answer = answers.next(); answer != null && answer.isEnded(); answer = answers.next()) {
            Lines.Line job = jobs.next();
            Matcher head = HEAD.matcher(answer.text());
            if (job == null || !head.matches() || Long.parseLong(head.group(1)) != job.number() || !head.group(2).equals(JobLine.sha256(job.text()))) {
                throw new RefusedException(
                        "--answers", "'" + path + "'",
                        "must hold answers to these jobs in their order, which its line " + answer.number() + " is not",
                        "Maybe the jobs were changed; then take another file for the answers.");
            }
            bytes = answers.bytes();
        }
        return bytes;
    }

    void write(String answer) throws IOException {
        byte[] bytes = (answer + "\n").getBytes(StandardCharsets.UTF_8);
        attempt(() -> out.write(bytes));
    }

    void flush() throws IOException {
        attempt(out::flush);
    }

    @Override
    public void close() throws IOException {
        try {
            flush();
        } finally {
            if (file != null) {
                attempt(file::close);
            }
        }
    }

    /** Writing failed, as opposed to reading the jobs. */
    static final class NotWritten extends IOException {
        private static final long serialVersionUID = 1L;

        NotWritten(IOException e) {
            super("The answers could not be written: " + e.getMessage() + ". Maybe the disk is full; with --answers the same command goes on where it broke off.", e);
        }
    }

    private interface Step {
        void run() throws IOException;
    }

    private static void attempt(Step step) throws IOException {
        try {
            step.run();
        } catch (IOException e) {
            throw new NotWritten(e);
        }
    }
}
