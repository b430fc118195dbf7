/** From flower to planted tree: what the records show, and what is due. */
package pippinry.nursery.internal;
