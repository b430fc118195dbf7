/** Relationship, inbreeding, founders and doubt about identity: the components and commands of this bundle. */
package pippinry.pedigree.internal;
