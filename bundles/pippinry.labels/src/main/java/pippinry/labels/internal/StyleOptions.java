package pippinry.labels.internal;

import java.util.Optional;
import picocli.CommandLine.Option;
import pippinry.commandline.CallRefused;
import pippinry.labels.internal.code.Symbology;
import pippinry.labels.internal.paper.Dots;
import pippinry.labels.internal.tag.TagStyle;

/** How tags look. */
final class StyleOptions {
    private static final String NO_CODE = "none";

    @Option(
            names = "--code",
            paramLabel = "CODE",
            defaultValue = "qr",
            description = "Code for the camera: qr, datamatrix (smaller), code128 (long), or none.")
    String code;

    @Option(
            names = "--read-from",
            paramLabel = "M",
            defaultValue = "0.7",
            description =
                    "Distance in metres from which the number is to be read: 0.7 at arm's length, 1.6 from the row.")
    double readFrom;

    @Option(
            names = "--dpi",
            paramLabel = "DPI",
            defaultValue = "300",
            description = "Dots per inch of the printer; a code's modules are whole dots.")
    int dpi;

    TagStyle style() throws CallRefused {
        return new TagStyle(symbology(), new Dots(dpi), readFrom);
    }

    private Optional<Symbology> symbology() throws CallRefused {
        if (code.equalsIgnoreCase(NO_CODE)) {
            return Optional.empty();
        }
        return Optional.of(Symbology.of(code)
                .orElseThrow(() ->
                        new CallRefused("--code " + code + ": expected one of " + Symbology.words() + ", " + NO_CODE)));
    }
}
