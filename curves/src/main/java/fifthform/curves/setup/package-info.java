/** Everything that is settled before a batch starts: chocolate, bowl, amount, probes, hands, baths, real or simulated. */
package fifthform.curves.setup;
