/** Linear algebra of large symmetric matrices that are mostly zero. */
@Export
@Version("1.0.0")
package pippinry.statistics.sparse;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
