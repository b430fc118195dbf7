package pippinry.host;

import java.io.PrintStream;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.util.tracker.ServiceTracker;

/**
 * The door into the program: a service {@code ToIntFunction} with the property {@code pippinry.entry=true}. It gets a
 * map with {@code args} (String[]), {@code image} (Path), {@code in}, {@code out}, {@code err} (streams),
 * {@code terminal} (Boolean: is the error stream watched by a person) and {@code whole} (Boolean: are all bundles
 * started, or only those that start first) and answers with the exit code; -1, having done nothing, if it cannot answer
 * without the rest. Only JDK types pass, because host and bundles share no others.
 */
final class Entry {

    private static final String FILTER = "(&(objectClass=java.util.function.ToIntFunction)(pippinry.entry=true))";
    private static final int NEEDS_THE_REST = -1;
    private static final long PATIENCE_MILLIS = 5_000;

    private final Call call;
    private final PrintStream out;
    private final PrintStream err;

    Entry(Call call, PrintStream out, PrintStream err) {
        this.call = call;
        this.out = out;
        this.err = err;
    }

    /** Asks what has started so far; empty if that cannot answer. */
    OptionalInt tryFirst(BundleContext context) {
        ToIntFunction<Object> program = service(context, 0);
        int answer = program == null ? NEEDS_THE_REST : run(program, false);
        return answer == NEEDS_THE_REST ? OptionalInt.empty() : OptionalInt.of(answer);
    }

    /** @return the exit code */
    int run(BundleContext context) {
        ToIntFunction<Object> program = service(context, PATIENCE_MILLIS);
        if (program == null) {
            throw CannotStart.broken("No bundle of this feature takes a command line");
        }
        return run(program, true);
    }

    private int run(ToIntFunction<Object> program, boolean whole) {
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
                Boolean.getBoolean("pippinry.terminal"),
                "whole",
                whole));
    }

    @SuppressWarnings("unchecked")
    private static ToIntFunction<Object> service(BundleContext context, long patience) {
        try {
            ServiceTracker<?, ?> tracker = new ServiceTracker<>(context, FrameworkUtil.createFilter(FILTER), null);
            tracker.open();
            Object now = tracker.getService();
            return (ToIntFunction<Object>) (now == null && patience > 0 ? tracker.waitForService(patience) : now);
        } catch (InvalidSyntaxException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw CannotStart.broken("Interrupted while starting");
        }
    }
}
