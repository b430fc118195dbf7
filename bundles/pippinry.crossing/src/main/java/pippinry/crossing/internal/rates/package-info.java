/** Rates from flower to seedling, by the program's own counts over published ones. */
package pippinry.crossing.internal.rates;
