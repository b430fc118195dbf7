package pippinry.probe;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.runtime.ServiceComponentRuntime;
import org.osgi.service.component.runtime.dto.ComponentConfigurationDTO;
import org.osgi.service.component.runtime.dto.ComponentDescriptionDTO;
import org.osgi.service.component.runtime.dto.UnsatisfiedReferenceDTO;

/** Lists every component that lacks a reference or threw on activation, with the references that it lacks. */
@Component(service = Callable.class, property = "probe=waiting")
public final class WaitingComponents implements Callable<List<String>> {

    private final ServiceComponentRuntime runtime;

    @Activate
    public WaitingComponents(@Reference ServiceComponentRuntime runtime) {
        this.runtime = runtime;
    }

    @Override
    public List<String> call() {
        return runtime.getComponentDescriptionDTOs().stream()
                .flatMap(this::waiting)
                .toList();
    }

    private Stream<String> waiting(ComponentDescriptionDTO component) {
        return runtime.getComponentConfigurationDTOs(component).stream()
                .filter(WaitingComponents::isWaiting)
                .map(configuration -> component.name + " lacks " + lacking(configuration)
                        + (configuration.failure == null ? "" : "; failed: " + configuration.failure));
    }

    private static boolean isWaiting(ComponentConfigurationDTO configuration) {
        return configuration.state != ComponentConfigurationDTO.ACTIVE
                && configuration.state != ComponentConfigurationDTO.SATISFIED;
    }

    private static List<String> lacking(ComponentConfigurationDTO configuration) {
        return Stream.of(configuration.unsatisfiedReferences)
                .map((UnsatisfiedReferenceDTO reference) -> reference.name)
                .toList();
    }
}
