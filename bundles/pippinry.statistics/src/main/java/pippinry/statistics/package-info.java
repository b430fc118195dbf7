/** Numerical methods that know nothing of fruit. */
@Export
@Version("1.0.0")
package pippinry.statistics;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
