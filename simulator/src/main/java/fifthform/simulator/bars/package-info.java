/** Bars that nobody poured: how they set in their mould, what the store does to them, and what somebody sees who looks at them. */
package fifthform.simulator.bars;
