import java.nio.file.Path;
import java.util.Map;
import java.util.ServiceLoader;
import org.osgi.framework.Constants;
import org.osgi.framework.launch.Framework;
import org.osgi.framework.launch.FrameworkFactory;

/** Starts an OSGi framework without bundles, prints one line and stops it: the second half of the yardstick. */
final class EmptyFramework {

    private EmptyFramework() {}

    public static void main(String[] args) throws Exception {
        Map<String, String> settings = Map.of(
                Constants.FRAMEWORK_STORAGE, Path.of(args[0]).toString(),
                Constants.FRAMEWORK_STORAGE_CLEAN, Constants.FRAMEWORK_STORAGE_CLEAN_ONFIRSTINIT);
        Framework framework =
                ServiceLoader.load(FrameworkFactory.class).findFirst().orElseThrow().newFramework(settings);
        framework.start();
        System.out.println("empty framework");
        framework.stop();
        framework.waitForStop(0);
    }
}
