/** Streaming building blocks: level and slope of a noisy series, its noise, a window of recent points. */
package fifthform.curves.signal;
