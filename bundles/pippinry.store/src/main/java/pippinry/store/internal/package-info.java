package pippinry.store.internal;
