package pippinry.crossing.internal;
