/** Makes Larkmoor, the invented breeding program that shows Pippinry at work, with its truth known. */
package pippinry.demo;
