package pippinry.probe;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.function.ToIntFunction;
import org.osgi.framework.BundleContext;
import org.osgi.framework.Constants;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;

/**
 * A program that says what it was called with: it prints its arguments one to a line. {@code exit N} ends with that
 * code, {@code copy} copies its input, {@code wait} prints where the framework keeps its files and goes on until stopped.
 */
@Component(
        service = ToIntFunction.class,
        property = {"pippinry.entry:Boolean=true", "service.ranking:Integer=-1000"})
public final class Echo implements ToIntFunction<Object> {

    private final CountDownLatch stopped = new CountDownLatch(1);
    private volatile PrintStream out;

    private final String storage;

    @Activate
    public Echo(BundleContext context) {
        storage = context.getProperty(Constants.FRAMEWORK_STORAGE);
    }

    @Override
    public int applyAsInt(Object value) {
        Map<?, ?> call = (Map<?, ?>) value;
        out = (PrintStream) call.get("out");
        String[] args = (String[]) call.get("args");
        return answer(args, call);
    }

    private int answer(String[] args, Map<?, ?> call) {
        switch (args.length == 0 ? "" : args[0]) {
            case "exit" -> {
                return Integer.parseInt(args[1]);
            }
            case "copy" -> copy((InputStream) call.get("in"));
            case "wait" -> await();
            default -> {
                out.println(call.get("image"));
                for (String arg : args) {
                    out.println(arg);
                }
            }
        }
        return 0;
    }

    private void copy(InputStream in) {
        try {
            out.print(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void await() {
        out.println(storage);
        try {
            stopped.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Says so, that a test can see an orderly end. */
    @Deactivate
    void stop() {
        if (out != null) {
            out.println("stopped");
        }
        stopped.countDown();
    }
}
