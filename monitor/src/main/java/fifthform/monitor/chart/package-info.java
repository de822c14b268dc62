/**
 * Canvases drawn by hand: the ladder of limits to scale, the trace with its forecast, and a whole batch at a desk.
 */
package fifthform.monitor.chart;
