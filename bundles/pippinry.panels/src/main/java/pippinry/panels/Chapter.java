package pippinry.panels;

import java.time.LocalDate;
import org.osgi.annotation.versioning.ConsumerType;
import pippinry.model.Program;

/** A chapter of the season book, offered as a service by the module whose subject it is. */
@ConsumerType
public interface Chapter {

    /** Chapters stand in this order in the book, then by title. */
    int order();

    String title();

    /** Writes the chapter; a chapter that has nothing to say writes nothing and is left out. */
    void write(Program program, LocalDate today, Page page);
}
