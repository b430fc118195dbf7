/** Fonts that may be embedded in what is printed. */
@Export
@Version("1.0.0")
package pippinry.libs.fonts;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
