/** What a panel of the workbench is, and how it is painted without a window. */
@Export
@Version("1.0.0")
package pippinry.panels;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
