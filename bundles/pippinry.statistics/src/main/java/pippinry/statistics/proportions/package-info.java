/** Shares and counts: trials needed, beliefs about a share, fit of observed classes, chains of losses. */
@Export
@Version("1.0.0")
package pippinry.statistics.proportions;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
