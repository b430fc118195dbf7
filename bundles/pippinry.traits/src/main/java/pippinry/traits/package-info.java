/** What a crop pack offers: traits, loci, alleles, rates, stocks, calendar, cautions. */
@Export
@Version("1.0.0")
package pippinry.traits;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
