package pippinry;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import pippinry.host.Assembly;
import pippinry.host.Cache;
import pippinry.host.Host;

/**
 * The program as shipped, plus the probe bundle.
 *
 * <p>Tests and bundles load the program's classes through different class loaders, so only JDK types may pass between
 * them: each probe is a {@link Callable}.
 */
final class RunningProgram implements AutoCloseable {

    static final Path IMAGE =
            Path.of(System.getProperty("pippinry.image")).toAbsolutePath().normalize();
    static final Path PROBE = Path.of(System.getProperty("pippinry.probe")).toAbsolutePath();

    private final Host host;

    private RunningProgram(Host host) {
        this.host = host;
    }

    static RunningProgram of(String feature) throws Exception {
        return without(feature, Set.of());
    }

    static RunningProgram without(String feature, Set<String> bundles) throws Exception {
        return of(Assembly.of(IMAGE, feature).without(bundles).with(List.of(PROBE)));
    }

    /** Only what starts first, and without the probe, which asks for more than that. */
    static RunningProgram firstOf(String feature) throws Exception {
        return of(Assembly.of(IMAGE, feature).first());
    }

    private static RunningProgram of(Assembly assembly) throws Exception {
        Path folder = Files.createTempDirectory(Path.of("target"), "cache");
        return new RunningProgram(Host.launch(assembly, new Cache(folder)));
    }

    Object ask(String probe) throws Exception {
        BundleContext context = host.context();
        ServiceReference<?>[] found = context.getServiceReferences(Callable.class.getName(), "(probe=" + probe + ")");
        if (found == null) {
            throw new AssertionError("No probe named " + probe);
        }
        try {
            return ((Callable<?>) context.getService(found[0])).call();
        } finally {
            context.ungetService(found[0]);
        }
    }

    Bundle bundle(String symbolicName) {
        return bundles().stream()
                .filter(bundle -> bundle.getSymbolicName().equals(symbolicName))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No bundle " + symbolicName));
    }

    List<Bundle> bundles() {
        return Arrays.asList(host.context().getBundles());
    }

    @Override
    public void close() {
        host.close();
    }
}
