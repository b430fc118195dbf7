package pippinry.labels.internal.entry;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import pippinry.model.Edit;
import pippinry.model.record.Kinds;
import pippinry.model.record.Photo;
import pippinry.model.record.Sheet;
import pippinry.model.value.PartialDate;
import pippinry.model.value.Subject;

/** Keeps a picture of the filled-in paper with the program, so that a doubtful figure can be read again. */
public final class SheetPhoto {

    private static final String PHOTOS = "photos";
    private static final String FOLDER = "sheets";

    private SheetPhoto() {}

    /** Copies the picture into the program's folder. @return the edit that puts it on file */
    public static Edit keep(Path picture, Path program, Sheet sheet, LocalDate day, String author) throws IOException {
        Path folder = program.resolve(PHOTOS).resolve(FOLDER);
        Files.createDirectories(folder);
        String number = sheet.sheet().text();
        String ending = ending(picture);
        int serial = 1;
        while (Files.exists(folder.resolve(number + "-" + serial + ending))) {
            serial++;
        }
        String name = number + "-" + serial + ending;
        Files.copy(picture, folder.resolve(name));
        Photo photo = new Photo(Subject.of(sheet.sheet()), Optional.of(PartialDate.of(day)), FOLDER + "/" + name);
        return Edit.by(author, "photo of sheet " + number)
                .put(Kinds.PHOTOS, photo)
                .done();
    }

    private static String ending(Path picture) {
        String name = picture.getFileName().toString().toLowerCase(Locale.ROOT);
        return name.matches(".+\\.[a-z0-9]{1,5}") ? name.substring(name.lastIndexOf('.')) : "";
    }
}
