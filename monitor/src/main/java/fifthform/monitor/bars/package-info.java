/** What is kept of bars beside their session: how they set, how warm their store was, what their maker answered, and why they came out as they did. */
package fifthform.monitor.bars;
