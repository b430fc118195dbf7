/** The demo program: brought in season by season, then shown. */
package pippinry.larkmoor.internal;
