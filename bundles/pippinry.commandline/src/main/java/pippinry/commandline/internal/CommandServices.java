package pippinry.commandline.internal;

import java.util.Collection;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceObjects;
import org.osgi.framework.ServiceReference;
import pippinry.commandline.Subcommand;

/** Finds subcommands in the service registry; only the one that is called is made. */
final class CommandServices implements Commands {

    private final BundleContext context;

    CommandServices(BundleContext context) {
        this.context = context;
    }

    @Override
    public SortedMap<String, String> summaries() {
        SortedMap<String, String> summaries = new TreeMap<>();
        for (ServiceReference<Subcommand> found : references(null)) {
            summaries.put(text(found, Subcommand.NAME), text(found, Subcommand.SUMMARY));
        }
        return summaries;
    }

    @Override
    public boolean reckons(String name) {
        return find(name).filter(CommandServices::reckons).isPresent();
    }

    @Override
    public Optional<Lease> open(String name) {
        return find(name).map(this::lease);
    }

    private Optional<ServiceReference<Subcommand>> find(String name) {
        boolean plain = name.matches("[a-z-]+");
        return plain
                ? references("(" + Subcommand.NAME + "=" + name + ")").stream().findFirst()
                : Optional.empty();
    }

    private static boolean reckons(ServiceReference<Subcommand> reference) {
        return "true".equals(text(reference, Subcommand.RECKONS));
    }

    private Lease lease(ServiceReference<Subcommand> reference) {
        ServiceObjects<Subcommand> makes = context.getServiceObjects(reference);
        Subcommand command = makes.getService();
        if (command == null) {
            throw new IllegalStateException("The command " + text(reference, Subcommand.NAME) + " cannot be started");
        }
        return new Made(makes, command, reckons(reference));
    }

    private Collection<ServiceReference<Subcommand>> references(String filter) {
        try {
            return context.getServiceReferences(Subcommand.class, filter);
        } catch (InvalidSyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String text(ServiceReference<?> reference, String property) {
        Object value = reference.getProperty(property);
        return value == null ? "" : value.toString();
    }

    private record Made(ServiceObjects<Subcommand> makes, Subcommand command, boolean reckons) implements Lease {

        @Override
        public void close() {
            makes.ungetService(command);
        }
    }
}
