package io.github.bedjoint.app;

import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Opens the files that a command names, and says in one line why one cannot be read. */
final class Input {
    /** A list or job file of more than this is something else. */
    private static final long LARGEST = 64L << 20;

    private Input() {}

    /** The path that a name means, whatever is there. */
    static Path name(String file) throws IOException {
        try {
            return Path.of(file);
        } catch (InvalidPathException e) {
            throw new NoSuchFileException(file);
        }
    }

    /** The path of a file of ordinary kind. */
    static Path anySize(String file) throws IOException {
        Path path = name(file);
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw new RefusedException("file", "'" + file + "', a folder or device", "must be a file", "Maybe the file's name is missing.");
        }
        return path;
    }

    /** The path of a file of ordinary kind and size. */
    static Path path(String file) throws IOException {
        Path path = anySize(file);
        if (Files.size(path) > LARGEST) {
            throw new RefusedException("file", "'" + file + "' of " + Files.size(path) + " bytes", "must have at most " + LARGEST + " bytes", "Maybe it is another file.");
        }
        return path;
    }

    static String text(String file) throws IOException {
        try {
            return Files.readString(path(file));
        } catch (CharacterCodingException e) {
            throw new RefusedException("file", "'" + file + "', not UTF-8", "must be a text in UTF-8", "Maybe it was saved in another encoding.");
        }
    }

    static String complaint(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "There is no file '" + e.getMessage() + "'. Maybe the path is relative to another folder.";
        }
        if (e instanceof AccessDeniedException) {
            return "The file '" + e.getMessage() + "' may not be read.";
        }
        return "A file could not be read: " + e.getMessage();
    }
}
