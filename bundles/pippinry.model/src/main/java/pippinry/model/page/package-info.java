/** Rows packed column by column, for tables of millions. */
@Export
@Version("1.0.0")
package pippinry.model.page;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
