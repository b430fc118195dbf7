/** Persistent collections: a changed copy shares all but one path with its original. */
@Export
@Version("1.0.0")
package pippinry.model.trie;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
