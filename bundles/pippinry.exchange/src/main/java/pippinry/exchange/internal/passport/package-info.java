/** Passport data for collections, by a published list of descriptors. */
package pippinry.exchange.internal.passport;
