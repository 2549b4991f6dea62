package screedbook.command;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** What a disk had to say, as a sentence. */
final class Reason {
    private Reason() {}

    /** Neither reading nor writing is allowed there, and who could change that. */
    static String permission(Object file) {
        return "no permission for " + file + "; its owner can give it, or another folder can be named";
    }

    /** What the disk said; of one that is full also what would help. */
    static String of(IOException e) {
        String said = said(e);
        return said.endsWith("No space left on device") ? said + "; make room there, or name another folder" : said;
    }

    private static String said(IOException e) {
        String file = e instanceof FileSystemException disk ? disk.getFile() : null;
        if (file == null) {
            return e.getMessage() == null ? "the disk said " + e.getClass().getSimpleName() : e.getMessage();
        }
        if (e instanceof NoSuchFileException) {
            return "there is no " + file;
        }
        if (e instanceof AccessDeniedException) {
            return permission(file);
        }
        if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
            return file + " is there already and is not a folder";
        }
        String why = ((FileSystemException) e).getReason();
        return file + ": " + (why == null ? "the disk said " + e.getClass().getSimpleName() : why);
    }
}
