package pippinry.store.internal.ledger;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;
import pippinry.model.StoreFailed;

/** Says in words what went wrong with the disk, where, and what to do next. */
public final class Trouble {

    private Trouble() {}

    /** @param what happened, as {@code Edit 17 was not written} */
    public static StoreFailed with(String what, Path where, Exception cause) {
        return new StoreFailed(what + ": " + reason(cause) + " (" + where + "). " + next(cause), cause);
    }

    private static String reason(Exception cause) {
        if (isFull(cause)) {
            return "the disk is full";
        }
        if (isRefused(cause)) {
            return "it may not be read or written here";
        }
        if (isMissing(cause)) {
            return "the file or folder is not there";
        }
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }

    private static String next(Exception cause) {
        if (isFull(cause)) {
            return "Make room on the disk, then try again.";
        }
        if (isRefused(cause)) {
            return "Give yourself the right to write in the folder, or copy it to where you have it.";
        }
        return isMissing(cause)
                ? "Look whether the folder was moved or its disk taken out."
                : "Look after the disk, then open the program again.";
    }

    private static boolean isFull(Exception cause) {
        String message = message(cause);
        return message.contains("no space left")
                || message.contains("disk quota")
                || message.contains("not enough space");
    }

    private static boolean isRefused(Exception cause) {
        String message = message(cause);
        return cause instanceof AccessDeniedException
                || cause instanceof ReadOnlyFileSystemException
                || message.contains("permission denied")
                || message.contains("read-only file system")
                || message.contains("access is denied");
    }

    private static boolean isMissing(Exception cause) {
        return cause instanceof NoSuchFileException || cause instanceof FileNotFoundException;
    }

    private static String message(Exception cause) {
        return cause instanceof IOException && cause.getMessage() != null
                ? cause.getMessage().toLowerCase(Locale.ROOT)
                : "";
    }
}
