package pippinry.exchange.internal;
