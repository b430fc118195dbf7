package pippinry.host;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.framework.launch.Framework;
import org.osgi.framework.startlevel.FrameworkStartLevel;
import org.osgi.framework.wiring.BundleRevision;
import org.osgi.framework.wiring.FrameworkWiring;

/** Brings jars into a running framework: all are installed before any is started, lower start levels first. */
final class Installation {

    private static final Pattern MISSING_PACKAGE = Pattern.compile("osgi\\.wiring\\.package=([\\w.]+)");

    private final Framework framework;

    Installation(Framework framework) {
        this.framework = framework;
    }

    void start(List<Part> parts) {
        List<Bundle> bundles = new ArrayList<>();
        parts.stream().sorted(Comparator.comparingInt(Part::startLevel)).forEach(part -> bundles.add(install(part)));
        framework.adapt(FrameworkWiring.class).resolveBundles(bundles);
        List<String> faults = new ArrayList<>();
        bundles.stream().filter(bundle -> !isFragment(bundle)).forEach(bundle -> start(bundle, faults));
        if (!faults.isEmpty()) {
            throw CannotStart.broken("These bundles did not start:\n  " + String.join("\n  ", faults));
        }
    }

    /** By reference: the jar is read where it lies, nothing is copied. */
    private Bundle install(Part part) {
        try {
            framework.adapt(FrameworkStartLevel.class).setInitialBundleStartLevel(part.startLevel());
            return framework
                    .getBundleContext()
                    .installBundle("reference:" + part.jar().toUri());
        } catch (BundleException e) {
            throw CannotStart.broken("Cannot install " + part.jar() + ": " + e.getMessage(), e);
        }
    }

    /** Transient, because the framework's files end with the process: what it need not write down costs no time. */
    private static void start(Bundle bundle, List<String> faults) {
        try {
            bundle.start(Bundle.START_TRANSIENT);
        } catch (BundleException e) {
            faults.add(bundle.getSymbolicName() + ": " + reason(e));
        }
    }

    private static String reason(BundleException fault) {
        Matcher missing = MISSING_PACKAGE.matcher(String.valueOf(fault.getMessage()));
        return missing.find()
                ? "needs the package " + missing.group(1) + ", which no bundle of this start offers"
                : fault.getMessage();
    }

    private static boolean isFragment(Bundle bundle) {
        return (bundle.adapt(BundleRevision.class).getTypes() & BundleRevision.TYPE_FRAGMENT) != 0;
    }
}
