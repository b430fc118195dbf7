package pippinry.traits.apple.internal;
