/** Lineage: what happens inside. */
package pippinry.lineage.internal;
