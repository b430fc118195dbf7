/** Fits of additive effects to unbalanced records. */
@Export
@Version("1.0.0")
package pippinry.statistics.additive;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
