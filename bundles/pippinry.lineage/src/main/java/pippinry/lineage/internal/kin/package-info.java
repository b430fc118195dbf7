/** Who is whose child, and in words how near. */
package pippinry.lineage.internal.kin;
