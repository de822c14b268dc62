/** Before the batch: baths, seed, times and amounts by calorimetry, each figure with its band, its formula and its source. */
package fifthform.curves.plan;
