/** The records of a breeding program and the plain table of each. */
@Export
@Version("1.0.0")
package pippinry.model.record;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
