package pippinry.host;

import java.io.PrintStream;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.util.tracker.ServiceTracker;

/**
 * The door into the program: a service {@code ToIntFunction} with the property {@code pippinry.entry=true}. It gets a
 * map with {@code args} (String[]), {@code image} (Path), {@code in}, {@code out}, {@code err} (streams) and
 * {@code terminal} (Boolean: is the error stream watched by a person) and answers with the exit code. Only JDK types
 * pass, because host and bundles share no others.
 */
final class Entry {

    private static final String FILTER = "(&(objectClass=java.util.function.ToIntFunction)(pippinry.entry=true))";
    private static final long PATIENCE_MILLIS = 5_000;

    private final ToIntFunction<Object> program;

    private Entry(ToIntFunction<Object> program) {
        this.program = program;
    }

    static Entry of(BundleContext context) {
        try {
            ServiceTracker<?, ?> tracker = new ServiceTracker<>(context, FrameworkUtil.createFilter(FILTER), null);
            tracker.open();
            return new Entry(awaited(tracker));
        } catch (InvalidSyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    @SuppressWarnings("unchecked")
    private static ToIntFunction<Object> awaited(ServiceTracker<?, ?> tracker) {
        try {
            Object service = tracker.waitForService(PATIENCE_MILLIS);
            if (service == null) {
                throw CannotStart.broken("No bundle of this feature takes a command line");
            }
            return (ToIntFunction<Object>) service;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw CannotStart.broken("Interrupted while starting");
        }
    }

    int run(Call call, PrintStream out, PrintStream err) {
        return program.applyAsInt(Map.of(
                "args",
                call.args().toArray(String[]::new),
                "image",
                call.image(),
                "in",
                System.in,
                "out",
                out,
                "err",
                err,
                "terminal",
                Boolean.getBoolean("pippinry.terminal")));
    }
}
