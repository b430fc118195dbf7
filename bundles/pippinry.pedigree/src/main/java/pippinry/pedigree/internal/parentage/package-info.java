/** Whether a recorded parentage can be true, and which candidates fit, by S-alleles and markers. */
package pippinry.pedigree.internal.parentage;
