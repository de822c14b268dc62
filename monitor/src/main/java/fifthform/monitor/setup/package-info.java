/** What the maker sets, without a window: each setting by its name, and the chocolates, bowls and probes that are kept. */
package fifthform.monitor.setup;
