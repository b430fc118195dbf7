/** Plain tables: CSV files that come in and go out. */
package pippinry.exchange.internal.tables;
