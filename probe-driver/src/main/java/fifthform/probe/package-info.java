/** How an adapter talks: the interface a new protocol implements, and what comes out of it. */
package fifthform.probe;
