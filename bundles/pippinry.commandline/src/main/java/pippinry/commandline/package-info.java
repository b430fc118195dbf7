/** What a subcommand is, and how it answers in words or JSON. */
@Export
@Version("1.0.0")
package pippinry.commandline;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
