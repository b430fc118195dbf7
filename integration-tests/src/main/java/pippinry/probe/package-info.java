/** Looks around inside the running framework on behalf of the tests. */
package pippinry.probe;
