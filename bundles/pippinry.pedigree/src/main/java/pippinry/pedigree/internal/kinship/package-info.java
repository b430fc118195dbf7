/** Relationship reckoned on plain integer tables: no records, no services, no files. */
package pippinry.pedigree.internal.kinship;
