package pippinry.season.internal;
