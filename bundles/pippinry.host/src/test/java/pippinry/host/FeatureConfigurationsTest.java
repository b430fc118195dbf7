package pippinry.host;

import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.util.Hashtable;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.mockito.Mock;
import org.mockito.junit.jupiter.MockitoExtension;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.service.cm.Configuration;
import org.osgi.service.cm.ConfigurationAdmin;

@ExtendWith(MockitoExtension.class)
class FeatureConfigurationsTest {

    @Mock
    BundleContext context;

    @Mock
    ServiceReference<ConfigurationAdmin> reference;

    @Mock
    ConfigurationAdmin admin;

    @Mock
    Configuration stored;

    @Test
    void aConfigurationIsHandedOverWhenTheAdminComes() throws Exception {
        when(context.getService(reference)).thenReturn(admin);
        when(admin.getConfiguration("the.store", "?")).thenReturn(stored);
        hand("the.store");
        verify(stored).updateIfDifferent(new Hashtable<>(Map.of("pages", 512)));
    }

    @Test
    void aNameBehindATildeBelongsToAFactory() throws Exception {
        when(context.getService(reference)).thenReturn(admin);
        when(admin.getFactoryConfiguration("pack", "apple", "?")).thenReturn(stored);
        hand("pack~apple");
        verify(stored).updateIfDifferent(new Hashtable<>(Map.of("pages", 512)));
    }

    private void hand(String pid) {
        new FeatureConfigurations(context, Map.of(pid, Map.of("pages", 512))).addingService(reference);
    }
}
