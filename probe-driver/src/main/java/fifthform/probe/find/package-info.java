/** Which ports there are, whether they can be used, and what speaks on them. */
package fifthform.probe.find;
