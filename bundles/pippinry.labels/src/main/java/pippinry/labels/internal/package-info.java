package pippinry.labels.internal;
