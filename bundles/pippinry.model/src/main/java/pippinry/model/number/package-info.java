/** Numbers that a hand copies from a tag, and their check character. */
@Export
@Version("1.0.0")
package pippinry.model.number;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
