package io.github.bedjoint.app;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Reads a stream line by line and counts the lines; blank ones are passed over, and of one that is too long only the beginning is kept. */
final class Lines implements Closeable {
    /** What stands in a text for bytes that are none. */
    private static final char REPLACED = '\ufffd';

    private final InputStream in;
    private final int longest;
    private long number;
    private long bytes;

    Lines(InputStream in, int longest) {
        this.in = new BufferedInputStream(in, 1 << 16);
        this.longest = longest;
    }

    /**
     * A line.
     *
     * @param number  from 1, blank lines counted
     * @param text    without its line break
     * @param fault   why it cannot be read as text, or empty
     * @param isEnded whether a line feed ended it
     */
    record Line(long number, String text, String fault, boolean isEnded) {}

    /** The next line that is not blank; null at the end. */
    @Nullable Line next() throws IOException {
        while (true) {
            ByteArrayOutputStream kept = new ByteArrayOutputStream();
            int c = in.read();
            if (c < 0) {
                return null;
            }
            number++;
            String fault = "";
            for (; c >= 0 && c != '\n'; c = in.read()) {
                bytes++;
                if (kept.size() < longest) {
                    kept.write(c);
                } else {
                    fault = "more than " + longest + " bytes";
                }
            }
            bytes += c == '\n' ? 1 : 0;
            String text = kept.toString(StandardCharsets.UTF_8);
            if (fault.isEmpty() && text.indexOf(REPLACED) >= 0 && !Arrays.equals(text.getBytes(StandardCharsets.UTF_8), kept.toByteArray())) {
                fault = "not UTF-8";
            }
            if (!text.isBlank()) {
                return new Line(number, text.endsWith("\r") ? text.substring(0, text.length() - 1) : text, fault, c == '\n');
            }
        }
    }

    /** How many bytes of the stream the lines read so far are. */
    long bytes() {
        return bytes;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
