package pippinry.model.record;

import pippinry.model.value.Code;

/** A number that was skipped because its check character, or that of its copy A, would be a star. */
public record NeverGiven(@Needed Code<NeverGiven> number, String reason) {}
