package pippinry.exchange.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.exchange.internal.archive.ArchiveWriter;
import pippinry.exchange.internal.archive.Photos;
import pippinry.model.HistoryLine;
import pippinry.model.Program;
import pippinry.model.ProgramStore;

/** The whole program with its history into one file, photos beside it. */
record ArchiveOut() implements Outgoing {

    @Override
    public Answer write(Call call, ProgramStore store, Program program, Destination out)
            throws IOException, CallRefused {
        Path file = out.file("archive.jsonl");
        Progress progress = new Progress(call, "Writing");
        List<HistoryLine> history = store.history().stream()
                .filter(edit -> edit.number() <= program.edit())
                .toList();
        ArchiveWriter writer = new ArchiveWriter(program, history, store::changesOf);
        Destination.write(file, part -> writer.write(part, progress::tell));
        Photos photos = Photos.out(store.folder(), file);
        photos.copy(program);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", file.toString());
        json.put("edit", program.edit());
        json.put("photos", photos.copied());
        json.put("warnings", photos.warnings());
        StringBuilder words = new StringBuilder();
        photos.warnings()
                .forEach(warning -> words.append("Note: ").append(warning).append('\n'));
        return Answer.of(
                json,
                words + "The program with all its " + program.edit() + " edits is in " + file + ", with "
                        + photos.copied() + " photos beside it.");
    }
}
