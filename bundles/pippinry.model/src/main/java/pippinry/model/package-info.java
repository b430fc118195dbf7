/** The records of a breeding program, the numbers on its tags, and how the program is read and changed. */
@Export
@Version("1.0.0")
package pippinry.model;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
