/** Probabilities of discrete unknowns that depend on each other in a network. */
@Export
@Version("1.0.0")
package pippinry.statistics.discrete;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
