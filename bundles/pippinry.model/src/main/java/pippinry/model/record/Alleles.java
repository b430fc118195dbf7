package pippinry.model.record;

import pippinry.model.value.Code;

/** The alleles of a genotype at a locus, such as {@code S2/S3}; {@code ?} is one that is not known. */
public record Alleles(
        @Needed Code<Genotype> genotype,
        @Needed String locus,
        String alleles,
        String series,
        String basis,
        String source) {}
