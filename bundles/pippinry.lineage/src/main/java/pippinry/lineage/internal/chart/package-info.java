/** What a lineage chart shows, and where on it. */
package pippinry.lineage.internal.chart;
