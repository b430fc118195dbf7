package pippinry.traits;

/**
 * Alleles of a widely published cultivar at one locus.
 *
 * @param alleles such as {@code S2/S3}, {@code Rvi6/rvi6}, {@code Rvi6/?}
 * @param series the S-allele series; empty at other loci
 */
public record ReferenceGenotype(
        String cultivar, String locus, String alleles, String series, Provenance provenance, String note) {}
