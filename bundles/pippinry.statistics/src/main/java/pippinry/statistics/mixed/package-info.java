/** Linear mixed models: fixed and random effects, and variances by restricted maximum likelihood. */
@Export
@Version("1.0.0")
package pippinry.statistics.mixed;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
