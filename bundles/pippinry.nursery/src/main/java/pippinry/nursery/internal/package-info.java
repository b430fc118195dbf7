package pippinry.nursery.internal;
