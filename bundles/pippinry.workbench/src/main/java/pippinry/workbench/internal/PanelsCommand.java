package pippinry.workbench.internal;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.Subcommand;
import pippinry.panels.PanelProvider;
import pippinry.panels.Theme;
import pippinry.workbench.internal.view.PaintedPanel;

/** Paints every panel to a picture, without a display. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=panels", Subcommand.SUMMARY + "=paints every panel to a PNG, without a display"
        })
@Command(
        description = "Paints every panel of the program to a PNG, without a display.",
        footer = {"", "Example:", "  pippinry panels --program larkmoor --out pictures --look dark --scale 2"})
public final class PanelsCommand implements Subcommand {

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder for the pictures.")
    private Path out;

    @Option(
            names = "--look",
            defaultValue = "LIGHT",
            description = "${COMPLETION-CANDIDATES}; ${DEFAULT-VALUE} unless said.")
    private Theme look;

    @Option(names = "--width", defaultValue = "900", description = "Of each panel; ${DEFAULT-VALUE} unless said.")
    private int width;

    @Option(names = "--height", defaultValue = "640", description = "Of each panel; ${DEFAULT-VALUE} unless said.")
    private int height;

    @Option(names = "--scale", defaultValue = "1", description = "Pixels for each point; ${DEFAULT-VALUE} unless said.")
    private double scale;

    @Option(names = "--select", paramLabel = "NUMBER", description = "The number that is selected in them.")
    private Optional<String> selected = Optional.empty();

    private final List<PanelProvider> providers;

    @Activate
    public PanelsCommand(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<PanelProvider> providers) {
        this.providers = providers;
    }

    @Override
    public Answer run(Call call) throws Exception {
        Files.createDirectories(out);
        Session session = new Session(call.store(), call.clock(), call.author(), arguments -> "");
        selected.ifPresent(session.selection()::select);
        List<Map<String, Object>> painted = new ArrayList<>();
        SwingWorkbench.onDispatchThread(look::install);
        List<PanelProvider> inOrder = providers.stream()
                .sorted(Comparator.comparing(PanelProvider::id))
                .toList();
        for (PanelProvider provider : inOrder) {
            call.progress("painting " + provider.title(), painted.size() / (double) inOrder.size());
            painted.add(paint(session, provider));
        }
        return Answer.of(Map.of("pictures", painted), painted.size() + " panels painted to " + out.toAbsolutePath());
    }

    private Map<String, Object> paint(Session session, PanelProvider provider)
            throws IOException, InterruptedException {
        Path file = out.resolve(provider.id() + ".png");
        PaintedPanel painted = PaintedPanel.of(provider, session, look, width, height, scale);
        BufferedImage image = painted.image();
        ImageIO.write(image, "png", file.toFile());
        return Map.of(
                "panel", provider.id(),
                "file", file.toString(),
                "opened_ms", painted.openedMillis(),
                "faults", painted.faults());
    }
}
