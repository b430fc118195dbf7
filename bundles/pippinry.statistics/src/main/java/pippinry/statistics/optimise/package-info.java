/** Linear programs, also with whole numbers. */
@Export
@Version("1.0.0")
package pippinry.statistics.optimise;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
