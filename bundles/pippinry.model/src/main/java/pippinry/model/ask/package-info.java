/** What one module may ask of another; each is optional, and its absence has a stated meaning. */
@Export
@Version("1.0.0")
package pippinry.model.ask;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
