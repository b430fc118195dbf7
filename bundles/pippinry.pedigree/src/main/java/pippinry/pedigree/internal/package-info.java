package pippinry.pedigree.internal;
