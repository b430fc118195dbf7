/** The small values that records are made of: codes, dates as well as they are known, fixed words. */
@Export
@Version("1.0.0")
package pippinry.model.value;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
