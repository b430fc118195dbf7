/** Choosing the best of several: normal order statistics, selection intensity, response. */
@Export
@Version("1.0.0")
package pippinry.statistics.selection;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
